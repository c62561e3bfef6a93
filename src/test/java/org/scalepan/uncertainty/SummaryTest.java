package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SummaryTest {
    @Test
    void the_numbers_one_to_101_sum_up_as_by_hand() {
        double[] draws = new double[101];
        Arrays.setAll(draws, i -> 101 - i);
        double[] before = draws.clone();

        Summary summary = Summary.of(draws, 0.9);

        assertEquals(51, summary.mean(), 1e-12);
        assertEquals(51, summary.median(), 1e-12);
        assertEquals(6, summary.low(), 1e-12);
        assertEquals(96, summary.high(), 1e-12);
        assertEquals(101, summary.draws());
        assertEquals(0.9, summary.coverage(), 0.0);
        // Variance of 1..n: n(n + 1)/12; standard error √(variance/n).
        assertEquals(Math.sqrt(102.0 / 12), summary.meanStandardError(), 1e-12);
        assertArrayEquals(before, draws, "the draws are left as they are");
    }

    /** Asymptotic standard errors for a standard normal: √(π/2)/√n for the median, 1/√n for the mean. */
    @Test
    void the_standard_errors_match_the_scatter_of_repeated_runs() {
        int n = 2_000;
        int runs = 300;
        double medianSquares = 0;
        double meanSquares = 0;
        double medianStated = 0;
        double meanStated = 0;
        for (int run = 0; run < runs; run++) {
            Summary summary = Summary.of(Draws.scores("run", run, n), 0.95);
            medianSquares += summary.median() * summary.median() / runs;
            meanSquares += summary.mean() * summary.mean() / runs;
            medianStated += summary.medianStandardError() / runs;
            meanStated += summary.meanStandardError() / runs;
        }
        assertEquals(Math.sqrt(Math.PI / 2 / n), medianStated, 0.03 * medianStated);
        assertEquals(1 / Math.sqrt(n), meanStated, 0.01 * meanStated);
        // Three hundred runs fix a standard deviation to about 4 %.
        assertEquals(medianStated, Math.sqrt(medianSquares), 0.15 * medianStated);
        assertEquals(meanStated, Math.sqrt(meanSquares), 0.15 * meanStated);
    }

    @Test
    void the_mean_keeps_small_draws_beside_huge_ones() {
        double[] draws = {1e16, 1, 1, -1e16};

        assertEquals(0.5, Summary.of(draws, 0.5).mean(), 0.0);
    }

    @Test
    void wider_coverage_never_gives_a_narrower_interval() {
        double[] draws = Draws.scores("nested", 1, 999);
        double before = 0;
        for (double coverage = 0.5; coverage < 0.99; coverage += 0.01) {
            Summary summary = Summary.of(draws, coverage);
            assertTrue(summary.high() - summary.low() >= before);
            before = summary.high() - summary.low();
        }
    }

    @Test
    void equal_draws_leave_no_uncertainty() {
        Summary summary = Summary.of(new double[] {4, 4, 4}, 0.95);

        assertEquals(4, summary.low(), 0.0);
        assertEquals(4, summary.high(), 0.0);
        assertEquals(0, summary.medianStandardError(), 0.0);
        assertEquals(0, summary.meanStandardError(), 0.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.49, 0.991, 0, 1, -1, Double.NaN})
    void a_coverage_out_of_range_is_refused(double coverage) {
        assertEquals(
                "coverage must be 0.5 to 0.99, not " + coverage,
                assertThrows(IllegalArgumentException.class, () -> Summary.of(new double[] {1, 2, 3}, coverage))
                        .getMessage());
    }

    @Test
    void a_single_draw_and_an_infinite_one_are_refused() {
        assertEquals(
                "a summary needs at least two draws, not 1",
                assertThrows(IllegalArgumentException.class, () -> Summary.of(new double[] {1}, 0.9))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Summary.of(new double[] {1, Double.POSITIVE_INFINITY}, 0.9));
    }

    @Test
    void scaled_draws_have_a_scaled_summary_and_no_other_scale_is_one() {
        double[] draws = {-3, 1, 4, 1.5, 9};
        double[] doubled = {-6, 2, 8, 3, 18};

        assertEquals(Summary.of(doubled, 0.9), Summary.of(draws, 0.9).times(2));
        for (double wrong : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(
                    IllegalArgumentException.class, () -> Summary.of(draws, 0.9).times(wrong));
        }
    }

    @Test
    void a_ratio_summarised_both_ways_agrees_with_each_way_alone() {
        java.util.SplittableRandom random = new java.util.SplittableRandom(11);
        for (int draws : new int[] {2, 3, 200, 1000, 4001}) {
            double[] over = random.doubles(draws, 0.1, 9).toArray();
            double[] under = random.doubles(draws, 0.1, 9).toArray();
            double[] forth = new double[draws];
            double[] back = new double[draws];
            for (int i = 0; i < draws; i++) {
                forth[i] = over[i] / under[i];
                back[i] = under[i] / over[i];
            }

            Summary.OfRatio ratio = Summary.ofRatio(over, under, 0.9);

            org.junit.jupiter.api.Assertions.assertEquals(Summary.of(forth, 0.9), ratio.forth());
            Summary alone = Summary.of(back, 0.9);
            // A reciprocal of a rounded ratio may be the next double of the ratio turned round.
            assertNear(alone.low(), ratio.back().low());
            assertNear(alone.median(), ratio.back().median());
            assertNear(alone.high(), ratio.back().high());
            assertNear(alone.mean(), ratio.back().mean());
            assertNear(alone.meanStandardError(), ratio.back().meanStandardError());
        }
    }

    private static void assertNear(double expected, double actual) {
        org.junit.jupiter.api.Assertions.assertEquals(expected, actual, 1e-13 * Math.abs(expected));
    }
}
