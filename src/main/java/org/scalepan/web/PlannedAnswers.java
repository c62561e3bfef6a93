package org.scalepan.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.quantity.Reckoning;

/** Answers the rows of one run: by the plan of a row before it where there is one that serves, else from the library. */
final class PlannedAnswers {
    private final BulkQuestion question;
    private final RowPlans plans = new RowPlans();

    PlannedAnswers(BulkQuestion question) {
        this.question = question;
    }

    /** A row as far as it must be read to find its plan. */
    interface Row {
        /**
         * Reads its shape, its amounts and its name.
         *
         * @return whether that was possible; a row with something that is not right is read anew, to be told what is wrong
         */
        boolean read();

        RowShape shape();

        /** Its amounts by place. */
        double[] amounts();

        Optional<String> name();

        /** Answers it from the library. */
        BulkRow answer(long number, Input.Entering entering);

        /** The place of an amount that was entered for the answer. */
        int place(String pointer);
    }

    BulkRow answer(long number, Row row) {
        // Draws are made for each row alone.
        if (question.drawn() || !row.read()) {
            return row.answer(number, Input.Entering.ONCE);
        }
        Optional<RowPlan> plan = plans.serving(row.shape(), row.amounts());
        if (plan.isPresent()) {
            String usual = plan.get().system().usualName();
            return new BulkRow.Alike(number, row.name().orElse(usual), plan.get(), plans.places());
        }
        return plans.wants(row.shape()) ? planned(number, row) : row.answer(number, Input.Entering.ONCE);
    }

    /** Answers a row from the library and keeps how. */
    private BulkRow planned(long number, Row row) {
        Reckoning reckoning = new Reckoning();
        List<Integer> entered = new ArrayList<>();
        BulkRow answer = row.answer(number, (pointer, value, limits) -> {
            entered.add(row.place(pointer));
            return reckoning.entry(value, limits);
        });
        if (answer instanceof BulkRow.Computed computed) {
            plans.add(row.shape(), new RowPlan(question.plan(computed, reckoning), entered));
        }
        return answer;
    }
}
