package org.scalepan.literature;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/**
 * What the interval of a pooled figure speaks of. Each adds to what the one before leaves open: what the average of all such studies would be,
 * what one more study would state, what would be stated of one more farm.
 *
 * <p>Source: prediction interval beside the interval of the mean, Higgins, Thompson and Spiegelhalter (2009), J. R. Stat. Soc. A 172, 137–159.
 */
public enum IntervalOf {
    MEAN("mean"),
    STUDY("study"),
    FARM("farm");

    private final String id;

    IntervalOf(String id) {
        this.id = id;
    }

    /** As it is written in a question. */
    public String id() {
        return id;
    }

    /** As a sentence says it, behind "interval for": {@code what the next study would find}. */
    public Message message() {
        return Message.of("speaks-of." + id);
    }

    /** The same of each of two sides: {@code what the next study of each would find}. */
    public Message ofEach() {
        return Message.of("speaks-of." + id + ".each");
    }

    /** The same of one side: {@code what the next study of beef would find}. */
    public Message of(DisplayName side) {
        return Message.of("speaks-of." + id + ".one", "name", side);
    }

    public static Optional<IntervalOf> of(String id) {
        return Stream.of(values()).filter(value -> value.id.equals(id)).findFirst();
    }

    /** The ids, in order. */
    public static List<String> ids() {
        return Stream.of(values()).map(IntervalOf::id).toList();
    }
}
