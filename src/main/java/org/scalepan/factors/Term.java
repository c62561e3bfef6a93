package org.scalepan.factors;

import java.util.Map;

/** An entry of a plain vocabulary such as boundaries or functional units: an id, a name and whatever else its table says. */
public record Term(String id, Map<String, String> cells) {
    public Term {
        cells = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(cells));
    }

    public String name() {
        return cells.getOrDefault("name", id);
    }

    static Term of(Table table, Row row) {
        Map<String, String> cells = new java.util.LinkedHashMap<>();
        table.schema()
                .fields()
                .forEach(field -> row.optional(field.name()).ifPresent(cell -> cells.put(field.name(), cell)));
        return new Term(row.text("id"), cells);
    }
}
