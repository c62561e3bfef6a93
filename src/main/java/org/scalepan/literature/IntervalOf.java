package org.scalepan.literature;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the interval of a pooled figure speaks of. Each adds to what the one before leaves open: what the average of all such studies would be,
 * what one more study would state, what would be stated of one more farm.
 *
 * <p>Source: prediction interval beside the interval of the mean, Higgins, Thompson and Spiegelhalter (2009), J. R. Stat. Soc. A 172, 137–159.
 */
public enum IntervalOf {
    MEAN("mean", "the average of such studies", ""),
    STUDY("study", "what the next study", " would find"),
    FARM("farm", "what the next farm", " would be found to have");

    private final String id;
    private final String before;
    private final String after;

    IntervalOf(String id, String before, String after) {
        this.id = id;
        this.before = before;
        this.after = after;
    }

    /** As it is written in a question. */
    public String id() {
        return id;
    }

    /**
     * As a sentence says it, behind "interval for": {@code what the next study of beef would find}.
     *
     * @param of of what, such as {@code " of beef"}; may be empty
     */
    public String words(String of) {
        return before + of + after;
    }

    public static Optional<IntervalOf> of(String id) {
        return Stream.of(values()).filter(value -> value.id.equals(id)).findFirst();
    }

    /** The ids, in order. */
    public static List<String> ids() {
        return Stream.of(values()).map(IntervalOf::id).toList();
    }
}
