package org.scalepan.web;

/**
 * Prints a number as {@link Numbers#plain} does, seven significant digits without exponent, straight into bytes. It takes only numbers
 * for which one multiplication decides the digits beyond doubt, which are nearly all; the others are left to exact arithmetic.
 */
final class PlainNumber {
    /** Bytes that the longest number takes. */
    static final int LONGEST = 32;

    private static final int DIGITS = 7;
    private static final long LEAST_DIGITS = 1_000_000;
    private static final int SMALLEST = -7;
    private static final int LARGEST = 12;
    /** Far above what the multiplication rounds off and what rounding to fifteen digits before it moves, far below 1. */
    private static final double DOUBT = 1e-6;

    private static final double[] TENS = new double[DIGITS - SMALLEST + LARGEST];

    static {
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = Double.parseDouble("1e" + i);
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
        double scaled = exponent > DIGITS - 1
                ? size / TENS[exponent - (DIGITS - 1)]
                : size * TENS[DIGITS - 1 - exponent];
        long digits = (long) scaled;
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
        int exponent = (int) Math.floor(Math.getExponent(size) * 0.30102999566398120);
        boolean more = exponent + 1 >= 0 ? size >= TENS[exponent + 1] : size * TENS[-exponent - 1] >= 1;
        return more ? exponent + 1 : exponent;
    }

    private static int below1(long digits, int zeros, char decimal, byte[] to, int from) {
        int at = from;
        to[at++] = '0';
        to[at++] = (byte) decimal;
        for (int i = 0; i < zeros; i++) {
            to[at++] = '0';
        }
        return digits(digits, DIGITS, to, at, true);
    }

    private static int from1(long digits, int whole, char decimal, byte[] to, int from) {
        if (whole >= DIGITS) {
            int at = digits(digits, DIGITS, to, from, false);
            for (int i = DIGITS; i < whole; i++) {
                to[at++] = '0';
            }
            return at;
        }
        long unit = (long) TENS[DIGITS - whole];
        int at = digits(digits / unit, whole, to, from, false);
        long parts = digits % unit;
        if (parts == 0) {
            return at;
        }
        to[at++] = (byte) decimal;
        return digits(parts, DIGITS - whole, to, at, true);
    }

    /** So many digits, without zeros at the end if so wished. */
    private static int digits(long digits, int count, byte[] to, int from, boolean cut) {
        long rest = digits;
        for (int i = from + count - 1; i >= from; i--) {
            to[i] = (byte) ('0' + rest % 10);
            rest /= 10;
        }
        int end = from + count;
        while (cut && to[end - 1] == '0') {
            end--;
        }
        return end;
    }
}
