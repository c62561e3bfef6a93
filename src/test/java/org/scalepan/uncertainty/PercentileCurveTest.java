package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PercentileCurveTest {
    /**
     * Beef from beef herds, kg CO2e per 100 g protein: Poore and Nemecek 2018, Science 360, 987–992, Data S2, sheet
     * "Results - Nutritional Units".
     */
    private static final double[] PROBABILITIES = {0.05, 0.10, 0.50, 0.90, 0.95};

    private static final double[] BEEF = {18.84, 20.25, 30.27, 105.2, 135};

    private final PercentileCurve beef = new PercentileCurve(PROBABILITIES, BEEF);

    @Test
    void published_percentiles_come_back() {
        for (int i = 0; i < BEEF.length; i++) {
            assertEquals(BEEF[i], beef.quantile(PROBABILITIES[i]), 1e-9);
        }
    }

    @Test
    void ten_thousand_draws_give_the_published_percentiles_back_within_three_percent() {
        double[] draws = new double[10_000];
        beef.fill(Draws.scores("beef-beef-herd", 1, draws.length), draws);

        double[] quantiles = Quantiles.of(draws, PROBABILITIES);

        for (int i = 0; i < BEEF.length; i++) {
            assertEquals(BEEF[i], quantiles[i], 0.03 * BEEF[i]);
        }
    }

    @Test
    void a_curve_through_points_of_a_lognormal_is_that_lognormal() {
        Lognormal lognormal = Lognormal.ofMedianAndGsd(8, 1.7);
        double[] values = new double[PROBABILITIES.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = lognormal.quantile(PROBABILITIES[i]);
        }
        PercentileCurve curve = new PercentileCurve(PROBABILITIES, values);

        for (double p = 0.001; p < 1; p += 0.01) {
            assertEquals(lognormal.quantile(p), curve.quantile(p), 1e-11 * lognormal.quantile(p));
        }
        assertEquals(lognormal.mean(), curve.mean(), 1e-11);
    }

    @Test
    void beyond_the_last_percentile_the_line_of_the_last_piece_goes_on() {
        double z90 = StandardNormal.score(0.90);
        double z95 = StandardNormal.score(0.95);
        double z99 = StandardNormal.score(0.99);
        double slope = Math.log(135 / 105.2) / (z95 - z90);

        assertEquals(135 * Math.exp(slope * (z99 - z95)), beef.quantile(0.99), 1e-9);
    }

    @Test
    void equal_neighbours_make_a_flat_piece_and_the_tail_takes_the_nearest_slope() {
        PercentileCurve curve =
                new PercentileCurve(new double[] {0.1, 0.3, 0.5, 0.7, 0.9}, new double[] {2, 2, 4, 8, 8});

        assertEquals(2, curve.quantile(0.2), 0.0);
        assertEquals(8, curve.quantile(0.8), 0.0);
        double slope = Math.log(2) / StandardNormal.score(0.7);
        double reach = StandardNormal.score(0.95) - StandardNormal.score(0.9);
        assertEquals(8 * Math.exp(slope * reach), curve.quantile(0.95), 1e-9);
        assertTrue(curve.quantile(0.05) < 2);
    }

    @Test
    void percentiles_that_are_all_equal_leave_one_value() {
        PercentileCurve curve = new PercentileCurve(new double[] {0.1, 0.9}, new double[] {3, 3});

        assertEquals(3, curve.quantile(0), 0.0);
        assertEquals(3, curve.quantile(0.9999), 0.0);
        assertEquals(3, curve.mean(), 1e-12);
    }

    @Test
    void the_curve_copies_its_points() {
        double[] values = BEEF.clone();
        PercentileCurve curve = new PercentileCurve(PROBABILITIES, values);
        values[0] = 1;
        curve.values()[1] = 1;
        curve.probabilities()[1] = 0.06;

        assertEquals(beef, curve);
        assertEquals(beef.hashCode(), curve.hashCode());
        assertEquals(
                "PercentileCurve[probabilities=[0.05, 0.1, 0.5, 0.9, 0.95], values=[18.84, 20.25, 30.27, 105.2, 135.0]]",
                curve.toString());
        assertNotEquals(beef, new PercentileCurve(PROBABILITIES, values));
    }
}
