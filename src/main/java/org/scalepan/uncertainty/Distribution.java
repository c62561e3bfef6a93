package org.scalepan.uncertainty;

/**
 * What is known of one uncertain quantity, as a quantile function. Every draw is the quantile at a standard normal score, so that two
 * quantities that share scores rise and fall together and a quantity used twice is drawn once.
 *
 * <p>All results are the same bits on every JVM: exponentials and logarithms come from {@link StrictMath}, because the
 * intrinsics behind {@link Math} may differ in the last bit, and the same question must give the same bytes.
 *
 * <p>Source: inverse transformation, JCGM 101:2008 (GUM Supplement 1), 6.4 and annex C.
 */
public sealed interface Distribution
        permits Constant,
                Normal,
                SplitNormal,
                Lognormal,
                Uniform,
                Triangular,
                LogUniform,
                BetaFraction,
                PercentileCurve,
                Scaled,
                LognormalBelowOne,
                CappedFraction {

    /**
     * The value at a standard normal score: the quantile at the probability that a standard normal lies below the score.
     * Never falls as the score rises. NaN gives NaN.
     */
    double atScore(double score);

    /**
     * The value not exceeded with the given probability.
     *
     * @param probability within 0 and 1; at 0 and 1 the ends of the distribution, which may be infinite
     * @throws IllegalArgumentException when the probability is outside 0 and 1, or NaN
     */
    default double quantile(double probability) {
        return atScore(StandardNormal.score(probability));
    }

    /** The expected value, in the unit of the quantity. */
    double mean();

    /**
     * Spread on the logarithmic scale: the standard deviation of its natural logarithm where that is known in closed form,
     * otherwise half the distance of the logarithms of the quantiles one standard deviation about the middle; 0 where the lower of these
     * is not above zero.
     */
    default double lnSd() {
        double low = atScore(-1);
        double high = atScore(1);
        return low > 0 ? (StrictMath.log(high) - StrictMath.log(low)) / 2 : 0;
    }

    /** The value that is as likely exceeded as not. */
    default double median() {
        return quantile(0.5);
    }

    /**
     * Draws: out[i] is the value at scores[i], and depends on nothing else. The two arrays may be one.
     *
     * @param scores standard normal draws, at least as many as out is long
     * @throws IllegalArgumentException when there are fewer scores than draws asked for
     */
    default void fill(double[] scores, double[] out) {
        Require.noLonger(scores, out);
        for (int i = 0; i < out.length; i++) {
            out[i] = atScore(scores[i]);
        }
    }
}
