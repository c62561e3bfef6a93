package org.scalepan.web.read;

import java.util.regex.Pattern;

/** Reads a number out of a cell of a table: digits with a decimal sign, perhaps with an exponent; no grouping, no words. */
public final class CellNumber {
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?([eE][+-]?\\d{1,3})?");

    private CellNumber() {}

    /**
     * The number in a cell.
     *
     * @param decimal the decimal sign
     * @return not a number when it is none
     */
    public static double read(String cell, char decimal) {
        String digits = decimal == '.' ? cell : cell.indexOf('.') >= 0 ? "" : cell.replace(decimal, '.');
        double value = DECIMAL.matcher(digits).matches() ? Double.parseDouble(digits) : Double.NaN;
        return Double.isFinite(value) ? value : Double.NaN;
    }
}
