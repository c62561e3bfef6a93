package org.scalepan.factors;

import java.util.Map;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;

/** An entry of a plain vocabulary such as boundaries or functional units: an id, a name and whatever else its table says. */
public record VocabularyEntry(String id, Map<String, String> cells) {
    public VocabularyEntry {
        cells = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(cells));
    }

    public String name() {
        return cells.getOrDefault("name", id);
    }

    static VocabularyEntry of(Table table, Row row) {
        Map<String, String> cells = new java.util.LinkedHashMap<>();
        table.schema()
                .fields()
                .forEach(field -> row.optional(field.name()).ifPresent(cell -> cells.put(field.name(), cell)));
        return new VocabularyEntry(row.text("id"), cells);
    }
}
