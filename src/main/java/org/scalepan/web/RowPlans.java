package org.scalepan.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plans that one run has made so far, by the shape of the rows. A shape gets its first plan when it is met for the second time, so
 * that tables in which no two rows are alike pay nothing; it gets more where amounts decide which factors serve, such as the year.
 */
final class RowPlans {
    private static final int MOST_SHAPES = 2000;
    private static final int MOST_PLANS = 400;
    private static final int MOST_OF_A_SHAPE = 40;

    private final Map<RowShape, List<RowPlan>> shapes = new HashMap<>();
    private int plans;
    private double[] places = new double[512];

    /** The plan that serves a row; its results are in {@link #places} until the next row. */
    Optional<RowPlan> serving(RowShape shape, double[] row) {
        List<RowPlan> known = shapes.get(shape);
        if (known == null) {
            return Optional.empty();
        }
        for (int i = 0; i < known.size(); i++) {
            RowPlan plan = known.get(i);
            if (places.length < plan.system().plan().places()) {
                places = new double[plan.system().plan().places()];
            }
            if (plan.serves(row, places)) {
                return Optional.of(plan);
            }
        }
        return Optional.empty();
    }

    double[] places() {
        return places;
    }

    /** Whether a plan should be made of a row that none serves. */
    boolean wants(RowShape shape) {
        List<RowPlan> known = shapes.get(shape);
        if (known == null) {
            if (shapes.size() < MOST_SHAPES) {
                shapes.put(shape.kept(), new ArrayList<>(1));
            }
            return false;
        }
        return plans < MOST_PLANS && known.size() < MOST_OF_A_SHAPE;
    }

    void add(RowShape shape, RowPlan plan) {
        List<RowPlan> known = shapes.get(shape);
        if (known != null) {
            known.add(plan);
            plans++;
        }
    }
}
