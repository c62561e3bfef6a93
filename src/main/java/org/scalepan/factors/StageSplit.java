package org.scalepan.factors;

import java.util.Optional;
import org.scalepan.factors.table.Row;

/**
 * One column of a source's own split of a product's footprint over the stages of its life.
 *
 * @param gwp the warming set of the split, for {@code ghg}
 * @param stage {@code luc} land-use change, {@code farm} feed and farm without it, {@code post-farm} processing to retail
 * @param value kg CO2e (or the indicator's unit) per the source's own unit; only proportions are used
 */
public record StageSplit(
        String id,
        String product,
        String indicator,
        Optional<String> gwp,
        String stage,
        double value,
        Cited cited,
        Optional<String> note) {
    static StageSplit of(Row row) {
        return new StageSplit(
                row.text("id"),
                row.text("product"),
                row.text("indicator"),
                row.optional("gwp"),
                row.text("stage"),
                row.number("value").orElseThrow(),
                Cited.of(row),
                row.optional("note"));
    }
}
