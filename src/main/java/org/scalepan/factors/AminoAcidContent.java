package org.scalepan.factors;

import org.scalepan.factors.table.Row;

/**
 * How much of an amino acid the protein of a product holds.
 *
 * @param milligrams milligrams per gram of protein
 * @param isDefault true for the row that is used; any other is only shown
 */
public record AminoAcidContent(
        String id,
        String product,
        String form,
        String acid,
        double milligrams,
        boolean isDefault,
        Cited cited,
        boolean overlaid) {
    static AminoAcidContent of(Row row) {
        return new AminoAcidContent(
                row.text("id"),
                row.text("product"),
                row.text("form"),
                row.text("acid"),
                row.number("value").orElseThrow(),
                row.text("use").equals("default"),
                Cited.of(row),
                row.overlaid());
    }
}
