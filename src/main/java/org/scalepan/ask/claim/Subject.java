package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;
import org.scalepan.words.Message;

/**
 * What is claimed about: one product or farm, or all products of a group, of which each is checked for itself because "insects" are
 * not one product.
 *
 * @param words as in the question: {@code mealworm} or {@code insects}
 * @param sides at least one
 */
public record Subject(String words, List<Side> sides) {
    /** The group that people treat as one product. */
    public static final String INSECTS = "insects";

    public Subject {
        sides = List.copyOf(sides);
        if (sides.isEmpty()) {
            throw new IllegalArgumentException("a claim is about something");
        }
    }

    public static Subject of(Side side) {
        return new Subject(side.written(), List.of(side));
    }

    /** Why it cannot be held against a side: that is all it is about. */
    public Optional<String> obstacleTo(Side reference) {
        return sides.size() == 1 ? sides.get(0).obstacleTo(reference) : Optional.empty();
    }

    /** What it is called in a sentence: a group by its name in the language, anything else as in the question. */
    public Message group() {
        return isInsects() ? Message.of(INSECTS) : Message.verbatim(words);
    }

    /** True when every insect of the library is meant. */
    boolean isInsects() {
        return words.equals(INSECTS);
    }

    /** The same without a side that it is held against. */
    public Subject without(Side reference) {
        return sides.size() == 1
                ? this
                : new Subject(
                        words,
                        sides.stream().filter(side -> !side.equals(reference)).toList());
    }

    /** Every insect of the library in its usual form. */
    public static Subject insects(Library library) {
        return new Subject(
                INSECTS,
                library.products().values().stream()
                        .filter(product -> product.group().equals("insect"))
                        .<Side>map(product -> new Side.PublishedSide(new ProductForm(product, product.defaultForm())))
                        .toList());
    }
}
