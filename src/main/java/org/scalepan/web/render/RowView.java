package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.factors.table.TableSchema;
import org.scalepan.web.http.Answer;

/** Renders rows as in the library: numbers as numbers, empty cells left out, neither converted nor rounded. */
public final class RowView {
    private RowView() {}

    /** A row of any table, column by column. */
    public static ObjectNode json(Table table, Row row) {
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

    /** The rows of a table as CSV, numbers in the given style. */
    public static Answer csv(Table table, List<Row> rows, Csv.CsvStyle style) {
        List<TableSchema.Field> fields = table.schema().fields();
        Csv csv = new Csv(style, fields.stream().map(TableSchema.Field::name).toList());
        for (Row row : rows) {
            Csv.CsvLine line = csv.line();
            for (TableSchema.Field field : fields) {
                if (field.type() == TableSchema.Type.STRING) {
                    row.optional(field.name()).ifPresentOrElse(line::text, () -> line.empty(1));
                } else {
                    row.number(field.name()).ifPresentOrElse(line::published, () -> line.empty(1));
                }
            }
            line.end();
        }
        return Answer.of(Answer.CSV, csv.text());
    }

    /** The number of a published result as printed, with its spread and unit; used wherever a published result is shown. */
    static void printed(ObjectNode node, PublishedResult result) {
        Json.put(node, "value", result.printed().value());
        Json.put(node, "statistic", result.statistic());
        node.put("spread", result.printed().kind().id());
        Json.put(node, "low", result.printed().low());
        Json.put(node, "high", result.printed().high());
        result.printed()
                .percentiles()
                .forEach((probability, value) -> node.put("p" + Math.round(probability * 100), value));
        node.put("unit", result.unit());
    }

    /** A composition row as in the library. */
    public static ObjectNode composition(CompositionRow row) {
        ObjectNode node = Json.object();
        node.put("id", row.id());
        node.put("form", row.form());
        node.put("quantity", row.quantity());
        Json.put(node, "value", row.printed().value());
        node.put("spread", row.printed().kind().id());
        Json.put(node, "low", row.printed().low());
        Json.put(node, "high", row.printed().high());
        node.put("unit", row.unit());
        node.put("per", row.per());
        node.put("use", row.use().id());
        Json.put(node, "nitrogen_factor", row.nitrogenFactor());
        node.put("source", row.cited().source());
        node.put("locator", row.cited().locator());
        node.put("check", row.cited().check().id());
        Json.put(node, "note", row.note());
        return node;
    }
}
