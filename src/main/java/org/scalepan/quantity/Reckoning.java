package org.scalepan.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The written course of one calculation: its entries, every step taken with them, and every condition that decided which step came
 * next. What it is written for is {@link #plan}: the same steps for other entries.
 */
public final class Reckoning {
    /** What stands in one place: an entry, a constant or a step. */
    private record Line(
            @Nullable Step step,
            int left,
            int right,
            @Nullable ToDoubleFunction<double[]> formula,
            List<Integer> of) {}

    private record Written(Step step, int left, int right) {}

    private record Required(Condition condition, int left, int right, boolean held) {}

    private final List<Line> lines = new ArrayList<>();
    private final List<Double> values = new ArrayList<>();
    private final List<Integer> entries = new ArrayList<>();
    private final List<Limits> limits = new ArrayList<>();
    private final Map<Double, Integer> constants = new HashMap<>();
    private final Map<Written, Integer> written = new HashMap<>();
    private final Set<Required> required = new LinkedHashSet<>();
    private boolean open = true;

    /**
     * Within which an entry was accepted.
     *
     * @param least the smallest number that is accepted
     * @param most the largest
     */
    public record Limits(double least, double most) {
        boolean allow(double value) {
            return value >= least && value <= most;
        }
    }

    /** A number of the records; entries are counted in the order in which they are made. */
    public Amount entry(double value, Limits within) {
        int place = line(new Line(null, 0, 0, null, List.of()), value);
        entries.add(place);
        limits.add(within);
        return Amount.noted(value, this, place);
    }

    Amount note(Step step, Amount left, Amount right, double value) {
        if (!open) {
            return Amount.of(value);
        }
        Amount same = unchanged(step, left, right);
        return same != null ? same : noted(step, left, right, value);
    }

    /**
     * What a step leaves as it was: a number times one, or nothing plus a number. The latter could take its sign from a zero; conditions
     * do not see that, and a quotient by zero is no result.
     */
    private @Nullable Amount unchanged(Step step, Amount left, Amount right) {
        boolean byOne = (step == Step.TIMES || step == Step.OVER) && !right.isOf(this) && right.known() == 1;
        if (byOne) {
            return left;
        }
        return step == Step.PLUS && !left.isOf(this) && left.known() == 0 ? right : null;
    }

    private Amount noted(Step step, Amount left, Amount right, double value) {
        Written same = new Written(step, placeOf(left), placeOf(right));
        int place = written.computeIfAbsent(
                same, unused -> line(new Line(step, same.left, same.right, null, List.of()), value));
        return Amount.noted(value, this, place);
    }

    Amount note(ToDoubleFunction<double[]> formula, List<Amount> amounts, double value) {
        if (!open) {
            return Amount.of(value);
        }
        List<Integer> of = amounts.stream().map(this::placeOf).toList();
        return Amount.noted(value, this, line(new Line(Step.FORMULA, 0, 0, formula, of), value));
    }

    void require(Condition condition, Amount left, Amount right, boolean held) {
        if (open) {
            required.add(new Required(condition, placeOf(left), placeOf(right), held));
        }
    }

    private int placeOf(Amount amount) {
        if (amount.isOf(this)) {
            return amount.place();
        }
        return constants.computeIfAbsent(amount.known(), value -> line(new Line(null, 0, 0, null, List.of()), value));
    }

    private int line(Line line, double value) {
        lines.add(line);
        values.add(value);
        return lines.size() - 1;
    }

    /**
     * Ends the writing. From here on amounts are plain numbers.
     *
     * @param results what the calculation was done for; steps that lead neither there nor to a condition are left out
     */
    public Plan plan(List<Amount> results) {
        List<Integer> wanted = results.stream().map(this::placeOf).toList();
        open = false;
        boolean[] needed = needed(wanted);
        int[] moved = new int[lines.size()];
        PlanWriter plan = new PlanWriter(limits);
        for (int entry = 0; entry < entries.size(); entry++) {
            moved[entries.get(entry)] = entry;
        }
        Set<Integer> given = new LinkedHashSet<>(entries);
        for (int i = 0; i < moved.length; i++) {
            Step step = lines.get(i).step();
            if (needed[i] && step == null && !given.contains(i)) {
                moved[i] = plan.constant(values.get(i));
            }
        }
        for (int i = 0; i < moved.length; i++) {
            Line line = lines.get(i);
            if (needed[i] && line.step() != null) {
                moved[i] = line.formula() != null
                        ? plan.formula(line.formula(), moved(line.of(), moved))
                        : plan.step(line.step(), moved[line.left()], moved[line.right()]);
            }
        }
        required.forEach(one -> plan.condition(one.condition, moved[one.left], moved[one.right], one.held));
        Plan made = plan.plan(moved(wanted, moved));
        forget();
        return made;
    }

    /** Amounts may live on with what was made of them, and should not keep all this alive. */
    private void forget() {
        lines.clear();
        values.clear();
        written.clear();
        required.clear();
        constants.clear();
    }

    private static int[] moved(List<Integer> places, int[] moved) {
        return places.stream().mapToInt(place -> moved[place]).toArray();
    }

    /** Steps only look back, so one pass from the last to the first finds all that are needed. */
    private boolean[] needed(List<Integer> wanted) {
        boolean[] needed = new boolean[lines.size()];
        wanted.forEach(place -> needed[place] = true);
        required.forEach(one -> {
            needed[one.left] = true;
            needed[one.right] = true;
        });
        for (int i = needed.length - 1; i >= 0; i--) {
            Line line = lines.get(i);
            if (!needed[i] || line.step() == null) {
                continue;
            }
            if (line.formula() == null) {
                needed[line.left()] = true;
                needed[line.right()] = true;
            }
            for (int place : line.of()) {
                needed[place] = true;
            }
        }
        return needed;
    }
}
