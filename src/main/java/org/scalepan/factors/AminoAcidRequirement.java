package org.scalepan.factors;

import org.scalepan.factors.table.Row;

/**
 * What a scoring pattern requires of one amino acid.
 *
 * @param acid id of the amino acid, the sulphur and the aromatic ones in pairs
 * @param milligrams milligrams per gram of protein, above zero
 */
public record AminoAcidRequirement(String id, String pattern, String acid, double milligrams, Cited cited) {
    static AminoAcidRequirement of(Row row) {
        return new AminoAcidRequirement(
                row.text("id"),
                row.text("pattern"),
                row.text("acid"),
                row.number("value").orElseThrow(),
                Cited.of(row));
    }
}
