package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CrossingTest {
    @Test
    void a_straight_line_crosses_zero_at_its_closed_form_however_far_away() {
        Random random = new Random(3);
        for (int run = 0; run < 200; run++) {
            double root = Math.pow(10, random.nextDouble() * 16 - 6);
            double slope = (random.nextBoolean() ? 1 : -1) * Math.pow(10, random.nextDouble() * 8 - 4);
            double from = Math.pow(10, random.nextDouble() * 8 - 2);
            OptionalDouble found = new Crossing(x -> slope * (x - root), 0, 1e12).nearest(from);

            assertEquals(1, found.orElseThrow() / root, 1e-9, () -> "root " + root + " from " + from);
        }
    }

    @Test
    void a_curve_is_crossed_at_its_root() {
        // What is left of 100 at 3 a unit is 5 at 95 ÷ 3; a hyperbola as of burden over harvest.
        assertEquals(
                20, new Crossing(x -> 100 / x - 5, 1e-9, 1e12).nearest(3000).orElseThrow(), 1e-10);
        assertEquals(
                Math.log(2),
                new Crossing(x -> Math.exp(x) - 2, 0, 50).nearest(0).orElseThrow(),
                1e-12);
    }

    @Test
    void of_two_crossings_the_nearer_is_taken() {
        Crossing parabola = new Crossing(x -> (x - 1) * (x - 10), 0, 100);

        assertEquals(1, parabola.nearest(2).orElseThrow(), 1e-10);
        assertEquals(10, parabola.nearest(9).orElseThrow(), 1e-10);
    }

    @Test
    void a_curve_that_stays_on_one_side_is_not_crossed_and_one_that_starts_on_zero_is_crossed_there() {
        assertTrue(new Crossing(x -> 1 + x, 0, 1e12).nearest(5).isEmpty());
        assertEquals(5, new Crossing(x -> x - 5, 0, 10).nearest(5).orElseThrow());
        assertEquals(0, new Crossing(x -> x, 0, 10).nearest(4).orElseThrow(), 1e-12);
    }

    @Test
    void limits_must_be_finite() {
        assertThrows(IllegalArgumentException.class, () -> new Crossing(x -> x, 0, Double.POSITIVE_INFINITY));
    }
}
