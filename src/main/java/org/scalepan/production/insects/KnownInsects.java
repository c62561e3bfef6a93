package org.scalepan.production.insects;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;

/** The names of the insects that the library knows, with the id that each stands for. */
public final class KnownInsects {
    private static final int MOST = 3;

    private final Map<String, String> ids = new LinkedHashMap<>();

    private KnownInsects(Library library) {
        library.products().values().stream()
                .filter(product -> product.isInsect())
                .forEach(product -> {
                    ids.put(product.id(), product.id());
                    ids.putIfAbsent(product.name(), product.id());
                    product.aliases().forEach(alias -> ids.putIfAbsent(alias, product.id()));
                });
    }

    public static KnownInsects of(Library library) {
        return library.view(KnownInsects.class, KnownInsects::new);
    }

    /** Ids of the insects that a name may mean, best first. */
    public List<String> near(String name) {
        return Nearest.to(name, ids.keySet(), MOST).stream()
                .map(ids::get)
                .distinct()
                .toList();
    }
}
