package org.scalepan.literature;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.uncertainty.RandomEffects;

/**
 * Ratios reference ÷ product from studies that compared both, most with one method; where one side was taken from
 * elsewhere, {@link Borrowed} says so. What differs between studies (boundary details,
 * warming set, allocation) cancels inside each; so these ratios are reported beside the pooled one as a check on it.
 *
 * <p>From three studies on pooled by random effects on ln R with the studies' sampling variances: DerSimonian & Laird 1986, with the interval
 * of Hartung & Knapp 2001 and the prediction interval of Higgins et al. 2009. Where few studies agree closely, Hartung and Knapp's factor q
 * falls below 1 and their interval is too narrow; then 1 stands for it (Röver et al. 2015). Two studies are shown and not pooled: on one
 * degree of freedom the interval says nothing, and without it, it says too much.
 *
 * @param ratios one for each study
 * @param pooled the pooled ln R, when there are three or more studies
 */
public record PairedEvidence(List<PairedStudy> ratios, Optional<RandomEffects.Pooled> pooled) {
    private static final int FEWEST_POOLED = 3;

    /** No study assessed both. */
    public static final PairedEvidence NONE = new PairedEvidence(List.of(), Optional.empty());

    public PairedEvidence {
        ratios = List.copyOf(ratios);
    }

    /** The paired ratios between two bodies of evidence; those that a study prints go before those computed from its results. */
    public static PairedEvidence between(Library library, Evidence product, Evidence reference) {
        Map<String, PairedStudy> byStudy = new LinkedHashMap<>();
        PairedStudy.printed(library, product.question(), reference.question())
                .forEach(ratio -> byStudy.put(ratio.study(), ratio));
        if (product instanceof Evidence.PooledEvidence left && reference instanceof Evidence.PooledEvidence right) {
            for (Study study : left.studies()) {
                right.study(study.id())
                        .flatMap(other -> PairedStudy.computed(library, study, other))
                        .ifPresent(ratio -> byStudy.putIfAbsent(ratio.study(), ratio));
            }
        }
        List<PairedStudy> ratios = new ArrayList<>(byStudy.values());
        return new PairedEvidence(ratios, pool(ratios));
    }

    private static Optional<RandomEffects.Pooled> pool(List<PairedStudy> ratios) {
        if (ratios.size() < FEWEST_POOLED) {
            return Optional.empty();
        }
        return Optional.of(RandomEffects.pool(
                ratios.stream().mapToDouble(PairedStudy::lnMean).toArray(),
                ratios.stream().mapToDouble(PairedStudy::samplingVariance).toArray()));
    }

    /** Lower end of the 95 % interval of the pooled ratio. */
    public static double low(RandomEffects.Pooled pooled) {
        return StrictMath.exp(pooled.flooredLow());
    }

    /** Upper end of the 95 % interval of the pooled ratio. */
    public static double high(RandomEffects.Pooled pooled) {
        return StrictMath.exp(pooled.flooredHigh());
    }
}
