package org.scalepan.ask.contents;

import java.util.List;
import java.util.Set;
import org.scalepan.factors.Grade;

/**
 * What published samples of a food hold of something.
 *
 * @param value the library's own choice among them
 * @param low the lowest published; the value where there is one sample
 * @param high the highest
 * @param samples how many were published; a printed range counts as two
 * @param notes codes of what must be known of the figure
 */
public record SampleRange(
        double value,
        double low,
        double high,
        int samples,
        List<String> rows,
        Set<String> sources,
        Grade lowest,
        List<String> notes) {
    public SampleRange {
        if (!(low <= high && low >= 0)) {
            throw new IllegalArgumentException("a range of contents runs from low to high, not " + low + " to " + high);
        }
        rows = List.copyOf(rows);
        sources = Set.copyOf(sources);
        notes = List.copyOf(notes);
    }

    /** True when one sample stands for the food: how far another would lie is not seen. */
    boolean isThin() {
        return samples < 2;
    }
}
