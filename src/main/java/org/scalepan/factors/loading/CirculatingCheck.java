package org.scalepan.factors.loading;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scalepan.factors.ClaimBasis;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;

/** Rules of the rows about circulating claims. */
final class CirculatingCheck {
    private final ReadableRows tables;
    private final List<Fault> faults;

    CirculatingCheck(ReadableRows tables, List<Fault> faults) {
        this.tables = tables;
        this.faults = faults;
    }

    /** What a claim says must be whole, and the bases it is said to hold or fail on must be words of the library. */
    void run() {
        for (Row row : tables.rows("claims", "claimed", "times_less_low", "times_less_high")) {
            OptionalDouble low = row.number("times_less_low");
            OptionalDouble high = row.number("times_less_high");
            boolean ratio = row.optional("claimed").filter("times-less"::equals).isPresent();
            if (ratio != low.isPresent() || ratio != high.isPresent()) {
                faults.add(row.fault(
                        "claimed",
                        "the claimed ratio is incomplete",
                        "times-less needs times_less_low and times_less_high, and nothing else has them"));
            } else if (ratio && low.getAsDouble() > high.getAsDouble()) {
                faults.add(row.fault("times_less_low", "times_less_low is above times_less_high", "swap them"));
            }
        }
        Stream.of("holds_on", "fails_on")
                .forEach(column -> tables.rows("claims", column)
                        .forEach(row -> row.list(column).stream()
                                .filter(written -> ClaimBasis.of(written)
                                        .filter(this::isKnown)
                                        .isEmpty())
                                .forEach(written -> faults.add(row.fault(
                                        column,
                                        "unknown basis \"" + written + "\"",
                                        "it must be boundary:per, or boundary:per:product, in words of boundaries.csv,"
                                                + " functional_units.csv and products.csv")))));
    }

    private boolean isKnown(ClaimBasis basis) {
        return has("functional_units", basis.per())
                && basis.reference()
                        .filter(product -> !has("products", product))
                        .isEmpty();
    }

    private boolean has(String table, String id) {
        return !tables.complete(table, "id")
                || tables.rows(table, "id").stream()
                        .anyMatch(row -> row.optional("id").filter(id::equals).isPresent());
    }
}
