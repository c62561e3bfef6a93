package org.scalepan.factors.loading;

import java.util.List;
import java.util.Set;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;

/**
 * Numbers that must be above zero: footprints, feed per kilogram, ratios of two of these, warming potentials and factors of units. A
 * saving is never a row of its own, because it depends on what it is compared with.
 */
final class SignCheck {
    /** Spreads about the mean may reach below zero in print, where the standard deviation is large. */
    private static final Set<String> MAY_BEGIN_BELOW_ZERO = Set.of("sd", "se");

    private static final List<String> ABOVE_ZERO =
            List.of("results", "feed_conversion", "paired_ratios", "warming_potentials");

    private static final List<String> PERCENTILES = List.of("p5", "p10", "p50", "p90", "p95");

    private final ReadableRows tables;
    private final List<Fault> faults;

    SignCheck(ReadableRows tables, List<Fault> faults) {
        this.tables = tables;
        this.faults = faults;
    }

    void run() {
        for (String table : ABOVE_ZERO) {
            tables.rows(table, "value", "low", "high", "spread").forEach(this::aboveZero);
        }
        for (Row row : tables.rows("composition", "value", "low", "high", "spread")) {
            List.of("value", "high").forEach(column -> notBelow(row, column, "a content"));
            if (!mayBeginBelow(row)) {
                notBelow(row, "low", "a content");
            }
        }
        for (Row row : tables.rows("units", "factor")) {
            above(row, "factor", "a unit");
        }
    }

    private void aboveZero(Row row) {
        above(row, "value", "a footprint or ratio");
        above(row, "high", "a footprint or ratio");
        if (!mayBeginBelow(row)) {
            above(row, "low", "a footprint or ratio");
        }
        // Their own rule checks that percentiles are above zero where the spread is of percentiles; elsewhere they must
        // be empty.
        if (!row.optional("spread").filter("percentiles"::equals).isPresent()) {
            PERCENTILES.stream()
                    .filter(column -> row.optional(column).isPresent())
                    .forEach(column -> faults.add(row.fault(
                            column,
                            column + " without spread percentiles",
                            "write percentiles in spread, or leave the cell empty")));
        }
    }

    private static boolean mayBeginBelow(Row row) {
        return row.optional("spread").filter(MAY_BEGIN_BELOW_ZERO::contains).isPresent();
    }

    private void above(Row row, String column, String what) {
        row.number(column).ifPresent(number -> {
            if (number <= 0) {
                faults.add(row.fault(column, column + " is " + row.text(column), what + " must be above zero"));
            }
        });
    }

    private void notBelow(Row row, String column, String what) {
        row.number(column).ifPresent(number -> {
            if (number < 0) {
                faults.add(row.fault(column, column + " is " + row.text(column), what + " must not be below zero"));
            }
        });
    }
}
