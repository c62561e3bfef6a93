package org.scalepan.web;

import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/** Rows of a CSV table with a header. */
final class BulkCsvRows implements BulkRows {
    private final CutRows rows;
    private final Cells cells = new Cells();
    private final FlatColumns columns;
    private final PlannedAnswers answers;
    private final TableRow row;
    private long number;
    private boolean broken;

    /** Reads the header; a wrong one is refused here, before any answer has begun. */
    BulkCsvRows(BulkQuestion question, Reader text, Csv.Style style) throws IOException {
        this.rows = new CutRows(text, style.delimiter());
        try {
            if (!rows.next(cells)) {
                throw refused("the body is empty; the first line must name the columns");
            }
            List<String> header = cells.all();
            header.set(0, header.get(0).replaceFirst("^\uFEFF", ""));
            this.columns = FlatColumns.read(header, style.decimal());
            this.answers = new PlannedAnswers(question);
            this.row = new TableRow(question, columns, cells);
        } catch (CsvParseException | UncheckedIOException e) {
            throw refused("the header cannot be read as CSV in UTF-8 with at most " + Limits.CELLS_OF_ROW
                    + " cells of at most " + Limits.CELL_CHARACTERS + " characters");
        }
    }

    private static Refused refused(String detail) {
        return new Refused(Problem.badBody(List.of(Problem.Flaw.of("column", detail))));
    }

    @Override
    public Optional<BulkRow> next() throws IOException {
        if (broken) {
            return Optional.empty();
        }
        try {
            if (!rows.next(cells)) {
                return Optional.empty();
            }
            number++;
            return Optional.of(answer());
        } catch (CsvParseException | UncheckedIOException e) {
            broken = true;
            return Optional.of(wrong(
                    ++number,
                    "this row cannot be read as CSV in UTF-8 (a quote that is not closed, a cell of more than "
                            + Limits.CELL_CHARACTERS + " characters, more than " + Limits.CELLS_OF_ROW
                            + " cells, or other bytes); the rows after it were not read"));
        }
    }

    private BulkRow answer() {
        if (cells.width() != columns.size()) {
            return wrong(
                    number,
                    "this row has " + cells.width() + " cells; the header names " + columns.size() + " columns");
        }
        return answers.answer(number, row);
    }

    private static BulkRow wrong(long number, String message) {
        return new BulkRow.Wrong(number, Optional.empty(), List.of(Problem.Flaw.of("", message)));
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }
}
