package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;

/**
 * The strongest sentence that holds in 90 % of the draws; where there is none, what one paper printed of both sides.
 *
 * @param basis the basis it is said on: the one asked, or the nearest with evidence
 * @param timesLess "at least so many times less", where a reduction can be defended; two figures, rounded down
 * @param timesMore "at least so many times more", where that can be defended
 * @param sources ids of the sources it rests on
 * @param paper id of the one source whose own ratio it repeats, where the draws support no sentence
 */
public record Instead(
        String sentence,
        Optional<ComparisonBasis> basis,
        OptionalDouble timesLess,
        OptionalDouble timesMore,
        List<String> sources,
        Optional<String> paper) {
    public Instead {
        sources = List.copyOf(sources);
    }

    /** A sentence of this service's own. */
    Instead(
            String sentence,
            Optional<ComparisonBasis> basis,
            OptionalDouble timesLess,
            OptionalDouble timesMore,
            List<String> sources) {
        this(sentence, basis, timesLess, timesMore, sources, Optional.empty());
    }

    /** The same with sentences that must not be parted from it. */
    Instead followedBy(List<String> sentences) {
        return new Instead(
                Stream.concat(Stream.of(sentence), sentences.stream()).collect(Collectors.joining(" ")),
                basis,
                timesLess,
                timesMore,
                sources,
                paper);
    }
}
