package org.scalepan.web;

import java.io.IOException;

/** Writes the rows of a bulk run in the format they came in. */
interface BulkView {
    /** Writes one row; it may stay in a buffer until {@link #flush}. */
    void write(BulkRow row) throws IOException;

    /** Sends what is written so far on its way. */
    void flush() throws IOException;
}
