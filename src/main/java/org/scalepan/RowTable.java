package org.scalepan;

import java.util.List;
import org.scalepan.exchange.rows.FlatColumns;

/** The columns of a table, one farm or herd a row. */
public final class RowTable {
    private final FlatColumns columns;
    private final RowQuestion question;

    RowTable(FlatColumns columns, RowQuestion question) {
        this.columns = columns;
        this.question = question;
    }

    /**
     * Answers one row.
     *
     * @param id what you call the row; it comes back with the answer
     * @param cells one for each column; an empty one is an absent field
     */
    public RowAnswer answer(String id, List<String> cells) {
        return question.answer(id, columns, cells);
    }
}
