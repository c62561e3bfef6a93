package org.scalepan.quantity;

import java.util.List;
import java.util.function.Function;

/**
 * A sentence that tells amounts, so that it can be said again with the amounts of other records.
 *
 * @param words makes the sentence of the amounts' numbers, and depends on nothing else
 */
public record Wording(Function<double[], String> words, List<Amount> amounts) {
    public Wording {
        amounts = List.copyOf(amounts);
    }

    /** A sentence that is the same for all records. */
    public static Wording of(String text) {
        return new Wording(none -> text, List.of());
    }

    public static Wording of(Function<double[], String> words, Amount... amounts) {
        return new Wording(words, List.of(amounts));
    }

    /** The sentence with the amounts as they are. */
    public String text() {
        return words.apply(Amount.values(amounts));
    }
}
