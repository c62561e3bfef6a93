package org.scalepan.uncertainty;

/**
 * Anything between two limits, each value alike.
 *
 * <p>Source: JCGM 101:2008, 6.4.2.
 *
 * @param low finite
 * @param high finite, above low
 */
public record Uniform(double low, double high) implements Distribution {
    public Uniform {
        Require.ascending("low", low, "high", high);
    }

    @Override
    public double atScore(double score) {
        return atProbability(StandardNormal.probabilityBelow(score));
    }

    @Override
    public double quantile(double probability) {
        return atProbability(Require.probability(probability));
    }

    @Override
    public double mean() {
        return low / 2 + high / 2;
    }

    private double atProbability(double p) {
        return low * (1 - p) + high * p;
    }
}
