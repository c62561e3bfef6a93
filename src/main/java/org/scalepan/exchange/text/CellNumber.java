package org.scalepan.exchange.text;

import java.util.regex.Pattern;
import org.scalepan.input.Underflow;

/** Parses the number or range in a table cell: digits with a decimal sign and an optional exponent, without grouping or words. */
public final class CellNumber {
    /** Programs write a double with up to 17 digits, behind as many zeros as they do without an exponent. */
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,15}(\\.\\d{1,25})?([eE][+-]?\\d{1,3})?");

    private CellNumber() {}

    /**
     * The numbers of a range in a cell: {@code 400..600}, or with your best guess {@code 400..500..600}.
     *
     * @param decimal the decimal sign
     * @return nothing when the cell holds no range
     */
    public static double[] readRange(String cell, char decimal) {
        String[] parts = cell.split("\\.\\.", -1);
        double[] numbers = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            numbers[i] = read(parts[i].strip(), decimal);
            if (!Double.isFinite(numbers[i])) {
                return new double[0];
            }
        }
        return parts.length == 2 || parts.length == 3 ? numbers : new double[0];
    }

    /**
     * The number in a cell.
     *
     * @param decimal the decimal sign
     * @return NaN when the cell holds no number
     */
    public static double read(String cell, char decimal) {
        String digits = decimal == '.' ? cell : cell.indexOf('.') >= 0 ? "" : cell.replace(decimal, '.');
        double value = DECIMAL.matcher(digits).matches() ? Double.parseDouble(digits) : Double.NaN;
        return Double.isFinite(value) && !Underflow.happened(value, digits) ? value : Double.NaN;
    }
}
