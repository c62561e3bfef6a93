package org.scalepan.web;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Rows of a bulk run, computed one at a time in the order sent. */
interface BulkRows extends Closeable {
    /** The next row; empty at the end, and after a row whose fault leaves the rest unreadable. */
    Optional<BulkRow> next() throws IOException;

    /** UTF-8 read strictly: a byte that is none is a fault, not a question mark. */
    static Reader strict(InputStream in) {
        return new InputStreamReader(
                in,
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT));
    }
}
