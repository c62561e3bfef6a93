package org.scalepan.factors.loading;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.factors.ReferenceFarm.DefaultPlace;
import org.scalepan.factors.ReferenceFarm.PracticeBasis;
import org.scalepan.factors.ReferenceFarm.PracticeInput;
import org.scalepan.factors.loading.RowNumbers.PrintedSpan;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Table;

/**
 * Rules of reference farms: every number of the system has what stands behind it, every row is in the tables, and no number lies outside
 * what its rows print.
 */
final class ReferenceFarmCheck {
    /** Numbers are written with three or four digits. */
    private static final double ROUNDING = 0.01;

    /** A range whose ends have the same ratio as another's, but for rounding. */
    private static final double SAME_RATIO = 0.02;

    private static final String NO_SOURCE = "common practice, no source";

    private final Map<String, Table> tables;
    private final RowNumbers rows;
    private final List<Fault> faults;
    private final Map<DefaultPlace, String> defaults = new HashMap<>();

    ReferenceFarmCheck(Map<String, Table> tables, List<Fault> faults) {
        this.tables = tables;
        this.rows = new RowNumbers(tables);
        this.faults = faults;
    }

    /**
     * @param name name of the file, without its folder and ending
     * @param system the tree of the farm's system
     */
    void check(String name, ReferenceFarm farm, JsonNode system, JsonLines lines) {
        if (!farm.id().equals(name)) {
            faults.add(lines.fault("/id", "id \"" + farm.id() + "\" in the file " + name, "both must be the same"));
        }
        known("products", farm.product(), "/product", lines);
        farm.region().ifPresent(region -> known("regions", region, "/region", lines));
        defaults(farm, lines);
        for (int i = 0; i < farm.uncounted().size(); i++) {
            String pointer = "/uncounted/" + i + "/bounds";
            farm.uncounted().get(i).bounds().forEach(indicator -> known("indicators", indicator, pointer, lines));
        }
        Map<String, List<Double>> numbers = new LinkedHashMap<>();
        numbers(system, "", numbers);
        numbers.forEach((field, range) -> range(field, range, lines));
        inputs(farm, system, numbers, lines);
        for (int i = 0; i < farm.drawnTogether().size(); i++) {
            together(farm.drawnTogether().get(i), numbers, "/drawn_together/" + i, lines);
        }
    }

    private void known(String table, String id, String pointer, JsonLines lines) {
        Set<String> ids = Optional.ofNullable(tables.get(table)).stream()
                .flatMap(found -> found.rows().stream())
                .map(row -> row.cell("id"))
                .collect(Collectors.toUnmodifiableSet());
        if (!ids.contains(id)) {
            faults.add(lines.fault(pointer, "\"" + id + "\" is not in " + table + ".csv", meant(id, ids)));
        }
    }

    private static String meant(String id, Set<String> ids) {
        return Nearest.to(id, ids, 1).stream()
                .findFirst()
                .map(near -> "did you mean " + near + "?")
                .orElse("add the row, or take one that is there");
    }

    private void defaults(ReferenceFarm farm, JsonLines lines) {
        for (int i = 0; i < farm.defaults().size(); i++) {
            DefaultPlace place = farm.defaults().get(i);
            String pointer = "/default_for/" + i;
            known("products", place.product(), pointer + "/product", lines);
            String first = defaults.putIfAbsent(place, farm.id());
            if (first != null) {
                faults.add(lines.fault(
                        pointer,
                        "a second default for " + place.product() + " in a " + place.climate() + " climate",
                        first + " is the default already; leave one"));
            }
        }
    }

    /** The numbers of the system by their fields: one, or the two or three of a range. */
    private static void numbers(JsonNode node, String path, Map<String, List<Double>> numbers) {
        if (node.isNumber()) {
            numbers.put(path, List.of(node.asDouble()));
        } else if (node.isArray() && !node.isEmpty() && node.get(0).isNumber()) {
            List<Double> range = new ArrayList<>();
            node.forEach(number -> range.add(number.asDouble()));
            numbers.put(path, range);
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                numbers(node.get(i), path + "." + i, numbers);
            }
        } else {
            node.properties()
                    .forEach(field -> numbers(
                            field.getValue(), path.isEmpty() ? field.getKey() : path + "." + field.getKey(), numbers));
        }
    }

    private void range(String field, List<Double> range, JsonLines lines) {
        boolean ordered = range.stream().sorted().toList().equals(range);
        if (range.size() > 3 || !ordered || (range.size() > 1 && range.get(0).equals(range.get(range.size() - 1)))) {
            faults.add(lines.fault(
                    pointer(field),
                    "the range " + range,
                    "write [low, high] or [low, best guess, high], the least first, or one number"));
        }
    }

    private void inputs(ReferenceFarm farm, JsonNode system, Map<String, List<Double>> numbers, JsonLines lines) {
        Set<String> told = new HashSet<>();
        for (int i = 0; i < farm.inputs().size(); i++) {
            PracticeInput input = farm.inputs().get(i);
            String pointer = "/inputs/" + i;
            if (!told.add(input.field())) {
                faults.add(lines.fault(pointer + "/field", "a second input for " + input.field(), "leave one"));
            }
            if (system.at("/" + input.field().replace('.', '/')).isMissingNode()) {
                faults.add(lines.fault(
                        pointer + "/field",
                        "the system has no " + input.field(),
                        "name a field that is there, such as feed.0.kg"));
                continue;
            }
            input(input, numbers.getOrDefault(input.field(), List.of()), pointer, lines);
        }
        numbers.keySet().stream()
                .filter(field -> !told.contains(field))
                .forEach(field -> faults.add(
                        lines.fault(pointer(field), "a number with nothing behind it", "add an input for " + field)));
    }

    private void input(PracticeInput input, List<Double> range, String pointer, JsonLines lines) {
        boolean published = input.basis() == PracticeBasis.PUBLISHED;
        List<String> ids = input.rowIds();
        if ((published && ids.isEmpty()) || (input.basis() == PracticeBasis.CHOSEN && !ids.isEmpty())) {
            faults.add(lines.fault(
                    pointer + "/rows",
                    published ? "published, and no row" : "chosen, and rows",
                    "an input is published where it has rows, else practice or chosen"));
        }
        if (input.basis() == PracticeBasis.PRACTICE
                && !input.why().toLowerCase(Locale.ROOT).contains(NO_SOURCE)) {
            faults.add(lines.fault(
                    pointer + "/why", "practice that is not told as such", "say \"" + NO_SOURCE + "\" in it"));
        }
        List<String> missing = ids.stream().filter(id -> !rows.has(id)).toList();
        missing.forEach(id ->
                faults.add(lines.fault(pointer + "/rows", "no table has a row \"" + id + "\"", meant(id, rows.ids()))));
        if (missing.isEmpty()) {
            grade(input, ids, pointer, lines);
            within(input, range, pointer, lines);
        }
    }

    private void grade(PracticeInput input, List<String> ids, String pointer, JsonLines lines) {
        Optional<Grade> lowest = switch (input.basis()) {
            case PUBLISHED ->
                ids.stream().flatMap(id -> rows.grade(id).stream()).max(Grade::compareTo);
            case PRACTICE -> Optional.of(Grade.MEMORY);
            case CHOSEN -> Optional.empty();
        };
        if (!lowest.equals(input.grade())) {
            faults.add(lines.fault(
                    pointer + "/grade",
                    "grade \"" + input.grade().map(Grade::id).orElse("") + "\" of " + input.field(),
                    lowest.map(grade -> "its lowest grade is " + grade.id())
                            .orElse("leave it out: nothing was seen, nothing rests on it")));
        }
    }

    private void within(PracticeInput input, List<Double> range, String pointer, JsonLines lines) {
        if (range.isEmpty()
                || input.basis() != PracticeBasis.PUBLISHED
                || input.rowIds().isEmpty()) {
            return;
        }
        PrintedSpan span = new PrintedSpan(input.times(), input.times());
        for (List<String> group : input.rows()) {
            span = span.times(rows.span(group).orElse(new PrintedSpan(0, 0)));
        }
        for (List<String> group : input.over()) {
            span = span.over(rows.span(group).orElse(new PrintedSpan(0, 0)));
        }
        double least = span.least() - ROUNDING * Math.abs(span.least());
        double most = span.most() + ROUNDING * Math.abs(span.most());
        if (range.get(0) < least || range.get(range.size() - 1) > most) {
            faults.add(lines.fault(
                    pointer + "/field",
                    input.field() + " " + range + " is outside what its rows print",
                    String.format(Locale.ROOT, "they reach from %.6g to %.6g", span.least(), span.most())));
        }
    }

    private void together(List<String> fields, Map<String, List<Double>> numbers, String pointer, JsonLines lines) {
        List<Double> first = numbers.getOrDefault(fields.get(0), List.of());
        for (String field : fields) {
            List<Double> range = numbers.getOrDefault(field, List.of());
            boolean alike = range.size() > 1 && range.size() == first.size();
            for (int i = 1; alike && i < range.size(); i++) {
                double ratio = range.get(i) / range.get(0) / (first.get(i) / first.get(0));
                alike = Math.abs(ratio - 1) <= SAME_RATIO;
            }
            if (!alike) {
                faults.add(lines.fault(
                        pointer,
                        field + " cannot be drawn with " + fields.get(0),
                        "both must be ranges whose ends have the same ratio"));
            }
        }
    }

    private static String pointer(String field) {
        return "/system/" + field.replace('.', '/');
    }
}
