package org.scalepan.web;

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

/** Reads names of products, which may carry a form: {@code mealworm} or {@code mealworm:meal}. */
final class ProductReading {
    private final Library library;
    private final Parameters parameters;

    ProductReading(Library library, Parameters parameters) {
        this.library = library;
        this.parameters = parameters;
    }

    /** A comma list of products; at least one. */
    List<ProductForm> some(String name, int most) {
        List<String> written = parameters.list(name, most);
        if (written.isEmpty()) {
            parameters.fault(
                    name,
                    name + " is missing: name at least one product, for instance " + name + "=mealworm,house-cricket");
        }
        List<ProductForm> products = written.stream()
                .flatMap(text -> read(name, text).stream())
                .distinct()
                .toList();
        parameters.resolve(name, products.stream().map(ProductForm::written).toList());
        return products;
    }

    /** One product that must be given. */
    Optional<ProductForm> one(String name) {
        Optional<String> text = parameters.raw(name);
        if (text.isEmpty()) {
            parameters.fault(name, name + " is missing: name a product, for instance " + name + "=beef");
            return Optional.empty();
        }
        Optional<ProductForm> product = read(name, text.get());
        product.ifPresent(found -> parameters.resolve(name, found.written()));
        return product;
    }

    /** A product written in the path. */
    Optional<ProductForm> written(String name, String text) {
        return read(name, text);
    }

    private Optional<ProductForm> read(String name, String text) {
        if (text.contains(";")) {
            parameters.fault(name, name + " is a list with commas, not semicolons: " + text.replace(';', ','));
            return Optional.empty();
        }
        int colon = text.indexOf(':');
        String id = Parameters.asListed(
                colon < 0 ? text : text.substring(0, colon), library.products().keySet());
        Product product = library.products().get(id);
        if (product == null) {
            parameters.unknown(name, id, library.products().keySet(), near(id));
            return Optional.empty();
        }
        String form = colon < 0
                ? product.defaultForm()
                : Parameters.asListed(text.substring(colon + 1), library.ids("forms"));
        if (!library.ids("forms").contains(form)) {
            parameters.unknown("form", form, library.ids("forms"));
            return Optional.empty();
        }
        return Optional.of(new ProductForm(product, form));
    }

    /** Products whose id, name, other names or species look like what was typed. */
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
