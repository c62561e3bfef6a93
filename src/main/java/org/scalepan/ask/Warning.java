package org.scalepan.ask;

import java.util.List;

/**
 * What a reader must know about an answer.
 *
 * @param code stable code
 * @param text the sentence
 * @param about the products or rows that it is about
 */
public record Warning(String code, String text, List<String> about) {
    public Warning {
        about = List.copyOf(about);
    }
}
