package org.scalepan.ask.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Shares of a whole: they add to 1, and one of them may be left open as the remainder. */
public final class Shares {
    /** Parts written with a few digits, such as three times 0.333, count as adding to 1 and are normalised. */
    private static final double ROUNDING = 0.005;

    private Shares() {}

    /**
     * The parts, adding to exactly 1 in their proportions, or nothing when they do not add to 1.
     *
     * @param given each 0 to 1; at most one left out, which is then the remainder
     */
    public static Optional<List<Double>> of(List<OptionalDouble> given) {
        long open = given.stream().filter(OptionalDouble::isEmpty).count();
        double sum = given.stream().mapToDouble(share -> share.orElse(0)).sum();
        boolean whole = open == 0 && Math.abs(sum - 1) <= ROUNDING;
        boolean rest = open == 1 && sum < 1;
        if (!whole && !rest) {
            return Optional.empty();
        }
        List<Double> shares = new ArrayList<>();
        given.forEach(share -> shares.add(share.isPresent() ? share.getAsDouble() / (rest ? 1 : sum) : 1 - sum));
        return Optional.of(shares);
    }
}
