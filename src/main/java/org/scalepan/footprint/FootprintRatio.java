package org.scalepan.footprint;

import java.util.Optional;
import org.scalepan.uncertainty.Probability;
import org.scalepan.uncertainty.Quantiles;
import org.scalepan.uncertainty.Summary;
import org.scalepan.uncertainty.hierarchy.LognormalMixture;
import org.scalepan.uncertainty.hierarchy.NormalMixture;

/**
 * The ratio of two footprints of one question, both above zero. Where a side is pooled its logarithm is normal given the draws of conversions
 * and of the spread between studies, and so is that of the ratio: shares and quantiles are then read from the mean of those normals. Two sides
 * that are known by draws alone are divided draw by draw.
 */
public final class FootprintRatio {
    /** Two standard errors: what a bound that is printed as "at least" stays below its estimate. */
    static final double CAUTION = 2;

    private static final double SCORE_95 = 1.959963984540054;

    private final Optional<LognormalMixture> mixture;
    private final double[] over;
    private final double[] under;

    private FootprintRatio(Optional<LognormalMixture> mixture, double[] over, double[] under) {
        this.mixture = mixture;
        this.over = over;
        this.under = under;
    }

    static FootprintRatio ofLogarithm(NormalMixture logarithm) {
        return new FootprintRatio(Optional.of(LognormalMixture.of(logarithm)), new double[0], new double[0]);
    }

    static FootprintRatio ofDraws(double[] over, double[] under) {
        return new FootprintRatio(Optional.empty(), over, under);
    }

    /**
     * The ratio and its reciprocal, summed up.
     *
     * @param coverage of the intervals, 0.5 to 0.99
     */
    public Summary.OfRatio bothWays(double coverage) {
        return mixture.map(law -> law.bothWays(coverage)).orElseGet(() -> Summary.ofRatio(over, under, coverage));
    }

    /** The share of draws in which the ratio is at least so much. */
    public Probability atLeast(double times) {
        return mixture.map(law -> law.atLeast(times)).orElseGet(() -> Probability.ofAtLeast(divided(), times));
    }

    /** The share of draws in which the first footprint is more than the second; of those in which they are equal half counts. */
    public Probability more() {
        return mixture.map(LognormalMixture::aboveOne).orElseGet(() -> Probability.ofLess(under, over));
    }

    /**
     * A lower bound of the value that the ratio exceeds with a probability: its estimate less two Monte Carlo standard errors, so that more draws
     * do not lower what was printed.
     *
     * @param probability above 0 and below 1
     */
    public double exceeded(double probability) {
        return mixture.map(law -> law.estimatedQuantile(1 - probability).less(CAUTION))
                .orElseGet(() -> cautious(divided(), 1 - probability));
    }

    /**
     * An upper bound of the value that the ratio stays below with a probability: its estimate plus two Monte Carlo standard errors.
     *
     * @param probability above 0 and below 1
     */
    public double notExceeded(double probability) {
        return mixture.map(law -> law.estimatedQuantile(probability).less(-CAUTION))
                .orElseGet(() -> {
                    double[] ratio = divided();
                    double value = Quantiles.of(ratio, probability);
                    return 2 * value - cautious(ratio, probability);
                });
    }

    /** The quantile less two standard errors, by the quantiles that lie one standard error of the share about it. */
    static double cautious(double[] draws, double probability) {
        double reach = SCORE_95 * Math.sqrt(probability * (1 - probability) / draws.length);
        double[] near =
                Quantiles.of(draws, Math.max(0, probability - reach), probability, Math.min(1, probability + reach));
        return near[1] - CAUTION * (near[2] - near[0]) / (2 * SCORE_95);
    }

    private double[] divided() {
        double[] ratio = new double[over.length];
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = over[i] / under[i];
        }
        return ratio;
    }
}
