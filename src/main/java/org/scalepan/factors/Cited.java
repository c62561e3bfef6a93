package org.scalepan.factors;

import org.scalepan.factors.table.Row;

/**
 * Where a number comes from.
 *
 * @param source id of the reference in {@code sources.json}
 * @param locator table, figure or page inside it
 * @param check how the number was checked
 */
public record Cited(String source, String locator, Grade check) {
    static Cited of(Row row) {
        return new Cited(
                row.text("source"),
                row.text("locator"),
                Grade.of(row.text("check")).orElseThrow());
    }
}
