package org.scalepan.literature;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.Library;
import org.scalepan.factors.PairedRatio;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.RandomEffects;
import org.scalepan.uncertainty.SpreadReading;

/**
 * Ratios reference ÷ product from studies that assessed both with one method. What differs between studies (boundary details,
 * warming set, allocation) cancels inside each; so these ratios stand beside the pooled one as a check on it.
 *
 * <p>Pooled by random effects on ln R: DerSimonian & Laird 1986, with the interval of Hartung & Knapp 2001 and the prediction
 * interval of Higgins et al. 2009.
 *
 * @param ratios one for each study
 * @param pooled the pooled ln R, when two or more studies speak
 */
public record PairedEvidence(List<Ratio> ratios, Optional<RandomEffects.Pooled> pooled) {
    /** No study assessed both. */
    public static final PairedEvidence NONE = new PairedEvidence(List.of(), Optional.empty());

    public PairedEvidence {
        ratios = List.copyOf(ratios);
    }

    /**
     * One study's ratio.
     *
     * @param source source id
     * @param lnMean mean of ln(reference ÷ product)
     * @param lnVariance its variance; spread between farms counts as doubt, so it is wide rather than narrow
     * @param origin {@code printed} when the study prints the ratio, {@code computed} from its two results otherwise
     * @param rows the rows behind it
     */
    public record Ratio(String source, double lnMean, double lnVariance, Origin origin, List<String> rows) {
        public Ratio {
            rows = List.copyOf(rows);
        }

        /** The central ratio: so many times less. */
        public double central() {
            return StrictMath.exp(lnMean);
        }
    }

    /** Where a paired ratio comes from. */
    public enum Origin {
        PRINTED,
        COMPUTED
    }

    /** The paired ratios between two bodies of evidence. */
    public static PairedEvidence between(Library library, Evidence product, Evidence reference) {
        List<Ratio> ratios = new ArrayList<>(printed(library, product.question(), reference.question()));
        Set<String> known = Set.copyOf(ratios.stream().map(Ratio::source).toList());
        if (product instanceof Evidence.Some left && reference instanceof Evidence.Some right) {
            for (Study study : left.studies()) {
                if (!known.contains(study.source())) {
                    right.study(study.source()).ifPresent(other -> ratios.add(computed(study, other)));
                }
            }
        }
        return new PairedEvidence(ratios, pool(ratios));
    }

    private static Optional<RandomEffects.Pooled> pool(List<Ratio> ratios) {
        if (ratios.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(RandomEffects.pool(
                ratios.stream().mapToDouble(Ratio::lnMean).toArray(),
                ratios.stream().mapToDouble(Ratio::lnVariance).toArray()));
    }

    private static List<Ratio> printed(Library library, PoolQuestion product, PoolQuestion reference) {
        return library.pairedRatios().stream()
                .filter(ratio -> ratio.product().equals(product.product().id())
                        && ratio.productForm().equals(product.form())
                        && ratio.reference().equals(reference.product().id())
                        && ratio.referenceForm().equals(reference.form())
                        && ratio.indicator().equals(product.indicator().id())
                        && ratio.boundary().equals(product.boundary())
                        && sameUnit(ratio.per(), product.per())
                        && mayServe(ratio, product))
                .map(ratio -> printed(library, ratio))
                .toList();
    }

    private static boolean mayServe(PairedRatio ratio, PoolQuestion question) {
        String source = ratio.cited().source();
        return ratio.cited().check().isAtLeast(question.lowestGrade())
                && (question.pinned().isEmpty() || question.pinned().contains(source))
                && !question.excluded().contains(source);
    }

    /** A ratio per 100 g protein is the same ratio per kg protein. */
    private static boolean sameUnit(String printed, FunctionalUnit asked) {
        return normalised(FunctionalUnit.of(printed).orElseThrow()) == normalised(asked);
    }

    private static FunctionalUnit normalised(FunctionalUnit unit) {
        return unit == FunctionalUnit.HUNDRED_G_PROTEIN ? FunctionalUnit.KG_PROTEIN : unit;
    }

    private static Ratio printed(Library library, PairedRatio ratio) {
        Distribution reading =
                SpreadReading.read(ratio.printed(), library.spreadDefaults().result());
        double spread = lnSd(reading);
        return new Ratio(
                ratio.cited().source(),
                StrictMath.log(reading.median()),
                spread * spread,
                Origin.PRINTED,
                List.of(ratio.id()));
    }

    private static Ratio computed(Study product, Study reference) {
        LogMoments left = LogMoments.of(product);
        LogMoments right = LogMoments.of(reference);
        List<String> rows = new ArrayList<>();
        product.findings().forEach(item -> rows.add(item.result().id()));
        reference.findings().forEach(item -> rows.add(item.result().id()));
        return new Ratio(
                product.source(),
                right.mean() - left.mean(),
                right.variance() + left.variance(),
                Origin.COMPUTED,
                rows);
    }

    /** Mean and variance of ln X over a study's findings, taken as an equal-weight mixture. */
    private record LogMoments(double mean, double variance) {
        static LogMoments of(Study study) {
            double mean = study.findings().stream()
                    .mapToDouble(item -> StrictMath.log(item.central()))
                    .average()
                    .orElseThrow();
            double variance = study.findings().stream()
                    .mapToDouble(item -> {
                        double off = StrictMath.log(item.central()) - mean;
                        double spread = lnSd(item.reading());
                        return spread * spread + off * off;
                    })
                    .average()
                    .orElseThrow();
            return new LogMoments(mean, variance);
        }
    }

    /** Half the distance on the log scale between the quantiles that stand one standard deviation about a normal's middle. */
    private static double lnSd(Distribution reading) {
        double below = 0.15865525393145707;
        return (StrictMath.log(reading.quantile(1 - below)) - StrictMath.log(reading.quantile(below))) / 2;
    }
}
