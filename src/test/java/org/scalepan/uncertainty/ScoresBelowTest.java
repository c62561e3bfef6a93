package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TruncatedNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A normal truncated from above; the outside check is the truncated normal of Apache Commons Statistics. */
class ScoresBelowTest {
    private static final ContinuousDistribution NORMAL = NormalDistribution.of(0, 1);

    @ParameterizedTest
    @ValueSource(doubles = {-3, -1, 0, 0.7, 1.5})
    void given_a_cut_then_a_score_becomes_the_quantile_of_what_is_left(double cut) {
        ScoresBelow below = new ScoresBelow(cut);
        ContinuousDistribution left = TruncatedNormalDistribution.of(0, 1, Double.NEGATIVE_INFINITY, cut);

        for (double score = -4; score <= 4; score += 0.0371) {
            double expected = left.inverseCumulativeProbability(NORMAL.cumulativeProbability(score));
            assertEquals(expected, below.at(score), 1e-10, "score " + score);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-3, 0, 2, 4, 6, 8})
    void given_a_cut_then_knots_are_within_a_hundred_millionth_of_what_lies_between_them(double cut) {
        ScoresBelow below = new ScoresBelow(cut);

        for (double score = -6; score <= 6; score += 0.0371) {
            // From the upper end, where nothing cancels next to the cut.
            double beyond = StandardNormal.probabilityBelow(-cut)
                    + StandardNormal.probabilityBelow(cut) * StandardNormal.probabilityBelow(-score);
            double lower = StandardNormal.probabilityBelow(cut) * StandardNormal.probabilityBelow(score);
            double expected = lower < 0.5 ? StandardNormal.score(lower) : -StandardNormal.score(beyond);
            assertEquals(expected, below.at(score), 1e-8, "score " + score);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, -1, 0.5, 3, 7})
    void given_rising_scores_then_they_stay_in_order_and_below_the_cut(double cut) {
        double[] scores = new double[4001];
        Arrays.setAll(scores, i -> -10 + i / 200.0);

        new ScoresBelow(cut).fill(scores, scores);

        for (int i = 1; i < scores.length; i++) {
            assertTrue(scores[i] >= scores[i - 1] - 1e-14, scores[i - 1] + " then " + scores[i]);
            assertTrue(scores[i] <= cut + 1e-8, scores[i] + " is above the cut");
        }
    }

    @Test
    void given_a_score_then_it_becomes_the_same_bits_alone_among_few_and_among_many() {
        ScoresBelow below = new ScoresBelow(0.4);
        double[] many = Draws.scores("below", 1, 5000);
        many[0] = -11;
        many[1] = 11;
        double[] among = new double[many.length];
        below.fill(many, among);
        double[] few = new double[50];
        below.fill(many, few);

        assertArrayEquals(Arrays.copyOf(among, few.length), few);
        assertArrayEquals(among, Arrays.stream(many).map(below::at).toArray());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-25, -29, -32, -37})
    void given_a_cut_that_leaves_next_to_nothing_then_every_score_is_finite_and_below_it(double cut) {
        double[] scores = Draws.scores("hardly", 1, 2000);

        new ScoresBelow(cut).fill(scores, scores);

        for (double score : scores) {
            assertTrue(Double.isFinite(score) && score <= cut + 1e-6, score + " beyond " + cut);
        }
    }

    @Test
    void given_a_cut_so_far_out_that_nothing_is_beyond_then_every_score_stays() {
        double[] scores = Draws.scores("uncut", 1, 1000);
        double[] out = new double[scores.length];

        new ScoresBelow(12).fill(scores, out);

        assertArrayEquals(scores, out);
        assertEquals(1.25, new ScoresBelow(12).at(1.25));
    }
}
