package org.scalepan.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.factors.Row;
import org.scalepan.factors.Table;
import org.scalepan.factors.TableSchema;

/** Shows a row of any table as it stands: its columns, numbers as numbers, empty cells left out. */
final class RowView {
    private RowView() {}

    static ObjectNode json(Table table, Row row) {
        ObjectNode node = Json.object();
        for (TableSchema.Field field : table.schema().fields()) {
            switch (field.type()) {
                case NUMBER -> Json.put(node, field.name(), row.number(field.name()));
                case INTEGER -> Json.put(node, field.name(), row.integer(field.name()));
                default -> {
                    if (field.list().isPresent()) {
                        node.set(field.name(), Json.texts(row.list(field.name())));
                    } else {
                        Json.put(node, field.name(), row.optional(field.name()));
                    }
                }
            }
        }
        return node;
    }

    /** The rows of a table as CSV, numbers in the style asked for. */
    static Answer csv(Table table, List<Row> rows, Csv.Style style) {
        List<TableSchema.Field> fields = table.schema().fields();
        Csv csv = new Csv(style, fields.stream().map(TableSchema.Field::name).toList());
        for (Row row : rows) {
            Csv.Line line = csv.line();
            for (TableSchema.Field field : fields) {
                if (field.type() == TableSchema.Type.STRING) {
                    row.optional(field.name()).ifPresentOrElse(line::text, () -> line.empty(1));
                } else {
                    row.number(field.name()).ifPresentOrElse(line::published, () -> line.empty(1));
                }
            }
            line.end();
        }
        return csv.answer();
    }
}
