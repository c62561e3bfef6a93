package org.scalepan.uncertainty;

/**
 * A range with a central value: densest at the mode and falling in a straight line to nothing at both ends.
 *
 * <p>Source: Kotz and van Dorp (2004), Beyond Beta, ch. 1.
 *
 * @param min smallest value, finite
 * @param mode densest value, within min and max
 * @param max largest value, above min
 */
public record Triangular(double min, double mode, double max) implements Distribution {
    public Triangular {
        Require.ascending("min", min, "max", max);
        Require.finite("mode", mode);
        if (mode < min || mode > max) {
            throw new IllegalArgumentException("mode " + mode + " lies outside " + min + " to " + max);
        }
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
        return min / 3 + mode / 3 + max / 3;
    }

    private double atProbability(double p) {
        double width = max - min;
        double below = (mode - min) / width;
        return p <= below
                ? Math.min(mode, min + width * Math.sqrt(p * below))
                : Math.max(mode, max - width * Math.sqrt((1 - p) * (1 - below)));
    }
}
