package org.scalepan.literature;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.factors.PairedRatio;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.SpreadKind;
import org.scalepan.uncertainty.SpreadReading;
import org.scalepan.uncertainty.StandardNormal;

/**
 * One study's ratio reference ÷ product.
 *
 * @param study source id of the study
 * @param lnMean mean of ln(reference ÷ product)
 * @param lnVariance its variance over everything that the study's own spreads hold, the differences between farms among them
 * @param samplingVariance the squared standard error of lnMean, which is what pooling needs: see {@link SamplingError}
 * @param origin printed by the study, or computed from its two results
 * @param borrowed which side it took from elsewhere
 * @param rows the rows behind it
 * @param notes what the rows' notes say
 */
public record PairedStudy(
        String study,
        double lnMean,
        double lnVariance,
        double samplingVariance,
        Origin origin,
        Borrowed borrowed,
        List<String> rows,
        List<String> notes) {
    private static final String REVIEW = "review";
    private static final String MIXED = "mixed";
    private static final double ONE_SD_BELOW = 0.15865525393145707;

    public PairedStudy {
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** Where a paired ratio comes from. */
    public enum Origin {
        PRINTED,
        COMPUTED
    }

    /**
     * A quantile of the ratio.
     *
     * @param probability that the ratio lies below it, between 0 and 1
     */
    public double quantile(double probability) {
        return StrictMath.exp(lnMean + StandardNormal.score(probability) * Math.sqrt(lnVariance));
    }

    /** The central ratio: so many times less. */
    public double central() {
        return StrictMath.exp(lnMean);
    }

    /** Mean and variance of a logarithm. */
    record LogMoments(double mean, double variance) {
        static LogMoments of(Distribution reading, double scale) {
            double spread = (StrictMath.log(reading.quantile(1 - ONE_SD_BELOW))
                            - StrictMath.log(reading.quantile(ONE_SD_BELOW)))
                    / 2;
            return new LogMoments(StrictMath.log(reading.median() * scale), spread * spread);
        }

        LogMoments inverted() {
            return new LogMoments(-mean, variance);
        }

        /** The moments of an equal-weight mixture. */
        static LogMoments mixture(List<LogMoments> parts) {
            double mean = parts.stream().mapToDouble(LogMoments::mean).average().orElseThrow();
            double variance = parts.stream()
                    .mapToDouble(part -> part.variance + (part.mean - mean) * (part.mean - mean))
                    .average()
                    .orElseThrow();
            return new LogMoments(mean, variance);
        }
    }

    /** The ratios that studies print for a product and a reference, in either direction; several of one study are one. */
    static List<PairedStudy> printed(Library library, PoolQuestion product, PoolQuestion reference) {
        Map<String, List<LogMoments>> moments = new LinkedHashMap<>();
        Map<String, List<PairedRatio>> rows = new LinkedHashMap<>();
        Map<String, Borrowed> borrowed = new LinkedHashMap<>();
        SamplingError error = SamplingError.ofRatio(library.spreadDefaults().result());
        for (PairedRatio ratio : library.pairedRatios()) {
            boolean straight = is(ratio, product, reference);
            if ((straight || is(ratio, reference, product)) && mayServe(library, ratio, product)) {
                Distribution reading = SpreadReading.read(
                        ratio.printed(), library.spreadDefaults().result());
                LogMoments read = LogMoments.of(reading, 1);
                String study = ratio.cited().source();
                moments.computeIfAbsent(study, id -> new ArrayList<>()).add(straight ? read : read.inverted());
                rows.computeIfAbsent(study, id -> new ArrayList<>()).add(ratio);
                Borrowed from =
                        straight ? Borrowed.reference(ratio.referenceFrom()) : Borrowed.product(ratio.referenceFrom());
                borrowed.merge(study, from, Borrowed::or);
            }
        }
        List<PairedStudy> studies = new ArrayList<>();
        moments.forEach((study, parts) -> {
            LogMoments mixed = LogMoments.mixture(parts);
            List<PairedRatio> own = rows.getOrDefault(study, List.of());
            studies.add(new PairedStudy(
                    study,
                    mixed.mean(),
                    mixed.variance(),
                    error.variance(own),
                    Origin.PRINTED,
                    borrowed.getOrDefault(study, Borrowed.NONE),
                    own.stream().map(PairedRatio::id).toList(),
                    own.stream()
                            .flatMap(ratio -> ratio.note().stream())
                            .distinct()
                            .toList()));
        });
        return studies;
    }

    private static boolean is(PairedRatio ratio, PoolQuestion product, PoolQuestion reference) {
        return ratio.product().equals(product.product().id())
                && ratio.productForm().equals(product.form())
                && ratio.reference().equals(reference.product().id())
                && ratio.referenceForm().equals(reference.form());
    }

    private static boolean mayServe(Library library, PairedRatio ratio, PoolQuestion question) {
        String source = ratio.cited().source();
        return ratio.indicator().equals(question.indicator().id())
                && ratio.boundary() == question.boundary()
                && sameUnit(ratio.per(), question.per())
                && !(question.per().countsProtein() && question.protein() == ProteinBasis.CORRECTED)
                && sameMetric(library, ratio, question)
                && ratio.cited().check().isAtLeast(question.lowestGrade())
                && (question.pinned().isEmpty() || question.pinned().contains(source))
                && !question.excluded().contains(source);
    }

    /** A printed ratio keeps the study's own warming set; it serves other sets of the same metric and horizon, unless strict. */
    private static boolean sameMetric(Library library, PairedRatio ratio, PoolQuestion question) {
        if (!question.indicator().isWarming()
                || ratio.gwp().filter(question.gwp().id()::equals).isPresent()) {
            return true;
        }
        WarmingSet usual = library.defaultWarmingSet();
        WarmingSet printed = ratio.gwp()
                .flatMap(id -> Optional.ofNullable(library.warmingSets().get(id)))
                .orElse(usual);
        return !question.strict()
                && printed.metric().equals(question.gwp().metric())
                && printed.horizonYears().equals(question.gwp().horizonYears());
    }

    /** A ratio per 100 g protein is the same ratio per kg protein. */
    private static boolean sameUnit(String printed, FunctionalUnit asked) {
        return normalised(FunctionalUnit.of(printed).orElseThrow()) == normalised(asked);
    }

    private static FunctionalUnit normalised(FunctionalUnit unit) {
        return unit == FunctionalUnit.HUNDRED_G_PROTEIN ? FunctionalUnit.KG_PROTEIN : unit;
    }

    /** The ratio of a study's two results, unless the study is a review of others that did not use one method. */
    static Optional<PairedStudy> computed(Library library, Study product, Study reference) {
        List<Harmonised> both = Stream.concat(product.findings().stream(), reference.findings().stream())
                .toList();
        if (both.stream().anyMatch(PairedStudy::gathersOtherMethods)) {
            return Optional.empty();
        }
        LogMoments left = moments(product);
        LogMoments right = moments(reference);
        return Optional.of(new PairedStudy(
                product.id(),
                right.mean() - left.mean(),
                right.variance() + left.variance(),
                SamplingError.ofRatio(library.spreadDefaults().result()).variance(product, reference),
                Origin.COMPUTED,
                new Borrowed(gathered(product), gathered(reference)),
                both.stream().map(item -> item.result().id()).toList(),
                List.of()));
    }

    /** Where a study's rows are of the scale of a review, it collected them instead of measuring them. */
    private static Optional<String> gathered(Study study) {
        return study.findings().stream().anyMatch(PairedStudy::isReview)
                ? Optional.of(Borrowed.LITERATURE)
                : Optional.empty();
    }

    private static boolean isReview(Harmonised item) {
        return item.result().scale().filter(REVIEW::equals).isPresent();
    }

    private static boolean gathersOtherMethods(Harmonised item) {
        boolean mixed = item.result().allocation().filter(MIXED::equals).isPresent();
        return mixed || (isReview(item) && item.result().printed().kind() == SpreadKind.RANGE);
    }

    private static LogMoments moments(Study study) {
        return LogMoments.mixture(study.findings().stream()
                .map(item -> LogMoments.of(
                        item.reading(), item.central() / item.reading().median()))
                .toList());
    }
}
