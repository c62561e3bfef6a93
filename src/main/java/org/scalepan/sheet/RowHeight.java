package org.scalepan.sheet;

import java.util.List;
import java.util.OptionalDouble;

/** How high a row must be for its longer texts. Not every reader works that out when it opens a file. */
final class RowHeight {
    private static final double POINTS_OF_A_LINE = 13;
    /** Widths count the digit 0; letters of running text are narrower. */
    private static final double LETTERS = 1.15;
    /** The highest row of Excel, in points. */
    private static final double MOST = 409;

    private RowHeight() {}

    /**
     * The height in points; empty for a row of single lines.
     *
     * @param later how many lines texts may take that come later
     */
    static OptionalDouble of(List<Cell> cells, List<Integer> widths, int later) {
        int lines = 1;
        for (int i = 0; i < Math.min(cells.size(), widths.size()); i++) {
            Cell cell = cells.get(i);
            if (cell.content() instanceof Cell.Live && cell.look() == Cell.Look.WRAPPED) {
                lines = Math.max(lines, later);
            }
            boolean head = cell.look() == Cell.Look.HEAD || cell.look() == Cell.Look.HEAD_OF_NUMBERS;
            if ((head || cell.look() == Cell.Look.WRAPPED) && cell.content() instanceof Cell.Text text) {
                lines = Math.max(lines, lines(text.text(), head ? widths.get(i) - 1 : (int) (widths.get(i) * LETTERS)));
            }
        }
        return lines == 1 ? OptionalDouble.empty() : OptionalDouble.of(Math.min(MOST, lines * POINTS_OF_A_LINE));
    }

    /** Lines of a text that is broken between words, and within words that are longer than a line. */
    static int lines(String text, int width) {
        int lines = 1;
        int used = 0;
        for (String word : text.split(" ", -1)) {
            int length = word.length();
            if (used > 0 && used + 1 + length > width) {
                lines++;
                used = 0;
            }
            lines += length > width ? (length - 1) / width : 0;
            used += (used > 0 ? 1 : 0) + (length > width ? (length - 1) % width + 1 : length);
        }
        return lines;
    }
}
