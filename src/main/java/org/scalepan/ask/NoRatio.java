package org.scalepan.ask;

import java.util.Locale;
import java.util.Optional;
import org.scalepan.footprint.Bound;
import org.scalepan.words.Message;

/** Why no ratio is made of two figures. */
public enum NoRatio {
    /** A result whose own published interval includes zero says nothing of how many times more or less. */
    INTERVAL_INCLUDES_ZERO,
    /** With credits taken off. */
    NOT_ABOVE_ZERO,
    /** Two bounds whose ratio bounds nothing. */
    ONLY_BOUNDS;

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
    public Message message() {
        return Message.of("no-ratio." + id());
    }

    /** In an English clause. */
    public String words() {
        return message().english();
    }
}
