package org.scalepan.production;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scalepan.factors.BackgroundFactor;

/**
 * What several published rows span: from the least to the greatest of their values and limits.
 *
 * @param rows ids of the rows
 */
public record RowSpan(double low, double high, List<String> rows) {
    public RowSpan {
        rows = List.copyOf(rows);
    }

    /** The span of rows, of which there is one or more. */
    public static RowSpan of(List<BackgroundFactor> rows) {
        List<Double> ends = rows.stream()
                .flatMap(row -> Stream.of(
                        row.printed().low(),
                        row.printed().value(),
                        row.printed().high()))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .sorted()
                .toList();
        return new RowSpan(
                ends.get(0),
                ends.get(ends.size() - 1),
                rows.stream().map(BackgroundFactor::id).toList());
    }

    /** A number or range of the records, which no row is behind. */
    public static RowSpan recorded(RecordedNumber number) {
        return new RowSpan(number.least(), number.most(), List.of());
    }
}
