package org.scalepan.exchange.rows;

import java.util.List;

/** Writes the rows of a bulk run in the format they came in. It is stateless and may be called from several threads. */
public interface BulkView {
    /** The header, before the first row. */
    String head();

    /** Rows, one per line. */
    String lines(List<BulkRow> rows);
}
