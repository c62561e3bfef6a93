package org.scalepan.web.read;

import java.util.regex.Pattern;

/** Parses the number in a table cell: digits with a decimal sign and an optional exponent, without grouping or words. */
public final class CellNumber {
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?([eE][+-]?\\d{1,3})?");

    private CellNumber() {}

    /**
     * The number in a cell.
     *
     * @param decimal the decimal sign
     * @return NaN when the cell holds no number
     */
    public static double read(String cell, char decimal) {
        String digits = decimal == '.' ? cell : cell.indexOf('.') >= 0 ? "" : cell.replace(decimal, '.');
        double value = DECIMAL.matcher(digits).matches() ? Double.parseDouble(digits) : Double.NaN;
        return Double.isFinite(value) ? value : Double.NaN;
    }
}
