package org.scalepan.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The row of a table that is being answered, read from its cells. */
final class TableRow implements PlannedAnswers.Row {

    private final BulkQuestion question;
    private final FlatColumns columns;
    private final Cells cells;
    private final FlatColumns.Holds[] holds;
    private final WordNumbers words = new WordNumbers();
    private final RowShape shape = new RowShape();
    private final double[] amounts;
    private int name;
    private @Nullable FlatRow flat;

    /** @param cells always hold the row that is being answered */
    TableRow(BulkQuestion question, FlatColumns columns, Cells cells) {
        this.question = question;
        this.columns = columns;
        this.cells = cells;
        this.amounts = new double[columns.size()];
        this.holds = new FlatColumns.Holds[columns.size()];
        for (int i = 0; i < holds.length; i++) {
            holds[i] = columns.holds(i);
        }
    }

    @Override
    public boolean read() {
        shape.clear();
        name = -1;
        for (int i = 0; i < cells.count(); i++) {
            int column = cells.column(i);
            int word = 0;
            switch (holds[column]) {
                case AMOUNT -> {
                    double amount = CellNumber.read(cells.text(), cells.start(i), cells.end(i), columns.decimal());
                    if (Double.isNaN(amount)) {
                        return false;
                    }
                    amounts[column] = amount;
                }
                case NAME -> {
                    if (cells.end(i) - cells.start(i) > Limits.FIELD_CHARACTERS) {
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

    @Override
    public RowShape shape() {
        return shape;
    }

    @Override
    public double[] amounts() {
        return amounts;
    }

    @Override
    public Optional<String> name() {
        return name < 0 ? Optional.empty() : Optional.of(cells.cell(name));
    }

    @Override
    public BulkRow answer(long number, Input.Entering entering) {
        FlatRow row = columns.row(cells.all());
        flat = row;
        return question.answer(number, row, entering);
    }

    @Override
    public int place(String pointer) {
        return columns.named(java.util.Objects.requireNonNull(flat).column(pointer));
    }
}
