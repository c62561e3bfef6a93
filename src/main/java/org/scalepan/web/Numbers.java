package org.scalepan.web;

import org.scalepan.quantity.SignificantFigures;

/**
 * How computed numbers leave the service: seven significant digits, which is far finer than any Monte Carlo error, and coarse
 * enough to hide the last-bit differences between Java machines, so that the same question gives the same bytes everywhere.
 */
final class Numbers {
    private static final int DIGITS = 7;

    private Numbers() {}

    static double rounded(double value) {
        return SignificantFigures.round(requireFinite(value), DIGITS);
    }

    /** Dot decimal, no exponent, no grouping. */
    static String plain(double value) {
        return SignificantFigures.decimal(requireFinite(value), DIGITS)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static double requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("a number that is not finite must not leave the service");
        }
        return value;
    }
}
