package org.scalepan.ask.claim;

import java.util.OptionalDouble;
import org.scalepan.quantity.SignificantFigures;

/** What is claimed of a product. */
public sealed interface Claimed {
    /** The ratio reference ÷ product that is claimed at least; none when the claim names no ratio. */
    OptionalDouble times();

    /** As worded after "causes". */
    String words();

    /**
     * The product causes so many times less than the reference.
     *
     * @param k reference ÷ product, above zero; 1 for "less", below 1 for "not more than 1/k times"
     */
    record TimesLess(double k) implements Claimed {
        public TimesLess {
            if (!(k > 0 && k < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("times less must be above zero and finite, not " + k);
            }
        }

        @Override
        public OptionalDouble times() {
            return OptionalDouble.of(k);
        }

        @Override
        public String words() {
            return k == 1 ? "less" : "at least " + number(k) + " times less";
        }
    }

    /**
     * The product causes so many per cent less than the reference: 1 ÷ (1 − p/100) times less.
     *
     * @param p above 0, below 100
     */
    record PercentLess(double p) implements Claimed {
        public PercentLess {
            if (!(p > 0 && p < 100)) {
                throw new IllegalArgumentException("per cent less must lie between 0 and 100, not at " + p);
            }
        }

        @Override
        public OptionalDouble times() {
            return OptionalDouble.of(1 / (1 - p / 100));
        }

        @Override
        public String words() {
            return "at least " + number(p) + " % less";
        }
    }

    /** The product causes none: its footprint is zero or below. */
    record NoneAtAll() implements Claimed {
        @Override
        public OptionalDouble times() {
            return OptionalDouble.empty();
        }

        @Override
        public String words() {
            return "none";
        }
    }

    /** A claimed number as people say it: {@code 100}, {@code 2.5}. */
    static String number(double value) {
        int whole = (int) Math.log10(Math.max(1, value)) + 1;
        String text = SignificantFigures.text(value, Math.min(15, Math.max(3, whole)));
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    }
}
