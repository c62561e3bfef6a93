package org.scalepan.uncertainty;

/**
 * Natural logarithms of many numbers, each with the very bits of {@link StrictMath#log}, at less cost where that leaves the virtual machine
 * (JDK 17). What is not an ordinary positive number goes to {@link StrictMath#log} itself.
 *
 * <p>Source: e_log.c of fdlibm 5.3 (Sun Microsystems, 1995), which StrictMath is specified by: x = 2^k·(1 + f) with √½ &lt; 1 + f &lt; √2, a
 * polynomial in s = f/(2 + f), and k·ln 2 added in two parts.
 */
@SuppressWarnings("FloatingPointLiteralPrecision") // The constants stand as they were published.
public final class Logarithms {
    private static final double LN_2_HIGH = 6.93147180369123816490e-01;
    private static final double LN_2_LOW = 1.90821492927058770002e-10;
    private static final double L1 = 6.666666666666735130e-01;
    private static final double L2 = 3.999999999940941908e-01;
    private static final double L3 = 2.857142874366239149e-01;
    private static final double L4 = 2.222219843214978396e-01;
    private static final double L5 = 1.818357216161805012e-01;
    private static final double L6 = 1.531383769920937332e-01;
    private static final double L7 = 1.479819860511658591e-01;

    private static final long FRACTION = 0x000f_ffff_ffff_ffffL;
    private static final int EXPONENT_SHIFT = 52;
    private static final int BIAS = 1023;

    private Logarithms() {}

    /** Replaces each value by its natural logarithm. */
    public static void replace(double[] values) {
        for (int i = 0; i < values.length; i++) {
            values[i] = of(values[i]);
        }
    }

    private static double of(double x) {
        if (!(x >= Double.MIN_NORMAL && x < Double.POSITIVE_INFINITY)) {
            return StrictMath.log(x);
        }
        long bits = Double.doubleToRawLongBits(x);
        int fraction = (int) (bits >> 32) & 0x000f_ffff;
        int carry = (fraction + 0x9_5f64) & 0x0010_0000;
        int k = (int) (bits >> EXPONENT_SHIFT) - BIAS + (carry >> 20);
        double f = Double.longBitsToDouble((bits & FRACTION) | ((long) (carry ^ 0x3ff0_0000) << 32)) - 1;
        if ((0x000f_ffff & (2 + fraction)) < 3) {
            // Next to a power of two there are branches of their own.
            return StrictMath.log(x);
        }
        double s = f / (2 + f);
        double z = s * s;
        double w = z * z;
        double even = w * (L2 + w * (L4 + w * L6));
        double odd = z * (L1 + w * (L3 + w * (L5 + w * L7)));
        double r = odd + even;
        if (((fraction - 0x6_147a) | (0x6_b851 - fraction)) > 0) {
            double half = 0.5 * f * f;
            return k == 0
                    ? f - (half - s * (half + r))
                    : k * LN_2_HIGH - ((half - (s * (half + r) + k * LN_2_LOW)) - f);
        }
        return k == 0 ? f - s * (f - r) : k * LN_2_HIGH - ((s * (f - r) - k * LN_2_LOW) - f);
    }
}
