package org.scalepan.sheet;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * One sheet. It is printed on A4 across, its head on every page, and on as many pages side by side as its type stays readable on.
 *
 * @param name shown on its tab
 * @param widths of the columns from the left, in characters
 * @param headRows how many rows stay in view while the rest scrolls
 * @param headColumns how many columns do
 * @param rows cells from the left; rows may differ in length
 * @param charts pictures of its numbers
 * @param laterLines how many lines a row has room for whose longer texts come with an answer after the file was opened; no reader fits it then
 * @param hidden columns that only other cells or programs need, counted from 0; neither shown nor printed
 */
public record Sheet(
        String name,
        List<Integer> widths,
        int headRows,
        int headColumns,
        List<List<Cell>> rows,
        List<DotChart> charts,
        int laterLines,
        Set<Integer> hidden) {
    /** How many characters of the usual type stand side by side on a page across, when they are made a third smaller. */
    private static final int CHARACTERS_OF_A_PAGE = 200;

    public Sheet {
        widths = List.copyOf(widths);
        rows = rows.stream().map(List::copyOf).toList();
        charts = List.copyOf(charts);
        hidden = Set.copyOf(hidden);
    }

    public Sheet(String name, List<Integer> widths, int headRows, List<List<Cell>> rows) {
        this(name, widths, headRows, 0, rows, List.of(), 1, Set.of());
    }

    public Sheet withHeadColumns(int columns) {
        return new Sheet(name, widths, headRows, columns, rows, charts, laterLines, hidden);
    }

    public Sheet withCharts(List<DotChart> pictures) {
        return new Sheet(name, widths, headRows, headColumns, rows, pictures, laterLines, hidden);
    }

    public Sheet withHidden(Set<Integer> columns) {
        return new Sheet(name, widths, headRows, headColumns, rows, charts, laterLines, columns);
    }

    public Sheet withLaterLines(int lines) {
        return new Sheet(name, widths, headRows, headColumns, rows, charts, lines, hidden);
    }

    /** How many columns have cells. */
    int columns() {
        return rows.stream().mapToInt(List::size).max().orElse(0);
    }

    /** How many pages it takes side by side. */
    int pagesAcross() {
        int shown = IntStream.range(0, widths.size())
                .filter(column -> !hidden.contains(column))
                .map(widths::get)
                .sum();
        return charts.isEmpty() ? 1 + (shown - 1) / CHARACTERS_OF_A_PAGE : 1;
    }
}
