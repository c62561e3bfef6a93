package org.scalepan.web.bulk;

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
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Nearest;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.read.CellNumber;
import org.scalepan.web.render.Json;

/**
 * The columns of a table of farms and herds, one system a row. A column is named as the field of the JSON records, a dot for each step
 * inwards, entries of a list counted from 1: {@code harvest.kg_per_year}, {@code feed.2.ingredient}.
 */
final class FlatColumns {
    private static final Set<String> TEXTS = Set.of(
            "kind",
            "name",
            "region",
            "product",
            "form",
            "co_product_allocation",
            "animals",
            "ipcc_edition",
            "ipcc_region",
            "productivity",
            "climate",
            "feed.#.ingredient",
            "feed.#.burden",
            "feed.#.displaces",
            "energy.#.carrier",
            "energy.#.for",
            "transport.#.mode",
            "materials.#.material",
            "co_products.#.name",
            "frass.fate",
            "frass.credited",
            "processing.#.step",
            "processing.#.carrier",
            "manure.#.system",
            "cattle.activity",
            "cattle.kind");
    private static final Set<String> NUMBERS = Set.of(
            "year",
            "grid_ghg_per_kwh",
            "sold_kg",
            "price_per_kg",
            "cycle_days",
            "pairs_stocked",
            "kept_for_breeding",
            "mortality",
            "harvest.kg_per_year",
            "harvest.containers",
            "harvest.kg_per_container",
            "harvest.cycles_per_year",
            "harvest.larvae",
            "harvest.larvae_per_kg",
            "feed.#.kg",
            "feed.#.moisture",
            "feed.#.displaced_kg_per_kg",
            "feed.#.ghg_per_kg",
            "feed.#.land_per_kg",
            "feed.#.energy_per_kg",
            "feed.#.water_per_kg",
            "energy.#.amount",
            "water_m3",
            "transport.#.tonne_km",
            "materials.#.kg",
            "materials.#.years",
            "building_m2",
            "yard_m2",
            "co_products.#.kg",
            "co_products.#.price_per_kg",
            "frass.kg",
            "frass.nitrogen",
            "processing.#.water_kg",
            "processing.#.kwh_per_kg",
            "heads",
            "yield.milk_kg",
            "yield.eggs_kg",
            "yield.live_kg",
            "manure.#.share",
            "cattle.weight_kg",
            "cattle.mature_weight_kg",
            "cattle.gain_kg_per_day",
            "cattle.milk_kg_per_day",
            "cattle.milk_fat_percent",
            "cattle.pregnant_share",
            "cattle.work_hours_per_day",
            "cattle.digestibility_percent",
            "cattle.methane_conversion_percent",
            "cattle.crude_protein_percent");
    private static final Pattern COUNTED = Pattern.compile("([a-z_]+)\\.([1-9]\\d{0,2})\\.([a-z_]+)");

    private final List<RecordColumn> columns;
    private final char decimal;

    private FlatColumns(List<RecordColumn> columns, char decimal) {
        this.columns = List.copyOf(columns);
        this.decimal = decimal;
    }

    /** One column: its name, the object or list it fills, the entry of the list (0 for none) and the field. */
    private record RecordColumn(String name, String group, int entry, String field, boolean number) {
        /** What all columns of one entry of a list have in common. */
        String owner() {
            return entry == 0 ? group : group + "." + entry;
        }
    }

    /** Reads a header; unknown and repeated columns are refused before any row is computed. */
    static FlatColumns read(List<String> header, char decimal) {
        List<Problem.FieldError> errors = new ArrayList<>();
        List<RecordColumn> columns = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : header) {
            String name = cell.strip();
            Optional<RecordColumn> column = column(name);
            if (column.isEmpty()) {
                errors.add(Problem.FieldError.of(
                        "column",
                        "unknown column \"" + (name.length() > 60 ? name.substring(0, 60) + "..." : name)
                                + "\"; /v1/footprints/template.csv shows columns",
                        List.of(),
                        near(name)));
            } else if (!seen.add(name)) {
                errors.add(Problem.FieldError.of("column", "the column " + name + " stands twice"));
            } else {
                columns.add(column.get());
            }
            if (errors.size() >= 20) {
                break;
            }
        }
        if (!errors.isEmpty()) {
            throw new ProblemException(Problem.badBody(errors));
        }
        return new FlatColumns(columns, decimal);
    }

    private static Optional<RecordColumn> column(String name) {
        Matcher counted = COUNTED.matcher(name);
        String pattern = counted.matches() ? counted.group(1) + ".#." + counted.group(3) : name;
        boolean number = NUMBERS.contains(pattern);
        if (name.contains("#") || !(number || TEXTS.contains(pattern))) {
            return Optional.empty();
        }
        if (counted.matches()) {
            return Optional.of(new RecordColumn(
                    name, counted.group(1), Integer.parseInt(counted.group(2)), counted.group(3), number));
        }
        int dot = name.indexOf('.');
        return Optional.of(
                new RecordColumn(name, dot < 0 ? "" : name.substring(0, dot), 0, name.substring(dot + 1), number));
    }

    private static List<String> near(String name) {
        Set<String> known = Stream.concat(TEXTS.stream(), NUMBERS.stream())
                .map(column -> column.replace('#', '1'))
                .collect(Collectors.toSet());
        return Nearest.to(name.replaceAll("\\d+", "1"), known.stream().sorted().toList(), 3);
    }

    int size() {
        return columns.size();
    }

    /** Turns the cells of a row into records; an empty cell is an absent field. */
    FlatRow row(List<String> cells) {
        ObjectNode records = Json.object();
        Map<String, ObjectNode> owners = new HashMap<>();
        Map<String, String> places = new LinkedHashMap<>();
        List<Problem.FieldError> errors = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            String cell = cells.get(i).strip();
            if (cell.isEmpty()) {
                continue;
            }
            RecordColumn column = columns.get(i);
            ObjectNode owner = owners.computeIfAbsent(column.owner(), name -> owner(records, column, places));
            if (!column.number()) {
                owner.put(column.field(), cell);
            } else {
                double value = CellNumber.read(cell, decimal);
                if (Double.isFinite(value)) {
                    owner.put(column.field(), value);
                } else {
                    errors.add(Problem.FieldError.of(
                            column.name(), column.name() + " must be a number such as 12" + decimal + "5"));
                }
            }
        }
        return new FlatRow(records, errors, places);
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
