package org.scalepan.production.fish;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import org.scalepan.production.RecordedNumber;

/**
 * The water that the fish live in, and what is put into it beside feed.
 *
 * @param area m2 of water
 * @param nitrogen kg N of mineral fertiliser a year
 * @param phosphate kg P2O5 of mineral fertiliser a year
 * @param manure kg as it is a year
 * @param lime kg a year
 */
@RecordBuilder
public record Pond(
        Optional<PondKind> kind,
        Optional<RecordedNumber> area,
        Optional<RecordedNumber> nitrogen,
        Optional<RecordedNumber> phosphate,
        Optional<RecordedNumber> manure,
        Optional<RecordedNumber> lime)
        implements PondBuilder.With {
    /** Water of which nothing was written down. */
    public static final Pond UNRECORDED = new Pond(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** The kind, or the one that stands for it where it was not recorded. */
    PondKind usualKind() {
        return kind.orElse(PondKind.POND);
    }
}
