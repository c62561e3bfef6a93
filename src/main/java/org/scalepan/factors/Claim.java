package org.scalepan.factors;

import java.util.List;
import java.util.Optional;

/** A circulating claim with its origin and what the literature says of it. */
public record Claim(
        String id,
        String claim,
        Optional<String> indicator,
        List<String> products,
        List<String> references,
        Optional<String> statedRatio,
        Optional<String> basis,
        Optional<String> boundary,
        List<String> sources,
        Optional<String> primaryValue,
        String verdict,
        String verdictText,
        Grade check,
        Optional<String> note) {
    public Claim {
        products = List.copyOf(products);
        references = List.copyOf(references);
        sources = List.copyOf(sources);
    }

    static Claim of(Row row) {
        return new Claim(
                row.text("id"),
                row.text("claim"),
                row.optional("indicator"),
                row.list("product"),
                row.list("reference"),
                row.optional("stated_ratio"),
                row.optional("basis"),
                row.optional("boundary"),
                row.list("source"),
                row.optional("primary_value"),
                row.text("verdict"),
                row.text("verdict_text"),
                Grade.of(row.text("check")).orElseThrow(),
                row.optional("note"));
    }
}
