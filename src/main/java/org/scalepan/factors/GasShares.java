package org.scalepan.factors;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.scalepan.factors.table.Row;

/**
 * The shares of the gases in a product's CO2e, as published or as fixed by two published totals.
 *
 * @param gwp warming set under which the shares hold
 * @param known shares by gas; a gas that is absent here is not known, and what the known shares leave of 1 belongs to the
 *     absent gases together
 */
public record GasShares(
        String id,
        String product,
        Boundary boundary,
        String gwp,
        Map<Gas, Double> known,
        Cited cited,
        Optional<String> note) {
    public GasShares {
        // In the order of the gases, because sums over the shares must give the same bits in every run.
        Map<Gas, Double> ordered = new EnumMap<>(Gas.class);
        ordered.putAll(known);
        known = Collections.unmodifiableMap(ordered);
    }

    static GasShares of(Row row) {
        Map<Gas, Double> known = new EnumMap<>(Gas.class);
        row.number("co2").ifPresent(share -> known.put(Gas.CO2, share));
        row.number("ch4_biogenic").ifPresent(share -> known.put(Gas.CH4_BIOGENIC, share));
        row.number("ch4_fossil").ifPresent(share -> known.put(Gas.CH4_FOSSIL, share));
        row.number("n2o").ifPresent(share -> known.put(Gas.N2O, share));
        return new GasShares(
                row.text("id"),
                row.text("product"),
                Boundary.of(row, "boundary"),
                row.text("gwp"),
                known,
                Cited.of(row),
                row.optional("note"));
    }
}
