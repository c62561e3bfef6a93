package org.scalepan.ask;

import java.util.List;
import org.scalepan.Asked;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.factors.Library;

/** Comparisons in one line. */
public final class Compared {
    /** An odd number, so that the median is one of the draws. */
    public static final Sampling SAMPLING = new Sampling(0.9, 10_001, 1);

    private Compared() {}

    public static Comparison compare(
            Library library, Asked asked, Sampling sampling, String product, String reference) {
        return Comparison.of(
                library,
                new Comparison.ComparisonQuestion(
                        List.of(asked.item(product)), asked.item(reference), asked.basis(), sampling));
    }

    public static Ratio versus(Library library, Asked asked, Sampling sampling, String product, String reference) {
        return compare(library, asked, sampling, product, reference)
                .items()
                .get(0)
                .versus()
                .orElseThrow();
    }
}
