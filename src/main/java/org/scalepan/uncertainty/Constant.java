package org.scalepan.uncertainty;

import java.util.Arrays;

/**
 * A quantity taken as exact.
 *
 * @param value finite
 */
public record Constant(double value) implements Distribution {
    public Constant {
        Require.finite("constant", value);
    }

    @Override
    public double atScore(double score) {
        return value;
    }

    @Override
    public double mean() {
        return value;
    }

    @Override
    public void fill(double[] scores, double[] out) {
        Require.noLonger(scores, out);
        Arrays.fill(out, value);
    }
}
