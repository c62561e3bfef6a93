package org.scalepan.exchange.rows;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.input.FieldError;
import org.scalepan.production.Inventory;
import org.scalepan.production.Scope;

/** The result of one row of a bulk run. */
public sealed interface BulkRow {
    /** Counted from 1, in the order sent. */
    long number();

    /**
     * The row was computed; an estimate may still have no figure.
     *
     * @param displacedUse beside each estimate, where detail is asked for: the figure with the use elsewhere of burden-free by-products
     *     counted, where there are any
     */
    record Computed(
            long number,
            Inventory inventory,
            List<SystemEstimate> estimates,
            List<Optional<DisplacedUseFigure>> displacedUse)
            implements BulkRow {
        public Computed {
            estimates = List.copyOf(estimates);
            displacedUse = List.copyOf(displacedUse);
        }

        /** Whether all, some or none of the indicators asked for have a figure, or the records contradict themselves. */
        public String status() {
            if (!inventory.impossible().isEmpty()) {
                return "impossible";
            }
            int figures = 0;
            for (SystemEstimate estimate : estimates) {
                if (estimate.system().isPresent()) {
                    figures++;
                }
            }
            return figures == estimates.size() ? "ok" : figures > 0 ? "partly" : "not-computed";
        }
    }

    /** The row could not be read: what is wrong, with the column or field as its parameter or pointer. */
    record RejectedRow(long number, Optional<String> name, List<FieldError> errors) implements BulkRow {
        public RejectedRow {
            errors = List.copyOf(errors);
        }
    }

    /** Value and ends of the interval of an estimate, from its draws or from first-order propagation; empty where there is no figure. */
    static Optional<double[]> figure(SystemEstimate estimate, double coverage) {
        return estimate.summary()
                .map(drawn -> new double[] {drawn.median(), drawn.low(), drawn.high()})
                .or(() -> estimate.firstOrder()
                        .map(first -> new double[] {first.value(), first.low(coverage), first.high(coverage)}));
    }

    /** The unit of a figure in words. */
    static String unit(Scope scope) {
        return scope.indicator().unit() + " per " + scope.per().words();
    }
}
