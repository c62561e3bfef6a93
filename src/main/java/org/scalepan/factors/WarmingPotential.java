package org.scalepan.factors;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.table.Row;

/** kg CO2e per kg of one gas under one warming set. */
public record WarmingPotential(
        String id,
        String set,
        Gas gas,
        double value,
        OptionalDouble low,
        OptionalDouble high,
        String spread,
        Cited cited,
        Optional<String> note) {
    static WarmingPotential of(Row row) {
        return new WarmingPotential(
                row.text("id"),
                row.text("set"),
                Gas.of(row.text("gas")).orElseThrow(),
                row.number("value").orElseThrow(),
                row.number("low"),
                row.number("high"),
                row.text("spread"),
                Cited.of(row),
                row.optional("note"));
    }
}
