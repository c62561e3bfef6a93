package org.scalepan.web.compare;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Likelihood;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.factors.Grade;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.Csv;

/** A comparison as CSV: the reference first, then a line for each product. */
final class ComparisonCsv {
    static final List<String> COLUMNS = List.of(
            "product",
            "form",
            "name",
            "status",
            "indicator",
            "unit",
            "per",
            "boundary",
            "gwp",
            "median",
            "mean",
            "low",
            "high",
            "coverage",
            "studies",
            "results",
            "lowest_grade",
            "region_used",
            "against",
            "times_less_median",
            "times_less_low",
            "times_less_high",
            "share_median",
            "share_low",
            "share_high",
            "probability_less",
            "probability_standard_error",
            "likelihood",
            "paired_studies",
            "sources",
            "text");

    private final Comparison comparison;
    private final Sentences sentences;

    ComparisonCsv(Comparison comparison) {
        this.comparison = comparison;
        this.sentences = new Sentences(
                comparison.question().ruler(), comparison.question().sampling().coverage());
    }

    Answer answer(Csv.CsvStyle style) {
        Csv csv = new Csv(style, COLUMNS);
        row(csv, comparison.reference(), Optional.empty(), 0);
        comparison
                .items()
                .forEach(item -> row(
                        csv, item.quote(), item.versus(), item.paired().ratios().size()));
        return csv.answer();
    }

    private void row(Csv csv, PublishedEstimate quote, Optional<Ratio> versus, int pairedStudies) {
        Csv.CsvLine line = csv.line();
        line.text(quote.item().product().id())
                .text(quote.item().form())
                .text(quote.item().product().name())
                .text(quote.summary().isPresent() ? "ok" : "no-evidence")
                .text(comparison.question().ruler().indicator().id())
                .text(comparison.question().ruler().indicator().unit())
                .text(comparison.question().ruler().per().id())
                .text(comparison.question().ruler().boundary().id())
                .text(
                        comparison.question().ruler().indicator().isWarming()
                                ? comparison.question().ruler().gwp().id()
                                : "");
        quote.summary()
                .ifPresentOrElse(
                        summary -> line.number(summary.median())
                                .number(summary.mean())
                                .number(summary.low())
                                .number(summary.high())
                                .number(summary.coverage()),
                        () -> line.empty(5));
        line.number(quote.studies()).number(quote.results());
        line.text(quote.lowestGrade().map(Grade::id).orElse(""));
        line.text(quote.regionUsed().orElse(""));
        line.text(comparison.question().against().written());
        versus.ifPresentOrElse(
                found -> line.number(found.timesLess().median())
                        .number(found.timesLess().low())
                        .number(found.timesLess().high())
                        .number(found.share().median())
                        .number(found.share().low())
                        .number(found.share().high())
                        .number(found.less().orElseThrow().value())
                        .number(found.less().orElseThrow().standardError())
                        .text(Likelihood.word(found.less().orElseThrow().value(), quote, comparison.reference())
                                .orElse("")),
                () -> line.empty(9));
        line.number(pairedStudies);
        line.text(String.join(" ", quote.evidence().sources()));
        line.text(sentences.quote(quote));
        line.end();
    }
}
