package org.scalepan.footprint;

import java.util.Locale;
import org.scalepan.words.Message;

/**
 * On which side of a figure the true value lies: a sum that leaves out something required is a lower bound of it. Every result made
 * of such a figure carries its own direction, found by interval arithmetic on signs (sums, differences, ratios of positive numbers,
 * factors of either sign).
 *
 * <p>Source: Moore, Kearfott, Cloud 2009, Introduction to Interval Analysis, chapter 2 (monotonic operations; from memory).
 */
public enum Bound {
    /** The figure itself: nothing required is left out. */
    EXACT,
    /** The true value is this or more. */
    AT_LEAST,
    /** The true value is this or less. */
    AT_MOST,
    /** The true value may lie on either side: the figure bounds nothing. */
    NONE;

    /** Of a sum of two figures: bounds of opposite directions bound nothing together. */
    public Bound plus(Bound other) {
        if (this == other || other == EXACT) {
            return this;
        }
        return this == EXACT ? other : NONE;
    }

    /** Of the figure with its sign, or as a divisor, turned round. */
    public Bound reversed() {
        return switch (this) {
            case AT_LEAST -> AT_MOST;
            case AT_MOST -> AT_LEAST;
            case EXACT, NONE -> this;
        };
    }

    /** Of this figure less another. */
    public Bound minus(Bound other) {
        return plus(other.reversed());
    }

    /** Of this figure divided by another, both above zero. */
    public Bound over(Bound other) {
        return plus(other.reversed());
    }

    /** Of this figure times an exact factor; times zero nothing is left of it, and nothing is exact. */
    public Bound times(double factor) {
        if (factor == 0) {
            return EXACT;
        }
        return factor > 0 ? this : reversed();
    }

    /**
     * Of the share that a part has of a total of this direction.
     *
     * @param complete whether all that is required of the part is counted
     */
    public Bound ofShare(boolean complete) {
        if (this == EXACT) {
            return EXACT;
        }
        return this == AT_LEAST && complete ? AT_MOST : NONE;
    }

    /** True when a statement that the value is so high or higher can rest on the figure. */
    public boolean supportsAtLeast() {
        return this == EXACT || this == AT_LEAST;
    }

    /** True when a statement that the value is so low or lower can rest on the figure. */
    public boolean supportsAtMost() {
        return this == EXACT || this == AT_MOST;
    }

    /** A figure with what is said of it. */
    public Message message(Object figure) {
        return Message.of("bounded." + id(), "figure", figure);
    }

    /** As it stands before a number in an English sentence, with a space behind it; empty before a figure that is exact. */
    public String words() {
        return message("").english();
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
