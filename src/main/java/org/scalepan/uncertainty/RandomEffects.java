package org.scalepan.uncertainty;

import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Pools the effects of several studies, allowing that each study measured an effect of its own.
 *
 * <p>Sources: DerSimonian and Laird (1986), Control. Clin. Trials 7, 177–188; I²: Higgins and Thompson (2002), Stat. Med. 21,
 * 1539–1558; interval on t: Hartung and Knapp (2001), Stat. Med. 20, 3875–3889, without a floor on its width; the same with their
 * factor q no smaller than 1: Röver, Knapp and Friede (2015), BMC Med. Res. Methodol. 15, 99; prediction interval: Higgins, Thompson and
 * Spiegelhalter (2009), J. R. Stat. Soc. A 172, 137–159.
 */
public final class RandomEffects {
    private static final double UPPER = 0.975;

    private RandomEffects() {}

    /**
     * The pooled effect; all intervals 95 %, all in the unit of the effects (for a ratio: its natural logarithm).
     *
     * @param studies number of studies, k
     * @param fixed mean weighted by the inverse variances alone
     * @param fixedStandardError its standard error
     * @param fixedLow lower limit on the normal distribution
     * @param fixedHigh upper limit on the normal distribution
     * @param q Cochran's heterogeneity statistic, k − 1 degrees of freedom
     * @param tau2 variance between studies, zero or more
     * @param i2 share of the variation that lies between studies, 0 to 1
     * @param mean mean over the studies' own effects
     * @param standardError its standard error
     * @param low lower limit of the mean on the normal distribution
     * @param high upper limit of the mean on the normal distribution
     * @param hartungKnappStandardError standard error from the observed scatter
     * @param hartungKnappLow lower limit of the mean on t with k − 1 degrees of freedom
     * @param hartungKnappHigh upper limit of the mean on t with k − 1 degrees of freedom
     * @param flooredStandardError the same, but with the scatter never counted smaller than the studies' own errors explain: standardError
     *     times √max(1, q), where q is the scatter of the weighted effects over k − 1
     * @param flooredLow lower limit of the mean with it, on t with k − 1 degrees of freedom
     * @param flooredHigh upper limit of the mean with it, on t with k − 1 degrees of freedom
     * @param predictionLow lower limit for the effect of a further study, t with k − 2 degrees of freedom; empty below three studies
     * @param predictionHigh upper limit for the effect of a further study; empty below three studies
     */
    public record Pooled(
            int studies,
            double fixed,
            double fixedStandardError,
            double fixedLow,
            double fixedHigh,
            double q,
            double tau2,
            double i2,
            double mean,
            double standardError,
            double low,
            double high,
            double hartungKnappStandardError,
            double hartungKnappLow,
            double hartungKnappHigh,
            double flooredStandardError,
            double flooredLow,
            double flooredHigh,
            OptionalDouble predictionLow,
            OptionalDouble predictionHigh) {}

    /**
     * Pools the studies.
     *
     * @param effects one per study, at least two, finite
     * @param variances the squared standard errors of the effects, above zero
     * @throws IllegalArgumentException when there are fewer than two studies, unequal numbers, or a value out of range
     */
    public static Pooled pool(double[] effects, double[] variances) {
        Require.sameLength("effects", effects, "variances", variances);
        int k = effects.length;
        if (k < 2) {
            throw new IllegalArgumentException("pooling needs at least two studies, not " + k);
        }
        Require.allFinite("effect", effects);
        for (double variance : variances) {
            Require.positive("variance", variance);
        }

        Weighted fixed = Weighted.of(effects, variances, 0);
        double q = fixed.scatter();
        double tau2 = Math.max(0, (q - (k - 1)) / fixed.spareWeight());
        double i2 = q > 0 ? Math.max(0, (q - (k - 1)) / q) : 0;
        Weighted random = Weighted.of(effects, variances, tau2);

        double z = StandardNormal.score(UPPER);
        double t = studentT(k - 1);
        double scatterError = Math.sqrt(random.scatter() / ((k - 1) * random.weight()));
        double flooredError = random.standardError() * Math.sqrt(Math.max(1, random.scatter() / (k - 1)));
        OptionalDouble reach = k < 3
                ? OptionalDouble.empty()
                : OptionalDouble.of(studentT(k - 2) * Math.sqrt(tau2 + 1 / random.weight()));
        return new Pooled(
                k,
                fixed.mean(),
                fixed.standardError(),
                fixed.mean() - z * fixed.standardError(),
                fixed.mean() + z * fixed.standardError(),
                q,
                tau2,
                i2,
                random.mean(),
                random.standardError(),
                random.mean() - z * random.standardError(),
                random.mean() + z * random.standardError(),
                scatterError,
                random.mean() - t * scatterError,
                random.mean() + t * scatterError,
                flooredError,
                random.mean() - t * flooredError,
                random.mean() + t * flooredError,
                reach.isPresent() ? OptionalDouble.of(random.mean() - reach.getAsDouble()) : reach,
                reach.isPresent() ? OptionalDouble.of(random.mean() + reach.getAsDouble()) : reach);
    }

    private static double studentT(int degreesOfFreedom) {
        return new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability(UPPER);
    }

    /** One weighting of the studies: by 1/(v + τ²). */
    private record Weighted(double weight, double spareWeight, double mean, double scatter) {
        static Weighted of(double[] effects, double[] variances, double tau2) {
            double weight = 0;
            double squares = 0;
            double sum = 0;
            for (int i = 0; i < effects.length; i++) {
                double w = 1 / (variances[i] + tau2);
                weight += w;
                squares += w * w;
                sum += w * effects[i];
            }
            double mean = sum / weight;
            double scatter = 0;
            for (int i = 0; i < effects.length; i++) {
                double deviation = effects[i] - mean;
                scatter += deviation * deviation / (variances[i] + tau2);
            }
            return new Weighted(weight, weight - squares / weight, mean, scatter);
        }

        double standardError() {
            return Math.sqrt(1 / weight);
        }
    }
}
