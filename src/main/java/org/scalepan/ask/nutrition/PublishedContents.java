package org.scalepan.ask.nutrition;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.CompositionRow.RowUse;
import org.scalepan.uncertainty.PublishedSpread;

/**
 * Combines the published rows of one quantity into one figure: the value is that of the library's default row, the one that every other
 * answer converts with; the range is from the lowest to the highest of the default and the rows shown beside it, printed spreads included.
 * Rows for a single study's own conversion and outliers are not eligible.
 */
final class PublishedContents {
    private PublishedContents() {}

    /**
     * One figure.
     *
     * @param rows rows of one quantity on one frame, at most one of them the default
     * @param scale what a printed 1 of a row is in the unit wanted
     * @return nothing when there is no default
     */
    static Optional<Content.HeldContent> together(List<CompositionRow> rows, ToDoubleFunction<CompositionRow> scale) {
        return rows.stream()
                .filter(row -> row.use() == RowUse.DEFAULT)
                .findFirst()
                .map(used -> {
                    List<CompositionRow> eligible = rows.stream()
                            .filter(row -> row.use() == RowUse.DEFAULT || row.use() == RowUse.KEPT)
                            .sorted(Comparator.comparing(row -> row.use() != RowUse.DEFAULT))
                            .toList();
                    Set<String> sources = new LinkedHashSet<>();
                    eligible.forEach(row -> sources.add(row.cited().source()));
                    Content.HeldContent found = new Content.HeldContent(
                            middle(used.printed()) * scale.applyAsDouble(used),
                            range(eligible, scale),
                            eligible.stream().map(CompositionRow::id).toList(),
                            sources,
                            sources.size(),
                            used.cited().check(),
                            Set.of());
                    return used.printed().value().isPresent() ? found : found.noting(Caveat.RANGE_ONLY);
                });
    }

    /** A range alone is read as log-uniform, whose median is the geometric mean of its limits. */
    private static double middle(PublishedSpread printed) {
        return printed.value()
                .orElseGet(() -> StrictMath.sqrt(
                        printed.low().orElseThrow() * printed.high().orElseThrow()));
    }

    private static Content.ContentRange range(List<CompositionRow> rows, ToDoubleFunction<CompositionRow> scale) {
        double[] ends = rows.stream()
                .flatMapToDouble(row -> ends(row.printed()).map(end -> end * scale.applyAsDouble(row)))
                .toArray();
        return Content.ContentRange.of(
                DoubleStream.of(ends).min().orElseThrow(),
                DoubleStream.of(ends).max().orElseThrow());
    }

    private static DoubleStream ends(PublishedSpread printed) {
        return Stream.of(printed.value(), printed.low(), printed.high())
                .filter(java.util.OptionalDouble::isPresent)
                .mapToDouble(java.util.OptionalDouble::getAsDouble)
                .map(end -> Math.max(end, 0));
    }
}
