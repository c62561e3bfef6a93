package org.scalepan.uncertainty.hierarchy;

import java.util.function.DoubleUnaryOperator;

/**
 * A density of τ ≥ 0 on a grid of fixed length: integrals over it, and its quantiles.
 *
 * <p>The grid is even in t, where τ = a·sinh t: even steps near nought and even ratios far above a. A density that depends on τ² alone is
 * an even function of t, so that the trapezoidal rule over t from nought, or from where the density is next to nothing, converges faster
 * than any power of the step. With a no larger than the smallest standard error, the likelihood has no feature finer than about 1 in t.
 * The grid covers where the density over t is within e⁻¹⁴ of its largest; that is found by a few coarser grids, each inside the last.
 *
 * <p>For quantiles each step is cut in {@value #CUTS}, where the logarithm of the density comes from the cubic through the four nearest
 * points; it is summed by the rule (h/24)(−g₋₁ + 13g₀ + 13g₁ − g₂), and between the cuts taken as straight.
 *
 * <p>Sources: sinh map and trapezoidal rule, Trefethen and Weideman (2014), SIAM Review 56, 385–458; guide table of the quantiles, Chen and
 * Asau (1974), AIIE Trans. 6, 163–166.
 */
final class TauGrid {
    /** e⁻¹⁴ is less than one in a million: the density that is left out. */
    private static final double DEPTH = 14;

    private static final int COARSE = 24;
    private static final int MOST_PASSES = 12;
    private static final int CUTS = 4;
    private static final int GUIDES = 1024;

    private final double[] taus;
    /** For integrals: they add up to 1. */
    private final double[] weights;

    private final double[] fineTaus;
    /** Over τ, up to a constant. */
    private final double[] fineDensities;
    /** The probability below each fine point: from 0 to 1. */
    private final double[] below;
    /** For a probability of g/GUIDES and above: the first fine step that ends above g/GUIDES. */
    private final int[] guides = new int[GUIDES];

    /**
     * A grid for a density.
     *
     * @param logDensity natural logarithm of the density over τ, but for a constant; a function of τ²
     * @param scale a, above zero
     * @param most above it the density is next to nothing
     * @param intervals number of steps, at least 4
     */
    TauGrid(DoubleUnaryOperator logDensity, double scale, double most, int intervals) {
        Span span = Span.of(logDensity, scale, most);
        double step = (span.high() - span.low()) / intervals;
        taus = new double[intervals + 1];
        double[] logs = new double[intervals + 1];
        double highest = Double.NEGATIVE_INFINITY;
        for (int j = 0; j <= intervals; j++) {
            taus[j] = scale * StrictMath.sinh(span.low() + j * step);
            logs[j] = logDensity.applyAsDouble(taus[j]);
            highest = Math.max(highest, logs[j]);
        }
        fineTaus = new double[intervals * CUTS + 1];
        fineDensities = new double[fineTaus.length];
        double[] overT = new double[fineTaus.length];
        for (int i = 0; i < fineTaus.length; i++) {
            int j = i / CUTS;
            boolean between = i % CUTS > 0;
            fineTaus[i] = between ? scale * StrictMath.sinh(span.low() + i * step / CUTS) : taus[j];
            double log = between ? cubic(logs, j, (double) (i % CUTS) / CUTS) : logs[j];
            fineDensities[i] = StrictMath.exp(log - highest);
            // dτ/dt = a·cosh t = √(a² + τ²)
            overT[i] = fineDensities[i] * Math.sqrt(scale * scale + fineTaus[i] * fineTaus[i]);
        }
        weights = trapezoidal(overT, intervals);
        below = cumulative(overT, span.low() == 0);
        for (int g = 0, i = 0; g < GUIDES; g++) {
            i = stepAt((double) g / GUIDES, i);
            guides[g] = i;
        }
    }

    /** At a share of the way from point j to the next, the cubic through the four nearest points. */
    private static double cubic(double[] values, int j, double share) {
        int first = Math.min(Math.max(j - 1, 0), values.length - 4);
        double x = j - first + share;
        return values[first] * (x - 1) * (x - 2) * (x - 3) / -6
                + values[first + 1] * x * (x - 2) * (x - 3) / 2
                + values[first + 2] * x * (x - 1) * (x - 3) / -2
                + values[first + 3] * x * (x - 1) * (x - 2) / 6;
    }

    private static double[] trapezoidal(double[] overT, int intervals) {
        double[] weights = new double[intervals + 1];
        double sum = 0;
        for (int j = 0; j <= intervals; j++) {
            weights[j] = j == 0 || j == intervals ? overT[j * CUTS] / 2 : overT[j * CUTS];
            sum += weights[j];
        }
        for (int j = 0; j <= intervals; j++) {
            weights[j] /= sum;
        }
        return weights;
    }

    private static double[] cumulative(double[] overT, boolean fromNought) {
        int last = overT.length - 1;
        double[] below = new double[overT.length];
        for (int i = 0; i < last; i++) {
            double before = i > 0 ? overT[i - 1] : fromNought ? overT[1] : 0;
            double after = i + 2 <= last ? overT[i + 2] : 0;
            // Where the density falls off a cliff, the cubic dips below zero.
            below[i + 1] = below[i] + Math.max(0, 13 * (overT[i] + overT[i + 1]) - before - after);
        }
        double sum = below[last];
        for (int i = 1; i <= last; i++) {
            below[i] /= sum;
        }
        return below;
    }

    /** The first step, from a given one on, that ends above the probability; or else the last. */
    private int stepAt(double probability, int from) {
        int i = from;
        while (i < below.length - 2 && below[i + 1] <= probability) {
            i++;
        }
        return i;
    }

    int points() {
        return taus.length;
    }

    double tau(int point) {
        return taus[point];
    }

    double weight(int point) {
        return weights[point];
    }

    /** The quantile, the density taken as straight between fine points. */
    double quantile(double probability) {
        int i = stepAt(probability, guides[Math.min((int) (probability * GUIDES), GUIDES - 1)]);
        double share = (probability - below[i]) / (below[i + 1] - below[i]);
        if (!(share > 0 && share < 1)) {
            return fineTaus[share <= 0 ? i : i + 1];
        }
        double left = fineDensities[i];
        double rise = fineDensities[i + 1] - left;
        double whole = left + fineDensities[i + 1];
        double along = share * whole / (left + Math.sqrt(left * left + share * rise * whole));
        return fineTaus[i] + along * (fineTaus[i + 1] - fineTaus[i]);
    }

    /** The stretch of t that holds nearly all of the density over t. */
    private record Span(double low, double high) {
        static Span of(DoubleUnaryOperator logDensity, double scale, double most) {
            double end = asinh(most / scale);
            Span span = new Span(0, end);
            for (int pass = 0; pass < MOST_PASSES; pass++) {
                Span inner = span.narrowed(logDensity, scale, end);
                boolean settled = inner.high - inner.low > (span.high - span.low) / 2;
                span = inner;
                if (settled) {
                    break;
                }
            }
            return span;
        }

        private Span narrowed(DoubleUnaryOperator logDensity, double scale, double end) {
            double step = (high - low) / COARSE;
            double[] logs = new double[COARSE + 1];
            double highest = Double.NEGATIVE_INFINITY;
            for (int j = 0; j <= COARSE; j++) {
                double tau = scale * StrictMath.sinh(low + j * step);
                logs[j] = logDensity.applyAsDouble(tau) + 0.5 * StrictMath.log(scale * scale + tau * tau);
                highest = Math.max(highest, logs[j]);
            }
            int first = 0;
            while (logs[first] < highest - DEPTH) {
                first++;
            }
            int last = COARSE;
            while (logs[last] < highest - DEPTH) {
                last--;
            }
            // One step more on either side: a peak may stand between two points.
            return new Span(Math.max(0, low + (first - 1) * step), Math.min(end, low + (last + 1) * step));
        }

        private static double asinh(double x) {
            return StrictMath.log(x + Math.sqrt(x * x + 1));
        }
    }
}
