package org.scalepan.factors;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How a number was checked for this library, best first. The grade is part of the data and reaches the user. */
public enum Grade {
    /** Seen in the publication itself. */
    FULLTEXT,
    /** Seen in the publication's abstract. */
    ABSTRACT,
    /** Seen quoted elsewhere. */
    SECONDARY,
    /** Not seen for this library: provisional. */
    MEMORY;

    /** The lowest grade that an answer uses unless another is asked for: nothing that nobody has seen. */
    public static final Grade USUAL = SECONDARY;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Grade> of(String id) {
        return Stream.of(values()).filter(grade -> grade.id().equals(id)).findFirst();
    }

    /** True when a number of this grade may be used where {@code lowest} is the lowest grade wanted. */
    public boolean isAtLeast(Grade lowest) {
        return compareTo(lowest) <= 0;
    }
}
