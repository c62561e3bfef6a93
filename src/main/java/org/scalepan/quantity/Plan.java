package org.scalepan.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A calculation laid out to be done again with other entries: each step in its order, on one array of numbers. It serves entries that
 * lie within the limits and answer every condition as those did from which it was written; for these it gives the same bits.
 */
public final class Plan {
    /* Numbers for the kinds of steps: walking over these costs far less than over objects. */
    static final int PLUS = 0;
    static final int MINUS = 1;
    static final int TIMES = 2;
    static final int OVER = 3;
    static final int GREATER = 4;
    static final int ROOT = 5;
    static final int EXPONENTIAL = 6;
    static final int FORMULA = 7;

    private final double[] least;
    private final double[] most;
    private final double[] constants;
    private final byte[] kinds;

    private final int[] left;
    private final int[] right;
    private final Formulas formulas;
    private final boolean[] equal;
    private final boolean[] held;
    private final int[] guardLeft;
    private final int[] guardRight;
    private final int[] results;

    /** A step and the places that it looks at; a formula is counted on the left. */
    record Line(Step step, int left, int right) {}

    /** A condition and how it was answered. */
    record Guard(Condition condition, int left, int right, boolean held) {}

    /** Functions of several amounts, and the places of those. */
    record Formulas(List<ToDoubleFunction<double[]>> functions, List<int[]> operands) {
        Formulas {
            functions = List.copyOf(functions);
            operands = List.copyOf(operands);
        }

        double of(int number, double[] places) {
            int[] of = operands.get(number);
            double[] values = new double[of.length];
            for (int i = 0; i < of.length; i++) {
                values[i] = places[of[i]];
            }
            return functions.get(number).applyAsDouble(values);
        }
    }

    Plan(
            List<Reckoning.Limits> limits,
            double[] constants,
            List<Line> lines,
            Formulas formulas,
            List<Guard> guards,
            int[] results) {
        this.least = limits.stream().mapToDouble(Reckoning.Limits::least).toArray();
        this.most = limits.stream().mapToDouble(Reckoning.Limits::most).toArray();
        this.constants = constants;
        this.kinds = new byte[lines.size()];
        for (int i = 0; i < kinds.length; i++) {
            kinds[i] = lines.get(i).step().code();
        }
        this.left = lines.stream().mapToInt(Line::left).toArray();
        this.right = lines.stream().mapToInt(Line::right).toArray();
        this.formulas = formulas;
        this.equal = new boolean[guards.size()];
        this.held = new boolean[guards.size()];
        for (int i = 0; i < held.length; i++) {
            equal[i] = guards.get(i).condition() == Condition.SAME;
            held[i] = guards.get(i).held();
        }
        this.guardLeft = guards.stream().mapToInt(Guard::left).toArray();
        this.guardRight = guards.stream().mapToInt(Guard::right).toArray();
        this.results = results;
    }

    /** How many numbers it starts from. */
    public int entries() {
        return least.length;
    }

    /** How many numbers the array needs that it works on. */
    public int places() {
        return least.length + constants.length + kinds.length;
    }

    /**
     * Does the calculation.
     *
     * @param places the entries, in front of as many further places as {@link #places} asks for
     * @return whether it serves these entries; if not, nothing can be said from it
     */
    public boolean serves(double[] places) {
        for (int i = 0; i < least.length; i++) {
            if (!(places[i] >= least[i] && places[i] <= most[i])) {
                return false;
            }
        }
        System.arraycopy(constants, 0, places, least.length, constants.length);
        work(places);
        for (int i = 0; i < held.length; i++) {
            double one = places[guardLeft[i]];
            double other = places[guardRight[i]];
            if ((equal[i] ? one == other : one < other) != held[i]) {
                return false;
            }
        }
        for (int result : results) {
            if (!Double.isFinite(places[result])) {
                return false;
            }
        }
        return true;
    }

    private void work(double[] places) {
        int to = least.length + constants.length;
        for (int i = 0; i < kinds.length; i++) {
            places[to++] = switch (kinds[i]) {
                case PLUS -> places[left[i]] + places[right[i]];
                case MINUS -> places[left[i]] - places[right[i]];
                case TIMES -> places[left[i]] * places[right[i]];
                case OVER -> places[left[i]] / places[right[i]];
                case FORMULA -> formulas.of(left[i], places);
                case GREATER -> Step.GREATER.of(places[left[i]], places[right[i]]);
                case ROOT -> Math.sqrt(places[left[i]]);
                case EXPONENTIAL -> Step.EXPONENTIAL.of(places[left[i]], 0);
                default -> throw new IllegalStateException("no step has the number " + kinds[i]);
            };
        }
    }

    /** A result of the last calculation on these places; results are counted as they were asked for. */
    public double result(double[] places, int number) {
        return places[results[number]];
    }

    @Override
    public String toString() {
        return kinds.length + " steps from " + least.length + " entries under " + held.length + " conditions, "
                + Arrays.stream(results).distinct().count() + " results";
    }
}
