package org.scalepan.factors;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.table.Row;

/**
 * A circulating claim with its origin and what the literature says of it.
 *
 * @param claimed the kind of claim, where it can be asked: a ratio or none at all, in the words of {@code claims.csv}
 * @param timesLessLow how many times less is claimed; the lower end where several numbers circulate
 * @param timesLessHigh the upper end
 * @param holdsOn the bases on which the verdict says that it holds
 * @param failsOn the bases on which the verdict says that it fails
 */
public record Claim(
        String id,
        String claim,
        List<String> indicators,
        List<String> products,
        List<String> references,
        Optional<String> statedRatio,
        Optional<String> basis,
        Optional<String> boundary,
        List<String> sources,
        Optional<String> primaryValue,
        String verdict,
        String verdictText,
        Optional<String> claimed,
        OptionalDouble timesLessLow,
        OptionalDouble timesLessHigh,
        List<ClaimBasis> holdsOn,
        List<ClaimBasis> failsOn,
        Grade check,
        Optional<String> note) {
    public Claim {
        indicators = List.copyOf(indicators);
        products = List.copyOf(products);
        references = List.copyOf(references);
        sources = List.copyOf(sources);
        holdsOn = List.copyOf(holdsOn);
        failsOn = List.copyOf(failsOn);
    }

    static Claim of(Row row) {
        return new Claim(
                row.text("id"),
                row.text("claim"),
                row.list("indicator"),
                row.list("product"),
                row.list("reference"),
                row.optional("stated_ratio"),
                row.optional("basis"),
                row.optional("boundary"),
                row.list("source"),
                row.optional("primary_value"),
                row.text("verdict"),
                row.text("verdict_text"),
                row.optional("claimed"),
                row.number("times_less_low"),
                row.number("times_less_high"),
                bases(row, "holds_on"),
                bases(row, "fails_on"),
                Grade.of(row.text("check")).orElseThrow(),
                row.optional("note"));
    }

    private static List<ClaimBasis> bases(Row row, String column) {
        return row.list(column).stream()
                .flatMap(written -> ClaimBasis.of(written).stream())
                .toList();
    }
}
