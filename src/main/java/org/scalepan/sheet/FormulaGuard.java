package org.scalepan.sheet;

/**
 * Keeps a spreadsheet from running text as a formula: such text is led by an apostrophe. Excel and Calc take a cell that begins with
 * {@code = + - @}, a tab or a line end for a formula when they read it from CSV, and again when a workbook is saved as CSV and reopened.
 * Numbers are never guarded, because a negative number is one.
 */
public final class FormulaGuard {
    private static final String STARTS = "=+-@\t\r\n";

    private FormulaGuard() {}

    /** The text, led by an apostrophe if a spreadsheet would run it. */
    public static String guarded(String text) {
        // Blanks before the sign do not stop a spreadsheet, and a leading tab or line end hides one.
        return starts(text) || starts(text.stripLeading()) ? "'" + text : text;
    }

    private static boolean starts(String text) {
        return !text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0;
    }
}
