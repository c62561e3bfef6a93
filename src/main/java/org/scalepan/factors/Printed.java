package org.scalepan.factors;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.scalepan.factors.table.Row;
import org.scalepan.uncertainty.PublishedSpread;
import org.scalepan.uncertainty.SpreadKind;

/** Reads the columns that state a printed number and its spread. */
final class Printed {
    private static final Map<String, Double> PERCENTILES =
            Map.of("p5", 0.05, "p10", 0.10, "p50", 0.50, "p90", 0.90, "p95", 0.95);

    private Printed() {}

    static PublishedSpread spread(Row row) {
        SpreadKind kind = SpreadKind.of(row.text("spread")).orElseThrow();
        SortedMap<Double, Double> percentiles = new TreeMap<>();
        PERCENTILES.forEach(
                (column, probability) -> row.number(column).ifPresent(value -> percentiles.put(probability, value)));
        boolean median = row.optional("statistic").filter("median"::equals).isPresent();
        OptionalDouble value = row.number("value");
        return new PublishedSpread(kind, value, median, row.number("low"), row.number("high"), percentiles);
    }
}
