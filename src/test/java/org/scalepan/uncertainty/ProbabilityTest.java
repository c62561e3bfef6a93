package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ProbabilityTest {
    @Test
    void less_is_counted_draw_by_draw_and_a_tie_counts_half() {
        Probability less = Probability.ofLess(new double[] {1, 2, 3, 4}, new double[] {2, 2, 2, 9});

        assertEquals(2.5 / 4, less.value(), 1e-15);
        assertEquals(Math.sqrt(0.625 * 0.375 / 4), less.standardError(), 1e-15);
    }

    @Test
    void a_side_against_itself_is_even() {
        double[] side = Draws.scores("side", 1, 100);

        assertEquals(0.5, Probability.ofLess(side, side).value(), 0.0);
    }

    @Test
    void at_least_includes_the_threshold() {
        Probability atLeast = Probability.ofAtLeast(new double[] {1, 2, 3, 4}, 3);

        assertEquals(0.5, atLeast.value(), 0.0);
        assertEquals(0.25, atLeast.standardError(), 1e-15);
    }

    @Test
    void what_cannot_be_compared_is_refused() {
        assertEquals(
                "draws of a and draws of b must be equally many, not 1 and 2",
                assertThrows(IllegalArgumentException.class, () -> Probability.ofLess(new double[1], new double[2]))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Probability.ofLess(new double[0], new double[0]));
        assertThrows(
                IllegalArgumentException.class, () -> Probability.ofLess(new double[] {Double.NaN}, new double[] {1}));
        assertThrows(
                IllegalArgumentException.class, () -> Probability.ofLess(new double[] {1}, new double[] {Double.NaN}));
        assertThrows(IllegalArgumentException.class, () -> Probability.ofAtLeast(new double[] {Double.NaN}, 1));
        assertThrows(IllegalArgumentException.class, () -> Probability.ofAtLeast(new double[] {1}, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Probability(Double.NaN, 0));
    }
}
