package org.scalepan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.exchange.rows.BulkCsvView;
import org.scalepan.exchange.rows.BulkJsonView;
import org.scalepan.exchange.rows.BulkQuestion;
import org.scalepan.exchange.rows.BulkRow;
import org.scalepan.exchange.rows.FlatColumns;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.RefusedText;
import org.scalepan.exchange.text.StrictJson;
import org.scalepan.input.FieldError;
import org.scalepan.production.RecordField;

/** What is asked of every row. Rows do not know each other, so any thread may answer any row, in any order. */
public final class RowQuestion {
    private static final Csv.CsvStyle STYLE = new Csv.CsvStyle(',', '.', false);

    private final BulkQuestion question;
    private final BulkJsonView lines;
    private final BulkCsvView table;

    RowQuestion(BulkQuestion question) {
        this.question = question;
        this.lines = new BulkJsonView(question);
        this.table = new BulkCsvView(question, STYLE);
    }

    /**
     * Answers the records of one farm or herd.
     *
     * @param id what you call the row; it comes back with the answer
     * @param records a JSON object, as a line of {@code POST /v1/footprints}
     */
    public RowAnswer answer(String id, String records) {
        return new RowAnswer(id, question.answer(0, records), lines, table);
    }

    /**
     * Answers a line of JSON that names itself.
     *
     * @param idField the field with the row's id, a text or a number; taken out before the records are read, unless it is {@code name},
     *     which is a record too
     */
    public RowAnswer answerLine(String idField, String line) {
        try {
            JsonNode records = StrictJson.parse(line);
            String id = records.path(idField).asText("");
            if (records instanceof ObjectNode object && RecordField.at(idField).isEmpty()) {
                object.remove(idField);
            }
            return new RowAnswer(id, question.answer(0, records), lines, table);
        } catch (RefusedText refused) {
            return answer("", line);
        }
    }

    /**
     * A table whose rows are to be answered.
     *
     * @param header columns, as in {@code /v1/footprints/template.csv}, and the one with the row's id
     * @param idColumn the column with the row's id; not a record itself, unless it is {@code name}
     * @throws RefusedInput where there is no such column, or another is unknown or stands twice
     */
    public RowTable table(List<String> header, String idColumn) {
        int place = header.indexOf(idColumn);
        if (place < 0) {
            throw new RefusedInput(List.of("no column is called " + idColumn + ", which is to hold the id of the row"));
        }
        boolean isRecord = RecordField.at(idColumn).isPresent();
        List<String> records = new ArrayList<>(header);
        if (!isRecord) {
            records.remove(place);
        }
        try {
            return new RowTable(FlatColumns.read(records, STYLE.decimal()), place, isRecord, this);
        } catch (RefusedText refused) {
            throw RefusedInput.of(refused.errors());
        }
    }

    /** The same with the header as a line of CSV. */
    public RowTable tableOfLines(String header, String idColumn) {
        return table(RowTable.cells(header.replaceFirst("^\uFEFF", "")), idColumn);
    }

    /** The head of a table of answers, as a line of CSV without its end. */
    public String csvHeader(String idColumn) {
        List<String> cells = new ArrayList<>(List.of(idColumn));
        cells.addAll(columns());
        return String.join(",", cells);
    }

    /** Those of the columns that hold numbers. */
    public Set<String> numberColumns() {
        return table.numberColumns();
    }

    /** The columns of {@link RowAnswer#cells}, those of the service without the number of the row. */
    public List<String> columns() {
        return table.columns();
    }

    RowAnswer unreadable(String message) {
        BulkRow row = new BulkRow.RejectedRow(0, Optional.empty(), List.of(FieldError.of("", message)));
        return new RowAnswer("", row, lines, table);
    }

    RowAnswer answer(String id, FlatColumns columns, List<String> cells) {
        return new RowAnswer(id, question.answer(0, columns, cells), lines, table);
    }
}
