package org.scalepan.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Lays a reckoning out on arrays: entries first, then constants, then one place for each step. It lives no longer than that. */
final class PlanWriter {
    private final List<Reckoning.Limits> limits;
    private final List<Double> constants = new ArrayList<>();
    private final List<Plan.Line> lines = new ArrayList<>();
    private final List<ToDoubleFunction<double[]>> formulas = new ArrayList<>();
    private final List<int[]> operands = new ArrayList<>();
    private final List<Plan.Guard> guards = new ArrayList<>();

    PlanWriter(List<Reckoning.Limits> limits) {
        this.limits = List.copyOf(limits);
    }

    int constant(double value) {
        constants.add(value);
        return limits.size() + constants.size() - 1;
    }

    int step(Step step, int left, int right) {
        return line(new Plan.Line(step, left, right));
    }

    int formula(ToDoubleFunction<double[]> formula, int[] of) {
        formulas.add(formula);
        operands.add(of);
        return line(new Plan.Line(Step.FORMULA, formulas.size() - 1, 0));
    }

    private int line(Plan.Line line) {
        lines.add(line);
        return limits.size() + constants.size() + lines.size() - 1;
    }

    void condition(Condition condition, int left, int right, boolean held) {
        guards.add(new Plan.Guard(condition, left, right, held));
    }

    Plan plan(int[] results) {
        return new Plan(
                limits,
                constants.stream().mapToDouble(value -> value).toArray(),
                lines,
                new Plan.Formulas(formulas, operands),
                guards,
                results);
    }
}
