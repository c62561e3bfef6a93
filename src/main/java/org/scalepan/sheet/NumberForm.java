package org.scalepan.sheet;

/**
 * How a number is shown. A spreadsheet knows decimals but no significant figures, so that the form of a figure is chosen by its size.
 */
public enum NumberForm {
    AS_IT_IS("General"),
    WHOLE("0"),
    ONE_DECIMAL("0.0"),
    TWO_DECIMALS("0.00"),
    THREE_DECIMALS("0.000"),
    FOUR_DECIMALS("0.0000"),
    /** For what is smaller still. */
    POWER("0.0E+00"),
    PERCENT("0 %"),
    /** A share of random draws, which proves neither none nor all. */
    DRAWS("[>0.99]\"> 99 %\";[<0.01]\"< 1 %\";0 %");

    private static final NumberForm[] BY_DECIMALS = {WHOLE, ONE_DECIMAL, TWO_DECIMALS, THREE_DECIMALS, FOUR_DECIMALS};

    private final String code;

    NumberForm(String code) {
        this.code = code;
    }

    /** The format code of ECMA-376, part 1, section 18.8.31. */
    String code() {
        return code;
    }

    /** Two significant figures where the number is below 100, whole numbers above. */
    public static NumberForm ofFigure(double value) {
        if (value == 0) {
            return WHOLE;
        }
        int decimals = Math.max(0, 1 - (int) Math.floor(Math.log10(Math.abs(value))));
        return decimals < BY_DECIMALS.length ? BY_DECIMALS[decimals] : POWER;
    }
}
