package org.scalepan.spark;

import java.io.Serializable;
import org.apache.spark.SparkContext;
import org.apache.spark.util.LongAccumulator;
import org.scalepan.RowAnswer;
import org.scalepan.RowFigure;

/**
 * What a run has answered, counted by the engine. Rows are answered in the stage that writes them, whose tasks the engine counts once,
 * however often one was tried.
 *
 * @param errors rows that could not be read
 * @param figures figures with a number
 * @param bounds those of the figures that are bounds
 */
record RowCounts(LongAccumulator rows, LongAccumulator errors, LongAccumulator figures, LongAccumulator bounds)
        implements Serializable {
    static RowCounts of(SparkContext context) {
        return new RowCounts(
                context.longAccumulator("rows"),
                context.longAccumulator("errors"),
                context.longAccumulator("figures"),
                context.longAccumulator("bounds"));
    }

    void add(RowAnswer answer) {
        rows.add(1);
        if (!answer.errors().isEmpty()) {
            errors.add(1);
        }
        for (RowFigure figure : answer.figures()) {
            if (figure.value().isPresent()) {
                figures.add(1);
                if (!figure.bound().equals("exact")) {
                    bounds.add(1);
                }
            }
        }
    }

    String json() {
        return "\"rows\": " + rows.value() + ", \"errors\": " + errors.value() + ", \"figures\": " + figures.value()
                + ", \"bounds\": " + bounds.value();
    }
}
