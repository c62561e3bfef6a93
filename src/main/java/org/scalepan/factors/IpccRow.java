package org.scalepan.factors;

import java.util.Optional;
import org.scalepan.factors.table.Row;
import org.scalepan.uncertainty.PublishedSpread;

/**
 * One cell of an IPCC livestock table, volume 4, chapter 10.
 *
 * @param edition 2006 or 2019; the two are never mixed in one chain
 * @param quantity what it is, such as {@code enteric-ef} or {@code mcf}
 * @param category animal category, a term of {@code ipcc_terms}
 * @param productivity mean, high or low
 * @param region, climate, system where it holds; the widest term where the table does not distinguish it
 */
public record IpccRow(
        String id,
        String edition,
        String quantity,
        String category,
        String productivity,
        String region,
        String climate,
        String system,
        Optional<String> condition,
        PublishedSpread printed,
        String unit,
        boolean isDefault,
        Cited cited,
        Optional<String> note) {
    static IpccRow of(Row row) {
        return new IpccRow(
                row.text("id"),
                row.text("edition"),
                row.text("quantity"),
                row.text("category"),
                row.text("productivity"),
                row.text("ipcc_region"),
                row.text("climate"),
                row.text("system"),
                row.optional("condition"),
                Printed.spread(row),
                row.text("unit"),
                row.text("use").equals("default"),
                Cited.of(row),
                row.optional("note"));
    }
}
