package org.scalepan.uncertainty;

import org.apache.commons.math3.special.Gamma;

/**
 * The beta distribution, for a fraction between 0 and 1 with a published mean and spread.
 *
 * <p>Source: method of moments, Johnson, Kotz and Balakrishnan (1995), Continuous Univariate Distributions 2, ch. 25.
 *
 * @param alpha first shape, above zero
 * @param beta second shape, above zero
 */
public record BetaFraction(double alpha, double beta) implements Distribution {
    public BetaFraction {
        Require.positive("alpha", alpha);
        Require.positive("beta", beta);
    }

    /**
     * The beta distribution with the given mean and standard deviation.
     *
     * @param mean between 0 and 1, both excluded
     * @param sd above zero and below √(mean·(1 − mean)), the spread of a fraction that is only ever 0 or 1
     * @throws IllegalArgumentException when no fraction can have that mean and spread
     */
    public static BetaFraction ofMeanAndSd(double mean, double sd) {
        if (!(mean > 0 && mean < 1)) {
            throw new IllegalArgumentException("the mean of a fraction must be between 0 and 1, not " + mean);
        }
        Require.positive("standard deviation", sd);
        double largest = Math.sqrt(mean * (1 - mean));
        if (sd >= largest) {
            throw new IllegalArgumentException("a fraction with mean " + mean + " must have a standard deviation below "
                    + largest + ", not " + sd);
        }
        double total = mean * (1 - mean) / (sd * sd) - 1;
        return new BetaFraction(mean * total, (1 - mean) * total);
    }

    @Override
    public double atScore(double score) {
        return BetaLogit.fraction(new BetaLogit(alpha, beta).atScore(score));
    }

    /** Closed form: ψ′(α) − ψ′(α + β) is the variance of the logarithm of a beta-distributed fraction (Johnson and others, as above). */
    @Override
    public double lnSd() {
        return Math.sqrt(Gamma.trigamma(alpha) - Gamma.trigamma(alpha + beta));
    }

    @Override
    public double mean() {
        return alpha / (alpha + beta);
    }

    /** Draws from a curve interpolated once through exact quantiles; they agree with {@link #atScore} to parts in 10^8. */
    @Override
    public void fill(double[] scores, double[] out) {
        Require.noLonger(scores, out);
        BetaLogit.Curve curve = new BetaLogit(alpha, beta).curve();
        for (int i = 0; i < out.length; i++) {
            out[i] = BetaLogit.fraction(curve.atScore(scores[i]));
        }
    }
}
