package org.scalepan.production;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A field that the records leave open, and the named default that filled it, or that it is not counted.
 *
 * @param field the field, as in the request
 * @param kind whether a default filled it
 * @param indicators ids of the indicators whose figures it can change, in alphabetical order
 * @param filledWith the default in words, or what is not counted and why
 * @param rows the rows of the library behind the default; empty when nothing is counted
 */
public record Gap(String field, Kind kind, SortedSet<String> indicators, String filledWith, List<String> rows) {
    /** Greenhouse gases alone. */
    public static final Set<String> GHG = Set.of("ghg");
    /** What an energy carrier adds to. */
    public static final Set<String> OF_ENERGY = Set.of("ghg", "land", "energy");
    /** What growing and milling feed adds to. */
    public static final Set<String> OF_FEED_BURDEN = Set.of("ghg", "land", "energy", "water");
    /** What feed adds to, by its burden or itself. */
    public static final Set<String> OF_FEED = Set.of("ghg", "land", "energy", "water", "feed", "feed-dry-matter");
    /** Every indicator: for what changes the output that a burden is divided by. */
    public static final Set<String> ALL = OF_FEED;

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
        indicators = Collections.unmodifiableSortedSet(new TreeSet<>(indicators));
        rows = List.copyOf(rows);
    }

    Gap(String field, Kind kind, Set<String> indicators, String filledWith, List<String> rows) {
        this(field, kind, new TreeSet<>(indicators), filledWith, rows);
    }

    /** True when the true figure of an indicator is higher than what is counted. */
    public boolean lowers(String indicator) {
        return kind == Kind.NOT_COUNTED && indicators.contains(indicator);
    }
}
