package org.scalepan.exchange.rows;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Supplier;

/** Rows of a bulk run, read one at a time in the order sent. */
public interface BulkRows extends Closeable {
    /**
     * A row as it was sent.
     *
     * @param size how many characters it holds
     * @param answer computes its result; independent of other rows, so any thread may call it
     */
    record SentRow(int size, Supplier<BulkRow> answer) {
        /** A row that cannot be read. */
        static SentRow wrong(BulkRow.RejectedRow row) {
            return new SentRow(0, () -> row);
        }
    }

    /** The next row; empty at the end, and after a row whose error makes the rest unreadable. */
    Optional<SentRow> next() throws IOException;

    /** Strict UTF-8: an invalid byte is an error and is not replaced. */
    static Reader strict(InputStream in) {
        return new InputStreamReader(
                in,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }
}
