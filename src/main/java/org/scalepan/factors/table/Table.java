package org.scalepan.factors.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One table of the library: its schema and its rows, in the order of the file. */
public record Table(TableSchema schema, List<Row> rows) {
    public Table {
        rows = List.copyOf(rows);
    }

    /**
     * This table overlaid with a user's rows: a row with a known id replaces, any other is added at the end. Rows without an id are faults
     * already and are left out.
     */
    public Table overlaidBy(Table own) {
        Map<String, Row> byId = new LinkedHashMap<>();
        String key = schema.primaryKey();
        rows.forEach(row -> row.optional(key).ifPresent(id -> byId.put(id, row)));
        own.rows.forEach(row -> row.optional(key).ifPresent(id -> byId.put(id, row)));
        return new Table(schema, new ArrayList<>(byId.values()));
    }
}
