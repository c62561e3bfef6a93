package org.scalepan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.exchange.rows.BulkRow;

/**
 * One figure of a row.
 *
 * @param unit in words: {@code kg CO2e per kg protein}
 * @param value empty where there is none; then {@code reason} says why
 * @param bound {@code exact}, {@code at-least}, {@code at-most}, or {@code none} where nothing can be said with it
 */
public record RowFigure(
        String indicator,
        String unit,
        OptionalDouble value,
        OptionalDouble low,
        OptionalDouble high,
        String bound,
        Optional<String> reason) {
    static RowFigure of(SystemEstimate estimate, double coverage) {
        Optional<double[]> figure = BulkRow.figure(estimate, coverage);
        return new RowFigure(
                estimate.scope().indicator().id(),
                BulkRow.unit(estimate.scope()),
                number(figure, 0),
                number(figure, 1),
                number(figure, 2),
                estimate.bound().id(),
                estimate.missing());
    }

    private static OptionalDouble number(Optional<double[]> figure, int index) {
        return figure.stream().mapToDouble(numbers -> numbers[index]).findFirst();
    }
}
