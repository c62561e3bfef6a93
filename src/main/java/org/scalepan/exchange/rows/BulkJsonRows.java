package org.scalepan.exchange.rows;

import java.io.IOException;
import java.io.Reader;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.scalepan.exchange.text.TextLimits;
import org.scalepan.input.FieldError;

/** Rows as JSON objects, one per line. */
public final class BulkJsonRows implements BulkRows {

    private final BulkQuestion question;
    private final Reader reader;
    private final LongLines lines;
    private long number;

    public BulkJsonRows(BulkQuestion question, Reader text) {
        this.question = question;
        this.reader = text;
        this.lines = new LongLines(text, TextLimits.LINE_CHARACTERS);
    }

    @Override
    public Optional<SentRow> next() throws IOException {
        Optional<String> line = lines.next();
        while (line.isPresent() && line.get().isBlank()) {
            line = lines.next();
        }
        return line.map(text -> row(++number, text));
    }

    private SentRow row(long its, String line) {
        if (line.length() > TextLimits.LINE_CHARACTERS) {
            return wrong(its, "this line is longer than " + TextLimits.LINE_CHARACTERS + " characters");
        }
        OptionalInt mark = MarkedUtf8.firstMark(line);
        return mark.isPresent()
                ? wrong(its, MarkedUtf8.fault(line, mark.getAsInt()))
                : new SentRow(line.length(), () -> question.answer(its, line));
    }

    private static SentRow wrong(long its, String message) {
        return SentRow.wrong(new BulkRow.RejectedRow(
                its, Optional.empty(), List.of(FieldError.at("", message, List.of(), List.of()))));
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
