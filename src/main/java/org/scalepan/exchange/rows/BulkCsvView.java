package org.scalepan.exchange.rows;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.exchange.text.Csv;
import org.scalepan.factors.Indicator;
import org.scalepan.input.FieldError;
import org.scalepan.production.FarmBalance;
import org.scalepan.production.Gap;
import org.scalepan.production.Remark;

/** One line of CSV for each row received: figures with their intervals, or the errors of the row. */
public final class BulkCsvView implements BulkView {
    private final BulkQuestion question;
    private final Csv.CsvStyle style;

    public BulkCsvView(BulkQuestion question, Csv.CsvStyle style) {
        this.question = question;
        this.style = style;
    }

    @Override
    public String head() {
        StringWriter text = new StringWriter();
        List<String> header = new ArrayList<>(List.of("row"));
        header.addAll(columns());
        return flushed(new Csv(style, header, text), text);
    }

    /** The columns of an answer, without the number of its row. */
    public List<String> columns() {
        List<String> header = new ArrayList<>(List.of("name", "product", "form", "boundary", "status"));
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

    /** Those of the columns that hold numbers. */
    public Set<String> numberColumns() {
        Set<String> numbers = new LinkedHashSet<>();
        for (ComparisonBasis basis : question.bases()) {
            String id = basis.indicator().id();
            numbers.addAll(List.of(id, id + "_low", id + "_high"));
            if (hasSecond(basis.indicator())) {
                String second = id + "_with_displaced_use";
                numbers.addAll(List.of(second, second + "_low", second + "_high"));
            }
        }
        return numbers;
    }

    /** A row as a line of CSV with its end, behind the cell that names it. */
    public String line(String id, BulkRow row) {
        StringWriter text = new StringWriter();
        Csv csv = Csv.withoutHeader(style, text);
        Csv.CsvLine line = csv.line().text(id);
        fill(line, row);
        line.end();
        return flushed(csv, text);
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
        fill(line, row);
        line.end();
    }

    /** The cells of an answer, one for each of the columns. */
    public List<String> cells(BulkRow row) {
        Csv.CsvLine line = Csv.CsvLine.unwritten(style.decimal());
        fill(line, row);
        return line.cells();
    }

    private void fill(Csv.CsvLine line, BulkRow row) {
        if (row instanceof BulkRow.Computed computed) {
            computed(line, computed);
        } else if (row instanceof BulkRow.RejectedRow wrong) {
            line.text(wrong.name().orElse(""))
                    .empty(3)
                    .text("wrong")
                    .empty(columns().size() - 7);
            line.text(wrong.errors().stream().map(FieldError::place).distinct().collect(Collectors.joining("; ")));
            line.text(wrong.errors().stream().map(FieldError::sentence).collect(Collectors.joining("; ")));
        }
    }

    private void figure(Csv.CsvLine line, Optional<SystemEstimate> estimate) {
        double coverage = question.sampling().coverage();
        estimate.flatMap(found -> BulkRow.figure(found, coverage))
                .ifPresentOrElse(
                        numbers -> line.number(numbers[0]).number(numbers[1]).number(numbers[2]), () -> line.empty(3));
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
            line.text(estimate.intervalOf().orElse(""));
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
