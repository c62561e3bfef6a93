package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LognormalTest {
    /** Identities of the lognormal, worked by hand for a geometric mean of 10 and a GSD of 1.2. */
    @Test
    void median_10_and_gsd_1_2_give_the_textbook_interval_mean_and_variation() {
        Lognormal lognormal = Lognormal.ofMedianAndGsd(10, 1.2);

        assertEquals(10, lognormal.median(), 1e-12);
        assertEquals(1.2, lognormal.gsd(), 1e-12);
        assertEquals(6.995, lognormal.quantile(0.025), 5e-4);
        assertEquals(14.295, lognormal.quantile(0.975), 5e-4);
        assertEquals(10.168, lognormal.mean(), 5e-4);
        assertEquals(0.1838, Math.sqrt(Math.expm1(lognormal.sigma() * lognormal.sigma())), 5e-5);
        assertEquals(6.944, lognormal.atScore(-2), 5e-4, "the convention of two GSDs");
        assertEquals(14.400, lognormal.atScore(2), 5e-4);
    }

    @Test
    void a_lognormal_by_mean_and_sd_has_that_mean_and_sd() {
        Lognormal lognormal = Lognormal.ofMeanAndSd(3, 1.2);

        assertEquals(3, lognormal.mean(), 1e-12);
        assertEquals(1.2, sd(lognormal), 1e-12);
    }

    @Test
    void a_lognormal_by_median_and_sd_has_that_median_and_sd() {
        for (double sd : new double[] {1e-4, 0.3, 2, 40}) {
            Lognormal lognormal = Lognormal.ofMedianAndSd(3, sd);

            assertEquals(3, lognormal.median(), 1e-12);
            assertEquals(sd, sd(lognormal), 1e-9 * sd);
        }
    }

    @Test
    void a_lognormal_by_two_quantiles_passes_through_both() {
        Lognormal lognormal = Lognormal.ofQuantiles(0.1, 20.25, 0.9, 105.2);

        assertEquals(20.25, lognormal.quantile(0.1), 1e-11);
        assertEquals(105.2, lognormal.quantile(0.9), 1e-11);
        assertEquals(Math.sqrt(20.25 * 105.2), lognormal.median(), 1e-11);
    }

    @Test
    void no_spread_is_one_value_even_at_the_ends() {
        Lognormal exact = Lognormal.ofMedianAndGsd(7, 1);

        assertEquals(7, exact.quantile(0), 1e-12);
        assertEquals(7, exact.quantile(1), 1e-12);
        assertEquals(2, new Normal(2, 0).quantile(1), 0.0);
    }

    /** Closed form: ln R is normal with mean ln(m1/m2) and variance ln²g1 + ln²g2. */
    @Test
    void the_ratio_of_two_lognormals_drawn_apart_follows_its_closed_form() {
        int n = 200_000;
        double[] beef = new double[n];
        double[] cricket = new double[n];
        Lognormal.ofMedianAndGsd(30, 1.6).fill(Draws.scores("numerator", 1, n), beef);
        Lognormal.ofMedianAndGsd(4, 1.4).fill(Draws.scores("denominator", 1, n), cricket);
        double[] ratio = new double[n];
        for (int i = 0; i < n; i++) {
            ratio[i] = beef[i] / cricket[i];
        }
        double sigma = Math.hypot(Math.log(1.6), Math.log(1.4));
        Lognormal exact = new Lognormal(Math.log(7.5), sigma);

        Summary summary = Summary.of(ratio, 0.9);

        assertEquals(7.5, summary.median(), 4 * summary.medianStandardError());
        assertEquals(exact.mean(), summary.mean(), 4 * summary.meanStandardError());
        assertEquals(exact.quantile(0.05), summary.low(), 0.01 * summary.low());
        assertEquals(exact.quantile(0.95), summary.high(), 0.01 * summary.high());
        Probability atLeastTen = Probability.ofAtLeast(ratio, 10);
        double expected = 1 - StandardNormal.probabilityBelow(Math.log(10 / 7.5) / sigma);
        assertEquals(expected, atLeastTen.value(), 4 * atLeastTen.standardError());
        assertEquals(
                1 - StandardNormal.probabilityBelow(-Math.log(7.5) / sigma),
                Probability.ofLess(cricket, beef).value(),
                1e-3);
    }

    @Test
    void a_factor_on_both_sides_of_a_ratio_cancels() {
        double[] first = Draws.scores("grid-intensity", 1, 1_000);
        double[] grid = new double[1_000];
        Lognormal.ofMedianAndGsd(0.4, 2).fill(first, grid);
        double[] again = new double[1_000];
        Lognormal.ofMedianAndGsd(0.4, 2).fill(Draws.scores("grid-intensity", 1, 1_000), again);

        for (int i = 0; i < grid.length; i++) {
            assertEquals(3, (6 * grid[i]) / (2 * again[i]), 1e-12);
        }
    }

    private static double sd(Lognormal lognormal) {
        return lognormal.mean() * Math.sqrt(Math.expm1(lognormal.sigma() * lognormal.sigma()));
    }
}
