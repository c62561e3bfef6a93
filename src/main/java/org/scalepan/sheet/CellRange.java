package org.scalepan.sheet;

/**
 * Cells of one column of a sheet.
 *
 * @param column counted from 0
 * @param firstRow counted from 0
 */
public record CellRange(int column, int firstRow, int rows) {
    public CellRange {
        if (column < 0 || firstRow < 0 || rows < 1) {
            throw new IllegalArgumentException("a range has at least one cell");
        }
    }

    /** As a formula names it, with its sheet: {@code 'Chart'!$A$2:$A$9}. */
    String onSheet(String sheet) {
        return quoted(sheet) + "!$" + letters(column) + "$" + (firstRow + 1) + ":$" + letters(column) + "$"
                + (firstRow + rows);
    }

    static String quoted(String sheet) {
        return "'" + sheet.replace("'", "''") + "'";
    }

    /** The name of a cell, such as {@code C7}; both counted from 0. */
    static String cell(int column, int row) {
        return letters(column) + (row + 1);
    }

    /** A, B, … Z, AA, AB, … */
    static String letters(int column) {
        String last = Character.toString((char) ('A' + column % 26));
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }
}
