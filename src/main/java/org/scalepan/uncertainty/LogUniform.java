package org.scalepan.uncertainty;

/**
 * A positive range with no central value: each doubling alike.
 *
 * <p>Source: the reciprocal distribution of Hamming (1970), Bell Syst. Tech. J. 49, 1609–1625.
 *
 * @param low above zero
 * @param high finite, above low
 */
public record LogUniform(double low, double high) implements Distribution {
    public LogUniform {
        Require.positive("low", low);
        Require.ascending("low", low, "high", high);
    }

    @Override
    public double atScore(double score) {
        return atProbability(StandardNormal.probabilityBelow(score), logWidth());
    }

    @Override
    public double quantile(double probability) {
        return atProbability(Require.probability(probability), logWidth());
    }

    @Override
    public double mean() {
        return (high - low) / logWidth();
    }

    @Override
    public void fill(double[] scores, double[] out) {
        Require.noLonger(scores, out);
        double logWidth = logWidth();
        for (int i = 0; i < out.length; i++) {
            out[i] = StandardNormal.probabilityBelow(scores[i]) * logWidth;
        }
        Exponentials.replace(out);
        for (int i = 0; i < out.length; i++) {
            out[i] = Math.min(high, low * out[i]);
        }
    }

    private double logWidth() {
        return StrictMath.log(high / low);
    }

    private double atProbability(double p, double logWidth) {
        return Math.min(high, low * StrictMath.exp(p * logWidth));
    }
}
