package org.scalepan.ask.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.NoFigure;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Statistic;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;

/**
 * Estimates of many products, each under many indicators and units.
 *
 * @param statistics which numbers are asked of each estimate
 * @param bounds whether numbers of bounds are shown
 * @param rows product by product, each on every comparison basis in their order
 */
public record EstimateTable(
        List<ProductForm> products,
        List<ComparisonBasis> bases,
        List<Statistic> statistics,
        boolean bounds,
        List<QuotedRow> rows) {
    public EstimateTable {
        products = List.copyOf(products);
        bases = List.copyOf(bases);
        statistics = List.copyOf(statistics);
        rows = List.copyOf(rows);
    }

    /**
     * A product under an indicator, per a unit.
     *
     * @param lowestGrade id of the lowest check grade of what the figure rests on; empty without evidence
     * @param sourceIds ids of its sources
     * @param none why there is no figure, where there is none
     */
    public record QuotedRow(
            ComparisonBasis basis,
            Estimate estimate,
            String lowestGrade,
            List<String> sourceIds,
            Optional<NoFigure> none) {
        public QuotedRow {
            sourceIds = List.copyOf(sourceIds);
        }

        static QuotedRow of(Library library, ProductForm item, ComparisonBasis basis, Estimate estimate) {
            return new QuotedRow(
                    basis,
                    estimate,
                    estimate.lowestGrade(library).map(Grade::id).orElse(""),
                    estimate.sources(library),
                    estimate.summary().isPresent() ? Optional.empty() : Optional.of(NoFigure.of(library, item, basis)));
        }

        public String status() {
            return estimate.summary().isPresent() ? "ok" : "no-evidence";
        }

        /** The region whose results were used; empty without evidence. */
        public String regionUsed() {
            return estimate.regionUsed().orElse("");
        }

        /** Ids of the sources, separated by blanks. */
        public String sources() {
            return String.join(" ", sourceIds);
        }
    }

    public static EstimateTable of(
            Library library,
            List<ProductForm> products,
            List<ComparisonBasis> bases,
            Sampling sampling,
            List<Statistic> statistics,
            boolean bounds) {
        List<QuotedRow> rows = new ArrayList<>();
        for (ProductForm product : products) {
            for (ComparisonBasis basis : bases) {
                rows.add(QuotedRow.of(library, product, basis, Estimating.asked(library, product, basis, sampling)));
            }
        }
        return new EstimateTable(products, bases, statistics, bounds, rows);
    }

    /** A number of a row; empty without evidence, and for the figure of a bound unless bounds are shown. */
    public OptionalDouble number(QuotedRow row, Statistic statistic) {
        return bounds || statistic.isCount() || row.estimate().bound() == Bound.EXACT
                ? statistic.of(row.estimate())
                : OptionalDouble.empty();
    }

    /** The rows of one product. */
    public List<QuotedRow> rowsOf(int product) {
        return rows.subList(product * bases.size(), (product + 1) * bases.size());
    }

    /** The provenance of the estimates. */
    public Provenance grounds(Library library) {
        return new Provenance(library, rows.stream().map(QuotedRow::estimate).toList());
    }
}
