package org.scalepan.factors;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tree of regions, and who stands inside whom. */
public final class Regions {
    /** The root of the tree: a question that names no region asks for the world. */
    public static final String WORLD = "world";

    private final Map<String, Region> byId = new LinkedHashMap<>();

    Regions(Collection<Region> regions) {
        regions.forEach(region -> byId.put(region.id(), region));
    }

    public Optional<Region> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public Collection<Region> all() {
        return java.util.Collections.unmodifiableCollection(byId.values());
    }

    /** The region itself, then what contains it, out to the world. */
    public List<String> outwards(String id) {
        List<String> chain = new ArrayList<>();
        Optional<Region> region = find(id);
        // A table with a loop in it never gets here (the loader refuses it); the size bound keeps that a fact, not a
        // hope.
        while (region.isPresent() && chain.size() <= byId.size()) {
            chain.add(region.get().id());
            region = region.get().parent().flatMap(this::find);
        }
        return chain;
    }

    /** True when {@code inner} is {@code outer} or lies inside it. */
    public boolean contains(String outer, String inner) {
        return outwards(inner).contains(outer);
    }
}
