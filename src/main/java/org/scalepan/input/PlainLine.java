package org.scalepan.input;

/**
 * A text that somebody typed, as one line: a name with a line break (Alt and Enter in a spreadsheet) must not begin a new line of a
 * document, and control characters and what Unicode keeps free of characters can stand in few formats.
 */
public final class PlainLine {
    private static final int LAST_TWO_OF_A_PLANE = 0xFFFE;

    private PlainLine() {}

    /** The text with a blank in place of each character that is no part of a line, and none at the ends. */
    public static String of(String text) {
        if (text.codePoints().noneMatch(PlainLine::isNoPartOfALine)) {
            return text.strip();
        }
        StringBuilder line = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> line.appendCodePoint(isNoPartOfALine(letter) ? ' ' : letter));
        return line.toString().strip();
    }

    private static boolean isNoPartOfALine(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            default -> isNonCharacter(letter);
        };
    }

    /** Unicode 15.0, section 23.7: the last two of each plane, and 32 more. */
    private static boolean isNonCharacter(int letter) {
        return (letter & LAST_TWO_OF_A_PLANE) == LAST_TWO_OF_A_PLANE || (letter >= 0xFDD0 && letter <= 0xFDEF);
    }
}
