package org.scalepan.web.compare;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.exchange.text.Csv;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.uncertainty.Probability;
import org.scalepan.web.http.Answer;

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
            "share_of_draws_less",
            "share_of_draws_standard_error",
            "paired_studies",
            "sources",
            "text",
            "bound",
            "times_less_bound",
            "interval_of",
            "evidence",
            "system");

    private final Library library;
    private final Comparison comparison;
    private final Sentences sentences;

    ComparisonCsv(Library library, Comparison comparison) {
        this.library = library;
        this.comparison = comparison;
        this.sentences = new Sentences(
                comparison.question().basis(), comparison.question().sampling().coverage());
    }

    Answer answer(Csv.CsvStyle style) {
        Csv csv = new Csv(style, COLUMNS);
        row(csv, comparison.reference(), Optional.empty(), 0);
        comparison
                .items()
                .forEach(item -> row(
                        csv,
                        item.estimate(),
                        item.versus(),
                        item.paired().ratios().size()));
        return Answer.of(Answer.CSV, csv.text());
    }

    private void row(Csv csv, Estimate estimate, Optional<Ratio> versus, int pairedStudies) {
        Csv.CsvLine line = csv.line();
        line.text(estimate.product().id())
                .text(estimate.form())
                .text(estimate.product().name())
                .text(estimate.summary().isPresent() ? "ok" : "no-evidence")
                .text(comparison.question().basis().indicator().id())
                .text(comparison.question().basis().indicator().unit())
                .text(comparison.question().basis().per().id())
                .text(comparison.question().basis().boundary().id())
                .text(
                        comparison.question().basis().indicator().isWarming()
                                ? comparison.question().basis().gwp().id()
                                : "");
        estimate.summary()
                .ifPresentOrElse(
                        summary -> line.number(summary.median())
                                .number(summary.mean())
                                .number(summary.low())
                                .number(summary.high())
                                .number(summary.coverage()),
                        () -> line.empty(5));
        line.number(estimate.studies()).number(estimate.results());
        line.text(estimate.lowestGrade(library).map(Grade::id).orElse(""));
        line.text(estimate.regionUsed().orElse(""));
        line.text(comparison.question().against().written());
        versus.ifPresentOrElse(
                found -> line.number(found.timesLess().median())
                        .number(found.timesLess().low())
                        .number(found.timesLess().high())
                        .number(found.share().median())
                        .number(found.share().low())
                        .number(found.share().high())
                        .number(found.less().stream()
                                .mapToDouble(Probability::value)
                                .findFirst())
                        .number(found.less().stream()
                                .mapToDouble(Probability::standardError)
                                .findFirst()),
                () -> line.empty(8));
        line.number(pairedStudies);
        line.text(String.join(" ", estimate.sources(library)));
        line.text(sentences.estimate(estimate));
        line.text(estimate.bound().id());
        line.text(versus.map(found -> found.bound().id()).orElse(""));
        line.text(estimate.intervalOf().orElse(""));
        line.text(comparison.question().basis().evidence().id());
        line.text(
                estimate instanceof ModelledEstimate modelled
                        ? modelled.farm().map(farm -> farm.farm().id()).orElse("")
                        : "");
        line.end();
    }
}
