package org.scalepan.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.quantity.Reckoning;

/** Answers the rows of one table: by the plan of a row before it where there is one that serves, else from the library. */
final class CsvAnswers {
    private static final int LONGEST_NAME = 200;

    private final BulkQuestion question;
    private final FlatColumns columns;
    private final FlatColumns.Holds[] holds;
    private final WordNumbers words = new WordNumbers();
    private final RowPlans plans = new RowPlans();
    private final RowShape shape = new RowShape();
    private final double[] amounts;
    private int name;

    CsvAnswers(BulkQuestion question, FlatColumns columns) {
        this.question = question;
        this.columns = columns;
        this.amounts = new double[columns.size()];
        this.holds = new FlatColumns.Holds[columns.size()];
        for (int i = 0; i < holds.length; i++) {
            holds[i] = columns.holds(i);
        }
    }

    BulkRow answer(long number, Cells cells) {
        if (!question.canPlan() || !hasShape(cells)) {
            return question.answer(number, columns.row(cells.all()), Body.Entering.ONCE);
        }
        Optional<RowPlan> plan = plans.serving(shape, amounts);
        if (plan.isPresent()) {
            return new BulkRow.Alike(
                    number,
                    name < 0 ? plan.get().system().usualName() : cells.cell(name),
                    plan.get(),
                    plans.places());
        }
        return plans.wants(shape)
                ? planned(number, columns.row(cells.all()))
                : question.answer(number, columns.row(cells.all()), Body.Entering.ONCE);
    }

    /** Reads shape and amounts; a row with a cell that is not right has none, and is read anew to be told what is wrong. */
    private boolean hasShape(Cells cells) {
        shape.clear();
        name = -1;
        for (int i = 0; i < cells.count(); i++) {
            int column = cells.column(i);
            int word = 0;
            switch (holds[column]) {
                case AMOUNT -> {
                    double amount =
                            CellNumber.read(cells.text(), cells.start(i), cells.end(i), columns.decimal());
                    if (Double.isNaN(amount)) {
                        return false;
                    }
                    amounts[column] = amount;
                }
                case NAME -> {
                    if (cells.end(i) - cells.start(i) > LONGEST_NAME) {
                        return false;
                    }
                    name = i;
                }
                case WORD -> {
                    word = words.of(cells.text(), cells.start(i), cells.end(i));
                    if (word == 0) {
                        return false;
                    }
                }
            }
            shape.add(column, word);
        }
        return true;
    }

    /** Answers a row from the library and keeps how. */
    private BulkRow planned(long number, FlatRow row) {
        Reckoning reckoning = new Reckoning();
        List<Integer> entered = new ArrayList<>();
        BulkRow answer = question.answer(number, row, (pointer, value, limits) -> {
            entered.add(columns.named(row.column(pointer)));
            return reckoning.entry(value, limits);
        });
        if (answer instanceof BulkRow.Computed computed) {
            plans.add(shape, new RowPlan(question.plan(computed, reckoning), entered));
        }
        return answer;
    }
}
