package org.scalepan.uncertainty;

/**
 * A quantity times an exact positive factor, for instance in another unit.
 *
 * @param of the quantity before scaling
 * @param factor above zero
 */
public record Scaled(Distribution of, double factor) implements Distribution {
    public Scaled {
        Require.positive("factor", factor);
    }

    @Override
    public double atScore(double score) {
        return factor * of.atScore(score);
    }

    @Override
    public double quantile(double probability) {
        return factor * of.quantile(probability);
    }

    @Override
    public double mean() {
        return factor * of.mean();
    }

    @Override
    public void fill(double[] scores, double[] out) {
        of.fill(scores, out);
        for (int i = 0; i < out.length; i++) {
            out[i] *= factor;
        }
    }
}
