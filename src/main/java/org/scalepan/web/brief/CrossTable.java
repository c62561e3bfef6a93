package org.scalepan.web.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.web.render.Block;

/** Several comparisons of the same products side by side: a row for each product, a column for each comparison. */
final class CrossTable {
    private static final String NOTHING = "no evidence";

    private CrossTable() {}

    /** By indicators: the figure, and the ratio behind it. */
    static Block ofIndicators(List<Comparison> comparisons) {
        List<String> head = new ArrayList<>(List.of("product"));
        comparisons.forEach(comparison -> {
            Sentences sentences = sentences(comparison);
            head.add(comparison.question().basis().indicator().id() + ", " + sentences.unit() + ", "
                    + sentences.boundary());
        });
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < comparisons.get(0).items().size(); i++) {
            int place = i;
            rows.add(row(
                    comparisons.get(0).items().get(i).estimate(),
                    comparisons.stream()
                            .map(comparison -> {
                                Comparison.ComparedProduct item =
                                        comparison.items().get(place);
                                return figure(item.estimate()) + ratio(item.versus(), "; ");
                            })
                            .toList()));
        }
        rows.add(row(
                comparisons.get(0).reference(),
                comparisons.stream()
                        .map(comparison -> figure(comparison.reference()))
                        .toList()));
        return new Block.TextTable(head, rows);
    }

    /** By references: how many times less than each. */
    static Block ofReferences(List<Comparison> comparisons) {
        List<String> head = new ArrayList<>(List.of("product"));
        comparisons.forEach(comparison ->
                head.add("times less than " + comparison.reference().words()));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < comparisons.get(0).items().size(); i++) {
            int place = i;
            rows.add(row(
                    comparisons.get(0).items().get(i).estimate(),
                    comparisons.stream()
                            .map(comparison ->
                                    ratio(comparison.items().get(place).versus(), ""))
                            .map(text -> text.isEmpty() ? NOTHING : text)
                            .toList()));
        }
        return new Block.TextTable(head, rows);
    }

    private static List<String> row(Estimate estimate, List<String> cells) {
        List<String> row = new ArrayList<>(List.of(estimate.words()));
        row.addAll(cells);
        return row;
    }

    private static String figure(Estimate estimate) {
        return estimate.summary()
                .map(summary -> estimate.bound().words() + Sentences.interval(summary))
                .orElse(NOTHING)
                .replace(' ', '\u00a0');
    }

    private static String ratio(Optional<Ratio> versus, String before) {
        return versus.map(ratio -> before
                        + (ratio.bound().words() + Sentences.ratio(ratio.timesLess())).replace(' ', '\u00a0')
                        + (before.isEmpty() ? "" : "\u00a0times\u00a0less"))
                .orElse("");
    }

    private static Sentences sentences(Comparison comparison) {
        return new Sentences(
                comparison.question().basis(), comparison.question().sampling().coverage());
    }
}
