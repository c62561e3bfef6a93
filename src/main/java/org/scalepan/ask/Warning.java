package org.scalepan.ask;

import java.util.List;
import org.scalepan.words.Language;
import org.scalepan.words.Message;

/**
 * What a reader must know about an answer.
 *
 * @param code stable code
 * @param message the sentence
 * @param about the products or rows that it is about
 */
public record Warning(String code, Message message, List<String> about) {
    public Warning {
        about = List.copyOf(about);
    }

    /** A warning whose sentence stands under its code. */
    public static Warning of(String code, List<String> about, Object... namesAndValues) {
        return new Warning(code, Message.of("warning." + code, namesAndValues), about);
    }

    /** The sentence in English. */
    public String text() {
        return message.english();
    }

    public String text(Language language) {
        return message.in(language);
    }
}
