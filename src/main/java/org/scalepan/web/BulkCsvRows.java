package org.scalepan.web;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Rows of a CSV table with a header. */
final class BulkCsvRows implements BulkRows {
    static final int LONGEST_CELL = 100_000;

    private final CsvReader<Cells> reader;
    private final Iterator<Cells> records;
    private final FlatColumns columns;
    private final PlannedAnswers answers;
    private final TableRow row;
    private long number;
    private boolean broken;

    /** Reads the header; a wrong one is refused here, before any answer has begun. */
    BulkCsvRows(BulkQuestion question, Reader text, Csv.Style style) {
        this.reader = CsvReader.builder()
                .fieldSeparator(style.delimiter())
                .commentStrategy(CommentStrategy.NONE)
                .maxBufferSize(LONGEST_CELL)
                // A row of another length is told in its place, and does not end the run.
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .build(new Cells(), text);
        this.records = reader.iterator();
        try {
            if (!records.hasNext()) {
                throw refused("the body is empty; the first line must name the columns");
            }
            Cells cells = records.next();
            List<String> header = cells.all();
            header.set(0, header.get(0).replaceFirst("^\uFEFF", ""));
            this.columns = FlatColumns.read(header, style.decimal());
            this.answers = new PlannedAnswers(question);
            this.row = new TableRow(question, columns, cells);
        } catch (CsvParseException | UncheckedIOException e) {
            throw refused(
                    "the header cannot be read as CSV in UTF-8 with cells of at most " + LONGEST_CELL + " characters");
        }
    }

    private static Refused refused(String detail) {
        return new Refused(Problem.badBody(List.of(Problem.Flaw.of("column", detail))));
    }

    @Override
    public Optional<BulkRow> next() {
        if (broken) {
            return Optional.empty();
        }
        try {
            if (!records.hasNext()) {
                return Optional.empty();
            }
            Cells cells = records.next();
            number++;
            return Optional.of(answer(cells));
        } catch (CsvParseException | UncheckedIOException e) {
            broken = true;
            return Optional.of(wrong(
                    ++number,
                    "this row cannot be read as CSV in UTF-8 (a quote that is not closed, a cell of more than "
                            + LONGEST_CELL + " characters, or other bytes); the rows after it were not read"));
        }
    }

    private BulkRow answer(Cells cells) {
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
        reader.close();
    }
}
