package org.scalepan.quantity;

/**
 * How computed numbers leave the service: rounded to seven significant digits, which is far finer than any Monte Carlo error, and coarse
 * enough to hide the last-bit differences between Java machines, so that the same question gives the same bytes everywhere.
 */
public final class SevenDigits {
    private static final int DIGITS = 7;

    private SevenDigits() {}

    /**
     * The number that is nearest to it among those of seven significant digits.
     *
     * @throws IllegalStateException when the number is not finite
     */
    public static double rounded(double value) {
        return SignificantFigures.round(requireFinite(value), DIGITS);
    }

    /**
     * Dot decimal, no exponent, no grouping: 0.95, 1200.
     *
     * @throws IllegalStateException when the number is not finite
     */
    public static String plain(double value) {
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
