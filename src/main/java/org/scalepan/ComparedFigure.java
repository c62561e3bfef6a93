package org.scalepan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.uncertainty.Summary;

/**
 * A product in a comparison.
 *
 * @param unit in words: {@code kg CO2e per kg protein}
 * @param median empty where there is no evidence; then {@code reason} says why
 * @param timesLess how many times less than the reference; empty of the reference itself and where no ratio can be made
 * @param bound {@code exact}, {@code at-least}, {@code at-most} or {@code none}, of the figure
 */
public record ComparedFigure(
        String product,
        String unit,
        OptionalDouble median,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble timesLess,
        OptionalDouble timesLessLow,
        OptionalDouble timesLessHigh,
        String bound,
        int studies,
        Optional<String> reason) {
    /** The reference first, then the products in the order asked. */
    static List<ComparedFigure> of(Comparison comparison) {
        String unit = comparison.question().basis().indicator().unit() + " per "
                + comparison.question().basis().per().words();
        List<ComparedFigure> figures = new ArrayList<>();
        figures.add(of(comparison.reference(), unit, Optional.empty()));
        comparison.items().forEach(item -> figures.add(of(item.estimate(), unit, item.versus())));
        return List.copyOf(figures);
    }

    private static ComparedFigure of(Estimate estimate, String unit, Optional<Ratio> versus) {
        Optional<Summary> figure = estimate.summary();
        Optional<Summary> ratio = versus.map(Ratio::timesLess);
        return new ComparedFigure(
                estimate.product().id(),
                unit,
                number(figure.map(Summary::median)),
                number(figure.map(Summary::low)),
                number(figure.map(Summary::high)),
                number(ratio.map(Summary::median)),
                number(ratio.map(Summary::low)),
                number(ratio.map(Summary::high)),
                estimate.bound().id(),
                estimate.studies(),
                estimate.missing());
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.stream().mapToDouble(Double::doubleValue).findFirst();
    }
}
