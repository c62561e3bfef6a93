package org.scalepan.uncertainty;

/**
 * The lognormal distribution, for positive quantities whose errors multiply. With geometric mean m and geometric standard
 * deviation g the median is m, the mean m·exp(ln²g/2) and the coefficient of variation √(exp(ln²g) − 1).
 *
 * <p>Source: Limpert, Stahel and Abbt (2001), BioScience 51, 341–352; the identities are elementary.
 *
 * @param mu mean of the natural logarithm, finite
 * @param sigma standard deviation of the natural logarithm, zero or more
 */
public record Lognormal(double mu, double sigma) implements Distribution {
    public Lognormal {
        Require.finite("mu", mu);
        Require.notNegative("sigma", sigma);
    }

    /**
     * The lognormal with the given arithmetic mean and standard deviation.
     *
     * @param mean above zero
     * @param sd zero or more, in the unit of the mean
     */
    public static Lognormal ofMeanAndSd(double mean, double sd) {
        Require.positive("mean", mean);
        Require.notNegative("standard deviation", sd);
        double variation = sd / mean;
        double variance = StrictMath.log1p(variation * variation);
        return new Lognormal(StrictMath.log(mean) - variance / 2, Math.sqrt(variance));
    }

    /**
     * The lognormal with the given median and arithmetic standard deviation: with y = exp(σ²), sd² = median²·y·(y − 1).
     *
     * @param median above zero
     * @param sd zero or more, in the unit of the median
     */
    public static Lognormal ofMedianAndSd(double median, double sd) {
        Require.positive("median", median);
        Require.notNegative("standard deviation", sd);
        double ratio = sd / median;
        // y − 1 = (√(1 + 4r²) − 1)/2, written so that a small r does not cancel.
        double excess = 2 * ratio * ratio / (1 + Math.sqrt(1 + 4 * ratio * ratio));
        return new Lognormal(StrictMath.log(median), Math.sqrt(StrictMath.log1p(excess)));
    }

    /**
     * The lognormal with the given median (its geometric mean) and geometric standard deviation.
     *
     * @param median above zero
     * @param gsd geometric standard deviation (not its square), 1 or more
     */
    public static Lognormal ofMedianAndGsd(double median, double gsd) {
        Require.positive("median", median);
        Require.atLeastOne("geometric standard deviation", gsd);
        return new Lognormal(StrictMath.log(median), StrictMath.log(gsd));
    }

    /**
     * The lognormal through two quantiles.
     *
     * @param p1 probability of the lower quantile, between 0 and 1
     * @param x1 lower quantile, above zero
     * @param p2 probability of the upper quantile, above p1
     * @param x2 upper quantile, at least x1
     */
    public static Lognormal ofQuantiles(double p1, double x1, double p2, double x2) {
        Require.ascending("p1", Require.innerProbability(p1), "p2", Require.innerProbability(p2));
        Require.positive("x1", x1);
        Require.positive("x2", x2);
        if (x2 < x1) {
            throw new IllegalArgumentException("x2 must not be below x1, but x1 is " + x1 + " and x2 is " + x2);
        }
        double z1 = StandardNormal.score(p1);
        double z2 = StandardNormal.score(p2);
        double log1 = StrictMath.log(x1);
        double sigma = (StrictMath.log(x2) - log1) / (z2 - z1);
        return new Lognormal(log1 - sigma * z1, sigma);
    }

    /** The geometric standard deviation, exp(sigma). */
    public double gsd() {
        return StrictMath.exp(sigma);
    }

    @Override
    public double atScore(double score) {
        return StrictMath.exp(sigma == 0 ? mu : mu + sigma * score);
    }

    @Override
    public double lnSd() {
        return sigma;
    }

    @Override
    public double mean() {
        return StrictMath.exp(mu + sigma * sigma / 2);
    }

    @Override
    public void fill(double[] scores, double[] out) {
        Require.noLonger(scores, out);
        for (int i = 0; i < out.length; i++) {
            out[i] = mu + sigma * scores[i];
        }
        Exponentials.replace(out);
    }
}
