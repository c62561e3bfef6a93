package org.scalepan.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.scalepan.ask.SystemPlan;

/** A plan for rows of one shape: which amount of the row each entry is, and what is made of the plan once to write its rows. */
final class RowPlan {
    private final SystemPlan system;
    private final int[] amounts;
    private @Nullable CsvPattern pattern;

    /** @param amounts for each entry of the plan the place of its amount in the row */
    RowPlan(SystemPlan system, List<Integer> amounts) {
        this.system = system;
        this.amounts = amounts.stream().mapToInt(place -> place).toArray();
    }

    SystemPlan system() {
        return system;
    }

    /**
     * Does the calculation for a row.
     *
     * @param row the row's amounts by place
     * @param places what the plan works on
     */
    boolean serves(double[] row, double[] places) {
        for (int i = 0; i < amounts.length; i++) {
            places[i] = row[amounts[i]];
        }
        return system.plan().serves(places);
    }

    /** What stands between the numbers in every row of CSV. */
    CsvPattern pattern(Csv.Style style) {
        if (pattern == null) {
            pattern = new CsvPattern(system, style);
        }
        return pattern;
    }
}
