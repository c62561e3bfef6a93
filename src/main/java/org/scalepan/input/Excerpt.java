package org.scalepan.input;

/** A client's own text, truncated so that it can be repeated in a message. */
public final class Excerpt {
    /** How much of it is repeated, in characters. */
    private static final int MOST_REPEATED = 60;

    private Excerpt() {}

    /** At most 60 characters of a text; three dots stand for the rest. */
    public static String of(String text) {
        return of(text, MOST_REPEATED);
    }

    /** At most so many characters of a text; three dots stand for the rest. */
    public static String of(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        int end = most - 3;
        // A character outside the basic plane is two units long and must not be split.
        return text.substring(0, Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end) + "...";
    }
}
