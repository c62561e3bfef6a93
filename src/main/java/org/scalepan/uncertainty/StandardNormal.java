package org.scalepan.uncertainty;

import java.util.Arrays;

/**
 * The standard normal distribution function and its inverse, giving the same bits on every JVM.
 *
 * <p>Written out here, on {@link StrictMath}, because the same question must give the same bytes everywhere: the intrinsics
 * behind {@link Math#exp} and {@link Math#log} may differ in the last bit between JVMs and processors, and the library
 * versions of both functions rest on them.
 *
 * <p>Sources: distribution function by the rational approximations of Cody (1969), Math. Comp. 23, 631–637, in the
 * arrangement of Cody (1993), ACM TOMS 19, 22–32 (algorithm 715); inverse by Wichura (1988), Appl. Stat. 37, 477–484
 * (AS 241, PPND16). The papers themselves were not at hand: the coefficients are from memory, and the tests hold both
 * functions against an independent library to parts in 10^13.
 */
@SuppressWarnings("FloatingPointLiteralPrecision") // The coefficients stand as they were published.
public final class StandardNormal {
    private static final double ONE_OVER_ROOT_TWO_PI = 0.398942280401432677939946;
    /** A quartile: up to it the distribution function is near a straight line. */
    private static final double CENTRE = 0.67448975;

    private static final double ROOT_32 = 5.656854249492380195206754896838;

    private static final double[] CENTRE_TOP = {
        0.065682337918207449113,
        2.2352520354606839287,
        161.02823106855587881,
        1067.6894854603709582,
        18154.981253343561249
    };
    private static final double[] CENTRE_BOTTOM = {
        1.0, 47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956
    };
    private static final double[] FLANK_TOP = {
        1.0765576773720192317e-8,
        0.39894151208813466764,
        8.8831497943883759412,
        93.506656132177855979,
        597.27027639480026226,
        2494.5375852903726711,
        6848.1904505362823326,
        11602.651437647350124,
        9842.7148383839780218
    };
    private static final double[] FLANK_BOTTOM = {
        1.0,
        22.266688044328115691,
        235.38790178262499861,
        1519.377599407554805,
        6485.558298266760755,
        18615.571640885098091,
        34900.952721145977266,
        38912.003286093271411,
        19685.429676859990727
    };
    private static final double[] TAIL_TOP = {
        0.02307344176494017303,
        0.21589853405795699,
        0.1274011611602473639,
        0.022235277870649807,
        0.001421619193227893466,
        2.9112874951168792e-5
    };
    private static final double[] TAIL_BOTTOM = {
        1.0,
        1.28426009614491121,
        0.468238212480865118,
        0.0659881378689285515,
        0.00378239633202758244,
        7.29751555083966205e-5
    };

    private static final double[] INVERSE_CENTRE_TOP = {
        2.5090809287301226727e+3,
        3.3430575583588128105e+4,
        6.7265770927008700853e+4,
        4.5921953931549871457e+4,
        1.3731693765509461125e+4,
        1.9715909503065514427e+3,
        1.3314166789178437745e+2,
        3.3871328727963666080e0
    };
    private static final double[] INVERSE_CENTRE_BOTTOM = {
        5.2264952788528545610e+3,
        2.8729085735721942674e+4,
        3.9307895800092710610e+4,
        2.1213794301586595867e+4,
        5.3941960214247511077e+3,
        6.8718700749205790830e+2,
        4.2313330701600911252e+1,
        1.0
    };
    private static final double[] INVERSE_FLANK_TOP = {
        7.74545014278341407640e-4,
        2.27238449892691845833e-2,
        2.41780725177450611770e-1,
        1.27045825245236838258e0,
        3.64784832476320460504e0,
        5.76949722146069140550e0,
        4.63033784615654529590e0,
        1.42343711074968357734e0
    };
    private static final double[] INVERSE_FLANK_BOTTOM = {
        1.05075007164441684324e-9,
        5.47593808499534494600e-4,
        1.51986665636164571966e-2,
        1.48103976427480074590e-1,
        6.89767334985100004550e-1,
        1.67638483018380384940e0,
        2.05319162663775882187e0,
        1.0
    };
    private static final double[] INVERSE_TAIL_TOP = {
        2.01033439929228813265e-7,
        2.71155556874348757815e-5,
        1.24266094738807843860e-3,
        2.65321895265761230930e-2,
        2.96560571828504891230e-1,
        1.78482653991729133580e0,
        5.46378491116411436990e0,
        6.65790464350110377720e0
    };
    private static final double[] INVERSE_TAIL_BOTTOM = {
        2.04426310338993978564e-15,
        1.42151175831644588870e-7,
        1.84631831751005468180e-5,
        7.86869131145613259100e-4,
        1.48753612908506148525e-2,
        1.36929880922735805310e-1,
        5.99832206555887937690e-1,
        1.0
    };

    /** exp(−d²/2) for d = 0, 1/16, 2/16 and so on: the first of the two steps in which it is taken. */
    private static final double[] SIXTEENTHS = sixteenths();

    private static final int FARTHEST = 40;

    private static final int BLOCK = 256;

    private StandardNormal() {}

    private static double[] sixteenths() {
        double[] bells = new double[16 * FARTHEST + 1];
        for (int i = 0; i < bells.length; i++) {
            double distance = i / 16.0;
            bells[i] = StrictMath.exp(-0.5 * distance * distance);
        }
        return bells;
    }

    /**
     * The probability of a standard normal score at or below the given one.
     *
     * @param score any double; minus infinity gives 0, infinity 1, NaN gives NaN
     */
    public static double probabilityBelow(double score) {
        double distance = Math.abs(score);
        return distance > CENTRE ? beyond(score, distance, bell(distance)) : nearCentre(score);
    }

    /**
     * The same where exp(−score²/2) is known already.
     *
     * @param bell as {@link #bell} gave it for the score
     */
    public static double probabilityBelow(double score, double bell) {
        double distance = Math.abs(score);
        return distance > CENTRE ? beyond(score, distance, bell) : nearCentre(score);
    }

    /** NaN stays NaN. */
    private static double nearCentre(double score) {
        double square = score * score;
        return 0.5 + score * (polynomial(CENTRE_TOP, square) / polynomial(CENTRE_BOTTOM, square));
    }

    private static double beyond(double score, double distance, double bell) {
        double tail = tail(distance, bell);
        return score < 0 ? tail : 1 - tail;
    }

    /**
     * The score below which a standard normal falls with the given probability.
     *
     * @param probability within 0 and 1; 0 gives minus infinity, 1 infinity
     * @throws IllegalArgumentException when the probability is outside 0 and 1, or NaN
     */
    public static double score(double probability) {
        Require.probability(probability);
        double fromCentre = probability - 0.5;
        if (Math.abs(fromCentre) <= 0.425) {
            double r = 0.180625 - fromCentre * fromCentre;
            return fromCentre * (polynomial(INVERSE_CENTRE_TOP, r) / polynomial(INVERSE_CENTRE_BOTTOM, r));
        }
        double smaller = fromCentre < 0 ? probability : 1 - probability;
        double size = smaller == 0 ? Double.POSITIVE_INFINITY : farScore(Math.sqrt(-StrictMath.log(smaller)));
        return fromCentre < 0 ? -size : size;
    }

    /**
     * Replaces each probability by its score: the same bits as {@link #score}, in loops that the machine runs several steps at a time.
     *
     * @param probabilities each within 0 and 1
     * @throws IllegalArgumentException when one is outside 0 and 1, or NaN
     */
    public static void scores(double[] probabilities) {
        double[] squares = new double[BLOCK];
        double[] top = new double[BLOCK];
        double[] bottom = new double[BLOCK];
        for (int from = 0; from < probabilities.length; from += BLOCK) {
            int size = Math.min(BLOCK, probabilities.length - from);
            for (int i = 0; i < size; i++) {
                double fromCentre = probabilities[from + i] - 0.5;
                squares[i] = 0.180625 - fromCentre * fromCentre;
            }
            polynomials(INVERSE_CENTRE_TOP, squares, top);
            polynomials(INVERSE_CENTRE_BOTTOM, squares, bottom);
            for (int i = 0; i < size; i++) {
                double fromCentre = probabilities[from + i] - 0.5;
                probabilities[from + i] = Math.abs(fromCentre) <= 0.425
                        ? fromCentre * (top[i] / bottom[i])
                        : score(probabilities[from + i]);
            }
        }
    }

    private static void polynomials(double[] coefficients, double[] at, double[] sums) {
        Arrays.fill(sums, coefficients[0]);
        for (int c = 1; c < coefficients.length; c++) {
            double coefficient = coefficients[c];
            for (int i = 0; i < BLOCK; i++) {
                sums[i] = sums[i] * at[i] + coefficient;
            }
        }
    }

    /** The density of the standard normal at the score. */
    public static double density(double score) {
        return densityOfBell(bell(score));
    }

    /**
     * The density where exp(−score²/2) is known already.
     *
     * @param bell as {@link #bell} gave it for the score
     */
    public static double densityOfBell(double bell) {
        return ONE_OVER_ROOT_TWO_PI * bell;
    }

    /**
     * exp(−score²/2), in two steps, so that the rounding of the square does not cost figures far out; 0 beyond a distance of
     * {@value #FARTHEST}.
     */
    public static double bell(double score) {
        double distance = Math.abs(score);
        if (!(distance <= FARTHEST)) {
            return distance > FARTHEST ? 0 : score;
        }
        int sixteenths = (int) (distance * 16);
        double near = sixteenths / 16.0;
        return SIXTEENTHS[sixteenths] * StrictMath.exp(-0.5 * ((distance - near) * (distance + near)));
    }

    private static double farScore(double rootOfMinusLog) {
        if (rootOfMinusLog <= 5) {
            double r = rootOfMinusLog - 1.6;
            return polynomial(INVERSE_FLANK_TOP, r) / polynomial(INVERSE_FLANK_BOTTOM, r);
        }
        double r = rootOfMinusLog - 5;
        return polynomial(INVERSE_TAIL_TOP, r) / polynomial(INVERSE_TAIL_BOTTOM, r);
    }

    private static double tail(double distance, double bell) {
        if (distance > FARTHEST) {
            return 0;
        }
        double factor;
        if (distance <= ROOT_32) {
            factor = polynomial(FLANK_TOP, distance) / polynomial(FLANK_BOTTOM, distance);
        } else {
            double inverseSquare = 1 / (distance * distance);
            double correction =
                    inverseSquare * polynomial(TAIL_TOP, inverseSquare) / polynomial(TAIL_BOTTOM, inverseSquare);
            factor = (ONE_OVER_ROOT_TWO_PI - correction) / distance;
        }
        return bell * factor;
    }

    /** Coefficients from the highest power down. */
    private static double polynomial(double[] coefficients, double x) {
        double sum = coefficients[0];
        for (int i = 1; i < coefficients.length; i++) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }
}
