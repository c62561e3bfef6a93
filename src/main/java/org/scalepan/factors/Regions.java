package org.scalepan.factors;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The tree of regions, and which contains which. */
public final class Regions {
    /** The root of the tree: a question that names no region asks for the world. */
    public static final String WORLD = "world";

    private static final String AREA = "area";
    /** Names made of a common noun, and plurals, take the article in English. */
    private static final Pattern WITH_ARTICLE =
            Pattern.compile("^(United|European Union|Netherlands|Philippines)|Republic|Federation|countries$|regions$");

    private final Map<String, Region> byId = new LinkedHashMap<>();
    private final Map<String, List<String>> outwards = new LinkedHashMap<>();
    private final Map<String, List<String>> nearest = new LinkedHashMap<>();

    Regions(Collection<Region> regions) {
        regions.forEach(region -> byId.put(region.id(), region));
        byId.keySet().forEach(id -> outwards.put(id, List.copyOf(walk(id))));
        byId.keySet().forEach(id -> nearest.put(id, List.copyOf(walkNear(id))));
    }

    public Optional<Region> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** What a region is called inside a sentence, behind "in" or "of". */
    public String words(String id) {
        String name = find(id).map(Region::name).orElse(id);
        return id.equals(WORLD) ? "the world" : WITH_ARTICLE.matcher(name).find() ? "the " + name : name;
    }

    public Collection<Region> all() {
        return java.util.Collections.unmodifiableCollection(byId.values());
    }

    /** The region itself, then what contains it, out to the world. */
    public List<String> outwards(String id) {
        return outwards.getOrDefault(id, List.of());
    }

    private List<String> walk(String id) {
        List<String> chain = new ArrayList<>();
        Optional<Region> region = find(id);
        // A table with a cycle never gets here (the loader refuses it); the size bound ensures that the loop ends
        // hope.
        while (region.isPresent() && chain.size() <= byId.size()) {
            chain.add(region.get().id());
            region = region.get().parent().flatMap(this::find);
        }
        return chain;
    }

    /**
     * Where a factor about a place may be looked for, nearest first: the region itself and what contains it, and beside each of these the
     * areas under it that cut across the tree, such as the European Union in Europe. An area may not contain the place asked for, but is
     * nearer to it than the world. The world's own areas (such as the OECD) are near to nothing and left out.
     */
    public List<String> nearestFirst(String id) {
        return nearest.getOrDefault(id, List.of());
    }

    private List<String> walkNear(String id) {
        List<String> places = new ArrayList<>();
        for (String place : outwards(id)) {
            places.add(place);
            if (!place.equals(WORLD)) {
                byId.values().stream()
                        .filter(region -> region.level().equals(AREA)
                                && region.parent().filter(place::equals).isPresent()
                                && !places.contains(region.id()))
                        .forEach(region -> places.add(region.id()));
            }
        }
        return places;
    }

    /** True when {@code inner} is {@code outer} or lies inside it. */
    public boolean contains(String outer, String inner) {
        return outwards(inner).contains(outer);
    }
}
