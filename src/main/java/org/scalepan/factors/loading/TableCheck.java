package org.scalepan.factors.loading;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.factors.table.TableSchema;

/** Checks the rows of a table against its schema: types, required cells, allowed values, ranges, unique ids, foreign keys. */
final class TableCheck {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");
    private static final Pattern INTEGER = Pattern.compile("-?\\d{1,9}");
    private static final Pattern ZERO = Pattern.compile("-?[0.]+([eE].*)?");
    /** No quantity of the library is smaller or larger; beyond, ratios and squares would overflow or underflow. */
    private static final double SMALLEST = 1e-12;

    private static final double LARGEST = 1e12;
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private final List<Fault> faults;

    TableCheck(List<Fault> faults) {
        this.faults = faults;
    }

    /** Checks each cell by itself, and that unique columns have no duplicates. */
    void cells(Table table) {
        Map<String, Map<String, Long>> seen = new HashMap<>();
        for (Row row : table.rows()) {
            for (TableSchema.Field field : table.schema().fields()) {
                String cell = row.cell(field.name());
                if (cell.isEmpty()) {
                    if (field.required()) {
                        faults.add(row.fault(
                                field.name(), field.name() + " is missing", "give " + lowerFirst(field.description())));
                    }
                    continue;
                }
                cell(row, field, cell);
                if (field.unique() || field.name().equals(table.schema().primaryKey())) {
                    Long first = seen.computeIfAbsent(field.name(), name -> new HashMap<>())
                            .putIfAbsent(cell, row.place().line());
                    if (first != null) {
                        faults.add(row.fault(
                                field.name(),
                                "duplicate " + field.name() + " \"" + cell + "\"",
                                "it stands on line " + first + " already; every row needs its own"));
                    }
                }
            }
        }
    }

    private void cell(Row row, TableSchema.Field field, String cell) {
        if (field.type() == TableSchema.Type.STRING) {
            text(row, field, cell);
        } else {
            number(row, field, cell);
        }
        if (!field.allowed().isEmpty() && !field.allowed().contains(cell)) {
            faults.add(row.fault(
                    field.name(),
                    "unknown " + field.name() + " \"" + cell + "\"",
                    "it must be one of " + String.join(", ", field.allowed())));
        }
    }

    private void text(Row row, TableSchema.Field field, String cell) {
        if (FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0) {
            faults.add(row.fault(
                    field.name(),
                    field.name() + " begins with \"" + cell.charAt(0) + "\", which a spreadsheet runs as a formula",
                    "reword it, or make it a number"));
        }
        if (breaksTheLine(cell)) {
            faults.add(row.fault(
                    field.name(),
                    field.name() + " holds a line break, a tab or another control character",
                    "write it in one line of plain text"));
        }
        if (!cell.equals(cell.strip())) {
            faults.add(
                    row.fault(field.name(), field.name() + " has blanks at its start or end", "write it without them"));
        }
        field.pattern()
                .filter(pattern -> !pattern.matcher(cell).matches())
                .ifPresent(pattern -> faults.add(row.fault(
                        field.name(),
                        field.name() + " \"" + cell + "\" has a wrong form",
                        "it must match " + pattern)));
    }

    private static boolean breaksTheLine(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            boolean noCharacter = (c >= '\uFDD0' && c <= '\uFDEF') || c >= '\uFFFE';
            if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || noCharacter) {
                return true;
            }
        }
        return false;
    }

    private void number(Row row, TableSchema.Field field, String cell) {
        Pattern form = field.type() == TableSchema.Type.INTEGER ? INTEGER : NUMBER;
        if (!form.matcher(cell).matches() || !Double.isFinite(Double.parseDouble(cell))) {
            faults.add(row.fault(
                    field.name(),
                    field.name() + " \"" + cell + "\" is not a "
                            + (field.type() == TableSchema.Type.INTEGER ? "whole number" : "number"),
                    field.type() == TableSchema.Type.INTEGER
                            ? "write digits alone, such as 2012"
                            : "write digits with a decimal point, such as 2.65"));
            return;
        }
        double value = Double.parseDouble(cell);
        // By the digits too: a number too small for a double is read as 0, which would pass.
        boolean zero = value == 0 && ZERO.matcher(cell).matches();
        if (!zero && !(Math.abs(value) >= SMALLEST && Math.abs(value) <= LARGEST)) {
            faults.add(row.fault(
                    field.name(),
                    field.name() + " is " + cell,
                    "a number other than 0 must lie between 1e-12 and 1e12, with or without a minus"));
            return;
        }
        field.minimum().ifPresent(minimum -> {
            if (value < minimum) {
                faults.add(
                        row.fault(field.name(), field.name() + " is " + cell, "it must be at least " + plain(minimum)));
            }
        });
        field.maximum().ifPresent(maximum -> {
            if (value > maximum) {
                faults.add(
                        row.fault(field.name(), field.name() + " is " + cell, "it must be at most " + plain(maximum)));
            }
        });
    }

    /** As a person writes it: 2100, not 2100.0. */
    private static String plain(double limit) {
        return BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
    }

    /**
     * Checks that every id which a row names exists in the table (or among the sources) that it points to.
     *
     * @param tables the tables that can be pointed to; a key to any other is ignored
     * @param sources ids of the sources, when they could be read
     */
    void links(Table table, Map<String, Table> tables, Optional<Set<String>> sources) {
        for (TableSchema.ForeignKey key : table.schema().foreignKeys()) {
            String resource = key.resource().isEmpty() ? table.schema().name() : key.resource();
            Table target = tables.get(resource);
            if (target != null) {
                Set<String> ids = target.rows().stream()
                        .flatMap(row -> row.optional(key.referenced()).stream())
                        .collect(java.util.stream.Collectors.toUnmodifiableSet());
                link(table, key.field(), ids, target.schema().path());
            }
        }
        table.schema().fields().stream()
                .filter(TableSchema.Field::citesSource)
                .forEach(field -> sources.ifPresent(ids -> link(table, field.name(), ids, "sources.json")));
    }

    private void link(Table table, String field, Set<String> ids, String where) {
        boolean several = table.schema().fields().stream()
                .anyMatch(column -> column.name().equals(field) && column.list().isPresent());
        for (Row row : table.rows()) {
            // A cell is one id, semicolons and all, unless the schema says that the column holds several.
            for (String id :
                    several ? row.list(field) : row.optional(field).stream().toList()) {
                if (!ids.contains(id)) {
                    String near = Nearest.to(id, ids, 1).stream()
                            .findFirst()
                            .map(name -> "did you mean \"" + name + "\"? ")
                            .orElse("");
                    faults.add(row.fault(
                            field, "unknown " + field + " \"" + id + "\"", near + "it must be an id of " + where));
                }
            }
        }
    }

    private static String lowerFirst(String text) {
        return text.isEmpty() ? "it" : Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }
}
