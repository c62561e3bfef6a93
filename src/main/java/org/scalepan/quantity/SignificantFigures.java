package org.scalepan.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Rounding to significant figures, on the decimal number a reader would see rather than on its binary neighbour.
 *
 * <p>Source: half-even rounding as in ISO 80000-1:2022, annex B (rule A); rounding towards zero for statements of the form
 * "at least", and away from it for "no more than".
 */
public final class SignificantFigures {
    private static final int MOST_FIGURES = 15;

    /*
     * Fifteen figures give back every decimal of up to fifteen figures that went into a double, so a printed 2.3 is
     * treated as 2.3 and not as 2.29999999999999982. The shortest decimal of Double.toString would do the same, but
     * its last figure differs between JVM releases.
     */
    private static final MathContext AS_WRITTEN = new MathContext(MOST_FIGURES, RoundingMode.HALF_EVEN);

    private SignificantFigures() {}

    /**
     * The value rounded half to even.
     *
     * @param value any double; zero, infinities and NaN come back unchanged
     * @param figures significant figures, 1 to 15
     * @throws IllegalArgumentException when figures is out of range
     */
    public static double round(double value, int figures) {
        requireFigures(figures);
        if (value == 0 || !Double.isFinite(value)) {
            return value;
        }
        return rounded(value, figures).doubleValue();
    }

    /**
     * The same as a decimal number.
     *
     * @param value a finite number
     * @param figures significant figures, 1 to 15
     * @throws IllegalArgumentException when the value is not finite or figures is out of range
     */
    public static BigDecimal decimal(double value, int figures) {
        requireFigures(figures);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only a finite number can be printed, not " + value);
        }
        return value == 0 ? BigDecimal.ZERO : rounded(value, figures);
    }

    /**
     * The value cut towards zero: never larger in magnitude than the value itself, so that "at least r times" stays true.
     *
     * @param value any double; zero, infinities and NaN come back unchanged
     * @param figures significant figures, 1 to 15
     * @throws IllegalArgumentException when figures is out of range
     */
    public static double floor(double value, int figures) {
        requireFigures(figures);
        if (value == 0 || !Double.isFinite(value)) {
            return value;
        }
        double asWritten = cut(asWritten(value), figures, RoundingMode.DOWN);
        // A value a hair below a round number is lifted onto it by the fifteen figures; then the exact expansion
        // decides.
        return Math.abs(asWritten) <= Math.abs(value)
                ? asWritten
                : cut(new BigDecimal(value), figures, RoundingMode.DOWN);
    }

    /**
     * The value rounded away from zero: never smaller in magnitude than the value itself, so that "no more than r" stays true.
     *
     * @param value any double; zero, infinities and NaN come back unchanged
     * @param figures significant figures, 1 to 15
     * @throws IllegalArgumentException when figures is out of range
     */
    public static double ceiling(double value, int figures) {
        requireFigures(figures);
        if (value == 0 || !Double.isFinite(value)) {
            return value;
        }
        double asWritten = cut(asWritten(value), figures, RoundingMode.UP);
        return Math.abs(asWritten) >= Math.abs(value)
                ? asWritten
                : cut(new BigDecimal(value), figures, RoundingMode.UP);
    }

    private static double cut(BigDecimal value, int figures, RoundingMode mode) {
        return value.round(new MathContext(figures, mode)).doubleValue();
    }

    /**
     * The rounded value in plain decimal notation: dot decimal, no grouping, no exponent, trailing zeros kept only where
     * they are significant figures after the point (1.02 to two figures is "1.0", 147.3 is "150").
     *
     * @param value a finite number
     * @param figures significant figures, 1 to 15
     * @throws IllegalArgumentException when the value is not finite or figures is out of range
     */
    public static String text(double value, int figures) {
        requireFigures(figures);
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only a finite number can be printed, not " + value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = rounded(value, figures);
        int decimals = figures - rounded.precision() + rounded.scale();
        return rounded.setScale(Math.max(0, decimals), RoundingMode.UNNECESSARY).toPlainString();
    }

    private static BigDecimal rounded(double value, int figures) {
        return asWritten(value).round(new MathContext(figures, RoundingMode.HALF_EVEN));
    }

    private static BigDecimal asWritten(double value) {
        return new BigDecimal(value).round(AS_WRITTEN);
    }

    private static void requireFigures(int figures) {
        if (figures < 1 || figures > MOST_FIGURES) {
            throw new IllegalArgumentException("significant figures must be 1 to " + MOST_FIGURES + ", not " + figures);
        }
    }
}
