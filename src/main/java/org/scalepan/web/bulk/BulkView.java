package org.scalepan.web.bulk;

import java.util.List;

/** Writes the rows of a bulk run in the format they came in. It keeps nothing between two calls, so that several may go on at once. */
interface BulkView {
    /** What stands before the first row. */
    String head();

    /** Rows, one a line. */
    String lines(List<BulkRow> rows);
}
