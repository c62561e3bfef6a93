package org.scalepan.web;

import java.util.regex.Pattern;

/** Reads a number out of a cell of a table: digits with a decimal sign, perhaps with an exponent; no grouping, no words. */
final class CellNumber {
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?([eE][+-]?\\d{1,3})?");
    /** Up to here whole numbers and powers of ten are exact doubles, so that one division rounds once, as a parser must. */
    private static final int MOST_EXACT_DIGITS = 15;

    private static final double[] TENS = new double[MOST_EXACT_DIGITS + 1];

    static {
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = StrictMath.pow(10, i);
        }
    }

    private CellNumber() {}

    /**
     * The number in a part of a text.
     *
     * @param decimal the decimal sign
     * @return not a number when it is none
     */
    static double read(char[] text, int from, int to, char decimal) {
        long digits = 0;
        int whole = 0;
        int at = from;
        for (; at < to && isDigit(text[at]); at++, whole++) {
            digits = digits * 10 + (text[at] - '0');
            if (whole >= MOST_EXACT_DIGITS) {
                break;
            }
        }
        int parts = 0;
        if (at < to && text[at] == decimal) {
            for (at++; at < to && isDigit(text[at]) && whole + parts < MOST_EXACT_DIGITS; at++, parts++) {
                digits = digits * 10 + (text[at] - '0');
            }
            if (parts == 0) {
                whole = 0;
            }
        }
        boolean plain = at == to && whole > 0 && whole + parts <= MOST_EXACT_DIGITS;
        return plain ? digits / TENS[parts] : read(new String(text, from, to - from), decimal);
    }

    /** The same of a whole text. */
    static double read(String cell, char decimal) {
        String digits = decimal == '.' ? cell : cell.indexOf('.') >= 0 ? "" : cell.replace(decimal, '.');
        double value = DECIMAL.matcher(digits).matches() ? Double.parseDouble(digits) : Double.NaN;
        return Double.isFinite(value) ? value : Double.NaN;
    }

    private static boolean isDigit(char character) {
        return character >= '0' && character <= '9';
    }
}
