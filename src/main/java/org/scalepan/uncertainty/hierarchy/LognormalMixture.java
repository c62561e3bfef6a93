package org.scalepan.uncertainty.hierarchy;

import org.scalepan.uncertainty.Probability;
import org.scalepan.uncertainty.Summary;

/**
 * A positive quantity whose natural logarithm is a mixture of normals with one component for each draw of what is given: a pooled footprint
 * given τ and its conversions, or a ratio with one. Shares and quantiles are read from the distribution function and not from draws, which
 * leaves only the noise of what is given.
 *
 * <p>Sources: averaging conditional distributions, Gelfand and Smith (1990), J. Am. Stat. Assoc. 85, 398–409; standard error of a quantile from
 * that of the share below it over the density, David and Nagaraja (2003), Order Statistics, 7.1.
 */
public final class LognormalMixture {
    private final NormalMixture logarithm;

    private LognormalMixture(NormalMixture logarithm) {
        this.logarithm = logarithm;
    }

    /**
     * A quantity by its logarithm.
     *
     * @param logarithm natural logarithm of the quantity, a component for each draw
     */
    public static LognormalMixture of(NormalMixture logarithm) {
        return new LognormalMixture(logarithm);
    }

    /**
     * The value not exceeded with the given probability.
     *
     * @param probability above 0 and below 1
     * @throws IllegalArgumentException when the probability is not between 0 and 1, or NaN
     */
    public double quantile(double probability) {
        return StrictMath.exp(logarithm.quantile(probability));
    }

    /** The same with its Monte Carlo standard error, in its unit. */
    public NormalMixture.Estimated estimatedQuantile(double probability) {
        double log = logarithm.quantile(probability);
        double value = StrictMath.exp(log);
        return new NormalMixture.Estimated(value, value * logarithm.standardErrorAt(log));
    }

    /**
     * The share at or above a value, 0 to 1; of what stands exactly there half counts.
     *
     * @param value finite
     */
    public Probability atLeast(double value) {
        return value > 0 ? logarithm.above(StrictMath.log(value)) : new Probability(1, 0);
    }

    /** The share above 1; of what stands exactly there half counts. */
    public Probability aboveOne() {
        return logarithm.aboveFromHalf(0);
    }

    /**
     * Mean, median and equal-tailed interval, of the quantity and of its reciprocal.
     *
     * @param coverage of the intervals, 0.5 to 0.99
     */
    public Summary.OfRatio bothWays(double coverage) {
        double tail = (1 - coverage) / 2;
        double[] logs = {logarithm.quantile(tail), logarithm.quantile(0.5), logarithm.quantile(1 - tail)};
        double error = logarithm.standardErrorAt(logs[1]);
        return new Summary.OfRatio(
                summary(logs[0], logs[1], logs[2], error, logarithm.meanOfExponential(1), coverage),
                summary(-logs[2], -logs[1], -logs[0], error, logarithm.meanOfExponential(-1), coverage));
    }

    /**
     * Mean, median and equal-tailed interval.
     *
     * @param coverage of the interval, 0.5 to 0.99
     */
    public Summary summary(double coverage) {
        double tail = (1 - coverage) / 2;
        double median = logarithm.quantile(0.5);
        return summary(
                logarithm.quantile(tail),
                median,
                logarithm.quantile(1 - tail),
                logarithm.standardErrorAt(median),
                logarithm.meanOfExponential(1),
                coverage);
    }

    private Summary summary(
            double low, double median, double high, double error, NormalMixture.Estimated mean, double coverage) {
        double middle = StrictMath.exp(median);
        return new Summary(
                mean.value(),
                middle,
                StrictMath.exp(low),
                StrictMath.exp(high),
                coverage,
                logarithm.components(),
                middle * error,
                mean.standardError());
    }
}
