package org.scalepan.literature;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which sides of a paired ratio a study did not assess itself, and where it took them from. Then one method did not measure both, and
 * what should cancel in the ratio may not.
 *
 * @param product a source id, or {@link #LITERATURE}; empty where the study assessed the product or does not say otherwise
 * @param reference the same of the reference
 */
public record Borrowed(Optional<String> product, Optional<String> reference) {
    /** In place of a source id: gathered by the study from literature that this library does not name. */
    public static final String LITERATURE = "literature";

    static final Borrowed NONE = new Borrowed(Optional.empty(), Optional.empty());

    static Borrowed reference(Optional<String> from) {
        return new Borrowed(Optional.empty(), from);
    }

    static Borrowed product(Optional<String> from) {
        return new Borrowed(from, Optional.empty());
    }

    /** The union of what two rows of one study say. */
    Borrowed or(Borrowed other) {
        return new Borrowed(product.or(other::product), reference.or(other::reference));
    }

    /** True where the study measured neither side. */
    public boolean isGathered() {
        return Stream.of(product, reference)
                .allMatch(from -> from.filter(LITERATURE::equals).isPresent());
    }

    /** The source ids. */
    public Stream<String> sources() {
        return Stream.concat(product.stream(), reference.stream()).filter(from -> !from.equals(LITERATURE));
    }
}
