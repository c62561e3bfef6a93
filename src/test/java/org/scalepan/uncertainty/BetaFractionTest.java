package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BetaFractionTest {
    /** Expected quantiles: SciPy 1.17.1, scipy.stats.beta.ppf. */
    @ParameterizedTest
    @CsvSource({
        "2, 5, 1e-6, 0.00025828782935406356",
        "2, 5, 0.05, 0.06284989170835438",
        "2, 5, 0.95, 0.5818034092520259",
        "0.5, 0.5, 1e-6, 2.46740110027031e-12",
        "0.5, 0.5, 0.95, 0.9938441702975689",
        "0.3, 4, 0.05, 8.772617902751646e-06",
        "0.3, 4, 0.5, 0.019778314565049332",
        "340, 278, 0.5, 0.5502159590805609",
        "340, 278, 0.95, 0.5829624109641859",
        "30, 1.2, 0.05, 0.8939956620953269",
        "5, 0.05, 1e-6, 0.15133269530018417",
        "5, 0.05, 0.05, 0.9430635966860724"
    })
    void quantiles_agree_with_an_independent_library(double alpha, double beta, double p, double expected) {
        assertEquals(expected, new BetaFraction(alpha, beta).quantile(p), 1e-11 * expected);
    }

    @Test
    void every_quantile_has_its_probability_under_an_independent_distribution_function() {
        RandomDistributions random = new RandomDistributions(21);
        for (int i = 0; i < 300; i++) {
            BetaFraction fraction = new BetaFraction(random.between(0.2, 200), random.between(0.2, 200));
            double p = random.between(0.001, 0.999);
            double back =
                    BetaDistribution.of(fraction.alpha(), fraction.beta()).cumulativeProbability(fraction.quantile(p));
            assertEquals(p, back, 1e-11, fraction + " at " + p);
        }
    }

    @Test
    void draws_follow_the_exact_quantiles_for_every_shape() {
        double[] scores = Draws.scores("scores", 3, 500);
        scores[0] = 9.2;
        scores[1] = -9.2;
        double[] draws = new double[500];
        for (double alpha : new double[] {0.3, 1, 3.7, 60, 3_000}) {
            for (double beta : new double[] {0.3, 1, 3.7, 60, 3_000}) {
                BetaFraction fraction = new BetaFraction(alpha, beta);
                fraction.fill(scores, draws);
                for (int i = 0; i < draws.length; i++) {
                    double expected = fraction.atScore(scores[i]);
                    assertEquals(expected, draws[i], 2e-8 * expected, fraction + " at " + scores[i]);
                }
            }
        }
    }

    /** Moments of the beta distribution: mean α/(α+β), variance αβ/((α+β)²(α+β+1)). */
    @Test
    void the_method_of_moments_gives_back_mean_and_sd() {
        BetaFraction fraction = BetaFraction.ofMeanAndSd(0.55, 0.02);
        double total = fraction.alpha() + fraction.beta();

        assertEquals(0.55, fraction.mean(), 1e-12);
        assertEquals(0.02, Math.sqrt(fraction.alpha() * fraction.beta() / (total + 1)) / total, 1e-12);
        assertEquals(0.55, Summary.of(draws(fraction), 0.95).mean(), 4e-4);
        assertEquals(0.55 - 1.96 * 0.02, Summary.of(draws(fraction), 0.95).low(), 2e-3);
    }

    @Test
    void a_fraction_stays_within_zero_and_one_however_far_the_score() {
        for (double score : new double[] {-39, -12, 12, 39, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            for (double shape : new double[] {0.01, 0.5, 200}) {
                double x = new BetaFraction(shape, 1.5).atScore(score);
                assertTrue(x >= 0 && x <= 1, shape + " at " + score + ": " + x);
            }
        }
        assertEquals(0, new BetaFraction(2, 3).quantile(0), 0.0);
        assertEquals(1, new BetaFraction(2, 3).quantile(1), 0.0);
    }

    @Test
    void a_spread_no_fraction_can_have_is_refused() {
        assertEquals(
                "a fraction with mean 0.5 must have a standard deviation below 0.5, not 0.5",
                assertThrows(IllegalArgumentException.class, () -> BetaFraction.ofMeanAndSd(0.5, 0.5))
                        .getMessage());
        assertEquals(
                "the mean of a fraction must be between 0 and 1, not 1.0",
                assertThrows(IllegalArgumentException.class, () -> BetaFraction.ofMeanAndSd(1, 0.1))
                        .getMessage());
    }

    private static double[] draws(Distribution distribution) {
        double[] draws = new double[50_000];
        distribution.fill(Draws.scores("fraction", 1, draws.length), draws);
        return draws;
    }
}
