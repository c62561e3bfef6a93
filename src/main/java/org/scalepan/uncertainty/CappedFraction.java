package org.scalepan.uncertainty;

/**
 * A fraction whose spread was read without regard to its bounds: draws below 0 count as 0, draws above 1 as 1.
 *
 * @param uncapped as read from the published spread
 */
public record CappedFraction(Distribution uncapped) implements Distribution {
    private static final double FARTHEST_SCORE = 9;
    private static final int STEPS = 36_000;

    @Override
    public double atScore(double score) {
        return capped(uncapped.atScore(score));
    }

    @Override
    public double quantile(double probability) {
        return capped(uncapped.quantile(probability));
    }

    /** The mean of the capped draws, by the trapezium rule over the normal score; good to about one part in a million. */
    @Override
    public double mean() {
        double step = 2 * FARTHEST_SCORE / STEPS;
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double score = -FARTHEST_SCORE + i * step;
            sum += atScore(score) * StandardNormal.density(score);
        }
        return sum * step;
    }

    @Override
    public void fill(double[] scores, double[] out) {
        uncapped.fill(scores, out);
        for (int i = 0; i < out.length; i++) {
            out[i] = capped(out[i]);
        }
    }

    private static double capped(double value) {
        return Math.min(1, Math.max(0, value));
    }
}
