package org.scalepan.web;

import java.util.ArrayList;
import java.util.List;

/** The row of a table that is being answered: a place in a block of rows. */
final class Cells {
    private CellBlock block = new CellBlock();
    private int row;
    private int first;

    void moveTo(CellBlock to, int at) {
        block = to;
        row = at;
        first = to.firstCell(at);
    }

    /** How many cells the row has, empty ones among them. */
    int width() {
        return block.width(row);
    }

    /** How many hold something. */
    int count() {
        return block.firstCell(row + 1) - first;
    }

    /** The column of a filled cell. */
    int column(int number) {
        return block.column(first + number);
    }

    /** The characters of all filled cells, and of other rows. */
    char[] text() {
        return block.text();
    }

    int start(int number) {
        return block.start(first + number);
    }

    int end(int number) {
        return block.end(first + number);
    }

    String cell(int number) {
        return new String(text(), start(number), end(number) - start(number));
    }

    /** All cells in their order. */
    List<String> all() {
        List<String> cells = new ArrayList<>(java.util.Collections.nCopies(width(), ""));
        for (int i = 0; i < count(); i++) {
            cells.set(column(i), cell(i));
        }
        return cells;
    }
}
