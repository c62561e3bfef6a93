package org.scalepan.web.bulk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.factors.Library;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.input.PlainLine;
import org.scalepan.production.Inventory;
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
    public BulkQuestion {
        bases = List.copyOf(bases);
    }

    /** Answers one row from the library. */
    BulkRow answer(long number, JsonNode records) {
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

    /** A table's row; faults name its columns. */
    BulkRow answer(long number, FlatRow row) {
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
