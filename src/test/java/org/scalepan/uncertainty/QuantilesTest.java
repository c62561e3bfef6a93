package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class QuantilesTest {
    /** Definition 7 of Hyndman and Fan 1996, by hand: position (n − 1)p counted from the first. */
    @Test
    void a_quantile_lies_on_the_line_between_neighbouring_draws() {
        double[] draws = {40, 10, 30, 20};

        assertEquals(10, Quantiles.of(draws, 0), 0.0);
        assertEquals(17.5, Quantiles.of(draws, 0.25), 1e-12);
        assertEquals(25, Quantiles.of(draws, 0.5), 1e-12);
        assertEquals(37, Quantiles.of(draws, 0.9), 1e-12);
        assertEquals(40, Quantiles.of(draws, 1), 0.0);
        assertArrayEquals(new double[] {37, 17.5}, Quantiles.of(draws, 0.9, 0.25), 1e-12, "in the order asked for");
    }

    @Test
    void selection_finds_what_sorting_finds_however_the_draws_are_arranged() {
        SplittableRandom random = new SplittableRandom(31);
        double[] ps = {0, 0.001, 0.05, 0.33, 0.5, 0.5, 0.95, 0.999, 1};
        for (int round = 0; round < 300; round++) {
            double[] draws = arranged(random, round % 6, random.nextInt(1, 3_000));
            double[] sorted = draws.clone();
            Arrays.sort(sorted);
            double[] found = Quantiles.of(draws, ps);
            for (int i = 0; i < ps.length; i++) {
                double place = (sorted.length - 1) * ps[i];
                int below = (int) place;
                int above = Math.min(below + 1, sorted.length - 1);
                double expected = sorted[below] + (place - below) * (sorted[above] - sorted[below]);
                assertEquals(expected, found[i], 1e-12 * Math.abs(expected), "round " + round + ", p = " + ps[i]);
            }
        }
    }

    @Test
    void rounding_moves_no_quantile_past_its_neighbouring_draws() {
        double same = 7.457031;
        for (int i = 0; i < 2000; i++) {
            double[] draws = new double[1000];
            java.util.Arrays.fill(draws, same);
            double[] quantiles = Quantiles.of(draws, 0.05, 0.469, 0.5, 0.531, 0.95);
            for (double quantile : quantiles) {
                assertEquals(same, quantile, 0.0);
            }
            same = Math.nextUp(same) * 1.0007;
        }
    }

    @Test
    void the_draws_are_left_as_they_are() {
        double[] draws = Draws.scores("untouched", 1, 1_000);
        double[] before = draws.clone();
        Quantiles.of(draws, 0.1, 0.9);
        assertArrayEquals(before, draws);
    }

    @Test
    void nothing_nan_and_impossible_probabilities_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> Quantiles.of(new double[0], 0.5));
        assertEquals(
                "draw 1 must be finite, not NaN",
                assertThrows(IllegalArgumentException.class, () -> Quantiles.of(new double[] {1, Double.NaN}, 0.5))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Quantiles.of(new double[] {1}, 1.5));
        assertThrows(IllegalArgumentException.class, () -> Quantiles.of(new double[] {1}, Double.NaN));
    }

    private static double[] arranged(SplittableRandom random, int arrangement, int n) {
        double[] draws = new double[n];
        for (int i = 0; i < n; i++) {
            draws[i] = switch (arrangement) {
                case 0 -> random.nextDouble();
                case 1 -> i;
                case 2 -> -i;
                case 3 -> random.nextInt(3);
                case 4 -> Math.min(i, n - i);
                default -> 5;
            };
        }
        return draws;
    }
}
