package org.scalepan.exchange.text;

/** What a JSON or CSV text may hold, however it was sent. */
public final class TextLimits {
    public static final int DEPTH = 16;
    public static final int TOKENS = 50_000;
    public static final int NUMBER_DIGITS = 40;
    public static final int TEXT_CHARACTERS = 10_000;
    public static final int NAME_CHARACTERS = 100;
    public static final int CELLS_OF_ROW = 16_384;
    public static final int CELL_CHARACTERS = 100_000;
    public static final int LINE_CHARACTERS = 100_000;

    private TextLimits() {}
}
