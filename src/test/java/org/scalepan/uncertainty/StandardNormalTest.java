package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandardNormalTest {
    private static final NormalDistribution INDEPENDENT = NormalDistribution.of(0, 1);

    /** Against Commons Statistics, which loses figures below −12; further out, see the next test. */
    @Test
    void probabilities_agree_with_an_independent_library_in_the_middle_and_in_both_tails() {
        for (double z = -12; z <= 9; z += 0.0137) {
            double expected = INDEPENDENT.cumulativeProbability(z);
            assertEquals(expected, StandardNormal.probabilityBelow(z), 1e-13 * expected, "at score " + z);
        }
    }

    /** Expected: mpmath, ncdf at 40 digits. */
    @ParameterizedTest
    @CsvSource({
        "-20, 2.7536241186062336951e-89",
        "-30.01, 3.6335928149653539243e-198",
        "-36.9315, 7.2164379195198225966e-299"
    })
    void probabilities_keep_their_figures_in_the_farthest_tail(double score, double expected) {
        assertEquals(expected, StandardNormal.probabilityBelow(score), 1e-14 * expected);
    }

    @Test
    void scores_agree_with_an_independent_library_in_the_middle_and_in_the_lower_tail() {
        for (double p = 0.0005; p < 1; p += 0.0005) {
            assertEquals(INDEPENDENT.inverseCumulativeProbability(p), StandardNormal.score(p), 1e-13, "at " + p);
        }
        for (double p = 1e-3; p > 1e-290; p /= 7) {
            double expected = INDEPENDENT.inverseCumulativeProbability(p);
            assertEquals(expected, StandardNormal.score(p), 1e-13 * -expected, "at " + p);
        }
    }

    /** Printed tables of the normal distribution: 1.644854, 1.959964, 2.575829. */
    @Test
    void the_scores_everyone_knows_come_out() {
        assertEquals(1.644854, StandardNormal.score(0.95), 5e-7);
        assertEquals(1.959964, StandardNormal.score(0.975), 5e-7);
        assertEquals(-2.575829, StandardNormal.score(0.005), 5e-7);
    }

    @Test
    void many_scores_at_once_are_those_one_by_one_to_the_bit() {
        double[] probabilities = Draws.uniforms("scores", 7, 20_001);
        probabilities[0] = 0;
        probabilities[1] = 1;
        probabilities[2] = 0.075;
        probabilities[3] = 0.925;
        double[] scores = probabilities.clone();
        StandardNormal.scores(scores);
        for (int i = 0; i < scores.length; i++) {
            assertEquals(
                    Double.doubleToLongBits(StandardNormal.score(probabilities[i])),
                    Double.doubleToLongBits(scores[i]),
                    "score of " + probabilities[i]);
        }
        assertThrows(IllegalArgumentException.class, () -> StandardNormal.scores(new double[] {0.5, Double.NaN}));
    }

    @Test
    void the_two_functions_undo_each_other() {
        for (double z = -8; z <= 4; z += 0.01) {
            assertEquals(z, StandardNormal.score(StandardNormal.probabilityBelow(z)), 1e-11);
        }
    }

    @Test
    void the_probability_never_falls_as_the_score_rises() {
        double before = 0;
        for (double z = -9; z <= 9; z += 0.001) {
            double now = StandardNormal.probabilityBelow(z);
            assertTrue(now >= before, "at score " + z);
            before = now;
        }
    }

    @Test
    void the_ends_are_infinite_and_nonsense_is_refused() {
        assertEquals(Double.NEGATIVE_INFINITY, StandardNormal.score(0));
        assertEquals(Double.POSITIVE_INFINITY, StandardNormal.score(1));
        assertEquals(0, StandardNormal.probabilityBelow(Double.NEGATIVE_INFINITY));
        assertEquals(1, StandardNormal.probabilityBelow(Double.POSITIVE_INFINITY));
        assertTrue(Double.isNaN(StandardNormal.probabilityBelow(Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> StandardNormal.score(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> StandardNormal.score(1.0001));
    }
}
