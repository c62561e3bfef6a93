package org.scalepan.web.render;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.scalepan.sheet.Cell;
import org.scalepan.sheet.Sheet;

/**
 * The columns of a sheet that shows rows of JSON: numbers stay numeric.
 *
 * @param naming how many columns at the left name a row, and are seen beside every other
 */
public record Columns(List<SheetColumn> columns, int naming) {
    public Columns {
        columns = List.copyOf(columns);
    }

    public static Columns of(SheetColumn... columns) {
        return new Columns(List.of(columns), 0);
    }

    /** The same columns, of which the first name the rows. */
    public Columns named(int first) {
        return new Columns(columns, first);
    }

    /**
     * A sheet with a head and a row for each node. A column that has nothing in any row is there for programs, which look for it by name,
     * but is not shown.
     */
    public Sheet sheet(String name, List<JsonNode> nodes) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(columns.stream().map(column -> column.headCell(nodes)).toList());
        nodes.forEach(node ->
                rows.add(columns.stream().map(column -> column.cell(node)).toList()));
        Set<Integer> hidden = nodes.isEmpty()
                ? Set.of()
                : IntStream.range(0, columns.size())
                        .filter(i -> columns.get(i).isEmpty(nodes))
                        .boxed()
                        .collect(Collectors.toSet());
        return new Sheet(
                        name,
                        columns.stream().map(column -> column.width(nodes)).toList(),
                        1,
                        rows)
                .withHidden(hidden)
                .withHeadColumns(naming);
    }
}
