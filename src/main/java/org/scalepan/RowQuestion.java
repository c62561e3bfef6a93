package org.scalepan;

import java.util.List;
import org.scalepan.exchange.rows.BulkCsvView;
import org.scalepan.exchange.rows.BulkJsonView;
import org.scalepan.exchange.rows.BulkQuestion;
import org.scalepan.exchange.rows.FlatColumns;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.RefusedText;

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
     * A table whose rows are to be answered.
     *
     * @param header columns, as in {@code /v1/footprints/template.csv}
     * @throws RefusedInput where a column is unknown or stands twice
     */
    public RowTable table(List<String> header) {
        try {
            return new RowTable(FlatColumns.read(header, STYLE.decimal()), this);
        } catch (RefusedText refused) {
            throw RefusedInput.of(refused.errors());
        }
    }

    /** The columns of {@link RowAnswer#cells}, those of the service without the number of the row. */
    public List<String> columns() {
        return table.columns();
    }

    RowAnswer answer(String id, FlatColumns columns, List<String> cells) {
        return new RowAnswer(id, question.answer(0, columns, cells), lines, table);
    }
}
