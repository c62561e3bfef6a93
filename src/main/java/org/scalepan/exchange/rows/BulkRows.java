package org.scalepan.exchange.rows;

import java.io.Closeable;
import java.io.IOException;
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
}
