package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What must hold for every distribution, whatever its kind. */
class DistributionTest {
    private static final int ROUNDS = 60;

    @Test
    void a_higher_probability_never_has_a_lower_quantile() {
        RandomDistributions random = new RandomDistributions(1);
        for (int round = 0; round < ROUNDS; round++) {
            for (Distribution distribution : random.ofEveryKind()) {
                double before = distribution.quantile(0.0005);
                for (double p = 0.001; p < 1; p += 0.0071) {
                    double now = distribution.quantile(p);
                    assertTrue(now >= before, distribution + " falls from " + before + " to " + now + " at " + p);
                    before = now;
                }
            }
        }
    }

    @Test
    void a_draw_is_the_quantile_at_its_score() {
        RandomDistributions random = new RandomDistributions(2);
        for (int round = 0; round < ROUNDS; round++) {
            double[] scores = new double[50];
            Arrays.setAll(scores, i -> random.score());
            for (Distribution distribution : random.ofEveryKind()) {
                double[] draws = new double[scores.length];
                distribution.fill(scores, draws);
                for (int i = 0; i < draws.length; i++) {
                    double expected = distribution.quantile(StandardNormal.probabilityBelow(scores[i]));
                    assertEquals(
                            expected, draws[i], 2e-8 * Math.abs(expected) + 1e-10, distribution + " at " + scores[i]);
                    assertEquals(distribution.atScore(scores[i]), draws[i], 2e-8 * Math.abs(expected) + 1e-10);
                }
            }
        }
    }

    /** The mean as the integral of the value at a score against the normal density, by the trapezium rule. */
    @Test
    void the_mean_is_the_average_over_all_scores() {
        RandomDistributions random = new RandomDistributions(3);
        for (int round = 0; round < 6; round++) {
            for (Distribution distribution : random.ofEveryKind()) {
                double sum = 0;
                for (int i = -4_000; i <= 4_000; i++) {
                    sum += distribution.atScore(i / 400.0) * StandardNormal.density(i / 400.0) / 400;
                }
                assertEquals(sum, distribution.mean(), 1e-5 * Math.abs(sum) + 1e-6, distribution.toString());
            }
        }
    }

    @Test
    void the_median_is_the_draw_at_score_zero() {
        RandomDistributions random = new RandomDistributions(4);
        for (Distribution distribution : random.ofEveryKind()) {
            assertEquals(distribution.atScore(0), distribution.median(), 1e-12 * Math.abs(distribution.median()));
        }
    }

    @Test
    void a_draw_does_not_depend_on_its_neighbours_and_may_overwrite_its_score() {
        RandomDistributions random = new RandomDistributions(5);
        double[] scores = {-2.2, 0.4, 1.9, 3.1};
        for (Distribution distribution : random.ofEveryKind()) {
            double[] all = new double[4];
            distribution.fill(scores, all);
            double[] two = new double[2];
            distribution.fill(scores, two);
            double[] inPlace = scores.clone();
            distribution.fill(inPlace, inPlace);
            assertArrayEquals(Arrays.copyOf(all, 2), two, distribution.toString());
            assertArrayEquals(all, inPlace, distribution.toString());
        }
    }

    @Test
    void more_draws_than_scores_are_refused() {
        for (Distribution distribution : new RandomDistributions(6).ofEveryKind()) {
            assertEquals(
                    "3 draws asked for, but only 2 scores given",
                    assertThrows(IllegalArgumentException.class, () -> distribution.fill(new double[2], new double[3]))
                            .getMessage());
        }
    }

    @Test
    void a_probability_outside_zero_and_one_is_refused() {
        for (Distribution distribution : new RandomDistributions(7).ofEveryKind()) {
            for (double p : new double[] {-0.1, 1.1, Double.NaN}) {
                assertThrows(
                        IllegalArgumentException.class,
                        () -> distribution.quantile(p),
                        () -> distribution + " at " + p);
            }
        }
    }
}
