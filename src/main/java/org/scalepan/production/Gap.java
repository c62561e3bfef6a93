package org.scalepan.production;

import java.util.List;

/**
 * A field that the records leave open, and the named default that filled it, or that it is not counted.
 *
 * @param field the field, as in the request
 * @param kind whether a default filled it
 * @param indicators ids of the indicators whose figures it can change, each once, in alphabetical order
 * @param filledWith the default in words, or what is not counted and why
 * @param rows the rows of the library behind the default; empty when nothing is counted
 */
public record Gap(String field, Kind kind, List<String> indicators, String filledWith, List<String> rows) {
    /** Greenhouse gases alone. */
    public static final List<String> GHG = List.of("ghg");
    /** What an energy carrier adds to. */
    public static final List<String> OF_ENERGY = List.of("energy", "ghg", "land");
    /** What growing and milling feed adds to. */
    public static final List<String> OF_FEED_BURDEN = List.of("energy", "ghg", "land", "water");
    /** What feed adds to, by its burden or itself. */
    public static final List<String> OF_FEED =
            List.of("energy", "feed", "feed-dry-matter", "ghg", "land", "water");
    /** Every indicator: for what changes the output that a burden is divided by. */
    public static final List<String> ALL = OF_FEED;

    /** What fills a field that the records leave open. */
    public enum Kind {
        /** A named default. */
        FILLED("filled"),
        /** Nothing: the figure lacks what it would add. */
        NOT_COUNTED("not-counted");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    public Gap {
        indicators = List.copyOf(indicators);
        rows = List.copyOf(rows);
    }

    /** True when the true figure of an indicator is higher than what is counted. */
    public boolean lowers(String indicator) {
        return kind == Kind.NOT_COUNTED && indicators.contains(indicator);
    }
}
