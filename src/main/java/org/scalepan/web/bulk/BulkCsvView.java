package org.scalepan.web.bulk;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.factors.Indicator;
import org.scalepan.input.FieldError;
import org.scalepan.production.FarmBalance;
import org.scalepan.production.Gap;
import org.scalepan.production.Remark;
import org.scalepan.uncertainty.Summary;
import org.scalepan.web.render.Csv;
import org.scalepan.web.render.EstimateJson;

/** One line of CSV for each row received: figures with their intervals, or the errors of the row. */
final class BulkCsvView implements BulkView {
    private final BulkQuestion question;
    private final Csv.CsvStyle style;

    BulkCsvView(BulkQuestion question, Csv.CsvStyle style) {
        this.question = question;
        this.style = style;
    }

    @Override
    public String head() {
        StringWriter text = new StringWriter();
        return flushed(new Csv(style, header(), text), text);
    }

    private List<String> header() {
        List<String> header = new ArrayList<>(List.of("row", "name", "product", "form", "boundary", "status"));
        for (ComparisonBasis basis : question.bases()) {
            String id = basis.indicator().id();
            header.addAll(List.of(id, id + "_low", id + "_high", id + "_unit", id + "_bound", id + "_interval_of"));
            if (hasSecond(basis.indicator())) {
                String second = id + "_with_displaced_use";
                header.addAll(List.of(second, second + "_low", second + "_high", second + "_bound"));
            }
        }
        header.addAll(List.of("gaps", "remarks", "column", "message"));
        return header;
    }

    /** Feed itself is the same whatever burden it carries. */
    private boolean hasSecond(Indicator indicator) {
        return question.detailed() && !indicator.isFeed();
    }

    @Override
    public String lines(List<BulkRow> rows) {
        StringWriter text = new StringWriter();
        Csv csv = Csv.withoutHeader(style, text);
        rows.forEach(row -> write(csv, row));
        return flushed(csv, text);
    }

    private static String flushed(Csv csv, StringWriter text) {
        try {
            csv.flush();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return text.toString();
    }

    private void write(Csv csv, BulkRow row) {
        Csv.CsvLine line = csv.line().text(Long.toString(row.number()));
        if (row instanceof BulkRow.Computed computed) {
            computed(line, computed);
        } else if (row instanceof BulkRow.RejectedRow wrong) {
            line.text(wrong.name().orElse("")).empty(3).text("wrong").empty(header().size() - 8);
            line.text(wrong.errors().stream()
                    .map(flaw -> flaw.parameter().or(flaw::pointer).orElse(""))
                    .distinct()
                    .collect(Collectors.joining("; ")));
            line.text(wrong.errors().stream().map(BulkCsvView::message).collect(Collectors.joining("; ")));
        }
        line.end();
    }

    private static String message(FieldError error) {
        if (!error.didYouMean().isEmpty()) {
            return error.message() + ": did you mean " + String.join(", ", error.didYouMean()) + "?";
        }
        return error.allowed().isEmpty()
                ? error.message()
                : error.message() + ": one of " + String.join(", ", error.allowed());
    }

    private void figure(Csv.CsvLine line, Optional<SystemEstimate> estimate) {
        Optional<Summary> summary = estimate.flatMap(SystemEstimate::summary);
        double coverage = question.sampling().coverage();
        if (summary.isPresent()) {
            line.number(summary.get().median())
                    .number(summary.get().low())
                    .number(summary.get().high());
        } else {
            estimate.flatMap(SystemEstimate::firstOrder)
                    .ifPresentOrElse(
                            first -> line.number(first.value())
                                    .number(first.low(coverage))
                                    .number(first.high(coverage)),
                            () -> line.empty(3));
        }
    }

    private void computed(Csv.CsvLine line, BulkRow.Computed row) {
        line.text(row.inventory().name());
        line.text(row.inventory().output().product().id());
        line.text(row.inventory().output().form());
        line.text(row.estimates().get(0).scope().boundary().id());
        line.text(row.status());
        List<String> missing = new ArrayList<>(
                row.inventory().impossible().stream().map(FarmBalance::reason).toList());
        for (int i = 0; i < row.estimates().size(); i++) {
            SystemEstimate estimate = row.estimates().get(i);
            figure(line, Optional.of(estimate));
            line.text(BulkRow.unit(estimate.scope()));
            line.text(estimate.missing().isPresent() ? "" : estimate.bound().id());
            line.text(EstimateJson.intervalOf(estimate).orElse(""));
            estimate.missing()
                    .ifPresent(why -> missing.add(estimate.scope().indicator().id() + ": " + why));
            if (hasSecond(estimate.scope().indicator())) {
                Optional<SystemEstimate> second = row.displacedUse().get(i).flatMap(DisplacedUseFigure::estimate);
                figure(line, second);
                line.text(second.map(found -> found.bound().id()).orElse(""));
            }
        }
        line.text(
                row.inventory().gaps(false).stream().map(Gap::field).distinct().collect(Collectors.joining(" ")));
        line.text(
                row.inventory().remarks().stream().map(Remark::code).distinct().collect(Collectors.joining(" ")));
        line.empty(1).text(String.join("; ", missing));
    }
}
