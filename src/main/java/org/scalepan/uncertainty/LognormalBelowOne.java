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
        Require.positive("probability below 1", probabilityBelowOne(untruncated));
    }

    @Override
    public double atScore(double score) {
        return atProbability(StandardNormal.probabilityBelow(score), probabilityBelowOne(untruncated));
    }

    @Override
    public double quantile(double probability) {
        return atProbability(Require.probability(probability), probabilityBelowOne(untruncated));
    }

    @Override
    public double mean() {
        double below = -untruncated.mu() / untruncated.sigma();
        return untruncated.mean()
                * StandardNormal.probabilityBelow(below - untruncated.sigma())
                / StandardNormal.probabilityBelow(below);
    }

    @Override
    public void fill(double[] scores, double[] out) {
        Require.room(scores, out);
        double kept = probabilityBelowOne(untruncated);
        // So far below 1 that nothing is cut off, the scores stay as they are.
        untruncated.fill(kept == 1 ? scores : belowOne(scores, kept, out), out);
        for (int i = 0; i < out.length; i++) {
            out[i] = Math.min(1, out[i]);
        }
    }

    private static double[] belowOne(double[] scores, double kept, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] = StandardNormal.score(StandardNormal.probabilityBelow(scores[i]) * kept);
        }
        return out;
    }

    private double atProbability(double p, double kept) {
        return Math.min(1, untruncated.atScore(StandardNormal.score(p * kept)));
    }

    private static double probabilityBelowOne(Lognormal lognormal) {
        return StandardNormal.probabilityBelow(-lognormal.mu() / lognormal.sigma());
    }
}
