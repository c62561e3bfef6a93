package org.scalepan.uncertainty;

/**
 * The normal distribution, for quantities that may be negative (credits) or whose spread is small.
 *
 * @param mean finite
 * @param sd standard deviation, zero or more
 */
public record Normal(double mean, double sd) implements Distribution {
    public Normal {
        Require.finite("mean", mean);
        Require.notNegative("standard deviation", sd);
    }

    @Override
    public double atScore(double score) {
        return sd == 0 ? mean : mean + sd * score;
    }

    @Override
    public double median() {
        return mean;
    }
}
