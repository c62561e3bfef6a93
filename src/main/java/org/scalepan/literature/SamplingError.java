package org.scalepan.literature;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.scalepan.factors.PairedRatio;
import org.scalepan.uncertainty.PublishedSpread;
import org.scalepan.uncertainty.SpreadReading;

/**
 * How far a study's number may lie from what the same study would find with other farms: its sampling error, on the natural logarithm. The
 * differences between the farms of a survey are no sampling error; divided by the root of the number of farms they are one. A single case, and
 * a survey that does not say how many farms it rests on, has none published and takes the default spread.
 *
 * <p>A ratio out of one study takes that default once, and not for each of its sides: method and setting, for which it stands, are common to
 * both. Source of σ/√n: elementary; that random effects need sampling variances: DerSimonian and Laird (1986), Control. Clin. Trials 7,
 * 177–188.
 */
final class SamplingError {
    private final double defaultVariance;

    private SamplingError(double defaultVariance) {
        this.defaultVariance = defaultVariance;
    }

    /**
     * The errors of ratios.
     *
     * @param defaultGsd geometric standard deviation of a ratio whose study publishes no sampling error, 1 or more
     */
    static SamplingError ofRatio(double defaultGsd) {
        double error = StrictMath.log(defaultGsd);
        return new SamplingError(error * error);
    }

    /** The variance of ln ratio that a study prints; of several rows the mean. */
    double variance(List<PairedRatio> rows) {
        return rows.stream()
                .mapToDouble(
                        row -> published(row.printed(), OptionalInt.empty()).orElse(defaultVariance))
                .average()
                .orElse(defaultVariance);
    }

    /** The variance of ln of the ratio of two results of one study. */
    double variance(Study product, Study reference) {
        OptionalDouble left = published(product);
        OptionalDouble right = published(reference);
        return left.orElse(0) + right.orElse(0) + (left.isPresent() && right.isPresent() ? 0 : defaultVariance);
    }

    /** The mean of the published sampling variances of a study's findings; empty where one of them has none. */
    private static OptionalDouble published(Study study) {
        List<OptionalDouble> each = study.findings().stream()
                .map(finding ->
                        published(finding.result().printed(), finding.result().farms()))
                .toList();
        return each.stream().anyMatch(OptionalDouble::isEmpty)
                ? OptionalDouble.empty()
                : each.stream().flatMapToDouble(OptionalDouble::stream).average();
    }

    /**
     * The sampling variance of ln of a printed number; empty where its source publishes none. Limits without width, as in a row of one's own,
     * are no error either: nothing is known so well that it outweighs all else.
     *
     * @param farms how many farms stand behind the number, where the source says so
     */
    static OptionalDouble published(PublishedSpread printed, OptionalInt farms) {
        OptionalDouble variance = switch (printed.kind()) {
            case SE, CI95 -> OptionalDouble.of(dispersion(printed));
            case SD, P5_P95, P10_P90, PERCENTILES, RANGE ->
                farms.stream()
                        .filter(many -> many > 1)
                        .mapToDouble(many -> dispersion(printed) / many)
                        .findFirst();
            case INPUT_RANGE, NONE -> OptionalDouble.empty();
        };
        return variance.stream().filter(found -> found > 0).findFirst();
    }

    private static double dispersion(PublishedSpread printed) {
        return PairedStudy.LogMoments.of(SpreadReading.read(printed, 1), 1).variance();
    }
}
