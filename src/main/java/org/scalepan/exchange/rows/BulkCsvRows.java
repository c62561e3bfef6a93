package org.scalepan.exchange.rows;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.RefusedText;
import org.scalepan.exchange.text.TextLimits;
import org.scalepan.input.FieldError;

/** Rows of a CSV table with a header. */
public final class BulkCsvRows implements BulkRows {
    /** The buffer holds a cell with what stands around it. */
    private static final int MOST_BUFFERED = 4 * TextLimits.CELL_CHARACTERS;

    private final BulkQuestion question;
    private final CsvReader<CsvRecord> reader;
    private final Iterator<CsvRecord> records;
    private final FlatColumns columns;
    private long number;
    private boolean broken;

    /** Reads the header; an invalid one is refused here, before the response has begun. */
    public BulkCsvRows(BulkQuestion question, Reader text, Csv.CsvStyle style) {
        this.question = question;
        this.reader = CsvReader.builder()
                .fieldSeparator(style.delimiter())
                .commentStrategy(CommentStrategy.NONE)
                .maxBufferSize(MOST_BUFFERED)
                // A row of another length is reported as an error of that row and does not end the run.
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .build(handler(), text);
        this.records = reader.iterator();
        try {
            if (!records.hasNext()) {
                throw refused("the body is empty; the first line must name the columns");
            }
            List<String> header = new ArrayList<>(records.next().getFields());
            header.set(0, header.get(0).strip().replaceFirst("^\uFEFF", ""));
            for (int i = 0; i < header.size(); i++) {
                OptionalInt mark = MarkedUtf8.firstMark(header.get(i));
                if (mark.isPresent()) {
                    throw refused(
                            "the header, column " + (i + 1) + ": " + MarkedUtf8.fault(header.get(i), mark.getAsInt()));
                }
            }
            this.columns = FlatColumns.read(header, style.decimal());
        } catch (CsvParseException | UncheckedIOException e) {
            throw refused("the header cannot be read as CSV with at most " + TextLimits.CELLS_OF_ROW
                    + " cells of at most " + TextLimits.CELL_CHARACTERS + " characters");
        }
    }

    /** Makes a record of the cells of a row, within the limit of their number. */
    public static CsvRecordHandler handler() {
        return CsvRecordHandler.builder().maxFields(TextLimits.CELLS_OF_ROW).build();
    }

    private static RefusedText refused(String detail) {
        return new RefusedText(FieldError.of("column", detail));
    }

    @Override
    public Optional<SentRow> next() {
        if (broken) {
            return Optional.empty();
        }
        try {
            if (!records.hasNext()) {
                return Optional.empty();
            }
            List<String> cells = records.next().getFields();
            number++;
            return Optional.of(row(number, cells));
        } catch (CsvParseException | UncheckedIOException e) {
            broken = true;
            return Optional.of(wrong(
                    ++number,
                    "this row cannot be read as CSV (a quote that is not closed, a cell of far more than "
                            + TextLimits.CELL_CHARACTERS + " characters, or more than " + TextLimits.CELLS_OF_ROW
                            + " cells); the rows after it were not read"));
        }
    }

    private SentRow row(long its, List<String> cells) {
        int size = cells.stream().mapToInt(String::length).sum();
        return new SentRow(size, () -> question.answer(its, columns, cells));
    }

    private static SentRow wrong(long its, String message) {
        return SentRow.wrong(new BulkRow.RejectedRow(its, Optional.empty(), List.of(FieldError.of("", message))));
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
