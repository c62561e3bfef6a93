package org.scalepan.ask;

import java.util.List;
import org.scalepan.Asked;
import org.scalepan.factors.Library;

/** Comparisons in one line. */
final class Compared {
    /** An odd number, so that the median is one of the draws. */
    static final Sampling SAMPLING = new Sampling(0.9, 10_001, 1);

    private Compared() {}

    static Comparison compare(Library library, Asked asked, Sampling sampling, String product, String reference) {
        return Comparison.of(
                library,
                new Comparison.Question(List.of(asked.item(product)), asked.item(reference), asked.ruler(), sampling));
    }

    static Versus versus(Library library, Asked asked, Sampling sampling, String product, String reference) {
        return compare(library, asked, sampling, product, reference)
                .items()
                .get(0)
                .versus()
                .orElseThrow();
    }
}
