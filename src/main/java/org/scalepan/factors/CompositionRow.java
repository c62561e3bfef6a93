package org.scalepan.factors;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.table.Row;
import org.scalepan.uncertainty.PublishedSpread;

/**
 * What a product consists of, or yields on the way from the animal to the plate.
 *
 * @param quantity what is given, for instance {@code protein} or {@code dressing-fraction}
 * @param printed the number and spread as published, in {@code unit}
 * @param per the functional unit it refers to
 * @param nitrogenFactor the factor by which a printed protein content was computed from nitrogen; 6.25 when absent
 */
public record CompositionRow(
        String id,
        String product,
        String form,
        String quantity,
        PublishedSpread printed,
        String unit,
        String per,
        RowUse use,
        OptionalDouble nitrogenFactor,
        Cited cited,
        Optional<String> note,
        boolean overlaid) {

    /** What a row may serve for. */
    public enum RowUse {
        /** The row used unless a study brings its own. */
        DEFAULT,
        /** Used only for results of the same source. */
        STUDY,
        /** Shown, not used. */
        KEPT,
        /** Shown and never used: far from every other measurement. */
        OUTLIER;

        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    static CompositionRow of(Row row) {
        return new CompositionRow(
                row.text("id"),
                row.text("product"),
                row.text("form"),
                row.text("quantity"),
                Printed.spread(row),
                row.text("unit"),
                row.text("per"),
                RowUse.valueOf(row.text("use").toUpperCase(Locale.ROOT)),
                row.number("nitrogen_factor"),
                Cited.of(row),
                row.optional("note"),
                row.overlaid());
    }
}
