package org.scalepan.factors.loading;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Gas;
import org.scalepan.factors.Regions;
import org.scalepan.factors.SpreadDefaults;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;

/**
 * Consistency rules that a column's schema cannot express: they hold between the cells of a row or between rows. A rule is skipped where a
 * cell that it reads is a fault already, so that one start shows every fault once.
 */
final class ConsistencyCheck {
    /** Spreads whose low and high stand about the mean and may lie beyond the value's own sign. */
    private static final Set<String> ABOUT_THE_MEAN = Set.of("sd", "se");

    /** Spreads whose limits are symmetric in print even where the quantity itself is bounded. */
    private static final Set<String> MAY_PASS_THE_BOUNDS = Set.of("sd", "se", "ci95");

    private static final List<String> PERCENTILES = List.of("p5", "p10", "p50", "p90", "p95");

    /** The columns that state a printed number. */
    private static final String[] PRINTED = {"value", "low", "high", "spread", "p5", "p10", "p50", "p90", "p95"};

    private static final String[] SCORES = {"spread", "reliability", "completeness", "technology"};

    /** The quantities that the functional-unit chain divides by, and the one unit of each. */
    private static final Map<String, String> CHAIN = Map.of(
            "dressing-fraction", "fraction",
            "bone-free-fraction", "fraction",
            "edible-fraction", "fraction",
            "dry-matter", "fraction",
            "protein", "fraction",
            "diaas", "fraction",
            "density", "kg/litre",
            "nitrogen-factor", "kg/kg N");

    /** Fractions of a mass; a protein quality is one in name only and may exceed 1. */
    private static final Set<String> PARTS =
            Set.of("dressing-fraction", "bone-free-fraction", "edible-fraction", "dry-matter", "protein");

    private final ReadableRows tables;
    private final List<Fault> faults;

    /**
     * @param whole names of the tables of which every row was read
     * @param known the faults found so far
     * @param faults where new faults go
     */
    ConsistencyCheck(Map<String, Table> tables, Set<String> whole, List<Fault> known, List<Fault> faults) {
        this.tables = new ReadableRows(tables, whole, known);
        this.faults = faults;
    }

    private List<Row> rows(String table, String... columns) {
        return tables.rows(table, columns);
    }

    private boolean complete(String table, String... columns) {
        return tables.complete(table, columns);
    }

    void run() {
        for (String table :
                List.of("results", "feed_conversion", "composition", "paired_ratios", "warming_potentials")) {
            rows(table, PRINTED).forEach(this::spread);
        }
        for (String table : List.of("results", "feed_conversion")) {
            rows(table, SCORES).forEach(this::scores);
        }
        new SignCheck(tables, faults).run();
        new ProductCheck(tables, faults).run();
        yields();
        new FoodCheck(tables, faults).run();
        new CirculatingCheck(tables, faults).run();
        new ReviewCheck(tables, faults).run();
        boundaries();
        energyKinds();
        reasonsOfOutliers();
        indicatorUnits();
        warmingSetOfGhg();
        oneDefaultComposition();
        sharesWithinOne();
        completeWarmingSets();
        treeOfRegions();
        spreadDefaults();
    }

    /** Energy without its kind is not one quantity, no other indicator has a kind, and nothing is published of a farm's own meters. */
    private void energyKinds() {
        for (Row row : rows("results", "indicator", "energy_kind")) {
            boolean energy = row.text("indicator").equals("energy");
            boolean given = row.optional("energy_kind").isPresent();
            if (energy && !given) {
                faults.add(row.fault(
                        "energy_kind",
                        "an energy result without its kind",
                        "total, non-renewable, cumulative-fossil or not-stated"));
            } else if (row.text("indicator").endsWith("-on-farm")) {
                faults.add(row.fault(
                        "indicator",
                        "a published result of " + row.text("indicator"),
                        "only records of a farm are asked for it"));
            } else if (!energy && given) {
                faults.add(row.fault(
                        "energy_kind", "a kind of energy for " + row.text("indicator"), "only energy has a kind"));
            }
        }
    }

    /** A reason is about a published result; two tables hold them, so that no foreign key of one column can say it. */
    private void reasonsOfOutliers() {
        if (!complete("results", "id") || !complete("feed_conversion", "id")) {
            return;
        }
        Set<String> known = Stream.of("results", "feed_conversion")
                .flatMap(table -> rows(table).stream())
                .map(row -> row.text("id"))
                .collect(Collectors.toUnmodifiableSet());
        for (Row row : rows("outliers", "id")) {
            if (!known.contains(row.text("id"))) {
                faults.add(row.fault(
                        "id",
                        "unknown result \"" + row.text("id") + "\"",
                        "a reason is about a row of results.csv or feed_conversion.csv"));
            }
        }
    }

    private void spread(Row row) {
        String kind = row.optional("spread").orElse("none");
        OptionalDouble value = row.number("value");
        OptionalDouble low = row.number("low");
        OptionalDouble high = row.number("high");
        boolean bounded = low.isPresent() && high.isPresent();
        switch (kind) {
            case "none" -> needs(row, value.isPresent(), "value", "spread none needs a value");
            case "percentiles" -> percentiles(row);
            case "sd", "se" ->
                needs(row, value.isPresent() && bounded, "spread", "spread " + kind + " needs value, low and high");
            default -> needs(row, bounded, "spread", "spread " + kind + " needs low and high");
        }
        if (bounded && low.getAsDouble() > high.getAsDouble()) {
            faults.add(row.fault("low", "low is above high", "swap them"));
        }
        if (value.isPresent()
                && bounded
                && low.getAsDouble() <= high.getAsDouble()
                && (value.getAsDouble() < low.getAsDouble() || value.getAsDouble() > high.getAsDouble())) {
            faults.add(row.fault(
                    "value",
                    "value " + row.text("value") + " lies outside low " + row.text("low") + " to high "
                            + row.text("high"),
                    "it must lie between them"));
        }
        if (kind.equals("input-range") && low.isPresent() && low.getAsDouble() <= 0) {
            faults.add(row.fault(
                    "low", "a range of inputs from " + row.text("low"), "a range of inputs must be above zero"));
        }
        boolean mustBePositive =
                low.isPresent() && !ABOUT_THE_MEAN.contains(kind) && (kind.startsWith("p5") || kind.startsWith("p10"));
        if (mustBePositive && low.getAsDouble() <= 0) {
            faults.add(row.fault("low", "a percentile of " + row.text("low"), "percentiles must be above zero"));
        }
    }

    private void needs(Row row, boolean there, String column, String right) {
        if (!there) {
            faults.add(row.fault(column, "the spread is incomplete", right));
        }
    }

    /** A number that was printed alone gets its spread from the three pedigree scores. */
    private void scores(Row row) {
        if (!row.optional("spread").orElse("none").equals("none")) {
            return;
        }
        for (String score : List.of("reliability", "completeness", "technology")) {
            if (row.optional(score).isEmpty()) {
                faults.add(row.fault(
                        score,
                        score + " is missing",
                        "spread none needs the three pedigree scores, from 1 best to 5 worst; see factors/README.md"));
            }
        }
    }

    private void percentiles(Row row) {
        double last = 0;
        int given = 0;
        for (String column : PERCENTILES) {
            OptionalDouble value = row.number(column);
            if (value.isPresent()) {
                given++;
                if (value.getAsDouble() <= 0 || value.getAsDouble() < last) {
                    faults.add(row.fault(
                            column,
                            column + " is " + row.text(column),
                            "percentiles must be above zero and must not fall"));
                }
                last = value.getAsDouble();
            }
        }
        needs(row, given >= 3, "spread", "spread percentiles needs at least three of p5, p10, p50, p90, p95");
    }

    /** Yields are divisors: each must be in its one unit, above zero, and a mass fraction at most 1. */
    private void yields() {
        for (Row row : rows("composition", "quantity", "unit")) {
            String unit = CHAIN.get(row.text("quantity"));
            if (unit != null && !row.text("unit").equals(unit)) {
                faults.add(row.fault(
                        "unit",
                        "unit \"" + row.text("unit") + "\" of " + row.text("quantity"),
                        "it must be " + unit + "; convert the value"));
            }
        }
        for (Row row : rows("composition", "quantity", "spread", "value", "low", "high")) {
            if (CHAIN.containsKey(row.text("quantity"))) {
                yieldCell(row, "value");
                if (!MAY_PASS_THE_BOUNDS.contains(row.optional("spread").orElse("none"))) {
                    yieldCell(row, "low");
                    yieldCell(row, "high");
                }
            }
        }
    }

    private void yieldCell(Row row, String column) {
        double most = PARTS.contains(row.text("quantity")) ? 1 : Double.POSITIVE_INFINITY;
        row.number(column).ifPresent(number -> {
            if (!(number > 0 && number <= most)) {
                faults.add(row.fault(
                        column,
                        row.text("quantity") + " with " + column + " " + row.text(column),
                        most == 1 ? "it must be above 0 and at most 1" : "it must be above 0"));
            }
        });
    }

    private void indicatorUnits() {
        Map<String, String> units = new HashMap<>();
        rows("indicators", "id", "unit").forEach(row -> units.put(row.text("id"), row.text("unit")));
        for (Row row : rows("results", "indicator", "unit")) {
            String unit = units.get(row.text("indicator"));
            if (unit != null && !row.text("unit").equals(unit)) {
                faults.add(row.fault(
                        "unit",
                        "unit \"" + row.text("unit") + "\" of indicator " + row.text("indicator"),
                        "it must be " + unit + "; convert the value"));
            }
        }
    }

    /** What a boundary includes is defined in the code: the table can neither add one, leave one out nor change their order. */
    private void boundaries() {
        for (Row row : rows("boundaries", "id", "rank")) {
            Optional<Boundary> boundary = Boundary.of(row.text("id"));
            if (boundary.isEmpty()) {
                faults.add(row.fault(
                        "id",
                        "unknown boundary \"" + row.text("id") + "\"",
                        "it must be one of " + String.join(", ", Boundary.ids())));
            } else if (row.integer("rank").orElse(0) != boundary.get().rank()) {
                faults.add(row.fault(
                        "rank",
                        "rank " + row.text("rank") + " of " + row.text("id"),
                        "it must be " + boundary.get().rank() + ": the narrowest boundary has rank 1"));
            }
        }
        if (complete("boundaries", "id")) {
            Boundary.ids().stream()
                    .filter(id -> rows("boundaries").stream()
                            .noneMatch(row -> row.text("id").equals(id)))
                    .forEach(id ->
                            faults.add(new Fault("boundaries.csv", 1, 1, "no row for boundary " + id, "add the row")));
        }
    }

    private void warmingSetOfGhg() {
        for (Row row : rows("results", "indicator", "gwp")) {
            boolean ghg = row.text("indicator").equals("ghg");
            if (ghg != row.optional("gwp").isPresent()) {
                faults.add(row.fault(
                        "gwp",
                        ghg ? "a ghg result without a warming set" : "a warming set on " + row.text("indicator"),
                        ghg ? "name it, or write not-stated" : "leave the cell empty"));
            }
        }
    }

    private void oneDefaultComposition() {
        Map<String, String> seen = new HashMap<>();
        for (Row row : rows("composition", "id", "product", "form", "quantity", "per", "use")) {
            if (row.text("use").equals("default")) {
                String key =
                        String.join("/", row.text("product"), row.text("form"), row.text("quantity"), row.text("per"));
                String first = seen.putIfAbsent(key, row.text("id"));
                if (first != null) {
                    faults.add(row.fault(
                            "use",
                            "a second default for " + key,
                            "row " + first + " is the default already; use kept or study"));
                }
            }
        }
    }

    private void sharesWithinOne() {
        for (Row row : rows("gas_shares", "co2", "ch4_biogenic", "ch4_fossil", "n2o")) {
            // Summed in decimals as written, so that the sum is reported as a person would add it up.
            BigDecimal sum = Stream.of("co2", "ch4_biogenic", "ch4_fossil", "n2o")
                    .flatMap(gas -> row.optional(gas).stream())
                    .map(BigDecimal::new)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            if (sum.compareTo(BigDecimal.ONE) > 0) {
                faults.add(row.fault("co2", "the shares of the gases add up to " + sum, "they must not exceed 1"));
            } else if (sum.compareTo(BigDecimal.ONE) < 0
                    && row.optional("ch4_biogenic").isEmpty()) {
                faults.add(row.fault(
                        "ch4_biogenic",
                        "the share of methane is open",
                        "give it, or 0; only the parting of CO2 and N2O may stay open"));
            }
        }
    }

    private void completeWarmingSets() {
        if (!complete("warming_sets", "id", "default") || !complete("warming_potentials", "set", "gas")) {
            return;
        }
        Map<String, Set<String>> gases = new HashMap<>();
        rows("warming_potentials")
                .forEach(row -> gases.computeIfAbsent(row.text("set"), set -> new HashSet<>())
                        .add(row.text("gas")));
        for (Row row : rows("warming_sets")) {
            for (Gas gas : Gas.values()) {
                if (!gases.getOrDefault(row.text("id"), Set.of()).contains(gas.id())) {
                    faults.add(row.fault(
                            "id",
                            "warming set " + row.text("id") + " has no potential for " + gas.id(),
                            "add the row to warming_potentials.csv"));
                }
            }
        }
        long defaults = rows("warming_sets").stream()
                .filter(row -> row.text("default").equals("yes"))
                .count();
        if (defaults != 1 && !rows("warming_sets").isEmpty()) {
            faults.add(rows("warming_sets").get(0).fault("default", defaults + " default sets", "name exactly one"));
        }
    }

    private void treeOfRegions() {
        if (!complete("regions", "id", "parent")) {
            return;
        }
        Map<String, String> parents = new HashMap<>();
        rows("regions").forEach(row -> row.optional("parent").ifPresent(up -> parents.put(row.text("id"), up)));
        for (Row row : rows("regions")) {
            String at = row.text("id");
            int steps = 0;
            while (parents.containsKey(at) && steps <= parents.size()) {
                at = parents.get(at);
                steps++;
            }
            if (!at.equals(Regions.WORLD)) {
                faults.add(row.fault(
                        "parent",
                        "region " + row.text("id") + " does not lead up to the world",
                        "correct its parents"));
            }
        }
    }

    /** Without these tables no number that was printed alone could be read. */
    private void spreadDefaults() {
        if (!complete("default_spreads", "applies_to")
                || !complete("pooling", "quantity")
                || !complete("pedigree", "set", "criterion")) {
            return;
        }
        if (rows("pooling").stream().noneMatch(row -> row.text("quantity").equals("between-studies"))) {
            faults.add(new Fault(
                    "pooling.csv",
                    1,
                    1,
                    "no prior of the standard deviation between studies",
                    "add a row of between-studies"));
        }
        Set<String> defaults = new HashSet<>();
        rows("default_spreads").forEach(row -> defaults.add(row.text("applies_to")));
        for (String needed : List.of("result", "composition")) {
            if (!defaults.contains(needed)) {
                faults.add(new Fault(
                        "default_spreads.csv",
                        1,
                        1,
                        "no default spread of a " + needed,
                        "add a row that applies to it"));
            }
        }
        for (String criterion : SpreadDefaults.CRITERIA) {
            boolean scored = rows("pedigree").stream()
                    .anyMatch(row -> row.text("set").equals(SpreadDefaults.PEDIGREE_SET)
                            && row.text("criterion").equals(criterion));
            if (!scored) {
                faults.add(new Fault(
                        "pedigree.csv",
                        1,
                        1,
                        "no factor of set " + SpreadDefaults.PEDIGREE_SET + " for " + criterion,
                        "add its five scores"));
            }
        }
    }
}
