package org.scalepan.web.bulk;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.production.FarmBalance;
import org.scalepan.production.Gap;
import org.scalepan.production.Remark;
import org.scalepan.web.http.Problem;
import org.scalepan.web.render.Csv;

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
        return flushed(new Csv(style, header(question.bases()), text), text);
    }

    private static List<String> header(List<ComparisonBasis> bases) {
        List<String> header = new ArrayList<>(List.of("row", "name", "product", "form", "boundary", "status"));
        for (ComparisonBasis basis : bases) {
            String id = basis.indicator().id();
            header.addAll(List.of(id, id + "_low", id + "_high", id + "_unit", id + "_bound"));
        }
        header.addAll(List.of("gaps", "remarks", "column", "message"));
        return header;
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
            line.text(wrong.name().orElse(""))
                    .empty(3)
                    .text("wrong")
                    .empty(question.bases().size() * 5 + 2);
            line.text(wrong.errors().stream()
                    .map(flaw -> flaw.parameter().or(flaw::pointer).orElse(""))
                    .distinct()
                    .collect(Collectors.joining("; ")));
            line.text(wrong.errors().stream().map(BulkCsvView::message).collect(Collectors.joining("; ")));
        }
        line.end();
    }

    private static String message(Problem.FieldError error) {
        if (!error.didYouMean().isEmpty()) {
            return error.message() + ": did you mean " + String.join(", ", error.didYouMean()) + "?";
        }
        return error.allowed().isEmpty()
                ? error.message()
                : error.message() + ": one of " + String.join(", ", error.allowed());
    }

    private void computed(Csv.CsvLine line, BulkRow.Computed row) {
        double coverage = question.sampling().coverage();
        line.text(row.inventory().name());
        line.text(row.inventory().output().product().id());
        line.text(row.inventory().output().form());
        line.text(row.estimates().get(0).scope().boundary().id());
        line.text(row.status());
        List<String> missing = new ArrayList<>(
                row.inventory().impossible().stream().map(FarmBalance::reason).toList());
        for (SystemEstimate estimate : row.estimates()) {
            if (estimate.summary().isPresent()) {
                var summary = estimate.summary().get();
                line.number(summary.median()).number(summary.low()).number(summary.high());
            } else {
                estimate.firstOrder()
                        .ifPresentOrElse(
                                first -> line.number(first.value())
                                        .number(first.low(coverage))
                                        .number(first.high(coverage)),
                                () -> line.empty(3));
            }
            line.text(BulkRow.unit(estimate.scope()));
            line.text(estimate.missing().isPresent() ? "" : estimate.bound().id());
            estimate.missing()
                    .ifPresent(why -> missing.add(estimate.scope().indicator().id() + ": " + why));
        }
        line.text(row.inventory().gaps().stream().map(Gap::field).distinct().collect(Collectors.joining(" ")));
        line.text(
                row.inventory().remarks().stream().map(Remark::code).distinct().collect(Collectors.joining(" ")));
        line.empty(1).text(String.join("; ", missing));
    }
}
