package org.scalepan.factors.table;

/**
 * One thing wrong in the factor library, at a place that an editor can jump to.
 *
 * @param file path inside the library, for instance {@code results.csv}
 * @param line line in that file, counted from 1
 * @param column character in that line, counted from 1
 * @param what what is wrong there
 * @param right what would be right instead
 */
public record Fault(String file, long line, int column, String what, String right) {

    /** The form that the service prints at start: {@code file:line:column: what, and what would be right}. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column + ": " + what + "; " + right;
    }
}
