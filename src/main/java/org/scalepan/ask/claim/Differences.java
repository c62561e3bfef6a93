package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.scalepan.factors.PublishedResult;

/**
 * Why the sources of a grid differ: in which of unit, boundary, warming set, land-use change, allocation, region and year
 * they differ as published.
 *
 * @param rows every published number used anywhere in the grid
 * @param differing the fields that differ, each with its values; fields that are the same in all are left out
 */
public record Differences(List<DifferenceRow> rows, Map<String, List<String>> differing) {
    /** The value of a field that the publication does not state. */
    public static final String NOT_STATED = "not-stated";

    public Differences {
        rows = List.copyOf(rows);
        differing = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(differing));
    }

    /**
     * One published number.
     *
     * @param ofProduct true when it is about the product, false when about the reference
     * @param asked true when it is used on the basis asked
     * @param fields what it is about, by field
     */
    public record DifferenceRow(
            String id, String source, boolean ofProduct, boolean asked, Map<String, String> fields) {
        public DifferenceRow {
            fields = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        }
    }

    static Differences of(List<GridCell> cells) {
        Map<String, DifferenceRow> rows = new LinkedHashMap<>();
        for (GridCell cell : cells) {
            boolean asked = cell.equals(cells.get(0));
            collect(cell.product().results(), true, asked, rows);
            cell.reference().ifPresent(side -> collect(side.results(), false, asked, rows));
        }
        Map<String, Set<String>> values = new LinkedHashMap<>();
        rows.values()
                .forEach(row -> row.fields()
                        .forEach((field, value) -> values.computeIfAbsent(field, name -> new LinkedHashSet<>())
                                .add(value)));
        Map<String, List<String>> differing = new LinkedHashMap<>();
        values.forEach((field, found) -> {
            if (found.size() > 1) {
                differing.put(field, List.copyOf(found));
            }
        });
        return new Differences(new ArrayList<>(rows.values()), differing);
    }

    private static void collect(
            List<PublishedResult> results, boolean ofProduct, boolean asked, Map<String, DifferenceRow> rows) {
        results.forEach(result -> rows.putIfAbsent(
                result.id(),
                new DifferenceRow(result.id(), result.cited().source(), ofProduct, asked, fields(result))));
    }

    private static Map<String, String> fields(PublishedResult result) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("unit", result.publishedBasis());
        fields.put("boundary", result.boundary().id());
        result.gwp().ifPresent(set -> fields.put("warming_set", set));
        if (!result.luc().equals("not-applicable")) {
            fields.put("land_use_change", result.luc());
        }
        fields.put("allocation", result.allocation().orElse(NOT_STATED));
        fields.put("region", result.region());
        fields.put(
                "year",
                result.dataYear().isPresent()
                        ? Integer.toString(result.dataYear().getAsInt())
                        : NOT_STATED);
        return fields;
    }
}
