package org.scalepan.factors;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Rules of the trade that a column's schema cannot say: they hold between the cells of a row or between rows. */
final class TradeCheck {
    /** Spreads whose low and high stand about the mean and may lie beyond the value's own sign. */
    private static final Set<String> ABOUT_THE_MEAN = Set.of("sd", "se");

    private static final List<String> PERCENTILES = List.of("p5", "p10", "p50", "p90", "p95");

    private final Map<String, Table> tables;
    private final List<Fault> faults;

    TradeCheck(Map<String, Table> tables, List<Fault> faults) {
        this.tables = tables;
        this.faults = faults;
    }

    void run() {
        for (String table :
                List.of("results", "feed_conversion", "composition", "paired_ratios", "warming_potentials")) {
            rows(table).forEach(this::spread);
        }
        indicatorUnits();
        warmingSetOfGhg();
        oneDefaultComposition();
        sharesWithinOne();
        completeWarmingSets();
        treeOfRegions();
        spreadDefaults();
    }

    private List<Row> rows(String table) {
        Table found = tables.get(table);
        return found == null ? List.of() : found.rows();
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

    private void indicatorUnits() {
        Map<String, String> units = new HashMap<>();
        rows("indicators").forEach(row -> units.put(row.text("id"), row.text("unit")));
        for (Row row : rows("results")) {
            String unit = units.get(row.text("indicator"));
            if (!row.text("unit").equals(unit)) {
                faults.add(row.fault(
                        "unit",
                        "unit \"" + row.text("unit") + "\" of indicator " + row.text("indicator"),
                        "it must be " + unit + "; convert the value"));
            }
        }
    }

    private void warmingSetOfGhg() {
        for (Row row : rows("results")) {
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
        for (Row row : rows("composition")) {
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
        for (Row row : rows("gas_shares")) {
            double sum = List.of("co2", "ch4_biogenic", "ch4_fossil", "n2o").stream()
                    .mapToDouble(gas -> row.number(gas).orElse(0))
                    .sum();
            if (sum > 1 + 1e-9) {
                faults.add(row.fault("co2", "the shares of the gases add up to " + sum, "they must not exceed 1"));
            }
        }
    }

    private void completeWarmingSets() {
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
                        "parent", "region " + row.text("id") + " does not lead up to the world", "mend its parents"));
            }
        }
    }

    /** Without these two tables no number that was printed alone could be read. */
    private void spreadDefaults() {
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
