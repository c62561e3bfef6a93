package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.List;
import java.util.Optional;

/** Rows of JSON objects, one a line. */
final class BulkJsonRows implements BulkRows {
    static final int LONGEST_LINE = 100_000;

    private final BulkQuestion question;
    private final BufferedReader reader;
    private long number;
    private boolean broken;

    BulkJsonRows(BulkQuestion question, Reader text) {
        this.question = question;
        this.reader = new BufferedReader(text);
    }

    @Override
    public Optional<BulkRow> next() throws IOException {
        if (broken) {
            return Optional.empty();
        }
        try {
            Optional<String> line = line();
            while (line.isPresent() && line.get().isBlank()) {
                line = line();
            }
            return line.map(this::answer);
        } catch (CharacterCodingException e) {
            broken = true;
            return Optional.of(wrong("this line is not UTF-8; the lines after it were not read"));
        }
    }

    private BulkRow answer(String line) {
        if (line.length() > LONGEST_LINE) {
            return wrong("this line is longer than " + LONGEST_LINE + " characters");
        }
        number++;
        JsonNode records;
        try {
            records = JsonBody.parse(line);
        } catch (Refused refused) {
            return new BulkRow.Wrong(number, Optional.empty(), refused.problem().errors());
        }
        return question.answer(number, records);
    }

    private BulkRow wrong(String message) {
        number++;
        return new BulkRow.Wrong(number, Optional.empty(), List.of(Problem.Flaw.at("", message, List.of(), List.of())));
    }

    /** A line without its end; of a line that is too long one character more than the limit, the rest is skipped. */
    private Optional<String> line() throws IOException {
        StringBuilder line = new StringBuilder();
        int character = reader.read();
        if (character < 0) {
            return Optional.empty();
        }
        while (character >= 0 && character != '\n') {
            if (line.length() <= LONGEST_LINE) {
                line.append((char) character);
            }
            character = reader.read();
        }
        return Optional.of(line.toString());
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
