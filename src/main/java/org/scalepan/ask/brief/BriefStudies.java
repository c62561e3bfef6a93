package org.scalepan.ask.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.factors.PublishedResult;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Harmonised;
import org.scalepan.literature.Study;
import org.scalepan.quantity.Print;

/** The published results behind the figures of a brief, so that a reader can go from a median to what was printed. */
public final class BriefStudies {
    private BriefStudies() {}

    /**
     * The results of one product out of one place of a publication.
     *
     * @param of the product in words
     * @param source the publication that they were read in
     * @param printed the numbers as printed
     * @param unit their unit as printed
     * @param here the same numbers on the basis of the brief
     * @param weight their part of the pool, 0 to 1
     * @param check how they were seen
     * @param place where they stand in the publication
     */
    public record BriefStudy(
            String of,
            String source,
            List<String> printed,
            String unit,
            List<String> here,
            double weight,
            String check,
            String place) {
        public BriefStudy {
            printed = List.copyOf(printed);
            here = List.copyOf(here);
        }

        private boolean isBeside(BriefStudy other) {
            return of.equals(other.of)
                    && source.equals(other.source)
                    && unit.equals(other.unit)
                    && check.equals(other.check)
                    && place.equals(other.place);
        }

        private BriefStudy with(BriefStudy other) {
            return new BriefStudy(
                    of,
                    source,
                    Stream.concat(printed.stream(), other.printed.stream()).toList(),
                    unit,
                    Stream.concat(here.stream(), other.here.stream()).toList(),
                    weight + other.weight,
                    check,
                    place);
        }
    }

    /** The results of each product once, in the order of the brief. */
    public static List<BriefStudy> of(Brief brief) {
        List<BriefStudy> rows = new ArrayList<>();
        for (Estimate estimate : brief.estimates().stream().distinct().toList()) {
            if (estimate instanceof PublishedEstimate published
                    && published.evidence() instanceof Evidence.PooledEvidence some) {
                for (Study study : some.studies()) {
                    study.findings().forEach(finding -> add(rows, row(estimate, some, study, finding)));
                }
            }
        }
        return rows;
    }

    private static void add(List<BriefStudy> rows, BriefStudy row) {
        int last = rows.size() - 1;
        if (last >= 0 && rows.get(last).isBeside(row)) {
            rows.set(last, rows.get(last).with(row));
        } else {
            rows.add(row);
        }
    }

    private static BriefStudy row(Estimate estimate, Evidence.PooledEvidence some, Study study, Harmonised finding) {
        PublishedResult result = finding.result();
        return new BriefStudy(
                estimate.words(),
                result.cited().source(),
                List.of(printed(result)),
                unit(result),
                List.of(Print.footprint(finding.central())),
                some.weight(study, finding),
                result.cited().check().id(),
                result.cited().locator());
    }

    private static String printed(PublishedResult result) {
        OptionalDouble value = result.printed().value();
        return value.isPresent()
                ? plain(value.getAsDouble())
                : plain(result.printed().low().orElse(0)) + " to "
                        + plain(result.printed().high().orElse(0));
    }

    private static String unit(PublishedResult result) {
        String basis = result.publishedBasis();
        return basis.contains(" per ") || basis.startsWith(result.unit()) ? basis : result.unit() + " per " + basis;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
