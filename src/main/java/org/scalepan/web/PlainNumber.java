package org.scalepan.web;

/**
 * Prints a number as {@link Numbers#plain} does, seven significant digits without exponent, straight into bytes. It takes only numbers
 * for which one multiplication decides the digits beyond doubt, which are nearly all; the others are left to exact arithmetic.
 */
final class PlainNumber {
    /** Bytes that the longest number takes. */
    static final int LONGEST = 32;

    private static final int DIGITS = 7;
    private static final int LEAST_DIGITS = 1_000_000;
    private static final int SMALLEST = -7;
    private static final int LARGEST = 12;
    /** Far above what the multiplication rounds off and what rounding to fifteen digits before it moves, far below 1. */
    private static final double DOUBT = 1e-6;

    /** The decimal logarithm of 2, times 4096. */
    private static final int LOG_2 = 1233;

    private static final int LOG_SHIFT = 12;

    private static final double[] TENS = new double[DIGITS - SMALLEST + LARGEST];

    private static final byte[] TENS_PLACE = new byte[100];
    private static final byte[] ONES_PLACE = new byte[100];

    static {
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = Double.parseDouble("1e" + i);
        }
        for (int i = 0; i < 100; i++) {
            TENS_PLACE[i] = (byte) ('0' + i / 10);
            ONES_PLACE[i] = (byte) ('0' + i % 10);
        }
    }

    private PlainNumber() {}

    /** Where the number ends; below zero when it was not written. */
    static int write(double value, char decimal, byte[] to, int from) {
        double size = Math.abs(value);
        if (size == 0) {
            to[from] = '0';
            return from + 1;
        }
        if (!(size >= 1e-7 && size < 1e12)) {
            return -1;
        }
        int exponent = exponent(size);
        double scaled =
                exponent > DIGITS - 1 ? size / TENS[exponent - (DIGITS - 1)] : size * TENS[DIGITS - 1 - exponent];
        int digits = (int) scaled;
        double rest = scaled - digits;
        if (Math.abs(rest - 0.5) < DOUBT) {
            return -1;
        }
        if (rest > 0.5) {
            digits++;
        }
        if (digits >= 10 * LEAST_DIGITS) {
            digits = LEAST_DIGITS;
            exponent++;
        }
        int at = from;
        if (value < 0) {
            to[at++] = '-';
        }
        return exponent < 0
                ? below1(digits, -exponent - 1, decimal, to, at)
                : from1(digits, exponent + 1, decimal, to, at);
    }

    /** The power of ten of the first digit; at a power of ten it may be one too low, which then shows in the digits. */
    private static int exponent(double size) {
        int exponent = (Math.getExponent(size) * LOG_2) >> LOG_SHIFT;
        boolean more = exponent + 1 >= 0 ? size >= TENS[exponent + 1] : size * TENS[-exponent - 1] >= 1;
        return more ? exponent + 1 : exponent;
    }

    private static int below1(int digits, int zeros, char decimal, byte[] to, int from) {
        int at = from;
        to[at++] = '0';
        to[at++] = (byte) decimal;
        for (int i = 0; i < zeros; i++) {
            to[at++] = '0';
        }
        put(digits, to, at);
        return withoutZeros(to, at + DIGITS);
    }

    private static int from1(int digits, int whole, char decimal, byte[] to, int from) {
        if (whole >= DIGITS) {
            put(digits, to, from);
            for (int i = DIGITS; i < whole; i++) {
                to[from + i] = '0';
            }
            return from + whole;
        }
        put(digits, to, from + 1);
        for (int i = 0; i < whole; i++) {
            to[from + i] = to[from + i + 1];
        }
        to[from + whole] = (byte) decimal;
        int end = withoutZeros(to, from + 1 + DIGITS);
        return end == from + whole + 1 ? end - 1 : end;
    }

    /** Two places at a time, none of which waits for another. */
    private static void put(int digits, byte[] to, int from) {
        pair(digits / 100_000, to, from);
        pair(digits / 1000 % 100, to, from + 2);
        pair(digits / 10 % 100, to, from + 4);
        to[from + 6] = (byte) ('0' + digits % 10);
    }

    private static void pair(int below100, byte[] to, int from) {
        to[from] = TENS_PLACE[below100];
        to[from + 1] = ONES_PLACE[below100];
    }

    private static int withoutZeros(byte[] to, int from) {
        int end = from;
        while (to[end - 1] == '0') {
            end--;
        }
        return end;
    }
}
