package org.scalepan.uncertainty;

/**
 * A fraction with a lognormal spread, truncated at 1: the part of the lognormal above 1 is cut off and the rest weighted up, so
 * the median falls below that of the untruncated lognormal, the more the closer it was to 1.
 *
 * <p>Source: truncation of a distribution, Johnson, Kotz and Balakrishnan (1994), Continuous Univariate Distributions 1, ch. 14.
 *
 * @param untruncated with sigma above zero
 */
public record LognormalBelowOne(Lognormal untruncated) implements Distribution {
    public LognormalBelowOne {
        Require.positive("sigma", untruncated.sigma());
        Require.positive("probability below 1", StandardNormal.probabilityBelow(cut(untruncated)));
    }

    @Override
    public double atScore(double score) {
        return atMost1(untruncated.atScore(below().at(score)));
    }

    @Override
    public double quantile(double probability) {
        return atMost1(untruncated.atScore(below().atProbability(Require.probability(probability))));
    }

    @Override
    public double mean() {
        double below = cut(untruncated);
        return untruncated.mean()
                * StandardNormal.probabilityBelow(below - untruncated.sigma())
                / StandardNormal.probabilityBelow(below);
    }

    @Override
    public void fill(double[] scores, double[] out) {
        Require.noLonger(scores, out);
        below().fill(scores, out);
        untruncated.fill(out, out);
        for (int i = 0; i < out.length; i++) {
            out[i] = atMost1(out[i]);
        }
    }

    private ScoresBelow below() {
        return new ScoresBelow(cut(untruncated));
    }

    /** Rounding must not lift a fraction above 1. */
    private static double atMost1(double value) {
        return Math.min(1, value);
    }

    /** The score of 1. */
    private static double cut(Lognormal lognormal) {
        return -lognormal.mu() / lognormal.sigma();
    }
}
