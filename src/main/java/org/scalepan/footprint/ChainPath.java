package org.scalepan.footprint;

import java.util.List;
import org.scalepan.words.Message;

/** The result of a search for a conversion from one functional unit to another. */
public sealed interface ChainPath {

    /** There is a conversion; an empty list means that the units are the same. */
    record FoundPath(List<ChainStep> steps) implements ChainPath {
        public FoundPath {
            steps = List.copyOf(steps);
        }
    }

    /**
     * There is none, because the product has no such factor. Never borrowed from another species.
     *
     * @param product product id
     * @param form form id
     * @param missing the factor that would be needed, in words
     */
    record MissingConversion(String product, String form, FunctionalUnit from, FunctionalUnit to, Message missing)
            implements ChainPath {
        /** The refusal as a sentence. */
        public Message message() {
            return Message.of(
                    "missing.conversion",
                    "from",
                    from.message(),
                    "to",
                    to.message(),
                    "product",
                    product,
                    "form",
                    form,
                    "why",
                    missing);
        }

        /** The refusal as an English sentence. */
        public String text() {
            return message().english();
        }
    }
}
