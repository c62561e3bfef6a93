package org.scalepan.footprint;

import java.util.List;

/** The result of a search for a conversion from one functional unit to another. */
public sealed interface ChainPath {

    /** There is a conversion; an empty list means that the units are the same. */
    record FoundPath(List<ChainStep> steps) implements ChainPath {
        public FoundPath {
            steps = List.copyOf(steps);
        }
    }

    /**
     * There is none, because the product has no such factor. Never borrowed from another species.
     *
     * @param product product id
     * @param form form id
     * @param missing the factor that would be needed, in words
     */
    record MissingConversion(String product, String form, FunctionalUnit from, FunctionalUnit to, String missing)
            implements ChainPath {
        /** The refusal as a sentence. */
        public String text() {
            return "no way from " + from.words() + " to " + to.words() + " for " + product + " (" + form + "): "
                    + missing;
        }
    }
}
