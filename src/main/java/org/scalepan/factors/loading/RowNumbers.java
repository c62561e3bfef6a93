package org.scalepan.factors.loading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.Grade;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;

/** The rows of all tables by their ids, and from where to where the numbers of a row reach. */
final class RowNumbers {
    private static final List<String> NUMBERS = List.of("value", "low", "high", "p5", "p10", "p50", "p90", "p95");

    private final Map<String, Row> rows = new HashMap<>();

    RowNumbers(Map<String, Table> tables) {
        tables.values().stream()
                .filter(table -> table.schema().fields().stream()
                        .anyMatch(field -> field.name().equals("value")))
                .flatMap(table -> table.rows().stream())
                .forEach(row -> rows.putIfAbsent(row.cell("id"), row));
    }

    boolean has(String id) {
        return rows.containsKey(id);
    }

    java.util.Set<String> ids() {
        return rows.keySet();
    }

    Optional<Grade> grade(String id) {
        return Optional.ofNullable(rows.get(id)).flatMap(row -> Grade.of(row.cell("check")));
    }

    /** The least and the most that rows print; nothing where none prints a number. */
    Optional<PrintedSpan> span(List<String> ids) {
        double[] numbers = ids.stream()
                .filter(rows::containsKey)
                .map(rows::get)
                .flatMap(row -> NUMBERS.stream().map(row::number))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .sorted()
                .toArray();
        return numbers.length == 0
                ? Optional.empty()
                : Optional.of(new PrintedSpan(numbers[0], numbers[numbers.length - 1]));
    }

    /** From the least to the most. */
    record PrintedSpan(double least, double most) {
        PrintedSpan times(PrintedSpan other) {
            return new PrintedSpan(least * other.least, most * other.most);
        }

        PrintedSpan over(PrintedSpan other) {
            return new PrintedSpan(least / other.most, most / other.least);
        }

        PrintedSpan times(double factor) {
            return new PrintedSpan(least * factor, most * factor);
        }
    }
}
