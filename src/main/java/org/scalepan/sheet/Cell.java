package org.scalepan.sheet;

/**
 * One cell of a sheet.
 *
 * @param content what it holds
 * @param look how it is shown
 */
public record Cell(CellContent content, Look look) {

    /** What a cell holds. */
    public sealed interface CellContent {}

    /** Text; never run as a formula by a spreadsheet, see {@link FormulaGuard}. */
    public record Text(String text) implements CellContent {
        public Text {
            text = FormulaGuard.guarded(XmlText.allowed(text));
        }
    }

    /**
     * A finite number.
     *
     * @param form how many digits of it are shown; the cell holds all of them
     */
    public record NumberContent(double value, NumberForm form) implements CellContent {
        public NumberContent {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a cell holds finite numbers only");
            }
        }
    }

    /** A formula that the spreadsheet works out; only ever our own. */
    public record Live(Formula formula) implements CellContent {}

    /** Nothing. */
    public record Blank() implements CellContent {}

    /** How a cell is shown. */
    public enum Look {
        PLAIN,
        /** What a sheet is called; it runs over the empty cells beside it. */
        TITLE,
        /** The head of a column or the name of something. */
        HEAD,
        /** The head of a column of numbers, which stand at its right. */
        HEAD_OF_NUMBERS,
        /** A cell that the reader may change. */
        INPUT,
        /** A longer text, broken into lines. */
        WRAPPED
    }

    private static final Cell EMPTY = new Cell(new Blank(), Look.PLAIN);

    public static Cell text(String text) {
        return new Cell(new Text(text), Look.PLAIN);
    }

    /** A number with the digits that it has. */
    public static Cell number(double value) {
        return number(value, NumberForm.AS_IT_IS);
    }

    public static Cell number(double value, NumberForm form) {
        return new Cell(new NumberContent(value, form), Look.PLAIN);
    }

    public static Cell live(String formula) {
        return new Cell(new Live(new Formula(formula)), Look.PLAIN);
    }

    public static Cell title(String text) {
        return new Cell(new Text(text), Look.TITLE);
    }

    public static Cell head(String text) {
        return new Cell(new Text(text), Look.HEAD);
    }

    public static Cell headOfNumbers(String text) {
        return new Cell(new Text(text), Look.HEAD_OF_NUMBERS);
    }

    public static Cell input(String text) {
        return new Cell(text.isEmpty() ? new Blank() : new Text(text), Look.INPUT);
    }

    public static Cell empty() {
        return EMPTY;
    }

    /** The same content, broken into lines where it is long. */
    public Cell wrapped() {
        return new Cell(content, Look.WRAPPED);
    }

    /** The same content as the head of a column. */
    public Cell asHead() {
        return new Cell(content, Look.HEAD);
    }
}
