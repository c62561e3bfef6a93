package org.scalepan.factors.loading;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;

/** The rows that a rule can check: a rule is skipped where a cell that it reads is a fault already. */
final class ReadableRows {
    private final Map<String, Table> tables;
    private final Set<String> whole;
    private final Set<String> unreadable;
    private final Set<String> linesWithFaults;

    /**
     * @param whole names of the tables of which every row was read
     * @param known the faults found so far
     */
    ReadableRows(Map<String, Table> tables, Set<String> whole, List<Fault> known) {
        this.tables = tables;
        this.whole = whole;
        this.unreadable = known.stream()
                .map(fault -> place(fault.file(), fault.line(), fault.column()))
                .collect(Collectors.toUnmodifiableSet());
        this.linesWithFaults =
                known.stream().map(fault -> line(fault.file(), fault.line())).collect(Collectors.toUnmodifiableSet());
    }

    private static String line(String file, long line) {
        return file + ":" + line;
    }

    private static String place(String file, long line, int column) {
        return line(file, line) + ":" + column;
    }

    /** The rows of a table whose cells in these columns can be read. */
    List<Row> rows(String table, String... columns) {
        Table found = tables.get(table);
        return found == null
                ? List.of()
                : found.rows().stream().filter(row -> readable(row, columns)).toList();
    }

    /** True when a rule about a whole table can be checked. */
    boolean complete(String table, String... columns) {
        return whole.contains(table) && rows(table).stream().allMatch(row -> readable(row, columns));
    }

    /** True when none of these cells of the row is a fault of its own. */
    private boolean readable(Row row, String... columns) {
        if (linesWithFaults.isEmpty()
                || !linesWithFaults.contains(
                        line(row.place().file(), row.place().line()))) {
            return true;
        }
        return Stream.of(columns).filter(row.place().page()::has).noneMatch(column -> {
            Fault there = row.fault(column, "", "");
            return unreadable.contains(place(there.file(), there.line(), there.column()));
        });
    }
}
