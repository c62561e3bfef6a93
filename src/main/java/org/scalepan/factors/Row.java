package org.scalepan.factors;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One row of a table, cells by column name; an empty cell is absent.
 *
 * @param place where the row stands, for faults
 * @param overlaid true when the row came from the user's own folder
 */
public record Row(Place place, Map<String, String> cells, boolean overlaid) {

    /** File and line of a row, and the character at which each of its cells begins. */
    public record Place(String file, long line, Map<String, Integer> columns) {
        public Place {
            columns = Map.copyOf(columns);
        }

        Fault fault(String column, String what, String right) {
            return new Fault(file, line, columns.getOrDefault(column, 1), what, right);
        }
    }

    public Row {
        cells = Map.copyOf(cells);
    }

    /** The text of a cell that the schema requires. */
    public String text(String column) {
        String value = cells.get(column);
        if (value == null) {
            throw new NoSuchElementException(place.file() + ":" + place.line() + ": no " + column);
        }
        return value;
    }

    /** The text of a cell that may be empty. */
    public Optional<String> optional(String column) {
        return Optional.ofNullable(cells.get(column));
    }

    /** The number in a cell that may be empty. The schema check has refused what is not a finite number. */
    public OptionalDouble number(String column) {
        String value = cells.get(column);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(value));
    }

    /** The whole number in a cell that may be empty. */
    public OptionalInt integer(String column) {
        String value = cells.get(column);
        return value == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(value));
    }

    /** The ids in a cell that holds several, parted by semicolons. */
    public List<String> list(String column) {
        return optional(column).map(value -> List.of(value.split("\\s*;\\s*"))).orElse(List.of());
    }

    Fault fault(String column, String what, String right) {
        return place.fault(column, what, right);
    }
}
