package org.scalepan.literature;

import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Product;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;

/**
 * What is asked of the literature: one product, one indicator, on one basis.
 *
 * @param of what the interval speaks of
 * @param pinned ids of the only eligible sources; empty for all
 * @param excluded ids of excluded sources
 * @param lowestGrade lowest check grade used
 * @param strict whether results that cannot be put on the basis exactly (another warming set without gas shares) are left out
 */
public record PoolQuestion(
        Product product,
        String form,
        Indicator indicator,
        FunctionalUnit per,
        Boundary boundary,
        LandUseChange luc,
        WarmingSet gwp,
        String region,
        Set<String> pinned,
        Set<String> excluded,
        Grade lowestGrade,
        ProteinBasis protein,
        boolean qualityCapped,
        boolean strict,
        IntervalOf of) {
    public PoolQuestion {
        pinned = Set.copyOf(pinned);
        excluded = Set.copyOf(excluded);
    }

    /** The same question with another lowest check grade. */
    public PoolQuestion grade(Grade lowest) {
        return new PoolQuestion(
                product,
                form,
                indicator,
                per,
                boundary,
                luc,
                gwp,
                region,
                pinned,
                excluded,
                lowest,
                protein,
                qualityCapped,
                strict,
                of);
    }

    /** The same question with another system boundary. */
    public PoolQuestion endingAt(Boundary other) {
        return new PoolQuestion(
                product,
                form,
                indicator,
                per,
                other,
                luc,
                gwp,
                region,
                pinned,
                excluded,
                lowestGrade,
                protein,
                qualityCapped,
                strict,
                of);
    }

    /** The warming set of the footprint: only warming has one. */
    public Optional<String> warmingSet() {
        return indicator.isWarming() ? Optional.of(gwp.id()) : Optional.empty();
    }
}
