package org.scalepan.exchange.rows;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scalepan.exchange.text.CellNumber;
import org.scalepan.exchange.text.Json;
import org.scalepan.exchange.text.RefusedText;
import org.scalepan.factors.Nearest;
import org.scalepan.input.FieldError;
import org.scalepan.production.FieldKind;
import org.scalepan.production.RecordField;

/**
 * The columns of a table of farms and herds, one system a row. A column is named as the field of the JSON records, a dot for each step
 * inwards, entries of a list counted from 1: {@code harvest.kg_per_year}, {@code feed.2.ingredient}.
 */
public final class FlatColumns {
    private static final Pattern COUNTED = Pattern.compile("([a-z_]+)\\.([1-9]\\d{0,2})\\.([a-z_]+)");

    private static final FieldError TWICE =
            FieldError.of("product", "give product, an id, or product.name and what goes with it, not both");

    private static final String PRODUCT = RecordField.PRODUCT.path();

    private final List<RecordColumn> columns;
    private final char decimal;

    private FlatColumns(List<RecordColumn> columns, char decimal) {
        this.columns = List.copyOf(columns);
        this.decimal = decimal;
    }

    /** One column: its name, the object or list it fills, the entry of the list (0 for none) and the field. */
    private record RecordColumn(
            String name, String group, int entry, String field, boolean number, boolean range, String owner) {
        /** @param owner what all columns of one entry of a list have in common */
        RecordColumn {}

        static RecordColumn of(String name, String group, int entry, String field, FieldKind kind) {
            return new RecordColumn(
                    name,
                    group,
                    entry,
                    field,
                    kind.isNumber(),
                    kind == FieldKind.NUMBER,
                    entry == 0 ? group : group + "." + entry);
        }
    }

    /**
     * Reads a header; unknown and repeated columns are refused before any row is computed.
     *
     * @throws RefusedText with every error
     */
    public static FlatColumns read(List<String> header, char decimal) {
        List<FieldError> errors = new ArrayList<>();
        List<RecordColumn> columns = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : header) {
            String name = cell.strip();
            Optional<RecordColumn> column = column(name);
            if (column.isEmpty()) {
                errors.add(FieldError.of(
                        "column",
                        "unknown column \"" + (name.length() > 60 ? name.substring(0, 60) + "..." : name)
                                + "\"; /v1/footprints/template.csv shows columns",
                        List.of(),
                        near(name)));
            } else if (!seen.add(name)) {
                errors.add(FieldError.of("column", "the column " + name + " stands twice"));
            } else {
                columns.add(column.get());
            }
            if (errors.size() >= 20) {
                break;
            }
        }
        if (!errors.isEmpty()) {
            throw new RefusedText(errors);
        }
        return new FlatColumns(columns, decimal);
    }

    private static Optional<RecordColumn> column(String name) {
        Matcher counted = COUNTED.matcher(name);
        String pattern = counted.matches() ? counted.group(1) + ".#." + counted.group(3) : name;
        Optional<RecordField> known = name.contains("#") ? Optional.empty() : RecordField.at(pattern);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        FieldKind kind = known.get().kind();
        if (counted.matches()) {
            return Optional.of(RecordColumn.of(
                    name, counted.group(1), Integer.parseInt(counted.group(2)), counted.group(3), kind));
        }
        int dot = name.indexOf('.');
        return Optional.of(
                RecordColumn.of(name, dot < 0 ? "" : name.substring(0, dot), 0, name.substring(dot + 1), kind));
    }

    private static List<String> near(String name) {
        List<String> known = Stream.of(RecordField.values())
                .map(field -> field.path().replace('#', '1'))
                .sorted()
                .toList();
        return Nearest.to(name.replaceAll("\\d+", "1"), known, 3);
    }

    /** The name of a column, counted from 0. */
    String name(int index) {
        return columns.get(index).name();
    }

    public int size() {
        return columns.size();
    }

    /** Turns the cells of a row into records; an empty cell is an absent field. */
    public FlatRow row(List<String> cells) {
        ObjectNode records = Json.object();
        Map<String, ObjectNode> owners = new HashMap<>();
        Map<String, String> places = new LinkedHashMap<>();
        List<FieldError> errors = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            String cell = cells.get(i).strip();
            if (cell.isEmpty()) {
                continue;
            }
            RecordColumn column = columns.get(i);
            if (isTwice(records, column)) {
                // One of the columns says it for all of them.
                return new FlatRow(records, List.of(TWICE), places);
            }
            ObjectNode owner = owners.computeIfAbsent(column.owner(), name -> owner(records, column, places));
            if (!column.number()) {
                owner.put(column.field(), cell);
            } else {
                number(owner, column, cell).ifPresent(errors::add);
            }
        }
        return new FlatRow(records, errors, places);
    }

    /** True where a column fills a field that another has filled as something else: an id, and the parts of an object. */
    private static boolean isTwice(ObjectNode records, RecordColumn column) {
        return column.name().equals(PRODUCT)
                ? records.has(PRODUCT)
                : column.group().equals(PRODUCT) && records.path(PRODUCT).isTextual();
    }

    /** Puts a number or a range into the records, or says what would be right. */
    private Optional<FieldError> number(ObjectNode owner, RecordColumn column, String cell) {
        double value = CellNumber.read(cell, decimal);
        if (Double.isFinite(value)) {
            owner.put(column.field(), value);
            return Optional.empty();
        }
        double[] ends = column.range() ? CellNumber.readRange(cell, decimal) : new double[0];
        if (ends.length == 0) {
            String ranges = column.range() ? ", or a range such as 400..600 or 400..500..600" : "";
            return Optional.of(FieldError.of(
                    column.name(), column.name() + " must be a number such as 12" + decimal + "5" + ranges));
        }
        ArrayNode range = owner.putArray(column.field());
        for (double end : ends) {
            range.add(end);
        }
        return Optional.empty();
    }

    private static ObjectNode owner(ObjectNode records, RecordColumn column, Map<String, String> places) {
        if (column.group().isEmpty()) {
            return records;
        }
        if (column.entry() == 0) {
            return records.putObject(column.group());
        }
        ArrayNode list =
                records.path(column.group()) instanceof ArrayNode found ? found : records.putArray(column.group());
        // Empty entries are left out of the list, so the index in a pointer has to be mapped back to its column.
        places.put("/" + column.group() + "/" + list.size(), column.owner());
        return list.addObject();
    }
}
