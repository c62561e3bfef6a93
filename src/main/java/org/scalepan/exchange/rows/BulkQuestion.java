package org.scalepan.exchange.rows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.text.RefusedText;
import org.scalepan.exchange.text.StrictJson;
import org.scalepan.exchange.text.TextLimits;
import org.scalepan.factors.Library;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.input.PlainLine;
import org.scalepan.production.Inventory;
import org.scalepan.production.Scope;
import org.scalepan.production.records.SystemReading;

/**
 * What is asked of every row of a bulk run.
 *
 * @param bases one comparison basis for each indicator
 * @param credit whether the credit for replaced fertiliser is taken off
 * @param detailed whether second figures are given
 * @param drawn whether intervals come from draws; otherwise from first-order propagation
 */
public record BulkQuestion(
        Library library,
        List<ComparisonBasis> bases,
        boolean credit,
        boolean detailed,
        Sampling sampling,
        boolean drawn) {
    public static final int MOST_DRAWS = 10_000;
    /** The names of its parameters, beside those of CSV. */
    public static final List<String> PARAMETERS = List.of(
            "indicators",
            "per",
            "boundary",
            "gwp",
            "protein",
            "quality",
            "credit",
            "detail",
            "coverage",
            "draws",
            "seed");

    private static final List<String> YES_NO = List.of("no", "yes");

    public BulkQuestion {
        bases = List.copyOf(bases);
    }

    /** Reads the question from parameters; empty after an error, which is recorded in them. */
    public static Optional<BulkQuestion> read(Library library, Input parameters) {
        List<String> indicators =
                parameters.someOf("indicators", Scope.INDICATORS, Scope.USUAL_INDICATORS, Scope.INDICATORS.size());
        boolean credit = parameters.oneOf("credit", YES_NO, "no").equals("yes");
        boolean detailed = parameters.oneOf("detail", YES_NO, "no").equals("yes");
        if (!parameters.faults().isEmpty()) {
            return Optional.empty();
        }
        ComparisonBasisReading reading = ComparisonBasisReading.ofRecords(library, parameters);
        List<ComparisonBasis> bases = new ArrayList<>();
        for (String id : indicators) {
            bases.add(reading.basis(Objects.requireNonNull(library.indicators().get(id))));
        }
        boolean drawn = parameters.raw("draws").isPresent();
        long draws = parameters.count("draws", Sampling.FEWEST_DRAWS, MOST_DRAWS, MOST_DRAWS);
        double coverage = parameters.number("coverage", 0.5, 0.99, Sampling.DEFAULT_COVERAGE);
        long seed = parameters.whole("seed", 0, Integer.MAX_VALUE, Sampling.DEFAULT_SEED);
        return parameters.faults().isEmpty()
                ? Optional.of(new BulkQuestion(
                        library, bases, credit, detailed, new Sampling(coverage, (int) draws, seed), drawn))
                : Optional.empty();
    }

    /** Answers one row that is a line of JSON. */
    public BulkRow answer(long number, String json) {
        try {
            return answer(number, StrictJson.parse(json));
        } catch (RefusedText refused) {
            return new BulkRow.RejectedRow(number, Optional.empty(), refused.errors());
        }
    }

    /** Answers one row from the library. */
    public BulkRow answer(long number, JsonNode records) {
        Input body = Input.body(records);
        Optional<Inventory> inventory = new SystemReading(library).read(body);
        if (inventory.isEmpty() || !body.faults().isEmpty()) {
            return new BulkRow.RejectedRow(number, name(records), body.faults());
        }
        List<SystemEstimate> estimates = bases.stream()
                .map(basis -> drawn
                        ? SystemEstimate.drawn(library, inventory.get(), basis, credit, sampling)
                        : SystemEstimate.undrawn(library, inventory.get(), basis, credit))
                .toList();
        return new BulkRow.Computed(
                number,
                inventory.get(),
                estimates,
                IntStream.range(0, bases.size())
                        .mapToObj(i -> detailed
                                ? displacedUse(estimates.get(i), bases.get(i))
                                : Optional.<DisplacedUseFigure>empty())
                        .toList());
    }

    private Optional<DisplacedUseFigure> displacedUse(SystemEstimate estimate, ComparisonBasis basis) {
        return drawn
                ? DisplacedUseFigure.drawn(library, estimate, basis, sampling, sampling.random())
                : DisplacedUseFigure.undrawn(library, estimate, basis);
    }

    /** A table's row as cells. */
    public BulkRow answer(long number, FlatColumns columns, List<String> cells) {
        if (cells.size() != columns.size()) {
            return new BulkRow.RejectedRow(
                    number,
                    Optional.empty(),
                    List.of(FieldError.of(
                            "",
                            "this row has " + cells.size() + " cells; the header names " + columns.size()
                                    + " columns")));
        }
        for (int i = 0; i < cells.size(); i++) {
            Optional<String> fault = fault(cells.get(i));
            if (fault.isPresent()) {
                return new BulkRow.RejectedRow(
                        number, Optional.empty(), List.of(FieldError.of(columns.name(i), fault.get())));
            }
        }
        return answer(number, columns.row(cells));
    }

    private static Optional<String> fault(String cell) {
        if (cell.length() > TextLimits.CELL_CHARACTERS) {
            return Optional.of("this cell has more than " + TextLimits.CELL_CHARACTERS + " characters");
        }
        OptionalInt mark = MarkedUtf8.firstMark(cell);
        return mark.isPresent() ? Optional.of(MarkedUtf8.fault(cell, mark.getAsInt())) : Optional.empty();
    }

    /** A table's row; faults name its columns. */
    public BulkRow answer(long number, FlatRow row) {
        BulkRow answer = row.errors().isEmpty()
                ? answer(number, row.records())
                : new BulkRow.RejectedRow(number, name(row.records()), row.errors());
        if (answer instanceof BulkRow.RejectedRow wrong) {
            return new BulkRow.RejectedRow(
                    number,
                    wrong.name(),
                    wrong.errors().stream().map(error -> inColumns(error, row)).toList());
        }
        return answer;
    }

    private static FieldError inColumns(FieldError error, FlatRow row) {
        return new FieldError(
                error.pointer().map(row::column).or(error::parameter),
                Optional.empty(),
                error.message(),
                error.allowed(),
                error.didYouMean());
    }

    private static Optional<String> name(JsonNode records) {
        boolean named = records instanceof ObjectNode && records.path("name").isTextual();
        return named
                ? Optional.of(PlainLine.of(records.path("name").asText())).filter(name -> name.length() <= 200)
                : Optional.empty();
    }
}
