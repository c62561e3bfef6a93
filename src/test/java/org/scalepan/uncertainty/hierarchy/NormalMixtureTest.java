package org.scalepan.uncertainty.hierarchy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.scalepan.uncertainty.StandardNormal;

class NormalMixtureTest {
    private static final NormalMixture TWO_CAMPS =
            NormalMixture.of(new double[] {3, 1}, new double[] {0, 5}, new double[] {1, 0.1});

    @Test
    void one_component_is_the_normal_itself() {
        NormalMixture normal = NormalMixture.of(new double[] {7}, new double[] {2}, new double[] {3});

        assertEquals(2, normal.quantile(0.5), 1e-15);
        assertEquals(2 + 3 * StandardNormal.score(0.95), normal.quantile(0.95), 1e-13);
        assertEquals(StandardNormal.probabilityBelow(-1), normal.shareBelow(-1), 0.0);
        assertEquals(2, normal.mean(), 0.0);
        assertEquals(3, normal.sd(), 1e-15);
    }

    /** Weights of 3/4 and 1/4 of N(0, 1) and N(5, 0.1²): moments and shares by hand. */
    @Test
    void shares_and_moments_are_those_of_the_components_by_weight() {
        assertEquals(0.75 * 0.5, TWO_CAMPS.shareBelow(0), 1e-12);
        assertEquals(0.75 * StandardNormal.probabilityBelow(-5) + 0.125, TWO_CAMPS.shareAbove(5), 1e-15);
        assertEquals(1.25, TWO_CAMPS.mean(), 1e-15);
        assertEquals(Math.sqrt(0.75 * (1 + 1.25 * 1.25) + 0.25 * (0.01 + 3.75 * 3.75)), TWO_CAMPS.sd(), 1e-14);
    }

    /** Ten thousand components, as a footprint has: taken in groups, to 3 parts in 10⁴ of a standard deviation. */
    @Test
    void quantiles_of_many_components_are_those_of_all_of_them_one_by_one() {
        SplittableRandom random = new SplittableRandom(7);
        double[] means = new double[10_000];
        double[] sds = new double[means.length];
        for (int j = 0; j < means.length; j++) {
            means[j] = 3 + 0.2 * StandardNormal.score(random.nextDouble(1e-9, 1));
            double tau = 0.5 * Math.abs(StandardNormal.score(random.nextDouble(1e-9, 1)));
            sds[j] = Math.sqrt(0.06 + 1.5 * tau * tau);
        }
        NormalMixture many = NormalMixture.ofEqual(means, sds);

        for (double p : new double[] {0.005, 0.05, 0.1, 0.5, 0.9, 0.95, 0.995}) {
            assertEquals(many.quantileOfAll(p), many.quantile(p), 3e-4 * many.sd(), "quantile at " + p);
        }
    }

    @Test
    void quantiles_undo_shares_over_components_of_every_size() {
        SplittableRandom random = new SplittableRandom(3);
        for (int round = 0; round < 200; round++) {
            int components = 1 + random.nextInt(40);
            double[] weights = new double[components];
            double[] means = new double[components];
            double[] sds = new double[components];
            for (int j = 0; j < components; j++) {
                weights[j] = random.nextDouble();
                means[j] = 10 * random.nextDouble();
                sds[j] = Math.exp(-8 * random.nextDouble());
            }
            NormalMixture mixture = NormalMixture.of(weights, means, sds);
            double before = Double.NEGATIVE_INFINITY;
            for (double p : new double[] {1e-9, 1e-3, 0.05, 0.3, 0.5, 0.50001, 0.9, 0.999}) {
                double x = mixture.quantile(p);
                assertEquals(p, mixture.shareBelow(x), 1e-9 * p + 1e-9 * (p > 0.01 ? 1 : 0), "round " + round);
                assertEquals(1 - p, mixture.shareAbove(x), 1e-9, "round " + round);
                assertTrue(x > before, "falls at " + p);
                before = x;
            }
        }
    }

    @Test
    void the_upper_tail_keeps_its_figures() {
        assertEquals(StandardNormal.probabilityBelow(-20), normal().shareAbove(20), 1e-14 * 2.75e-89);
        assertEquals(1, normal().shareBelow(20), 0.0);
    }

    @Test
    void what_has_no_spread_is_a_step_of_which_half_lies_below_itself() {
        NormalMixture point = NormalMixture.ofEqual(new double[] {0, 0}, new double[] {0, 0});

        assertEquals(0, point.quantile(0.05), 0.0);
        assertEquals(0, point.quantile(0.95), 0.0);
        assertEquals(0, point.shareBelow(-1e-300), 0.0);
        assertEquals(0.5, point.shareBelow(0), 0.0);
        assertEquals(0.5, point.shareAbove(0), 0.0);
        assertEquals(1, point.shareBelow(1e-300), 0.0);
        NormalMixture steps = NormalMixture.of(new double[] {1, 3}, new double[] {1, 2}, new double[2]);
        assertEquals(1, steps.quantile(0.2), 1e-12);
        assertEquals(2, steps.quantile(0.3), 1e-12);
    }

    @Test
    void numbers_out_of_range_are_refused() {
        double[] one = {1};
        assertThrows(
                IllegalArgumentException.class, () -> NormalMixture.of(new double[0], new double[0], new double[0]));
        assertThrows(IllegalArgumentException.class, () -> NormalMixture.of(new double[1], one, one));
        assertThrows(IllegalArgumentException.class, () -> NormalMixture.of(one, new double[] {Double.NaN}, one));
        assertThrows(IllegalArgumentException.class, () -> NormalMixture.of(one, one, new double[] {-1}));
        assertThrows(IllegalArgumentException.class, () -> NormalMixture.of(one, one, new double[2]));
        assertThrows(IllegalArgumentException.class, () -> normal().quantile(0));
        assertThrows(IllegalArgumentException.class, () -> normal().quantile(1));
    }

    private static NormalMixture normal() {
        return NormalMixture.of(new double[] {1}, new double[] {0}, new double[] {1});
    }
}
