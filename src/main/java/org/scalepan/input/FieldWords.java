package org.scalepan.input;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Words of the field for what has another name here. They are no names: a boundary of another study may not be quite ours. */
final class FieldWords {
    private static final List<String> GHG = List.of("ghg");
    private static final Map<String, List<String>> MEANT = Map.ofEntries(
            Map.entry("cradle-to-gate", List.of("farm-gate", "processing-gate")),
            Map.entry("cradle-to-farm-gate", List.of("farm-gate")),
            Map.entry("cradle-to-processing-gate", List.of("processing-gate")),
            Map.entry("cradle-to-factory-gate", List.of("processing-gate")),
            Map.entry("cradle-to-retail", List.of("retail")),
            Map.entry("cradle-to-grave", List.of("retail")),
            Map.entry("cradle-to-plate", List.of("retail")),
            Map.entry("carbon", GHG),
            Map.entry("carbon-footprint", GHG),
            Map.entry("co2", GHG),
            Map.entry("co2e", GHG),
            Map.entry("co2eq", GHG),
            Map.entry("co2-eq", GHG),
            Map.entry("climate", GHG),
            Map.entry("emissions", GHG),
            Map.entry("gwp", GHG),
            Map.entry("gwp100", GHG),
            Map.entry("global-warming", GHG),
            Map.entry("fcr", List.of("feed", "feed-dry-matter")),
            Map.entry("feed-conversion", List.of("feed", "feed-dry-matter")),
            Map.entry("area", List.of("land")),
            Map.entry("land-use", List.of("land")),
            Map.entry("blue-water", List.of("water", "water-footprint")),
            Map.entry("fossil-energy", List.of("energy")),
            Map.entry("primary-energy", List.of("energy")));

    private FieldWords() {}

    /** What a word of the field may have meant among the names allowed; empty for any other text. */
    static List<String> meant(String typed, Collection<String> allowed) {
        String word = typed.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
        return MEANT.getOrDefault(word, List.of()).stream()
                .filter(allowed::contains)
                .toList();
    }
}
