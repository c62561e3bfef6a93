package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.List;
import java.util.Optional;

/** Rows of JSON objects, one a line. */
final class BulkJsonRows implements BulkRows {

    private final BulkQuestion question;
    private final Reader reader;
    private final LongLines lines;
    private final PlannedAnswers answers;
    private final WordNumbers words = new WordNumbers();
    private final RowShape shape = new RowShape();
    private long number;
    private boolean broken;

    BulkJsonRows(BulkQuestion question, Reader text) {
        this.question = question;
        this.reader = text;
        this.lines = new LongLines(text, Limits.LINE_CHARACTERS);
        this.answers = new PlannedAnswers(question);
    }

    @Override
    public Optional<BulkRow> next() throws IOException {
        if (broken) {
            return Optional.empty();
        }
        try {
            Optional<String> line = lines.next();
            while (line.isPresent() && line.get().isBlank()) {
                line = lines.next();
            }
            return line.map(this::answer);
        } catch (CharacterCodingException e) {
            broken = true;
            return Optional.of(wrong("this line is not UTF-8; the lines after it were not read"));
        }
    }

    private BulkRow answer(String line) {
        if (line.length() > Limits.LINE_CHARACTERS) {
            return wrong("this line is longer than " + Limits.LINE_CHARACTERS + " characters");
        }
        number++;
        JsonNode records;
        try {
            records = JsonBody.parse(line);
        } catch (Refused refused) {
            return new BulkRow.Wrong(number, Optional.empty(), refused.problem().errors());
        }
        return answers.answer(number, new LineRow(question, records, words, shape));
    }

    private BulkRow wrong(String message) {
        number++;
        return new BulkRow.Wrong(number, Optional.empty(), List.of(Problem.Flaw.at("", message, List.of(), List.of())));
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
