package org.scalepan.ask;

import java.util.Locale;
import java.util.Optional;
import org.scalepan.footprint.Bound;

/** Why no ratio is made of two figures. */
public enum NoRatio {
    /** A result whose own published interval includes zero says nothing of how many times more or less. */
    INTERVAL_INCLUDES_ZERO("the published interval of a result behind it includes zero, and then no ratio can be made"),
    /** With credits taken off. */
    NOT_ABOVE_ZERO("a footprint with credits may not be above zero, and then no ratio can be made"),
    /** Two bounds whose ratio bounds nothing. */
    ONLY_BOUNDS("both sides are only bounds, and their ratio bounds nothing");

    private final String words;

    NoRatio(String words) {
        this.words = words;
    }

    /** Why two figures have no ratio; empty where they have one, and where a figure is missing. */
    public static Optional<NoRatio> between(Estimate product, Estimate reference) {
        if (product.footprint().isEmpty() || reference.footprint().isEmpty()) {
            return Optional.empty();
        }
        Optional<NoRatio> ofOne = product.noRatio().or(reference::noRatio);
        return ofOne.isEmpty() && Ratio.bound(product, reference) == Bound.NONE ? Optional.of(ONLY_BOUNDS) : ofOne;
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** In a clause. */
    public String words() {
        return words;
    }
}
