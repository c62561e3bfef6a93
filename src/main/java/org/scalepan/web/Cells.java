package org.scalepan.web;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The row of a table that was read last: its cells without the blanks around them, those that hold something laid end to end. Most
 * cells of a wide table are empty, so nothing is made for them. Each row overwrites the one before it.
 */
final class Cells extends AbstractBaseCsvCallbackHandler<Cells> {
    private static final int MOST_CELLS = 16_384;

    private char[] text = new char[1024];
    private int[] filled = new int[128];
    /** Where each filled cell ends; it begins where the one before it ends. */
    private int[] end = new int[128];

    private int count;
    private int width;

    @Override
    protected void handleBegin(long startingLine) {
        count = 0;
        width = 0;
    }

    @Override
    protected void handleField(int column, char[] buffer, int offset, int length, boolean quoted) {
        width = column + 1;
        if (width > MOST_CELLS) {
            throw new CsvParseException("a row has more than " + MOST_CELLS + " cells");
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
            put(column, buffer, from, to - from);
        }
    }

    private void put(int column, char[] buffer, int from, int length) {
        if (count == filled.length) {
            filled = Arrays.copyOf(filled, 2 * count);
            end = Arrays.copyOf(end, 2 * count);
        }
        int at = start(count);
        if (at + length > text.length) {
            text = Arrays.copyOf(text, Math.max(2 * text.length, at + length));
        }
        System.arraycopy(buffer, from, text, at, length);
        filled[count] = column;
        end[count] = at + length;
        count++;
    }

    @Override
    protected Cells buildRecord() {
        return this;
    }

    /** How many cells the row has, empty ones among them. */
    int width() {
        return width;
    }

    /** How many hold something. */
    int count() {
        return count;
    }

    /** The column of a filled cell. */
    int column(int number) {
        return filled[number];
    }

    /** The characters of all filled cells. */
    char[] text() {
        return text;
    }

    int start(int number) {
        return number == 0 ? 0 : end[number - 1];
    }

    int end(int number) {
        return end[number];
    }

    String cell(int number) {
        return new String(text, start(number), end[number] - start(number));
    }

    /** All cells in their order. */
    List<String> all() {
        List<String> cells = new ArrayList<>(java.util.Collections.nCopies(width, ""));
        for (int i = 0; i < count; i++) {
            cells.set(filled[i], cell(i));
        }
        return cells;
    }
}
