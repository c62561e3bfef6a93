package org.scalepan.words;

import java.util.List;

/** Several things in a message, one behind the other. */
public record Listing(List<?> items, Joint joint) {
    /** What stands between two of them. */
    public enum Joint {
        COMMA,
        SEMICOLON,
        AND,
        OR
    }

    public Listing {
        items = List.copyOf(items);
    }

    public static Listing commas(List<?> items) {
        return new Listing(items, Joint.COMMA);
    }

    public static Listing semicolons(List<?> items) {
        return new Listing(items, Joint.SEMICOLON);
    }

    public static Listing or(List<?> items) {
        return new Listing(items, Joint.OR);
    }

    public static Listing and(List<?> items) {
        return new Listing(items, Joint.AND);
    }
}
