package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;

/**
 * The strongest sentence that holds in 90 % of the draws.
 *
 * @param basis the basis it is said on: the one asked, or the nearest with evidence
 * @param timesLess "at least so many times less", where a reduction can be defended; two figures, rounded down
 * @param timesMore "at least so many times more", where that can be defended
 * @param sources ids of the sources it rests on
 */
public record Instead(
        String sentence,
        Optional<ComparisonBasis> basis,
        OptionalDouble timesLess,
        OptionalDouble timesMore,
        List<String> sources) {
    public Instead {
        sources = List.copyOf(sources);
    }

    /** The same with sentences that must not be parted from it. */
    Instead followedBy(List<String> sentences) {
        return new Instead(
                Stream.concat(Stream.of(sentence), sentences.stream()).collect(Collectors.joining(" ")),
                basis,
                timesLess,
                timesMore,
                sources);
    }
}
