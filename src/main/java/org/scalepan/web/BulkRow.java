package org.scalepan.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.scalepan.ask.SystemPlan;
import org.scalepan.ask.SystemQuote;
import org.scalepan.production.Inventory;
import org.scalepan.production.Scope;

/** What came of one row of a bulk run. */
sealed interface BulkRow {
    /** Counted from 1, in the order sent. */
    long number();

    /** The row was computed; a quote can still say that it has no figure. */
    record Computed(long number, Inventory inventory, List<SystemQuote> quotes) implements BulkRow {
        public Computed {
            quotes = List.copyOf(quotes);
        }

        /** Whether all, some or none of the indicators asked for have a figure. */
        String status() {
            return BulkRow.status(
                    quotes.stream().filter(quote -> quote.system().isPresent()).count(), quotes.size());
        }
    }

    /**
     * The row was reckoned by the plan of a row before it.
     *
     * @param places what the plan worked on; it serves the next row, too, so this one has to be written first
     */
    @SuppressWarnings("ArrayRecordComponent") // Made for every row and never compared.
    record Alike(long number, String name, RowPlan plan, double[] places) implements BulkRow {}

    /** The row could not be read: what is wrong, with the column or field as its parameter or pointer. */
    record Wrong(long number, Optional<String> name, List<Problem.Flaw> flaws) implements BulkRow {
        public Wrong {
            flaws = List.copyOf(flaws);
        }
    }

    /** The status of every row that a plan serves. */
    static String status(SystemPlan plan) {
        return status(
                plan.indicated().stream()
                        .filter(indicated -> indicated.missing().isEmpty())
                        .count(),
                plan.indicated().size());
    }

    private static String status(long figures, int asked) {
        return figures == asked ? "ok" : figures > 0 ? "partly" : "not-computed";
    }

    /** The unit of a figure in words. */
    static String unit(Scope scope) {
        return scope.indicator().unit() + " per " + scope.per().words();
    }

    /** Why indicators have no figure, for every row that a plan serves. */
    static String missing(SystemPlan plan) {
        return plan.indicated().stream()
                .flatMap(indicated -> indicated.missing().stream()
                        .map(why -> indicated.scope().indicator().id() + ": " + why))
                .collect(Collectors.joining("; "));
    }
}
