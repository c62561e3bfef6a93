package org.scalepan.ask.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The shares of several displaced products add to 1. */
class SharesTest {
    /** Parts; NaN is one left out. */
    private static Optional<List<Double>> shares(double... given) {
        return Shares.of(Arrays.stream(given)
                .mapToObj(share -> Double.isNaN(share) ? OptionalDouble.empty() : OptionalDouble.of(share))
                .toList());
    }

    @Test
    void shares_that_add_to_1_are_unchanged() {
        assertEquals(List.of(0.75, 0.25), shares(0.75, 0.25).orElseThrow());
    }

    @Test
    void an_open_share_is_the_remainder() {
        assertEquals(List.of(1.0), shares(Double.NaN).orElseThrow());
        assertEquals(List.of(0.75, 0.25), shares(0.75, Double.NaN).orElseThrow());
    }

    @Test
    void three_times_0_333_is_normalised_to_1() {
        List<Double> thirds = shares(0.333, 0.333, 0.333).orElseThrow();

        assertEquals(1.0 / 3, thirds.get(0), 1e-12);
        assertEquals(1, thirds.stream().mapToDouble(share -> share).sum(), 1e-12);
    }

    @Test
    void shares_that_do_not_add_to_1_are_refused() {
        assertTrue(shares(0.5, 0.4).isEmpty());
        assertTrue(shares(0.6, 0.6).isEmpty());
        assertTrue(shares(Double.NaN, Double.NaN).isEmpty());
        assertTrue(shares(1, Double.NaN).isEmpty(), "nothing is left for the rest");
        assertTrue(shares().isEmpty());
    }
}
