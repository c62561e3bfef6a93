package org.scalepan.exchange.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.Product;
import org.scalepan.input.Input;
import org.scalepan.input.InputItem;

/** Reads names of products, which may carry a form: {@code mealworm} or {@code mealworm:meal}. */
public final class ProductReading {
    private final Library library;
    private final Input input;

    public ProductReading(Library library, Input input) {
        this.library = library;
        this.input = input;
    }

    /** A comma-separated list of products; at least one. */
    public List<ProductForm> some(String name, int most) {
        List<InputItem> written = input.items(name, most);
        if (written.isEmpty()) {
            input.fault(
                    name,
                    name + " is missing: name at least one product, for instance " + name + "=mealworm,house-cricket");
        }
        List<ProductForm> products = products(written);
        if (!products.isEmpty()) {
            input.resolve(name, products.stream().map(ProductForm::written).toList());
        }
        return products;
    }

    /** A list of products, which may be left out. */
    public List<ProductForm> any(String name, int most) {
        return products(input.items(name, most));
    }

    private List<ProductForm> products(List<InputItem> written) {
        return written.stream().flatMap(item -> read(item).stream()).distinct().toList();
    }

    /** A required product. */
    public Optional<ProductForm> one(String name) {
        Optional<String> text = input.raw(name);
        if (text.isEmpty()) {
            input.fault(name, name + " is missing: name a product, for instance " + name + "=beef");
            return Optional.empty();
        }
        Optional<ProductForm> product = written(name, text.get());
        product.ifPresent(found -> input.resolve(name, found.written()));
        return product;
    }

    /** A product written in the path or in a body. */
    public Optional<ProductForm> written(String name, String text) {
        return read(input.item(name, text));
    }

    private Optional<ProductForm> read(InputItem item) {
        String text = item.text();
        if (text.contains(";")) {
            item.fault(item.name() + " is a list with commas, not semicolons: " + text.replace(';', ','));
            return Optional.empty();
        }
        int colon = text.indexOf(':');
        String name = colon < 0 ? text : text.substring(0, colon);
        Optional<Product> named = ProductNames.find(library, name);
        if (named.isEmpty()) {
            unknown(item, name);
            return Optional.empty();
        }
        Product product = named.get();
        String form =
                colon < 0 ? product.defaultForm() : Input.asListed(text.substring(colon + 1), library.ids("forms"));
        if (!library.ids("forms").contains(form)) {
            item.unknownPart("form", form, library.ids("forms"));
            return Optional.empty();
        }
        return Optional.of(new ProductForm(product, form));
    }

    private void unknown(InputItem item, String name) {
        List<String> several = Input.parts(name).stream()
                .flatMap(part -> ProductNames.find(library, part).stream())
                .map(Product::id)
                .toList();
        if (several.size() > 1 && item.isOfQuery()) {
            item.unclear(Input.onlyOne(item.name()), several);
        } else {
            item.unknown(name, library.products().keySet(), near(name));
        }
    }

    /** Products whose id, name, synonyms or species are similar to the text. */
    private List<String> near(String typed) {
        String wanted = typed.toLowerCase(Locale.ROOT).strip();
        List<String> found = new ArrayList<>();
        library.products().values().stream()
                .filter(product -> otherNames(product).anyMatch(name -> name.equalsIgnoreCase(wanted)))
                .forEach(product -> found.add(product.id()));
        if (found.isEmpty()) {
            TreeSet<String> names = new TreeSet<>(library.products().keySet());
            library.products().values().forEach(product -> otherNames(product).forEach(names::add));
            for (String name : Nearest.to(wanted, names, 4)) {
                library.products().values().stream()
                        .filter(product ->
                                product.id().equals(name) || otherNames(product).anyMatch(name::equals))
                        .map(Product::id)
                        .filter(id -> !found.contains(id))
                        .forEach(found::add);
            }
        }
        return found.size() > 3 ? found.subList(0, 3) : found;
    }

    private static Stream<String> otherNames(Product product) {
        return Stream.of(product.aliases().stream(), product.taxon().stream(), Stream.of(product.name()))
                .flatMap(names -> names);
    }
}
