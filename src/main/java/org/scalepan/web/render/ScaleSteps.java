package org.scalepan.web.render;

import java.util.ArrayList;
import java.util.List;

/** The numbers 1, 2 and 5 times powers of ten, at which a logarithmic scale begins, is divided and ends. */
final class ScaleSteps {
    private static final List<Integer> PARTS = List.of(1, 2, 5);

    private ScaleSteps() {}

    /** The highest step that is not above a number. */
    static double below(double value) {
        double decade = decade(value);
        double below = decade;
        for (int part : PARTS) {
            below = decade * part <= value ? decade * part : below;
        }
        return below;
    }

    /** The lowest step that is not below a number. */
    static double above(double value) {
        double decade = decade(value);
        return PARTS.stream()
                .map(part -> decade * part)
                .filter(step -> step >= value)
                .findFirst()
                .orElse(10 * decade);
    }

    /** The steps from one to another, both included. */
    static List<Double> between(double low, double high) {
        List<Double> steps = new ArrayList<>();
        for (double step = low; step <= high * 1.001; step = above(step * 1.001)) {
            steps.add(step);
        }
        return steps;
    }

    private static double decade(double value) {
        return Math.pow(10, Math.floor(Math.log10(value)));
    }
}
