package org.scalepan.ask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Pool;
import org.scalepan.literature.Study;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * Finds where a later boundary of the chain comes out lower than an earlier one for the same product. More is counted there, so that the
 * order can only come from other studies standing there: then one boundary must not be subtracted from the other.
 */
public final class LaterBoundaries {
    private static final String CODE = "later-boundary-lower";

    private LaterBoundaries() {}

    /**
     * The warning about products on a basis, for every pair of boundaries that the one asked is among. Boundaries are held against each other
     * by the middle of their studies, which needs no draws.
     */
    static Optional<Warning> withTheOneAsked(Library library, List<PublishedEstimate> estimates) {
        return warning(library, estimates, LaterBoundaries::isAmong);
    }

    /** Warnings with the one about boundaries widened to every pair of them, as a grid shows. */
    public static List<Warning> widened(Library library, List<PublishedEstimate> estimates, List<Warning> warnings) {
        Stream<Warning> others =
                warnings.stream().filter(warning -> !warning.code().equals(CODE));
        return Stream.concat(others, warning(library, estimates, (estimate, earlier, later) -> true).stream())
                .toList();
    }

    private interface Pairing {
        boolean matters(PublishedEstimate estimate, Boundary earlier, Boundary later);
    }

    private static Optional<Warning> warning(Library library, List<PublishedEstimate> estimates, Pairing pairing) {
        List<Message> pairs = new ArrayList<>();
        Set<String> about = new LinkedHashSet<>();
        for (Boundary earlier : Boundary.values()) {
            for (Boundary later : Boundary.values()) {
                if (later.compareTo(earlier) > 0) {
                    List<String> lower = estimates.stream()
                            .filter(estimate -> pairing.matters(estimate, earlier, later)
                                    && isLower(library, estimate, earlier, later))
                            .map(estimate -> estimate.item().written())
                            .distinct()
                            .toList();
                    if (!lower.isEmpty()) {
                        pairs.add(Message.of(
                                "boundary-below",
                                "later",
                                later.id(),
                                "earlier",
                                earlier.id(),
                                "products",
                                String.join(", ", lower)));
                        about.addAll(lower);
                    }
                }
            }
        }
        return pairs.isEmpty()
                ? Optional.empty()
                : Optional.of(Warning.of(CODE, List.copyOf(about), "pairs", Listing.semicolons(pairs)));
    }

    private static boolean isAmong(PublishedEstimate estimate, Boundary earlier, Boundary later) {
        Boundary asked = estimate.evidence().question().boundary();
        return asked == earlier || asked == later;
    }

    private static boolean isLower(Library library, PublishedEstimate estimate, Boundary earlier, Boundary later) {
        return at(library, estimate, earlier) instanceof Evidence.PooledEvidence before
                && at(library, estimate, later) instanceof Evidence.PooledEvidence after
                && before.bound() == after.bound()
                && !studies(before).equals(studies(after))
                && after.centre() < before.centre();
    }

    private static Evidence at(Library library, PublishedEstimate estimate, Boundary boundary) {
        return Pool.of(library, estimate.evidence().question().endingAt(boundary));
    }

    private static Set<String> studies(Evidence.PooledEvidence evidence) {
        return Stream.of(evidence)
                .flatMap(pooled -> pooled.studies().stream())
                .map(Study::id)
                .collect(Collectors.toUnmodifiableSet());
    }
}
