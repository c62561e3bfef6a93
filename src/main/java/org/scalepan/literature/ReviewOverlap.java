package org.scalepan.literature;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.PublishedResult;
import org.scalepan.words.Message;

/**
 * Primary studies that a review of the same pool includes. Pooled beside it they would count twice, so that they leave, unless they were
 * seen better than the review was.
 */
final class ReviewOverlap {
    private final Library library;
    private final List<Harmonised> findings;

    /** @param findings all that could be pooled together */
    ReviewOverlap(Library library, List<Harmonised> findings) {
        this.library = library;
        this.findings = List.copyOf(findings);
    }

    /** The review among the findings that includes one of them and was seen as well as it or better. */
    Optional<PublishedResult> reviewOf(Harmonised item) {
        return findings.stream()
                .map(Harmonised::result)
                .filter(review ->
                        review.cited().check().isAtLeast(item.result().cited().check())
                                && library.includedIn(review).stream()
                                        .anyMatch(included -> included.finding()
                                                .equals(item.result().finding())))
                .findFirst();
    }

    /** Why it is not used, and what asks without the review. */
    static Unused unused(Harmonised item, PublishedResult review) {
        String source = review.cited().source();
        return new Unused(item.result(), Message.of("unused.behind-review", "review", source, "source", source));
    }
}
