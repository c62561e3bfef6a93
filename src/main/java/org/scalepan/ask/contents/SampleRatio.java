package org.scalepan.ask.contents;

import java.util.Optional;
import org.scalepan.ask.claim.Verdict;

/**
 * How many times as much one food holds as another, over all pairs of published samples. No distribution is assumed: between the ends
 * anything may be true.
 *
 * @param low lowest ÷ highest
 * @param middle of the two values chosen
 * @param high highest ÷ lowest; infinite where the lowest is 0
 */
public record SampleRatio(double low, double middle, double high) {

    /** Empty where the denominator is 0 throughout. */
    static Optional<SampleRatio> of(SampleRange above, SampleRange below) {
        if (below.high() == 0) {
            return Optional.empty();
        }
        return Optional.of(
                new SampleRatio(above.low() / below.high(), above.value() / below.value(), above.high() / below.low()));
    }

    /**
     * The verdict on a claim of at least so many times: it holds where even the lowest sample over the highest reaches it, and fails
     * where the highest over the lowest does not. One sample on a side decides nothing.
     */
    Verdict verdict(double times, boolean thin) {
        if (thin) {
            return Verdict.OPEN;
        }
        if (low >= times) {
            return Verdict.HOLDS;
        }
        return high < times ? Verdict.FAILS : Verdict.OPEN;
    }
}
