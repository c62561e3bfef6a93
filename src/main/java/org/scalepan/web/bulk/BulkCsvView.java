package org.scalepan.web.bulk;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.production.Gap;
import org.scalepan.production.Remark;
import org.scalepan.web.http.Problem;
import org.scalepan.web.render.Csv;

/** One line of CSV for each row sent: figures with their intervals, and in the same line what is wrong with the row. */
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
        return flushed(new Csv(style, header(question.rulers()), text), text);
    }

    private static List<String> header(List<ComparisonBasis> rulers) {
        List<String> header = new ArrayList<>(List.of("row", "name", "product", "form", "boundary", "status"));
        for (ComparisonBasis ruler : rulers) {
            String id = ruler.indicator().id();
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
                    .empty(question.rulers().size() * 5 + 2);
            line.text(wrong.flaws().stream()
                    .map(flaw -> flaw.parameter().or(flaw::pointer).orElse(""))
                    .distinct()
                    .collect(Collectors.joining("; ")));
            line.text(wrong.flaws().stream().map(BulkCsvView::told).collect(Collectors.joining("; ")));
        }
        line.end();
    }

    private static String told(Problem.FieldError flaw) {
        if (!flaw.didYouMean().isEmpty()) {
            return flaw.message() + ": did you mean " + String.join(", ", flaw.didYouMean()) + "?";
        }
        return flaw.allowed().isEmpty()
                ? flaw.message()
                : flaw.message() + ": one of " + String.join(", ", flaw.allowed());
    }

    private void computed(Csv.CsvLine line, BulkRow.Computed row) {
        double coverage = question.sampling().coverage();
        line.text(row.inventory().name());
        line.text(row.inventory().output().product().id());
        line.text(row.inventory().output().form());
        line.text(row.quotes().get(0).scope().boundary().id());
        line.text(row.status());
        List<String> missing = new ArrayList<>();
        for (SystemEstimate quote : row.quotes()) {
            if (quote.summary().isPresent()) {
                var summary = quote.summary().get();
                line.number(summary.median()).number(summary.low()).number(summary.high());
            } else {
                quote.firstOrder()
                        .ifPresentOrElse(
                                first -> line.number(first.value())
                                        .number(first.low(coverage))
                                        .number(first.high(coverage)),
                                () -> line.empty(3));
            }
            line.text(BulkRow.unit(quote.scope()));
            line.text(quote.missing().isPresent() ? "" : quote.bound().id());
            quote.missing()
                    .ifPresent(why -> missing.add(quote.scope().indicator().id() + ": " + why));
        }
        line.text(row.inventory().gaps().stream().map(Gap::field).distinct().collect(Collectors.joining(" ")));
        line.text(
                row.inventory().remarks().stream().map(Remark::code).distinct().collect(Collectors.joining(" ")));
        line.empty(1).text(String.join("; ", missing));
    }
}
