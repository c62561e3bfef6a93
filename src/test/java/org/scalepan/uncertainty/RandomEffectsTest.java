package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.scalepan.uncertainty.RandomEffects.Pooled;

class RandomEffectsTest {
    /** Colditz and others 1994, JAMA 271, 698–702: cases and non-cases, vaccinated then not. */
    private static final double[][] BCG = {
        {4, 119, 11, 128},
        {6, 300, 29, 274},
        {3, 228, 11, 209},
        {62, 13536, 248, 12619},
        {33, 5036, 47, 5761},
        {180, 1361, 372, 1079},
        {8, 2537, 10, 619},
        {505, 87886, 499, 87892},
        {29, 7470, 45, 7232},
        {17, 1699, 65, 1600},
        {186, 50448, 141, 27197},
        {5, 2493, 3, 2338},
        {27, 16886, 29, 17825}
    };

    /** Normand 1999, Stat. Med. 18, 321–359: days in hospital; n, mean, sd under special care, then under routine care. */
    private static final double[][] STROKE = {
        {155, 55, 47, 156, 75, 64},
        {31, 27, 7, 32, 29, 4},
        {75, 64, 17, 71, 119, 29},
        {18, 66, 20, 18, 137, 48},
        {8, 14, 8, 13, 18, 11},
        {57, 19, 7, 52, 18, 4},
        {34, 52, 45, 33, 41, 34},
        {110, 21, 16, 183, 31, 27},
        {60, 30, 27, 52, 23, 20}
    };

    /** Expected: tests of a general meta-analysis library, checked there against a second package. */
    @Test
    void thirteen_vaccine_trials_pool_to_the_published_log_risk_ratio() {
        Pooled pooled = logRiskRatios();

        assertEquals(13, pooled.studies());
        assertEquals(-0.4303, pooled.fixed(), 5e-5);
        assertEquals(-0.5097, pooled.fixedLow(), 5e-5);
        assertEquals(-0.3509, pooled.fixedHigh(), 5e-5);
        assertEquals(152.2330, pooled.q(), 5e-5);
        assertEquals(0.3088, pooled.tau2(), 5e-5);
        assertEquals(0.921173, pooled.i2(), 5e-7);
        assertEquals(-0.7141, pooled.mean(), 5e-5);
        assertEquals(-1.0644, pooled.low(), 5e-5);
        assertEquals(-0.3638, pooled.high(), 5e-5);
        assertEquals(-3.9952, pooled.mean() / pooled.standardError(), 5e-5);
    }

    /** Expected: computed beside this code in Python from the formula of Hartung and Knapp 2001; no published figure at hand. */
    @Test
    void the_interval_on_the_observed_scatter_is_wider_for_the_vaccine_trials() {
        Pooled pooled = logRiskRatios();

        assertEquals(0.18070, pooled.hartungKnappStandardError(), 5e-6);
        assertEquals(-3.9520, pooled.mean() / pooled.hartungKnappStandardError(), 5e-5);
        assertEquals(-1.1078, pooled.hartungKnappLow(), 5e-5);
        assertEquals(-0.3204, pooled.hartungKnappHigh(), 5e-5);
    }

    /** The scatter of these trials is more than their own errors explain (q = 1.0224), so that the floor changes nothing. */
    @Test
    void the_floored_interval_of_the_vaccine_trials_is_that_of_hartung_and_knapp() {
        Pooled pooled = logRiskRatios();

        assertEquals(pooled.hartungKnappStandardError(), pooled.flooredStandardError(), 1e-12);
        assertEquals(-1.1078, pooled.flooredLow(), 5e-5);
        assertEquals(-0.3204, pooled.flooredHigh(), 5e-5);
    }

    /**
     * By hand: effects 1.0, 1.1, 1.2 of variance 0.04 have mean 1.1, Q = (0.01 + 0 + 0.01)/0.04 = 0.5, τ² = 0, q = 0.25. Hartung and Knapp's
     * error is √(0.25 × 0.04/3) = 0.057735, the floored one √(0.04/3) = 0.115470; t with 2 degrees of freedom is 4.302653.
     */
    @Test
    void where_three_studies_agree_more_closely_than_their_errors_allow_the_interval_is_not_narrowed() {
        Pooled pooled = RandomEffects.pool(new double[] {1.0, 1.1, 1.2}, new double[] {0.04, 0.04, 0.04});

        assertEquals(0, pooled.tau2());
        assertEquals(0.057735, pooled.hartungKnappStandardError(), 5e-7);
        assertEquals(0.115470, pooled.flooredStandardError(), 5e-7);
        assertEquals(1.1 - 4.302653 * 0.115470, pooled.flooredLow(), 5e-6);
        assertEquals(1.1 + 4.302653 * 0.115470, pooled.flooredHigh(), 5e-6);
    }

    /** Expected: the formula of Higgins and others 2009 with SciPy's t quantile (11 degrees of freedom); no published figure at hand. */
    @Test
    void a_further_trial_may_differ_far_more_than_the_mean_is_uncertain() {
        Pooled pooled = logRiskRatios();

        assertEquals(-1.99884, pooled.predictionLow().getAsDouble(), 5e-6);
        assertEquals(0.57060, pooled.predictionHigh().getAsDouble(), 5e-6);
    }

    /** Expected: van Houwelingen and others 2002, Stat. Med. 21, 589–624, p. 596 for the fixed odds ratio; as above for the rest. */
    @Test
    void thirteen_vaccine_trials_pool_to_the_published_odds_ratio() {
        double[] effects = new double[BCG.length];
        double[] variances = new double[BCG.length];
        for (int i = 0; i < BCG.length; i++) {
            double[] t = BCG[i];
            effects[i] = Math.log(t[0] * t[3] / (t[1] * t[2]));
            variances[i] = 1 / t[0] + 1 / t[1] + 1 / t[2] + 1 / t[3];
        }

        Pooled pooled = RandomEffects.pool(effects, variances);

        assertEquals(0.6465, Math.exp(pooled.fixed()), 5e-5);
        assertEquals(0.5951, Math.exp(pooled.fixedLow()), 5e-5);
        assertEquals(0.7024, Math.exp(pooled.fixedHigh()), 5e-5);
        assertEquals(0.3663, pooled.tau2(), 5e-5);
        assertEquals(-0.7474, pooled.mean(), 5e-5);
        assertEquals(-1.1242, pooled.low(), 5e-5);
        assertEquals(-0.3706, pooled.high(), 5e-5);
        assertEquals(0.926455, pooled.i2(), 5e-7);
        assertEquals(0.4736, Math.exp(pooled.mean()), 5e-5);
    }

    /** Expected: Normand 1999, table IX, as quoted by a general meta-analysis library; pooled standard deviations. */
    @Test
    void nine_stroke_trials_pool_to_the_published_difference_in_days() {
        double[] effects = new double[STROKE.length];
        double[] variances = new double[STROKE.length];
        for (int i = 0; i < STROKE.length; i++) {
            double[] t = STROKE[i];
            effects[i] = t[1] - t[4];
            double pooledVariance = ((t[0] - 1) * t[2] * t[2] + (t[3] - 1) * t[5] * t[5]) / (t[0] + t[3] - 2);
            variances[i] = pooledVariance * (1 / t[0] + 1 / t[3]);
        }

        Pooled pooled = RandomEffects.pool(effects, variances);

        assertEquals(-3.4939, pooled.fixed(), 5e-5);
        assertEquals(218.7216, pooled.tau2(), 5e-5);
        assertEquals(-14.0972, pooled.mean(), 5e-5);
        assertEquals(-24.4454, pooled.low(), 5e-5);
        assertEquals(-3.7490, pooled.high(), 5e-5);
    }

    @Test
    void studies_that_agree_have_nothing_between_them() {
        Pooled pooled = RandomEffects.pool(new double[] {1.0, 1.1, 0.9}, new double[] {1, 1, 1});

        assertEquals(0, pooled.tau2(), 0.0);
        assertEquals(0, pooled.i2(), 0.0);
        assertEquals(1.0, pooled.mean(), 1e-12);
        assertEquals(pooled.fixedLow(), pooled.low(), 1e-12);
        assertEquals(Math.sqrt(1.0 / 3), pooled.standardError(), 1e-12);
    }

    @Test
    void identical_studies_have_no_scatter_at_all() {
        Pooled pooled = RandomEffects.pool(new double[] {2, 2}, new double[] {1, 4});

        assertEquals(0, pooled.q(), 0.0);
        assertEquals(0, pooled.i2(), 0.0);
        assertEquals(2, pooled.hartungKnappLow(), 1e-12);
    }

    @Test
    void two_studies_give_no_prediction_interval() {
        Pooled pooled = RandomEffects.pool(new double[] {1, 2}, new double[] {0.1, 0.2});

        assertTrue(pooled.predictionLow().isEmpty());
        assertTrue(pooled.predictionHigh().isEmpty());
    }

    @Test
    void the_order_of_the_studies_does_not_matter_and_a_shift_shifts_the_mean() {
        RandomDistributions random = new RandomDistributions(41);
        for (int round = 0; round < 200; round++) {
            double[] effects = {random.between(-2, 2), random.between(-2, 2), random.between(-2, 2)};
            double[] variances = {random.between(0.01, 1), random.between(0.01, 1), random.between(0.01, 1)};
            Pooled pooled = RandomEffects.pool(effects, variances);
            Pooled turned = RandomEffects.pool(
                    new double[] {effects[2] + 5, effects[0] + 5, effects[1] + 5},
                    new double[] {variances[2], variances[0], variances[1]});
            assertEquals(pooled.mean() + 5, turned.mean(), 1e-10);
            assertEquals(pooled.tau2(), turned.tau2(), 1e-10);
            assertTrue(pooled.standardError() >= pooled.fixedStandardError());
            assertTrue(pooled.predictionLow().getAsDouble() < pooled.low());
        }
    }

    @Test
    void a_single_study_and_a_variance_of_zero_are_refused() {
        assertEquals(
                "pooling needs at least two studies, not 1",
                assertThrows(IllegalArgumentException.class, () -> RandomEffects.pool(new double[1], new double[] {1}))
                        .getMessage());
        assertEquals(
                "variance must be positive and finite, not 0.0",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> RandomEffects.pool(new double[2], new double[] {1, 0}))
                        .getMessage());
        assertThrows(
                IllegalArgumentException.class,
                () -> RandomEffects.pool(new double[] {1, Double.NaN}, new double[] {1, 1}));
        assertThrows(IllegalArgumentException.class, () -> RandomEffects.pool(new double[3], new double[] {1, 1}));
    }

    private static Pooled logRiskRatios() {
        double[] effects = new double[BCG.length];
        double[] variances = new double[BCG.length];
        for (int i = 0; i < BCG.length; i++) {
            double[] t = BCG[i];
            double vaccinated = t[0] + t[1];
            double control = t[2] + t[3];
            effects[i] = Math.log((t[0] / vaccinated) / (t[2] / control));
            variances[i] = 1 / t[0] - 1 / vaccinated + 1 / t[2] - 1 / control;
        }
        return RandomEffects.pool(effects, variances);
    }
}
