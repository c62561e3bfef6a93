package org.scalepan.literature;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.footprint.UnitChain;
import org.scalepan.uncertainty.SpreadReading;

/**
 * Published results that lie far from the others of their product, indicator and basis. Such a row is most often a mistake of unit or
 * basis made when it was entered, so that each that stays has its reason in {@code outliers.csv}. The factor of three is a working rule
 * (common practice, no source); it decides nothing about what is pooled.
 */
public final class OutlyingResults {
    /** How many times larger or smaller than the median a row may be before it needs a reason. */
    public static final double FACTOR = 3;

    private final Library library;

    private OutlyingResults(Library library) {
        this.library = library;
    }

    /**
     * A result beyond the factor from the median of its group.
     *
     * @param basis product, form, indicator and what else the numbers of the group have in common
     * @param value the row's central value on the unit of the group
     * @param median of the central values of the group, this one included
     */
    public record OutlyingResult(PublishedResult result, String basis, double value, double median) {
        /** The value over the median; zero and below are no ratio that a unit could explain. */
        public double ratio() {
            return value / median;
        }
    }

    /** A row's central value on the unit in which its group is compared. */
    private record OnBasis(PublishedResult result, String basis, double value) {}

    /** All results of a library that lie beyond the factor, in the order of its files. */
    public static List<OutlyingResult> of(Library library) {
        return new OutlyingResults(library).flagged();
    }

    private List<OutlyingResult> flagged() {
        Map<String, List<OnBasis>> groups = library.results().stream()
                .map(this::onBasis)
                .collect(Collectors.groupingBy(OnBasis::basis, TreeMap::new, Collectors.toList()));
        Map<String, Double> medians = groups.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, group -> median(group.getValue())));
        return library.results().stream()
                .map(this::onBasis)
                .map(row -> new OutlyingResult(
                        row.result(), row.basis(), row.value(), medians.getOrDefault(row.basis(), Double.NaN)))
                .filter(row -> row.ratio() > FACTOR || row.ratio() < 1 / FACTOR)
                .toList();
    }

    /**
     * The row on the indicator's usual functional unit where its product has the conversion, else as printed. Boundary, kind of energy,
     * basis of feed, horizon of warming and land-use change counted in or not make another basis.
     */
    private OnBasis onBasis(PublishedResult result) {
        Indicator indicator =
                java.util.Objects.requireNonNull(library.indicators().get(result.indicator()));
        Product product = java.util.Objects.requireNonNull(library.products().get(result.product()));
        FunctionalUnit printed = FunctionalUnit.of(result.per()).orElseThrow();
        FunctionalUnit usual = FunctionalUnit.of(indicator.defaultPer()).orElse(printed);
        double central = SpreadReading.read(result.printed(), 1).median();
        ChainPath path = UnitChain.of(
                        library,
                        product,
                        result.form(),
                        result.cited().source(),
                        ProteinBasis.CRUDE,
                        true,
                        Grade.MEMORY)
                .path(printed, usual);
        FunctionalUnit unit = printed;
        if (path instanceof ChainPath.FoundPath found) {
            unit = usual;
            for (ChainStep step : found.steps()) {
                central *= step.multiplier();
            }
        }
        return new OnBasis(result, basis(result, unit), central);
    }

    private static String basis(PublishedResult result, FunctionalUnit unit) {
        String horizon =
                result.gwp().map(set -> set.contains("-20") ? "20 years" : "").orElse("");
        return String.join(
                        "/",
                        result.product(),
                        result.form(),
                        result.indicator(),
                        result.boundary().id(),
                        unit.id(),
                        result.energyKind().orElse(""),
                        result.feedBasis().orElse(""),
                        result.luc().equals("included") ? "land-use change included" : "",
                        horizon)
                .replaceAll("/{2,}", "/")
                .replaceAll("/$", "");
    }

    private static double median(List<OnBasis> rows) {
        double[] sorted = rows.stream().mapToDouble(OnBasis::value).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1
                ? sorted[middle]
                : Arrays.stream(sorted, middle - 1, middle + 1).average().orElseThrow();
    }
}
