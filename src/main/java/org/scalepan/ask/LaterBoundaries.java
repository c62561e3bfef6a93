package org.scalepan.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Pool;
import org.scalepan.literature.Study;

/**
 * Finds where a later boundary of the chain comes out lower than an earlier one for the same product. More is counted there, so that the
 * order can only come from other studies standing there: then one boundary must not be subtracted from the other.
 */
public final class LaterBoundaries {
    private static final String CODE = "later-boundary-lower";

    private LaterBoundaries() {}

    /**
     * The warnings for products on a basis, one for each pair of boundaries that the one asked is among. Boundaries are held against each other by the middle of their
     * studies, which needs no draws.
     */
    static List<Warning> withTheOneAsked(Library library, List<PublishedEstimate> estimates) {
        return warnings(library, estimates, true);
    }

    /** The same for pairs that the boundary asked is not among, which a grid of boundaries shows too. */
    public static List<Warning> ofOthers(Library library, List<PublishedEstimate> estimates) {
        return warnings(library, estimates, false);
    }

    private static List<Warning> warnings(Library library, List<PublishedEstimate> estimates, boolean asked) {
        List<Warning> warnings = new ArrayList<>();
        for (Boundary earlier : Boundary.values()) {
            for (Boundary later : Boundary.values()) {
                if (later.compareTo(earlier) > 0) {
                    List<String> lower = estimates.stream()
                            .filter(estimate -> isAmong(estimate, earlier, later) == asked
                                    && isLower(library, estimate, earlier, later))
                            .map(estimate -> estimate.item().written())
                            .distinct()
                            .toList();
                    if (!lower.isEmpty()) {
                        warnings.add(warning(earlier, later, lower));
                    }
                }
            }
        }
        return warnings;
    }

    private static Warning warning(Boundary earlier, Boundary later, List<String> about) {
        return new Warning(
                CODE,
                "Of these products the figure at " + later.id() + " lies below that at " + earlier.id()
                        + ", though more is counted there: other studies stand behind it. Do not set the two boundaries"
                        + " against each other.",
                about);
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
                && after.middle().finding().central() < before.middle().finding().central();
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
