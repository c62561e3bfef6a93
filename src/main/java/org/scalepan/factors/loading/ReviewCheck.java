package org.scalepan.factors.loading;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;

/**
 * Rules of what reviews include. A review can include only what is about its own product, form and indicator, and no two reviews include
 * each other: both would leave the pool.
 */
final class ReviewCheck {
    private final ReadableRows tables;
    private final List<Fault> faults;

    ReviewCheck(ReadableRows tables, List<Fault> faults) {
        this.tables = tables;
        this.faults = faults;
    }

    void run() {
        if (!tables.complete("results", "id", "finding", "product", "form", "indicator", "scale")
                || !tables.complete("products", "id", "broader")) {
            return;
        }
        Map<String, Row> results = byId("results");
        Map<String, Row> products = byId("products");
        Map<String, Set<String>> inside = new HashMap<>();
        Set<String> pairs = new HashSet<>();
        for (Row row : tables.rows("included_results", "review", "included")) {
            Row review = results.get(row.text("review"));
            Row included = results.get(row.text("included"));
            if (review == null || included == null) {
                continue;
            }
            if (!pairs.add(row.text("review") + " " + row.text("included"))) {
                faults.add(row.fault("included", "the pair is listed twice", "leave one row of it"));
            }
            if (review.optional("scale").filter("review"::equals).isEmpty()) {
                faults.add(row.fault(
                        "review",
                        "\"" + row.text("review") + "\" is no review",
                        "name a row of results.csv whose scale is review"));
            }
            same(row, review, included, products);
            String outer = review.text("finding");
            String inner = included.text("finding");
            if (outer.equals(inner)) {
                faults.add(row.fault(
                        "included",
                        "both rows state the finding " + inner,
                        "statements of one finding are never pooled together; take the row away"));
            } else if (reaches(inside, inner, outer)) {
                faults.add(row.fault(
                        "included",
                        "\"" + row.text("included") + "\" includes \"" + row.text("review") + "\" already",
                        "of two reviews only one can include the other"));
            } else {
                inside.computeIfAbsent(outer, finding -> new LinkedHashSet<>()).add(inner);
            }
        }
    }

    private void same(Row row, Row review, Row included, Map<String, Row> products) {
        for (String column : List.of("indicator", "form")) {
            if (!review.cell(column).equals(included.cell(column))) {
                faults.add(row.fault(
                        "included",
                        "its " + column + " is " + included.cell(column) + ", and that of the review "
                                + review.cell(column),
                        "a review includes results of its own " + column));
            }
        }
        String whole = review.text("product");
        String part = included.text("product");
        Row product = products.get(part);
        boolean within = whole.equals(part)
                || (product != null
                        && product.optional("broader").filter(whole::equals).isPresent());
        if (!within) {
            faults.add(row.fault(
                    "included",
                    "it is about " + part + ", and the review about " + whole,
                    "a review includes results of its own product, or of a kind of it"));
        }
    }

    /** Whether a finding includes another, itself or through what it includes. */
    private static boolean reaches(Map<String, Set<String>> inside, String from, String sought) {
        Deque<String> open = new ArrayDeque<>(List.of(from));
        Set<String> seen = new HashSet<>();
        while (!open.isEmpty()) {
            String at = open.pop();
            if (at.equals(sought)) {
                return true;
            }
            if (seen.add(at)) {
                open.addAll(Objects.requireNonNull(inside.getOrDefault(at, Set.of())));
            }
        }
        return false;
    }

    private Map<String, Row> byId(String table) {
        Map<String, Row> byId = new HashMap<>();
        tables.rows(table, "id").forEach(row -> row.optional("id").ifPresent(id -> byId.put(id, row)));
        return byId;
    }
}
