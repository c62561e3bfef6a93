package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class DrawsTest {
    private static final int N = 10_000;

    @Test
    void the_same_factor_and_seed_give_the_same_draws() {
        assertArrayEquals(Draws.scores("grid-intensity-ke", 1, N), Draws.scores("grid-intensity-ke", 1, N));
        assertArrayEquals(Draws.uniforms("beef", 1, N), Draws.uniforms("beef", 1, N));
    }

    @Test
    void a_longer_run_begins_with_the_shorter_one() {
        assertArrayEquals(Draws.scores("feed", 7, 100), Arrays.copyOf(Draws.scores("feed", 7, N), 100));
        assertArrayEquals(Draws.uniforms("feed", 7, 100), Arrays.copyOf(Draws.uniforms("feed", 7, N), 100));
    }

    @Test
    void different_factors_and_different_seeds_are_uncorrelated() {
        String[] ids = {"a", "b", "ab", "feed:maize", "feed:maizf", "2|a"};
        double[][] streams = new double[ids.length + 2][];
        for (int i = 0; i < ids.length; i++) {
            streams[i] = Draws.scores(ids[i], 1, N);
        }
        streams[ids.length] = Draws.scores("a", 2, N);
        streams[ids.length + 1] = Draws.scores("a", -1, N);
        for (int i = 0; i < streams.length; i++) {
            for (int j = 0; j < i; j++) {
                double r = new PearsonsCorrelation().correlation(streams[i], streams[j]);
                assertTrue(Math.abs(r) < 0.03, "streams " + i + " and " + j + ": r = " + r);
            }
        }
    }

    @Test
    void scores_and_uniforms_of_one_id_are_uncorrelated() {
        double r = new PearsonsCorrelation().correlation(Draws.scores("a", 1, N), Draws.uniforms("a", 1, N));
        assertTrue(Math.abs(r) < 0.03, "r = " + r);
    }

    /** Kolmogorov's distance at n = 10 000 exceeds 1.95/√n in one run of a thousand. */
    @Test
    void scores_are_standard_normal_and_uniforms_uniform() {
        double[] scores = Draws.scores("shape", 1, N);
        double[] uniforms = Draws.uniforms("shape", 1, N);
        Arrays.sort(scores);
        Arrays.sort(uniforms);
        NormalDistribution normal = NormalDistribution.of(0, 1);
        double scoreGap = 0;
        double uniformGap = 0;
        for (int i = 0; i < N; i++) {
            scoreGap = Math.max(scoreGap, Math.abs(normal.cumulativeProbability(scores[i]) - (i + 0.5) / N));
            uniformGap = Math.max(uniformGap, Math.abs(uniforms[i] - (i + 0.5) / N));
        }
        assertTrue(scoreGap < 1.95 / Math.sqrt(N), "distance " + scoreGap);
        assertTrue(uniformGap < 1.95 / Math.sqrt(N), "distance " + uniformGap);
        assertTrue(uniforms[0] >= 0 && uniforms[N - 1] < 1);
    }

    @Test
    void the_number_of_draws_is_limited_and_the_stream_must_have_a_name() {
        assertEquals(
                "draws must be 1 to 1000000, not 0",
                assertThrows(IllegalArgumentException.class, () -> Draws.scores("a", 1, 0))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Draws.uniforms("a", 1, 1_000_001));
        assertThrows(IllegalArgumentException.class, () -> Draws.scores(" ", 1, 10));
        assertFalse(Double.isNaN(Draws.scores("a", Long.MIN_VALUE, 1)[0]));
    }

    @Test
    void stratified_draws_have_one_in_each_equal_part_in_random_order() {
        double[] draws = Draws.stratified("feed", 1, 1_000);
        double[] sorted = draws.clone();
        java.util.Arrays.sort(sorted);

        for (int part = 0; part < sorted.length; part++) {
            assertEquals(part, (int) (sorted[part] * 1_000), "the part of draw " + part);
        }
        assertTrue(draws[0] != sorted[0] || draws[1] != sorted[1], "in order of size");
    }

    @Test
    void stratified_streams_of_two_ids_are_not_related() {
        double[] one = Draws.stratifiedScores("feed", 1, 10_000);
        double[] other = Draws.stratifiedScores("milk", 1, 10_000);
        double product = 0;
        for (int i = 0; i < one.length; i++) {
            product += one[i] * other[i] / one.length;
        }

        assertEquals(0, product, 0.03, "correlation");
    }
}
