package org.scalepan.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.Ruler;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.SystemQuote;
import org.scalepan.factors.Library;
import org.scalepan.production.Inventory;

/**
 * What is asked of every row of a bulk run.
 *
 * @param rulers one for each indicator
 * @param credit whether the credit for replaced fertiliser is taken off
 * @param drawn whether intervals come from draws; otherwise from first-order propagation
 */
record BulkQuestion(Library library, List<Ruler> rulers, boolean credit, Sampling sampling, boolean drawn) {
    BulkQuestion {
        rulers = List.copyOf(rulers);
    }

    /** Answers one row from the library. */
    BulkRow answer(long number, JsonNode records) {
        Input body = Input.body(records);
        Optional<Inventory> inventory = new SystemReading(library).read(body);
        if (inventory.isEmpty() || !body.faults().isEmpty()) {
            return new BulkRow.Wrong(number, name(records), body.faults());
        }
        List<SystemQuote> quotes = rulers.stream()
                .map(ruler -> drawn
                        ? SystemQuote.drawn(library, inventory.get(), ruler, credit, sampling)
                        : SystemQuote.undrawn(library, inventory.get(), ruler, credit))
                .toList();
        return new BulkRow.Computed(number, inventory.get(), quotes);
    }

    /** A table's row; faults name its columns. */
    BulkRow answer(long number, FlatRow row) {
        BulkRow answer = row.flaws().isEmpty()
                ? answer(number, row.records())
                : new BulkRow.Wrong(number, name(row.records()), row.flaws());
        if (answer instanceof BulkRow.Wrong wrong) {
            return new BulkRow.Wrong(
                    number,
                    wrong.name(),
                    wrong.flaws().stream().map(flaw -> inColumns(flaw, row)).toList());
        }
        return answer;
    }

    private static Problem.Flaw inColumns(Problem.Flaw flaw, FlatRow row) {
        return new Problem.Flaw(
                flaw.pointer().map(row::column).or(flaw::parameter),
                Optional.empty(),
                flaw.message(),
                flaw.allowed(),
                flaw.didYouMean());
    }

    private static Optional<String> name(JsonNode records) {
        boolean named = records instanceof ObjectNode && records.path("name").isTextual();
        return named
                ? Optional.of(records.path("name").asText()).filter(name -> name.length() <= 200)
                : Optional.empty();
    }
}
