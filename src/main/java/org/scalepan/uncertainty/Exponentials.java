package org.scalepan.uncertainty;

/**
 * Exponentials of many numbers at once, each with the very bits of {@link StrictMath#exp}: the same arithmetic, without its branches, in
 * loops that the machine runs several steps at a time. Where the arithmetic would differ from it (next to a half power of two, next to
 * zero, and far out) {@link StrictMath#exp} itself is called.
 *
 * <p>Source: e_exp.c of fdlibm 5.3 (Sun Microsystems, 1995), which StrictMath is specified by: x = k·ln 2 + r with |r| ≤ ln 2 / 2, a
 * rational function of r, and k put into the exponent.
 */
@SuppressWarnings("FloatingPointLiteralPrecision") // The constants stand as they were published.
final class Exponentials {
    private static final int BLOCK = 256;

    private static final double ONE_OVER_LN_2 = 1.44269504088896338700e+00;
    private static final double LN_2_HIGH = 6.93147180369123816490e-01;
    private static final double LN_2_LOW = 1.90821492927058770002e-10;
    private static final double P1 = 1.66666666666666019037e-01;
    private static final double P2 = -2.77777777770155933842e-03;
    private static final double P3 = 6.61375632143793436117e-05;
    private static final double P4 = -1.65339022054652515390e-06;
    private static final double P5 = 4.13813679705723846039e-08;

    /** A number that large has no binary places: added and taken away again it rounds to a whole number. */
    private static final double ROUNDING = 0x1.8p52;

    /** Just below ln 2 / 2; beyond it fdlibm may have rounded to the other whole number. */
    private static final double MOST_REST = 0.346573;

    private static final double LEAST = 0x1p-28;
    private static final double MOST = 700;
    private static final int EXPONENT_SHIFT = 52;

    private Exponentials() {}

    /** Replaces each value by its exponential. */
    static void replace(double[] values) {
        double[] taken = new double[BLOCK];
        double[] turned = new double[BLOCK];
        double[] rest = new double[BLOCK];
        double[] raised = new double[BLOCK];
        for (int from = 0; from < values.length; from += BLOCK) {
            int count = Math.min(BLOCK, values.length - from);
            System.arraycopy(values, from, taken, 0, count);
            turn(taken, turned);
            raise(taken, turned, rest, raised);
            for (int i = 0; i < count; i++) {
                double size = Math.abs(taken[i]);
                boolean same = Math.abs(rest[i]) <= MOST_REST && size >= LEAST && size <= MOST;
                values[from + i] = same ? timesPowerOfTwo(raised[i], turned[i]) : StrictMath.exp(taken[i]);
            }
        }
    }

    private static void turn(double[] taken, double[] turned) {
        for (int i = 0; i < BLOCK; i++) {
            turned[i] = taken[i] * ONE_OVER_LN_2 + ROUNDING;
        }
    }

    private static void raise(double[] taken, double[] turned, double[] rest, double[] raised) {
        for (int i = 0; i < BLOCK; i++) {
            double whole = turned[i] - ROUNDING;
            double high = taken[i] - whole * LN_2_HIGH;
            double low = whole * LN_2_LOW;
            double r = high - low;
            double square = r * r;
            double c = r - square * (P1 + square * (P2 + square * (P3 + square * (P4 + square * P5))));
            rest[i] = r;
            raised[i] = 1 - ((low - (r * c) / (2 - c)) - high);
        }
    }

    /** @param turned its last places hold the power, as a whole number */
    private static double timesPowerOfTwo(double value, double turned) {
        long power = Double.doubleToRawLongBits(turned) << EXPONENT_SHIFT;
        return Double.longBitsToDouble(Double.doubleToRawLongBits(value) + power);
    }
}
