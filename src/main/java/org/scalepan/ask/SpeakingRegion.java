package org.scalepan.ask;

import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.factors.Library;
import org.scalepan.literature.Evidence;

/**
 * Whose results speak where the region asked for has none of its own: a figure in a cell would otherwise look like one of that region. Where
 * a figure is pooled its spread is then assumed to be wider.
 */
public final class SpeakingRegion {
    private SpeakingRegion() {}

    /** A sentence that follows that of the figures, with a blank before it; empty where every side has results of the region asked for. */
    public static String sentence(Library library, List<Estimate> estimates) {
        return estimates.stream()
                .filter(PublishedEstimate.class::isInstance)
                .map(estimate -> (PublishedEstimate) estimate)
                .filter(estimate -> estimate.evidence() instanceof Evidence.PooledEvidence some
                        && !some.regionUsed().equals(some.question().region()))
                .map(estimate -> " No result of " + estimate.words() + " is held for "
                        + library.regions().words(estimate.evidence().question().region()) + ": results of "
                        + library.regions().words(estimate.regionUsed().orElseThrow()) + " speak.")
                .distinct()
                .collect(Collectors.joining());
    }
}
