package org.scalepan.factors;

import java.util.Optional;
import org.scalepan.factors.table.Row;
import org.scalepan.uncertainty.PublishedSpread;

/**
 * A ratio reference ÷ product that one study printed for two products that it compared: "so many times less".
 *
 * @param referenceFrom the source that the study took the reference from, where it did not assess it itself
 */
public record PairedRatio(
        String id,
        String product,
        String productForm,
        String reference,
        String referenceForm,
        Optional<String> referenceFrom,
        String indicator,
        String per,
        Boundary boundary,
        String luc,
        Optional<String> gwp,
        PublishedSpread printed,
        String region,
        Cited cited,
        Optional<String> note) {
    static PairedRatio of(Row row) {
        return new PairedRatio(
                row.text("id"),
                row.text("product"),
                row.text("product_form"),
                row.text("reference"),
                row.text("reference_form"),
                row.optional("reference_from"),
                row.text("indicator"),
                row.text("per"),
                Boundary.of(row, "boundary"),
                row.text("luc"),
                row.optional("gwp"),
                Printed.spread(row),
                row.text("region"),
                Cited.of(row),
                row.optional("note"));
    }
}
