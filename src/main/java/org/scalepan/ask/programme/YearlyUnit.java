package org.scalepan.ask.programme;

import java.util.Map;
import org.scalepan.factors.Indicator;

/**
 * The unit in which a programme's year is reported: tonnes for kilograms, hectares for square metres.
 *
 * @param words the unit
 * @param holds how many of the indicator's own units it holds
 */
public record YearlyUnit(String words, double holds) {
    private static final Map<String, YearlyUnit> OF = Map.of(
            "ghg", new YearlyUnit("t CO2e", 1_000),
            "land", new YearlyUnit("ha*yr", 10_000),
            "feed", new YearlyUnit("t feed", 1_000),
            "feed-dry-matter", new YearlyUnit("t feed dry matter", 1_000),
            "energy", new YearlyUnit("GJ", 1_000),
            "energy-on-farm", new YearlyUnit("GJ", 1_000));

    public static YearlyUnit of(Indicator indicator) {
        return OF.getOrDefault(indicator.id(), new YearlyUnit(indicator.unit(), 1));
    }
}
