package org.scalepan.uncertainty;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * Where a curve crosses zero, searched outwards from a start between two limits. A curve that crosses zero at most once on either side of
 * the start, as a monotone one does, is never missed.
 *
 * <p>Source: Brent (1973), Algorithms for Minimization without Derivatives, ch. 4, as Apache Commons Math has it.
 */
public final class Crossing {
    private static final int MOST_EVALUATIONS = 200;
    private static final double RELATIVE = 1e-14;
    private static final int STEPS_OF_SMALL = 1024;

    private final DoubleUnaryOperator curve;
    private final double least;
    private final double most;

    /**
     * A curve between limits.
     *
     * @param curve finite between the limits
     */
    public Crossing(DoubleUnaryOperator curve, double least, double most) {
        Require.finite("least", least);
        Require.finite("most", most);
        this.curve = curve;
        this.least = least;
        this.most = most;
    }

    /** The crossing nearest to the start, by its distance; empty when the curve has one sign at the start and at both limits. */
    public OptionalDouble nearest(double from) {
        double here = curve.applyAsDouble(from);
        if (here == 0) {
            return OptionalDouble.of(from);
        }
        OptionalDouble above = upwards(from, here);
        OptionalDouble below = downwards(from, here);
        if (above.isEmpty() || below.isEmpty()) {
            return above.isPresent() ? above : below;
        }
        return above.getAsDouble() - from <= from - below.getAsDouble() ? above : below;
    }

    private OptionalDouble upwards(double from, double here) {
        if (from >= most || sameSign(here, curve.applyAsDouble(most))) {
            return OptionalDouble.empty();
        }
        double step = from > 0 ? from / 2 : (most - from) / STEPS_OF_SMALL;
        double inner = from;
        for (double outer = Math.min(most, from + step); ; step *= 4, outer = Math.min(most, from + step)) {
            if (outer == most || !sameSign(here, curve.applyAsDouble(outer))) {
                return solve(inner, outer);
            }
            inner = outer;
        }
    }

    private OptionalDouble downwards(double from, double here) {
        if (from <= least || sameSign(here, curve.applyAsDouble(least))) {
            return OptionalDouble.empty();
        }
        double inner = from;
        for (double left = (from - least) / 2; left > (from - least) * 1e-12; left /= 4) {
            double outer = least + left;
            if (!sameSign(here, curve.applyAsDouble(outer))) {
                return solve(outer, inner);
            }
            inner = outer;
        }
        return solve(least, inner);
    }

    private OptionalDouble solve(double low, double high) {
        try {
            double absolute = Math.max(Double.MIN_NORMAL, RELATIVE * high);
            return OptionalDouble.of(
                    new BrentSolver(RELATIVE, absolute, 0).solve(MOST_EVALUATIONS, curve::applyAsDouble, low, high));
        } catch (TooManyEvaluationsException e) {
            // A jump is bisected down to neighbouring doubles; only a function that is undefined somewhere gets here.
            return OptionalDouble.empty();
        }
    }

    private static boolean sameSign(double one, double other) {
        return one > 0 ? other > 0 : other < 0;
    }
}
