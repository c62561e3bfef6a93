package org.scalepan.uncertainty.hierarchy;

import java.util.Arrays;
import org.scalepan.uncertainty.Require;

/**
 * What each of several studies found, with its standard error: y_i ~ N(θ_i, s_i²), where the studies' own true values differ by
 * θ_i ~ N(μ, τ²).
 *
 * <p>Source: DerSimonian and Laird (1986), Control. Clin. Trials 7, 177–188; in the notation of Röver (2020), J. Stat. Softw. 93(6).
 */
public final class StudyEffects {
    /** Beyond these the squares of numbers that meet here leave the doubles; no logarithm of a footprint comes near. */
    static final double MOST = 1e12;

    static final double LEAST = 1e-12;

    private final double[] effects;
    private final double[] variances;
    private final double[] standardErrors;

    /** Sums are taken of distances from here, so that equal effects are exactly equal to their mean, however small their errors. */
    private final double origin;

    private final double meanVariance;

    private StudyEffects(double[] effects, double[] standardErrors) {
        this.effects = effects;
        this.standardErrors = standardErrors;
        this.variances = new double[effects.length];
        double sum = 0;
        for (int i = 0; i < effects.length; i++) {
            variances[i] = standardErrors[i] * standardErrors[i];
            sum += variances[i];
        }
        this.meanVariance = sum / effects.length;
        this.origin = Arrays.stream(effects).min().orElseThrow();
    }

    /**
     * The effects of the studies.
     *
     * @param effects one per study, at least one, within ±10¹²; for a ratio or a footprint its natural logarithm
     * @param standardErrors as many, in the unit of the effects, 10⁻¹² to 10¹²
     * @throws IllegalArgumentException when there are none, unequal numbers, or a value out of range
     */
    public static StudyEffects of(double[] effects, double[] standardErrors) {
        Require.sameLength("effects", effects, "standard errors", standardErrors);
        if (effects.length == 0) {
            throw new IllegalArgumentException("pooling needs at least one study");
        }
        for (int i = 0; i < effects.length; i++) {
            if (!(Math.abs(effects[i]) <= MOST)) {
                throw new IllegalArgumentException("effect " + i + " must be within ±" + MOST + ", not " + effects[i]);
            }
            requireScale("standard error " + i, standardErrors[i]);
        }
        return new StudyEffects(effects.clone(), standardErrors.clone());
    }

    static double requireScale(String name, double value) {
        if (!(value >= LEAST && value <= MOST)) {
            throw new IllegalArgumentException(name + " must be " + LEAST + " to " + MOST + ", not " + value);
        }
        return value;
    }

    /** How many studies: k. */
    public int size() {
        return effects.length;
    }

    /** What a study found: y_i. */
    public double effect(int study) {
        return effects[study];
    }

    /** Its standard error: s_i. */
    public double standardError(int study) {
        return standardErrors[study];
    }

    /** Its square: s_i². */
    double variance(int study) {
        return variances[study];
    }

    /** The mean of the squared standard errors: how precise the next study is taken to be. */
    public double meanVariance() {
        return meanVariance;
    }

    /** All studies but one, in their order. */
    StudyEffects without(int study) {
        return new StudyEffects(omitting(effects, study), omitting(standardErrors, study));
    }

    private static double[] omitting(double[] values, int place) {
        double[] rest = new double[values.length - 1];
        System.arraycopy(values, 0, rest, 0, place);
        System.arraycopy(values, place + 1, rest, place, rest.length - place);
        return rest;
    }

    /**
     * What is known of μ when τ is known: the normal N(mean, standardError²), with mean Σw_i·y_i/Σw and variance 1/Σw.
     *
     * @param mean μ_τ, in the unit of the effects
     * @param standardError 1/√Σw
     */
    public record MeanGivenTau(double mean, double standardError) {}

    /**
     * What is known of μ when τ is known, with a flat prior on μ; w_i = 1/(s_i² + τ²).
     *
     * @param tau standard deviation between studies, zero or more
     */
    public MeanGivenTau given(double tau) {
        double between = tau * tau;
        double weight = weight(between);
        return new MeanGivenTau(origin + distance(between, weight), Math.sqrt(1 / weight));
    }

    /** The share of each study in the mean when τ is known: w_i/Σw, which add up to 1. */
    double[] shares(double tau) {
        double[] shares = new double[effects.length];
        shares(tau, shares);
        return shares;
    }

    /** As {@link #shares(double)}, into an array; returns Σw. */
    double shares(double tau, double[] shares) {
        double between = tau * tau;
        double weight = 0;
        for (int i = 0; i < shares.length; i++) {
            shares[i] = 1 / (variances[i] + between);
            weight += shares[i];
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= weight;
        }
        return weight;
    }

    /**
     * The natural logarithm of the likelihood of τ, μ integrated out under its flat prior, but for a constant:
     * −½·lnΣw + ½·Σln w_i − ½·Σw_i(y_i − μ_τ)².
     */
    double logLikelihood(double tau) {
        double between = tau * tau;
        double weight = weight(between);
        double centre = distance(between, weight);
        double scatter = 0;
        double logs = 0;
        double product = 1;
        for (int i = 0; i < effects.length; i++) {
            double variance = variances[i] + between;
            double deviation = (effects[i] - origin) - centre;
            scatter += deviation * deviation / variance;
            product *= variance;
            // One logarithm for several factors: as many as fit into the range of doubles.
            if (product < 1e-200 || product > 1e200) {
                logs += StrictMath.log(product);
                product = 1;
            }
        }
        return -0.5 * (logs + StrictMath.log(product * weight) + scatter);
    }

    /** The sum of the squared deviations from the unweighted mean. */
    double sumOfSquares() {
        double mean = 0;
        for (double effect : effects) {
            mean += (effect - origin) / effects.length;
        }
        double sum = 0;
        for (double effect : effects) {
            double deviation = (effect - origin) - mean;
            sum += deviation * deviation;
        }
        return sum;
    }

    double leastStandardError() {
        return Arrays.stream(standardErrors).min().orElseThrow();
    }

    private double weight(double between) {
        double weight = 0;
        for (double variance : variances) {
            weight += 1 / (variance + between);
        }
        return weight;
    }

    /** How far μ_τ lies above the origin. */
    private double distance(double between, double weight) {
        double sum = 0;
        for (int i = 0; i < effects.length; i++) {
            sum += (effects[i] - origin) / (variances[i] + between);
        }
        return sum / weight;
    }
}
