package org.scalepan.factors.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** One row of a table, cells by column name; an empty cell is absent. */
public final class Row {
    private static final Pattern SEMICOLON = Pattern.compile("\\s*;\\s*");

    private final RowPlace place;
    private final List<String> cells;
    private final boolean overlaid;

    /** File and line of a row. */
    public record RowPlace(CsvPage page, long line) {
        public String file() {
            return page.file();
        }
    }

    /**
     * @param place file and line of the row, for faults
     * @param cells one for each column of its file; empty ones are absent
     * @param overlaid true when the row came from the user's own folder
     */
    public Row(RowPlace place, List<String> cells, boolean overlaid) {
        this.place = place;
        this.cells = cells;
        this.overlaid = overlaid;
    }

    public RowPlace place() {
        return place;
    }

    public boolean overlaid() {
        return overlaid;
    }

    /** The cells that are not empty, by column, in the order of the file. */
    public Map<String, String> cells() {
        Map<String, String> byColumn = new LinkedHashMap<>();
        place.page().header().forEach(column -> optional(column).ifPresent(cell -> byColumn.put(column, cell)));
        return byColumn;
    }

    /** The text of a cell, or an empty one when the cell is absent. */
    public String cell(String column) {
        int index = place.page().index(column);
        return index < 0 ? "" : cells.get(index);
    }

    /** The text of a cell that the schema requires. */
    public String text(String column) {
        String value = cell(column);
        if (value.isEmpty()) {
            throw new NoSuchElementException(place.file() + ":" + place.line() + ": no " + column);
        }
        return value;
    }

    /** The text of a cell that may be empty. */
    public Optional<String> optional(String column) {
        String value = cell(column);
        return value.isEmpty() ? Optional.empty() : Optional.of(value);
    }

    /** The number in a cell that may be empty. The schema check has refused what is not a finite number. */
    public OptionalDouble number(String column) {
        String value = cell(column);
        return value.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(value));
    }

    /** The whole number in a cell that may be empty. */
    public OptionalInt integer(String column) {
        String value = cell(column);
        return value.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(value));
    }

    /** The ids in a cell that holds several, separated by semicolons. */
    public List<String> list(String column) {
        return optional(column)
                .map(value -> value.indexOf(';') < 0 ? List.of(value) : List.of(SEMICOLON.split(value)))
                .orElse(List.of());
    }

    public Fault fault(String column, String what, String right) {
        return place.page().fault(place.line(), column, what, right);
    }
}
