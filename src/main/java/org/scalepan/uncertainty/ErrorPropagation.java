package org.scalepan.uncertainty;

import java.util.function.ToDoubleFunction;

/**
 * Uncertainty without draws: the two rules of greenhouse gas inventories and the law of propagation for any smooth function.
 * The inputs are taken as independent.
 *
 * <p>A relative uncertainty is half the 95 % interval over the value (0.20 for ±20 %). The rules hold where spreads are small
 * (common practice: standard deviation below 0.3 of the mean) and distributions near normal; beyond that, draw.
 *
 * <p>Sources: IPCC 2006 Guidelines, vol. 1, ch. 3, eqs 3.1, 3.2 and 3.3 (the equations from memory); JCGM 100:2008 (GUM), 5.1.2
 * with its note, and H.1.7.
 */
public final class ErrorPropagation {
    private static final double LARGEST_CORRECTED = 2.3;

    private ErrorPropagation() {}

    /**
     * The relative uncertainty of a product, eq. 3.1: √ΣU².
     *
     * @param relativeUncertainties one per factor of the product, zero or more
     * @throws IllegalArgumentException when one is negative or not finite
     */
    public static double product(double... relativeUncertainties) {
        double sum = 0;
        for (double u : relativeUncertainties) {
            Require.notNegative("relative uncertainty", u);
            sum += u * u;
        }
        return Math.sqrt(sum);
    }

    /**
     * The relative uncertainty of a sum, eq. 3.2: √Σ(U·x)² / |Σx|.
     *
     * @param values the terms, finite, not adding up to zero
     * @param relativeUncertainties one per term, zero or more
     * @throws IllegalArgumentException when numbers differ, a value is out of range, or the sum is zero
     */
    public static double sum(double[] values, double[] relativeUncertainties) {
        Require.sameLength("values", values, "relative uncertainties", relativeUncertainties);
        Require.allFinite("value", values);
        double total = 0;
        double squares = 0;
        for (int i = 0; i < values.length; i++) {
            double spread = values[i] * Require.notNegative("relative uncertainty", relativeUncertainties[i]);
            total += values[i];
            squares += spread * spread;
        }
        if (total == 0) {
            throw new IllegalArgumentException("the values add up to zero, which has no relative uncertainty");
        }
        return Math.sqrt(squares) / Math.abs(total);
    }

    /**
     * A large relative uncertainty of a product, corrected for the underestimate of eq. 3.1: U times
     * ((−0.720 + 1.0921·U − 1.63·10⁻³·U² + 1.11·10⁻⁵·U³)/U)² with U in percent. Equation and range from memory.
     *
     * @param relativeUncertainty as {@link #product} gives it, zero to 2.3; at or below 1 nothing is corrected
     * @throws IllegalArgumentException beyond 2.3, where the correction was not fitted
     */
    public static double largeUncertainty(double relativeUncertainty) {
        Require.notNegative("relative uncertainty", relativeUncertainty);
        if (relativeUncertainty <= 1) {
            return relativeUncertainty;
        }
        if (relativeUncertainty > LARGEST_CORRECTED) {
            throw new IllegalArgumentException("the correction holds up to a relative uncertainty of "
                    + LARGEST_CORRECTED + ", not for " + relativeUncertainty);
        }
        double percent = 100 * relativeUncertainty;
        double factor = (-0.720 + percent * (1.0921 + percent * (-1.63e-3 + percent * 1.11e-5))) / percent;
        return relativeUncertainty * factor * factor;
    }

    /**
     * A value with the standard uncertainty its inputs give it.
     *
     * @param value the function at the means of its inputs, finite
     * @param standardUncertainty one standard deviation, zero or more, in the unit of the value
     */
    public record PropagatedError(double value, double standardUncertainty) {
        public PropagatedError {
            Require.finite("value", value);
            Require.notNegative("standard uncertainty", standardUncertainty);
        }

        /**
         * The law of propagation, GUM eq. 10: u² = Σ(∂f/∂xi)²·ui².
         *
         * @param f smooth near the means; called with an array it may keep but must not change
         * @param means of the inputs, finite
         * @param sds standard deviations of the inputs, zero or more
         * @throws IllegalArgumentException when numbers differ, an input is out of range, or f gives no finite value
         */
        public static PropagatedError of(ToDoubleFunction<double[]> f, double[] means, double[] sds) {
            Slopes slopes = new Slopes(f, means, sds);
            return new PropagatedError(slopes.value(), Math.sqrt(slopes.firstOrderVariance()));
        }

        /**
         * The same with the terms of second order, GUM 5.1.2 note:
         * u² + ΣΣ[½(∂²f/∂xi∂xj)² + ∂f/∂xi·∂³f/∂xi∂xj²]·ui²·uj². Own method: differences on the scale of the spreads.
         *
         * @param f smooth over about one standard deviation around the means
         * @param means of the inputs, finite
         * @param sds standard deviations of the inputs, zero or more
         * @throws IllegalArgumentException when numbers differ, an input is out of range, f gives no finite value, or the terms
         *     of second order outweigh the rest, so that the series says nothing
         */
        public static PropagatedError withSecondOrder(ToDoubleFunction<double[]> f, double[] means, double[] sds) {
            Slopes slopes = new Slopes(f, means, sds);
            double variance = slopes.firstOrderVariance() + slopes.secondOrderVariance();
            if (!(variance >= 0)) {
                throw new IllegalArgumentException("the terms of second order make the variance " + variance
                        + "; the spreads are too large for this method");
            }
            return new PropagatedError(slopes.value(), Math.sqrt(variance));
        }
    }

    /** Central differences of a function, each multiplied by the spreads of the inputs it is taken along. */
    private static final class Slopes {
        // Small enough for a straight line, large enough that rounding leaves at least six figures.
        private static final double FIRST_STEP = 1e-3;
        private static final double SECOND_STEP = 1e-2;
        private static final double THIRD_STEP = 0.1;

        private final ToDoubleFunction<double[]> f;
        private final double[] means;
        private final double[] sds;

        Slopes(ToDoubleFunction<double[]> f, double[] means, double[] sds) {
            Require.sameLength("means", means, "standard deviations", sds);
            Require.allFinite("mean", means);
            for (double sd : sds) {
                Require.notNegative("standard deviation", sd);
            }
            this.f = f;
            this.means = means.clone();
            this.sds = sds.clone();
        }

        double value() {
            return at(0, 0, 0, 0);
        }

        double firstOrderVariance() {
            double sum = 0;
            for (int i = 0; i < means.length; i++) {
                double slope = first(i);
                sum += slope * slope;
            }
            return sum;
        }

        double secondOrderVariance() {
            double sum = 0;
            for (int i = 0; i < means.length; i++) {
                double slope = first(i);
                for (int j = 0; j < means.length; j++) {
                    if (sds[i] > 0 && sds[j] > 0) {
                        double mixed = second(i, j);
                        sum += mixed * mixed / 2 + slope * third(i, j);
                    }
                }
            }
            return sum;
        }

        /** ∂f/∂xi · ui. */
        private double first(int i) {
            double h = FIRST_STEP;
            return sds[i] == 0 ? 0 : (at(i, h, i, 0) - at(i, -h, i, 0)) / (2 * h);
        }

        /** ∂²f/∂xi∂xj · ui·uj. */
        private double second(int i, int j) {
            double h = SECOND_STEP;
            return (at(i, h, j, h) - at(i, h, j, -h) - at(i, -h, j, h) + at(i, -h, j, -h)) / (4 * h * h);
        }

        /** ∂³f/∂xi∂xj² · ui·uj²; along one input, the steps add up to the third difference over 2h. */
        private double third(int i, int j) {
            double h = THIRD_STEP;
            double upper = at(i, h, j, h) - 2 * at(i, h, j, 0) + at(i, h, j, -h);
            double lower = at(i, -h, j, h) - 2 * at(i, -h, j, 0) + at(i, -h, j, -h);
            return (upper - lower) / (2 * h * h * h);
        }

        /** The function with two inputs moved by so many of their standard deviations; one input may be moved twice. */
        private double at(int i, double iSteps, int j, double jSteps) {
            double[] x = means.clone();
            if (x.length > 0) {
                x[i] += iSteps * sds[i];
                x[j] += jSteps * sds[j];
            }
            return Require.finite("value of the function", f.applyAsDouble(x));
        }
    }
}
