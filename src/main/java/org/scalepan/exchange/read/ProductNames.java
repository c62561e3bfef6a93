package org.scalepan.exchange.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;

/** What people call a product: its id, its name, or another name that no other product has. */
final class ProductNames {
    private ProductNames() {}

    /** The product of a name; empty where there is none, and where several have it. */
    static Optional<Product> find(Library library, String typed) {
        Product known = library.products().get(typed);
        if (known != null) {
            return Optional.of(known);
        }
        String wanted = plain(typed);
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return only(library, product -> Stream.of(product.id(), product.name()), wanted)
                .or(() -> only(library, product -> product.aliases().stream(), wanted));
    }

    private interface NamesOfProduct {
        Stream<String> of(Product product);
    }

    private static Optional<Product> only(Library library, NamesOfProduct names, String wanted) {
        List<Product> found = library.products().values().stream()
                .filter(product ->
                        names.of(product).anyMatch(name -> plain(name).equals(wanted)))
                .limit(2)
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** Without what people type differently: capitals, signs between words, and the kind of apostrophe. */
    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replace('\u2019', '\'')
                .replace('-', ' ')
                .replace('_', ' ')
                .strip();
    }
}
