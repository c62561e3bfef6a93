package org.scalepan.words;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is said, in no language yet: a key of the message files and the values that its template names.
 *
 * @param values texts, whole numbers, {@link Figure}s, {@link DisplayName}s, other messages, or {@link Listing}s of these
 */
public record Message(String key, Map<String, Object> values) {
    private static final String VERBATIM = "verbatim";

    public Message {
        // In the order given, so that two messages with the same values in the same order print alike.
        values = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /**
     * A message.
     *
     * @param namesAndValues name, value, name, value
     */
    public static Message of(String key, Object... namesAndValues) {
        return new Message(key, named(namesAndValues));
    }

    /** A text that is the same in every language, such as what a source or a user wrote. */
    public static Message verbatim(String text) {
        return of(VERBATIM, "text", text);
    }

    /** The same in English. */
    public String english() {
        return in(Language.ENGLISH);
    }

    public String in(Language language) {
        return language.say(this);
    }

    static Map<String, Object> named(Object... namesAndValues) {
        if (namesAndValues.length % 2 != 0) {
            throw new IllegalArgumentException("a name without a value");
        }
        Map<String, Object> values = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            values.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return values;
    }
}
