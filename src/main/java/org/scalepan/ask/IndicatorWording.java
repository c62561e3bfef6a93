package org.scalepan.ask;

import java.util.Locale;
import java.util.Map;
import org.scalepan.factors.Indicator;

/**
 * How sentences name an indicator.
 *
 * @param quantity what a figure is of: {@code land occupation}, as in "beef has 3 times the land occupation of mealworm"
 * @param noun what a product causes or needs: {@code land}, as in "mealworm needs 3 times less land than beef"
 * @param verb {@code causes} or {@code needs}
 */
public record IndicatorWording(String quantity, String noun, String verb) {
    private static final Map<String, IndicatorWording> BY_ID = Map.of(
            "energy-on-farm", needed("energy metered on the farm", "energy metered on the farm"),
            "water-on-farm", needed("water drawn on the farm", "water drawn on the farm"),
            "ghg", new IndicatorWording("greenhouse gas emissions", "greenhouse gas emissions", "causes"),
            "land", needed("land occupation", "land"),
            "energy", needed("energy use", "energy"),
            "water", needed("freshwater withdrawals", "fresh water"),
            "water-footprint", needed("water footprint", "water (green, blue and grey)"),
            "feed", needed("feed", "feed"),
            "feed-dry-matter", needed("feed dry matter", "feed dry matter"));

    private static IndicatorWording needed(String quantity, String noun) {
        return new IndicatorWording(quantity, noun, "needs");
    }

    public static IndicatorWording of(ComparisonBasis basis) {
        return of(basis.indicator());
    }

    /** Of an indicator without words of its own the library's name is taken. */
    static IndicatorWording of(Indicator indicator) {
        IndicatorWording known = BY_ID.get(indicator.id());
        return known != null ? known : needed(indicator.name().toLowerCase(Locale.ROOT), indicator.id());
    }
}
