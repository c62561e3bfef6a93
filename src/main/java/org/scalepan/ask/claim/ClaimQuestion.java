package org.scalepan.ask.claim;

import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Figure;

/**
 * A claim as it is asked, all defaults resolved.
 *
 * @param reference what the subject is compared with; a claim of none needs no reference
 * @param basis the unit, boundary and warming set on which the asker says it
 */
public record ClaimQuestion(
        Subject subject, Optional<Side> reference, Claimed claimed, ComparisonBasis basis, Sampling sampling) {
    public ClaimQuestion {
        if (reference.isEmpty() && claimed.times().isPresent()) {
            throw new IllegalArgumentException("less than what? a ratio needs a reference");
        }
    }

    /** The ratio that is claimed at least, reference ÷ product; only where one is claimed. */
    double times() {
        return claimed.times().orElseThrow();
    }

    /** The claimed ratio as it was said: 1, 12 or 1.25. */
    Figure timesInWords() {
        return new Figure(Claimed.number(times()));
    }

    /** The name of what the subject is compared with; empty where nothing is. */
    DisplayName referenceName() {
        return reference.map(Side::name).orElse(DisplayName.given(""));
    }
}
