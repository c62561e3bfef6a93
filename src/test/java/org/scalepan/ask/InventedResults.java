package org.scalepan.ask;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;

/**
 * Libraries with invented results of products that have none at the farm gate, so that an answer has a closed form. No number
 * here is a finding of anyone.
 */
public final class InventedResults {
    private static final String MODEL = "oonincx-2010.cockroach.ghg.kg-live";

    private final OwnFolder folder;

    /** A library in which studies of one product do not differ but by their own errors: closed forms are known there. */
    public InventedResults(Path path) {
        folder = new OwnFolder(path);
        folder.rowLike("pooling", "pooling.between-studies", Map.of("scale", "0.000001"));
    }

    /** A lognormal result: its 95 % interval per kg live, at the farm gate, under AR6. */
    public InventedResults ci95(String product, String source, double low, double high) {
        return row(product, source, Map.of("spread", "ci95", "low", text(low), "high", text(high)));
    }

    /** A result with next to no uncertainty, one part in ten million, per a unit of one's own choice. */
    public InventedResults exact(String product, String source, double value, String per) {
        return row(
                product,
                source,
                Map.of(
                        "spread",
                        "range",
                        "low",
                        text(value * (1 - 1e-7)),
                        "high",
                        text(value * (1 + 1e-7)),
                        "per",
                        per));
    }

    /** A number that is printed as if it were certain, per kg live. */
    public InventedResults certain(String product, String source, double value) {
        return row(product, source, Map.of("spread", "range", "low", text(value), "high", text(value)));
    }

    /** A result per kg live with a tenth of uncertainty to either side, of the check grade given. */
    InventedResults graded(String product, String source, double value, String check) {
        return row(
                product,
                source,
                Map.of("spread", "range", "low", text(0.9 * value), "high", text(1.1 * value), "check", check));
    }

    private InventedResults row(String product, String source, Map<String, String> changed) {
        String id = "invented." + product + "." + source;
        Map<String, String> cells = new HashMap<>(
                Map.of("id", id, "finding", id, "product", product, "source", source, "boundary", "farm-gate"));
        cells.putAll(Map.of("gwp", "ar6-100", "luc", "excluded", "value", "", "statistic", "none"));
        cells.putAll(Map.of("reliability", "", "completeness", "", "technology", "", "check", "secondary"));
        cells.putAll(changed);
        folder.rowLike("results", MODEL, cells);
        return this;
    }

    private static String text(double number) {
        return Double.toString(number);
    }

    public Library library() {
        return folder.library();
    }
}
