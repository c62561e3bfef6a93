package org.scalepan.ask;

import java.util.ArrayList;
import java.util.List;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;

/**
 * Published estimates of many products, each under many indicators and units.
 *
 * @param statistics which numbers are asked of each estimate
 * @param rows product by product, each on every comparison basis in their order
 */
public record EstimateTable(
        List<ProductForm> products, List<Ruler> rulers, List<Statistic> statistics, List<QuotedRow> rows) {
    public EstimateTable {
        products = List.copyOf(products);
        rulers = List.copyOf(rulers);
        statistics = List.copyOf(statistics);
        rows = List.copyOf(rows);
    }

    /** A product under an indicator, per a unit. */
    public record QuotedRow(Ruler ruler, Quote quote) {
        public String status() {
            return quote.summary().isPresent() ? "ok" : "no-evidence";
        }

        /** Id of the lowest check grade among the results; empty without evidence. */
        public String lowestGrade() {
            return quote.lowestGrade().map(Grade::id).orElse("");
        }

        /** The region whose results were used; empty without evidence. */
        public String regionUsed() {
            return quote.regionUsed().orElse("");
        }

        /** Ids of the sources, separated by blanks. */
        public String sources() {
            return String.join(" ", quote.evidence().sources());
        }
    }

    public static EstimateTable of(
            Library library,
            List<ProductForm> products,
            List<Ruler> rulers,
            Sampling sampling,
            List<Statistic> statistics) {
        List<QuotedRow> rows = new ArrayList<>();
        for (ProductForm product : products) {
            for (Ruler ruler : rulers) {
                rows.add(new QuotedRow(ruler, Quoting.quote(library, product, ruler, sampling)));
            }
        }
        return new EstimateTable(products, rulers, statistics, rows);
    }

    /** The rows of one product. */
    public List<QuotedRow> rowsOf(int product) {
        return rows.subList(product * rulers.size(), (product + 1) * rulers.size());
    }

    /** What stands behind the estimates. */
    public Grounds grounds(Library library) {
        return new Grounds(
                library, rows.stream().<Standing>map(QuotedRow::quote).toList());
    }
}
