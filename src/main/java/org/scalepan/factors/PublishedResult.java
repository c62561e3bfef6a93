package org.scalepan.factors;

import java.util.Optional;
import java.util.OptionalInt;
import org.scalepan.factors.table.Row;
import org.scalepan.uncertainty.PublishedSpread;

/**
 * One published number for one product: the unit of evidence.
 *
 * @param finding rows that state the same finding on another functional unit or warming set share this id; they are
 *     alternatives and never pooled together
 * @param printed value and spread as published, in {@code unit} per {@code per}
 * @param publishedBasis the functional unit in the publication's words
 * @param luc land-use change: included, excluded, not-stated or not-applicable
 * @param gwp warming set of a {@code ghg} result, {@code not-stated} when the publication is silent, empty otherwise
 * @param energyKind what an {@code energy} result counts: total, non-renewable, cumulative-fossil or not-stated; empty otherwise
 * @param restates the source whose assessment this number restates, when it is not the citing source's own
 * @param feedBasis for feed conversions: as-fed, dry-matter or not-stated
 */
public record PublishedResult(
        String id,
        String finding,
        String product,
        String form,
        String indicator,
        PublishedSpread printed,
        Optional<String> statistic,
        String unit,
        String per,
        String publishedBasis,
        Boundary boundary,
        String luc,
        Optional<String> gwp,
        Optional<String> energyKind,
        Optional<String> feedBasis,
        String region,
        Optional<String> substrate,
        Optional<String> allocation,
        Optional<String> scale,
        OptionalInt dataYear,
        OptionalInt farms,
        PedigreeScores pedigree,
        Cited cited,
        Optional<String> restates,
        Optional<String> publishedAs,
        Optional<String> note,
        boolean overlaid) {

    /** Scores 1 (best) to 5 for data quality as scored by hand for rows without a published spread. */
    public record PedigreeScores(OptionalInt reliability, OptionalInt completeness, OptionalInt technology) {}

    /** The study that the number comes from: numbers of one study share its weight. */
    public String study() {
        return restates.orElse(cited.source());
    }

    /** True when the interval that the source prints reaches from zero or below to above: then nothing is known of its ratios. */
    public boolean intervalIncludesZero() {
        return printed.low().orElse(1) <= 0 && printed.high().orElse(0) > 0;
    }

    static PublishedResult of(Row row) {
        return read(row, row.text("indicator"), row.text("luc"));
    }

    /** A feed conversion is a result too; its basis decides to which of the two feed indicators it belongs. */
    static PublishedResult ofFeedConversion(Row row) {
        boolean dry = row.text("feed_basis").equals("dry-matter");
        return read(row, dry ? "feed-dry-matter" : "feed", "not-applicable");
    }

    private static PublishedResult read(Row row, String indicator, String luc) {
        return new PublishedResult(
                row.text("id"),
                row.text("finding"),
                row.text("product"),
                row.text("form"),
                indicator,
                Printed.spread(row),
                row.optional("statistic"),
                row.text("unit"),
                row.text("per"),
                row.text("published_basis"),
                Boundary.of(row, "boundary"),
                luc,
                row.optional("gwp"),
                row.optional("energy_kind"),
                row.optional("feed_basis"),
                row.text("region"),
                row.optional("substrate"),
                row.optional("allocation"),
                row.optional("scale"),
                row.integer("data_year"),
                row.integer("farms"),
                new PedigreeScores(row.integer("reliability"), row.integer("completeness"), row.integer("technology")),
                Cited.of(row),
                row.optional("study"),
                row.optional("published_as"),
                row.optional("note"),
                row.overlaid());
    }
}
