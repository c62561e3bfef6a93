package org.scalepan.web;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.RecordType;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a table, cut: of each its filled cells without the blanks around them, all laid end to end. Most cells of a wide table are
 * empty, so nothing is made for them. A block is filled, read and filled anew.
 */
final class CellBlock {
    private static final int MOST_ROWS = 512;
    private static final int ENOUGH_TEXT = 65_536;

    private char[] text;
    private int[] columns;
    /** Where each filled cell ends; it begins where the one before it ends. */
    private int[] ends;
    /** How many cells are filled up to the end of each row. */
    private final int[] filled = new int[MOST_ROWS];

    private final int[] widths = new int[MOST_ROWS];
    private int rows;
    private int cells;
    private int cellsOfRow;
    private int width;
    private boolean last;
    private @Nullable Throwable fault;

    CellBlock() {
        text = new char[1024];
        columns = new int[128];
        ends = new int[128];
    }

    /** Makes room for other rows; what one row beyond measure has taken is given back. */
    void clear() {
        if (text.length > 4 * ENOUGH_TEXT || columns.length > ENOUGH_TEXT) {
            text = new char[1024];
            columns = new int[128];
            ends = new int[128];
        }
        rows = 0;
        cells = 0;
    }

    /** What reads rows into the block that {@link Filler#into} names. */
    static final class Filler extends AbstractBaseCsvCallbackHandler<Boolean> {
        private CellBlock block = new CellBlock();

        void into(CellBlock next) {
            block = next;
        }

        @Override
        protected void handleBegin(long startingLine) {
            block.cellsOfRow = 0;
            block.width = 0;
        }

        @Override
        protected void handleField(int column, char[] buffer, int offset, int length, boolean quoted) {
            block.width = column + 1;
            if (block.width > Limits.CELLS_OF_ROW) {
                throw new CsvParseException("a row has more than " + Limits.CELLS_OF_ROW + " cells");
            }
            int from = offset;
            int to = offset + length;
            while (from < to && Character.isWhitespace(buffer[from])) {
                from++;
            }
            while (from < to && Character.isWhitespace(buffer[to - 1])) {
                to--;
            }
            if (from < to) {
                block.put(column, buffer, from, to - from);
            }
        }

        /** Asked of empty lines, too, which are no rows. */
        @Override
        protected Boolean buildRecord() {
            boolean row = getRecordType() == RecordType.DATA;
            if (row) {
                block.endRow();
            }
            return row;
        }
    }

    private void put(int column, char[] buffer, int from, int length) {
        int cell = cells + cellsOfRow;
        if (cell == columns.length) {
            columns = Arrays.copyOf(columns, 2 * cell);
            ends = Arrays.copyOf(ends, 2 * cell);
        }
        int at = start(cell);
        if (at + length > text.length) {
            text = Arrays.copyOf(text, Math.max(2 * text.length, at + length));
        }
        System.arraycopy(buffer, from, text, at, length);
        columns[cell] = column;
        ends[cell] = at + length;
        cellsOfRow++;
    }

    private void endRow() {
        cells += cellsOfRow;
        filled[rows] = cells;
        widths[rows] = width;
        rows++;
    }

    boolean isFull() {
        return rows == MOST_ROWS || start(cells) >= ENOUGH_TEXT;
    }

    /** No block comes after this one. */
    void end() {
        last = true;
    }

    /** No row can be read after the last of this block. */
    void end(Throwable why) {
        last = true;
        fault = why;
    }

    boolean isLast() {
        return last;
    }

    @Nullable
    Throwable fault() {
        return fault;
    }

    int rows() {
        return rows;
    }

    int width(int row) {
        return widths[row];
    }

    /** The first filled cell of a row; that of the row after it is where the row ends. */
    int firstCell(int row) {
        return row == 0 ? 0 : filled[row - 1];
    }

    int column(int cell) {
        return columns[cell];
    }

    char[] text() {
        return text;
    }

    int start(int cell) {
        return cell == 0 ? 0 : ends[cell - 1];
    }

    int end(int cell) {
        return ends[cell];
    }
}
