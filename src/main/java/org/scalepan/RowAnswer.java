package org.scalepan;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.exchange.rows.BulkCsvView;
import org.scalepan.exchange.rows.BulkJsonView;
import org.scalepan.exchange.rows.BulkRow;
import org.scalepan.exchange.text.Json;

/** The answer to one row: figures, or what is wrong with it. */
public final class RowAnswer {
    private final String id;
    private final BulkRow row;
    private final BulkJsonView lines;
    private final BulkCsvView table;

    RowAnswer(String id, BulkRow row, BulkJsonView lines, BulkCsvView table) {
        this.id = id;
        this.row = row;
        this.lines = lines;
        this.table = table;
    }

    /** What the row was called when it was asked. */
    public String id() {
        return id;
    }

    /** {@code ok}, {@code partly}, {@code not-computed}, {@code impossible}, or {@code wrong} where the row could not be read. */
    public String status() {
        return row instanceof BulkRow.Computed computed ? computed.status() : "wrong";
    }

    /** One for each indicator asked for; none of a row that could not be read. */
    public List<RowFigure> figures() {
        return row instanceof BulkRow.Computed computed
                ? computed.estimates().stream()
                        .map(estimate -> RowFigure.of(estimate, lines.coverage()))
                        .toList()
                : List.of();
    }

    /** What is wrong with the row; none where it could be read. */
    public List<RowError> errors() {
        return row instanceof BulkRow.RejectedRow wrong
                ? wrong.errors().stream().map(RowError::of).toList()
                : List.of();
    }

    /** One line of JSON, the service's line with {@code id} in place of {@code row}. */
    public String json() {
        ObjectNode node = Json.object();
        node.put("id", id);
        lines.fill(node, row);
        return node.toString();
    }

    /** One line of CSV without its end, the service's line with the id in place of the number of the row. */
    public String csvLine() {
        String line = table.line(id, row);
        return line.substring(0, line.length() - 2);
    }

    /** The cells of {@link RowQuestion#columns}, as the service writes them. */
    public List<String> cells() {
        return table.cells(row);
    }
}
