package org.scalepan.ask;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.LandUseChange;
import org.scalepan.literature.PoolQuestion;

/**
 * The basis on which all products of a question are compared, all defaults resolved.
 *
 * @param pinned ids of the only eligible sources; empty for all
 * @param excluded ids of excluded sources
 * @param of what the interval of a pooled side speaks of; a computed side does not know it
 * @param evidence which kind of evidence about products is asked for
 * @param system id of the reference farm asked for; the one that the region stands for when absent
 * @param strict whether results under another warming set that cannot be converted are left out
 */
@RecordBuilder
public record ComparisonBasis(
        Indicator indicator,
        FunctionalUnit per,
        Boundary boundary,
        LandUseChange luc,
        WarmingSet gwp,
        String region,
        Grade lowestGrade,
        Set<String> pinned,
        Set<String> excluded,
        ProteinBasis protein,
        boolean qualityCapped,
        boolean strict,
        IntervalOf of,
        EvidenceKind evidence,
        Optional<String> system)
        implements ComparisonBasisBuilder.With {
    public ComparisonBasis {
        pinned = Set.copyOf(pinned);
        excluded = Set.copyOf(excluded);
    }

    /** The same basis with land-use change the other way round; empty for what has none. */
    public Optional<ComparisonBasis> withOtherLandUse() {
        return indicator.isWarming() ? Optional.of(withLuc(luc.other())) : Optional.empty();
    }

    /** The same basis with the other kind of evidence. */
    public ComparisonBasis withOtherEvidence() {
        return withEvidence(evidence.other());
    }

    /** The question to the literature about one product. */
    PoolQuestion question(ProductForm item) {
        return new PoolQuestion(
                item.product(),
                item.form(),
                indicator,
                per,
                boundary,
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
}
