package org.scalepan.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * How much of the variance of a result each of its independent inputs contributes (Sobol indices), from three kinds of sample: one result
 * {@code a}, another {@code b} with every input drawn again, and for each input {@code a} with that input alone out of {@code b}.
 *
 * <p>The first-order share is the part of the variance that would vanish if the input became known; the total share is the part that would
 * remain if everything else became known. They differ where inputs interact.
 *
 * <p>Sources: Sobol' (1993, 2001); estimators of Jansen (1999), Comput. Phys. Commun. 117, 35–43, and Saltelli et al. (2010),
 * Comput. Phys. Commun. 181, 259–270, table 2. Standard errors by the delta method for a ratio of two means, Cochran (1977),
 * Sampling Techniques, 2.11 and 6.3: no further draws, and the same bytes each time.
 *
 * @param mean of the result
 * @param variance of the result, zero or more
 * @param varianceStandardError Monte Carlo standard error of the variance
 * @param shares one for each input, in their order; empty when nothing varies
 */
public record Sobol(double mean, double variance, double varianceStandardError, List<VarianceShare> shares) {
    public Sobol {
        Require.finite("mean", mean);
        Require.notNegative("variance", variance);
        shares = List.copyOf(shares);
    }

    /**
     * The shares of one input. They are estimates: a share near zero may come out slightly below.
     *
     * @param first what the input contributes by itself
     * @param total what it contributes by itself and in interaction with others
     */
    public record VarianceShare(double first, double firstStandardError, double total, double totalStandardError) {}

    /** How the products of the samples are put together. */
    public enum Estimator {
        /** Products: steady for small first-order shares. */
        SALTELLI {
            @Override
            double first(double a, double b, double mixed) {
                return b * (mixed - a);
            }

            @Override
            double total(double a, double b, double mixed) {
                return a * (a - mixed);
            }
        },
        /** Squared differences: steady for total shares, which can then not fall below zero. */
        JANSEN {
            @Override
            double first(double a, double b, double mixed) {
                return (a * a + b * b) / 2 - (b - mixed) * (b - mixed) / 2;
            }

            @Override
            double total(double a, double b, double mixed) {
                return (a - mixed) * (a - mixed) / 2;
            }
        };

        /** One draw's part of the variance that an input contributes by itself; results are given as deviations from their mean. */
        abstract double first(double a, double b, double mixed);

        /** One draw's part of the variance that an input contributes by itself and in interaction with others. */
        abstract double total(double a, double b, double mixed);
    }

    /** First-order shares by {@link Estimator#SALTELLI}, totals by {@link Estimator#JANSEN}: the pair recommended in 2010. */
    public static Sobol of(double[] a, double[] b, int inputs, IntFunction<double[]> mixed) {
        return of(a, b, inputs, mixed, Estimator.SALTELLI, Estimator.JANSEN);
    }

    /**
     * The shares by the estimators asked for.
     *
     * @param a results of the first sample, at least two, finite
     * @param b results of the second, equally many
     * @param mixed for the number of an input: the results of the first sample with that input out of the second; called once for each
     *     input
     * @throws IllegalArgumentException when samples differ in length, are too short or not finite
     */
    public static Sobol of(
            double[] a,
            double[] b,
            int inputs,
            IntFunction<double[]> mixed,
            Estimator firstOrder,
            Estimator totalOrder) {
        Require.sameLength("results of a", a, "results of b", b);
        if (a.length < 2) {
            throw new IllegalArgumentException("shares of a variance need at least two draws, not " + a.length);
        }
        Require.allFinite("result of a", a);
        Require.allFinite("result of b", b);
        double mean = (mean(a) + mean(b)) / 2;
        double[] fromMeanA = from(mean, a);
        double[] fromMeanB = from(mean, b);
        double[] spread = new double[a.length];
        for (int i = 0; i < spread.length; i++) {
            spread[i] = (fromMeanA[i] * fromMeanA[i] + fromMeanB[i] * fromMeanB[i]) / 2;
        }
        double variance = mean(spread);
        // The rounding error of equal results is not variance.
        if (Math.sqrt(variance) <= 1e-12 * Math.abs(mean)) {
            return new Sobol(mean, 0, 0, List.of());
        }
        List<VarianceShare> shares = new ArrayList<>();
        for (int input = 0; input < inputs; input++) {
            double[] other = mixed.apply(input);
            Require.sameLength("results of a", a, "mixed results", other);
            Require.allFinite("mixed result", other);
            double[] fromMean = from(mean, other);
            double[] first = new double[a.length];
            double[] total = new double[a.length];
            for (int i = 0; i < a.length; i++) {
                first[i] = firstOrder.first(fromMeanA[i], fromMeanB[i], fromMean[i]);
                total[i] = totalOrder.total(fromMeanA[i], fromMeanB[i], fromMean[i]);
            }
            double s = mean(first) / variance;
            double t = mean(total) / variance;
            shares.add(new VarianceShare(
                    s, standardError(first, s, spread, variance), t, standardError(total, t, spread, variance)));
        }
        return new Sobol(mean, variance, standardError(spread, variance, ones(a.length), 1), shares);
    }

    /** Of a ratio of means: the scatter of the residuals of the numerator draws about the ratio times the denominator draws. */
    private static double standardError(double[] upper, double ratio, double[] lower, double meanOfLower) {
        double sum = 0;
        for (int i = 0; i < upper.length; i++) {
            double left = upper[i] - ratio * lower[i];
            sum += left * left;
        }
        return Math.sqrt(sum / (upper.length - 1.0) / upper.length) / meanOfLower;
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        java.util.Arrays.fill(ones, 1);
        return ones;
    }

    private static double[] from(double mean, double[] values) {
        double[] from = new double[values.length];
        for (int i = 0; i < from.length; i++) {
            from[i] = values[i] - mean;
        }
        return from;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
