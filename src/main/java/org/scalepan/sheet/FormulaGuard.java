package org.scalepan.sheet;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from running text as a formula: such text is led by an apostrophe. Excel and Calc take a cell that begins with
 * {@code = + - @}, a tab or a line end for a formula when they read it from CSV, and again when a workbook is saved as CSV and reopened.
 * Some take the full-width signs too. Numbers are never guarded, because a negative number is one.
 *
 * <p>A spreadsheet set to another separator than the file's begins a cell within the text; there the apostrophe stands behind that
 * separator.
 */
public final class FormulaGuard {
    private static final String SIGN = "[=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20]";
    /** Blanks and invisible characters before the sign do not stop a spreadsheet. */
    private static final String UNSEEN = "[\\p{Z}\\p{C}]*";

    /** A leading tab or line end hides a sign. */
    private static final Pattern START = Pattern.compile("^(?=[\\t\\r\\n]|" + UNSEEN + SIGN + ")");

    /** Behind a comma a minus is mostly that of a number in a sentence, and is none of a formula. */
    private static final Pattern INNER =
            Pattern.compile("(?<=[;|\\t])(?=" + UNSEEN + SIGN + ")|(?<=,)(?=" + UNSEEN + "[=@\\uFF1D\\uFF20])");

    private FormulaGuard() {}

    /** The text, led by an apostrophe if a spreadsheet would run it. */
    public static String guarded(String text) {
        return START.matcher(INNER.matcher(text).replaceAll("'")).replaceFirst("'");
    }
}
