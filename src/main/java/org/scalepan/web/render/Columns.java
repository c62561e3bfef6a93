package org.scalepan.web.render;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.scalepan.sheet.Cell;
import org.scalepan.sheet.Sheet;

/** The columns of a sheet, each with the place in a JSON row where its cells come from: numbers stay numeric. */
record Columns(List<SheetColumn> columns) {
    private static final int WIDE = 60;
    private static final int USUAL = 16;
    private static final List<String> LONG = List.of(
            "text",
            "sentence",
            "against_sentence",
            "reason",
            "locator",
            "notes",
            "note",
            "filled_with",
            "conversions",
            "value");

    Columns {
        columns = List.copyOf(columns);
    }

    /** One column. */
    record SheetColumn(String name, JsonPointer place) {}

    /** Columns by name; where the field has another name or is nested, with its pointer after an equals sign. */
    static Columns of(String... written) {
        return new Columns(Stream.of(written)
                .map(text -> {
                    int equals = text.indexOf('=');
                    return equals < 0
                            ? new SheetColumn(text, JsonPointer.compile("/" + text))
                            : new SheetColumn(
                                    text.substring(0, equals), JsonPointer.compile(text.substring(equals + 1)));
                })
                .toList());
    }

    /** A sheet with a header row and a row for each node. */
    Sheet sheet(String name, List<JsonNode> nodes) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(columns.stream().map(column -> Cell.head(column.name())).toList());
        nodes.forEach(node -> rows.add(
                columns.stream().map(column -> cell(node.at(column.place()))).toList()));
        return new Sheet(
                name,
                columns.stream()
                        .map(column -> LONG.contains(column.name()) && columns.size() < 20 ? WIDE : USUAL)
                        .toList(),
                1,
                rows);
    }

    private static Cell cell(JsonNode node) {
        if (node.isNumber()) {
            return Cell.number(node.asDouble());
        }
        if (node.isArray()) {
            return Cell.text(String.join(
                    "; ",
                    StreamSupport.stream(node.spliterator(), false)
                            .map(JsonNode::asText)
                            .toList()));
        }
        return node.isMissingNode() || node.asText().isEmpty() ? Cell.empty() : Cell.text(node.asText());
    }
}
