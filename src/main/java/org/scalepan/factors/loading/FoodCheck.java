package org.scalepan.factors.loading;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;

/** Rules about food: contents that can be put on other bases, whole scoring patterns, and no insect without a word on allergy. */
final class FoodCheck {
    /** What a content of food may be printed in. */
    private static final Map<String, Set<String>> CONTENTS = Map.of(
            "fat", Set.of("fraction"),
            "carbohydrate", Set.of("fraction"),
            "energy", Set.of("kcal/100 g", "MJ/kg"),
            "iron", Set.of("mg/100 g", "ug/100 g"),
            "zinc", Set.of("mg/100 g", "ug/100 g"),
            "calcium", Set.of("mg/100 g", "ug/100 g"),
            "vitamin-b12", Set.of("mg/100 g", "ug/100 g"));

    private final ReadableRows tables;
    private final List<Fault> faults;

    /**
     * @param faults where new faults go
     */
    FoodCheck(ReadableRows tables, List<Fault> faults) {
        this.tables = tables;
        this.faults = faults;
    }

    void run() {
        contents();
        completePatterns();
        oneDefaultAminoAcid();
        allergyOfInsects();
    }

    /** A content is converted to other bases: it must be in a unit that allows it. */
    private void contents() {
        for (Row row : tables.rows("composition", "quantity", "unit")) {
            Set<String> units = CONTENTS.getOrDefault(row.text("quantity"), Set.of(row.text("unit")));
            if (!units.contains(row.text("unit"))) {
                faults.add(row.fault(
                        "unit",
                        "unit \"" + row.text("unit") + "\" of " + row.text("quantity"),
                        "it must be "
                                + String.join(" or ", units.stream().sorted().toList()) + "; convert the value"));
            }
        }
    }

    /** A score is the least of nine shares: a pattern that lacks one would flatter every protein. */
    private void completePatterns() {
        if (!tables.complete("amino_acids", "id")
                || !tables.complete("amino_acid_patterns", "id", "default")
                || !tables.complete("amino_acid_requirements", "pattern", "acid", "value")) {
            return;
        }
        Map<String, Set<String>> acids = new HashMap<>();
        for (Row row : tables.rows("amino_acid_requirements")) {
            boolean first = acids.computeIfAbsent(row.text("pattern"), pattern -> new HashSet<>())
                    .add(row.text("acid"));
            if (!first) {
                faults.add(row.fault("acid", "a second " + row.text("acid") + " of this pattern", "leave one"));
            }
            if (!(row.number("value").orElse(Double.NaN) > 0)) {
                faults.add(row.fault("value", "a requirement without a value above 0", "contents are divided by it"));
            }
        }
        for (Row row : tables.rows("amino_acid_patterns")) {
            for (Row acid : tables.rows("amino_acids")) {
                if (!acids.getOrDefault(row.text("id"), Set.of()).contains(acid.text("id"))) {
                    faults.add(row.fault(
                            "id",
                            "pattern " + row.text("id") + " asks nothing of " + acid.text("id"),
                            "add the row to amino_acid_requirements.csv"));
                }
            }
        }
        long defaults = tables.rows("amino_acid_patterns").stream()
                .filter(row -> row.text("default").equals("yes"))
                .count();
        if (defaults != 1 && !tables.rows("amino_acid_patterns").isEmpty()) {
            faults.add(tables.rows("amino_acid_patterns")
                    .get(0)
                    .fault("default", defaults + " default patterns", "name exactly one"));
        }
    }

    private void oneDefaultAminoAcid() {
        Map<String, String> seen = new HashMap<>();
        for (Row row : tables.rows("amino_acid_contents", "id", "product", "form", "acid", "use")) {
            if (row.text("use").equals("default")) {
                String key = String.join("/", row.text("product"), row.text("form"), row.text("acid"));
                String first = seen.putIfAbsent(key, row.text("id"));
                if (first != null) {
                    faults.add(row.fault(
                            "use",
                            "a second default for " + key,
                            "row " + first + " is the default already; use kept"));
                }
            }
        }
    }

    /** Every insect needs a caution that it can make people ill who are allergic to its relatives. */
    private void allergyOfInsects() {
        if (!tables.complete("products", "id", "group")
                || !tables.complete("cautions", "applies_to_groups", "applies_to_products", "markets", "topic")) {
            return;
        }
        for (Row product : tables.rows("products")) {
            boolean warned = !product.text("group").equals("insect")
                    || tables.rows("cautions").stream().anyMatch(caution -> warnsOfAllergy(caution, product));
            if (!warned) {
                faults.add(product.fault(
                        "id",
                        "no caution about allergy concerns " + product.text("id"),
                        "cautions.csv must have one for every insect, in every market"));
            }
        }
    }

    private static boolean warnsOfAllergy(Row caution, Row product) {
        List<String> groups = caution.list("applies_to_groups");
        List<String> products = caution.list("applies_to_products");
        return caution.text("topic").equals("allergy")
                && caution.list("markets").isEmpty()
                && (groups.isEmpty() || groups.contains(product.text("group")))
                && (products.isEmpty() || products.contains(product.text("id")));
    }
}
