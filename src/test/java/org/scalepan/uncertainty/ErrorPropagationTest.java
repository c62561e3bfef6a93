package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.scalepan.uncertainty.ErrorPropagation.PropagatedError;

class ErrorPropagationTest {
    /** IPCC 2006, vol. 1, ch. 3, eq. 3.1, by hand: √(5² + 20²) = 20.616. */
    @Test
    void relative_uncertainties_of_a_product_add_in_squares() {
        assertEquals(0.20616, ErrorPropagation.product(0.05, 0.20), 5e-6);
        assertEquals(0, ErrorPropagation.product(), 0.0);
    }

    /** IPCC 2006, vol. 1, ch. 3, eq. 3.2, by hand: √(10² + 15²)/150 = 12.019 %. */
    @Test
    void uncertainties_of_a_sum_add_in_squares_of_amounts() {
        assertEquals(0.12019, ErrorPropagation.sum(new double[] {100, 50}, new double[] {0.10, 0.30}), 5e-6);
    }

    @Test
    void a_credit_lowers_the_sum_but_not_the_uncertainty() {
        assertEquals(
                Math.sqrt(325) / 50, ErrorPropagation.sum(new double[] {100, -50}, new double[] {0.10, 0.30}), 1e-12);
    }

    /** The equation worked by hand at 200 %: (−0.720 + 218.42 − 65.2 + 88.8)/200 = 1.2065. */
    @Test
    void a_large_uncertainty_is_widened_and_one_up_to_a_hundred_percent_left() {
        assertEquals(2 * 1.2065 * 1.2065, ErrorPropagation.largeUncertainty(2), 1e-12);
        assertEquals(0.8, ErrorPropagation.largeUncertainty(0.8), 0.0);
        assertThrows(IllegalArgumentException.class, () -> ErrorPropagation.largeUncertainty(2.31));
    }

    /**
     * GUM, JCGM 100:2008, H.1: a gauge block of 50 mm, in nm. Published u = 32 nm, with second-order terms 34 nm; inputs from a
     * second source.
     */
    @Test
    void the_end_gauge_of_the_guide_has_its_first_and_second_order_uncertainty() {
        ToDoubleFunction<double[]> length = x -> x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]);
        double[] means = {50_000_623, 215, 0, -0.1, 11.5e-6, 0};
        double[] sds = {25, 9.7, 0.58e-6, 0.41, 1.2e-6, 0.029};

        PropagatedError first = PropagatedError.of(length, means, sds);
        PropagatedError second = PropagatedError.withSecondOrder(length, means, sds);

        assertEquals(50_000_838, first.value(), 1e-6);
        assertEquals(32, first.standardUncertainty(), 0.5);
        assertEquals(31.71, first.standardUncertainty(), 5e-3);
        assertEquals(34, second.standardUncertainty(), 0.5);
        assertEquals(33.911, second.standardUncertainty(), 5e-4);
    }

    /** Exact for a square of a normal quantity: variance 4m²u² + 2u⁴; the third derivative is zero. */
    @Test
    void second_order_is_exact_for_a_square() {
        PropagatedError square =
                PropagatedError.withSecondOrder(x -> x[0] * x[0], new double[] {3}, new double[] {0.5});

        assertEquals(Math.sqrt(4 * 9 * 0.25 + 2 * 0.0625), square.standardUncertainty(), 1e-6);
    }

    /** By hand for a cube, f‴ = 6: u²·(27)² + [½·18² + 27·6]·u⁴ at mean 3. */
    @Test
    void the_third_derivative_is_counted() {
        double u = 0.2;
        PropagatedError cube =
                PropagatedError.withSecondOrder(x -> x[0] * x[0] * x[0], new double[] {3}, new double[] {u});

        double expected = Math.sqrt(27 * 27 * u * u + (0.5 * 18 * 18 + 27 * 6) * u * u * u * u);
        assertEquals(expected, cube.standardUncertainty(), 1e-4 * expected);
    }

    /** By hand for 3x − x³ at 0 with u = 1: 9u² + 3·(−6)·u⁴ = −9. */
    @Test
    void spreads_that_make_the_series_negative_are_refused() {
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> PropagatedError.withSecondOrder(
                                x -> 3 * x[0] - x[0] * x[0] * x[0], new double[] {0}, new double[] {1}))
                .getMessage();

        assertTrue(message.endsWith("the spreads are too large for this method"), message);
    }

    @Test
    void an_exact_input_adds_nothing() {
        PropagatedError one = PropagatedError.of(x -> x[0] * x[1], new double[] {2, 5}, new double[] {0.1, 0});

        assertEquals(0.5, one.standardUncertainty(), 1e-9);
        assertEquals(10, one.value(), 0.0);
    }

    @Test
    void the_product_rule_is_the_law_of_propagation_for_a_product() {
        PropagatedError product =
                PropagatedError.of(x -> x[0] * x[1], new double[] {7, 0.3}, new double[] {0.35, 0.06});

        assertEquals(ErrorPropagation.product(0.05, 0.20), product.standardUncertainty() / product.value(), 1e-9);
    }

    /** Feed per kg × emission per kg feed ÷ edible fraction, spreads below 10 %: draws and first order must agree. */
    @Test
    void where_spreads_are_small_first_order_and_draws_agree() {
        int n = 100_000;
        double[] feed = draw(Lognormal.ofMeanAndSd(1.7, 0.10), "feed", n);
        double[] intensity = draw(Lognormal.ofMeanAndSd(0.9, 0.05), "intensity", n);
        double[] edible = draw(BetaFraction.ofMeanAndSd(0.8, 0.03), "edible", n);
        double[] footprint = new double[n];
        for (int i = 0; i < n; i++) {
            footprint[i] = feed[i] * intensity[i] / edible[i];
        }
        Summary drawn = Summary.of(footprint, 0.95);

        PropagatedError first = PropagatedError.of(
                x -> x[0] * x[1] / x[2], new double[] {1.7, 0.9, 0.8}, new double[] {0.10, 0.05, 0.03});

        double sd = drawn.meanStandardError() * Math.sqrt(n);
        assertEquals(sd, first.standardUncertainty(), 0.02 * sd);
        assertEquals(drawn.mean(), first.value(), 0.005 * drawn.mean());
        double halfWidth = (drawn.high() - drawn.low()) / 2;
        double byRule = ErrorPropagation.product(1.96 * 0.10 / 1.7, 1.96 * 0.05 / 0.9, 1.96 * 0.03 / 0.8);
        assertEquals(halfWidth / drawn.mean(), byRule, 0.03 * byRule);
    }

    @Test
    void where_spreads_are_large_second_order_is_nearer_to_the_draws() {
        int n = 200_000;
        double[] x = draw(new Normal(1, 0.3), "x", n);
        double[] y = draw(new Normal(1, 0.3), "y", n);
        double[] product = new double[n];
        for (int i = 0; i < n; i++) {
            product[i] = x[i] * y[i];
        }
        double drawn = Summary.of(product, 0.95).meanStandardError() * Math.sqrt(n);
        double[] means = {1, 1};
        double[] sds = {0.3, 0.3};

        double first = PropagatedError.of(v -> v[0] * v[1], means, sds).standardUncertainty();
        double second =
                PropagatedError.withSecondOrder(v -> v[0] * v[1], means, sds).standardUncertainty();

        assertTrue(Math.abs(second - drawn) < Math.abs(first - drawn));
        assertEquals(drawn, second, 0.01 * drawn);
    }

    @Test
    void nonsense_is_refused_by_name() {
        assertEquals(
                "relative uncertainty must be zero or more and finite, not -0.1",
                assertThrows(IllegalArgumentException.class, () -> ErrorPropagation.product(0.1, -0.1))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> ErrorPropagation.product(Double.NaN));
        assertEquals(
                "the values add up to zero, which has no relative uncertainty",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> ErrorPropagation.sum(new double[] {1, -1}, new double[] {0.1, 0.1}))
                        .getMessage());
        assertThrows(
                IllegalArgumentException.class, () -> ErrorPropagation.sum(new double[] {1}, new double[] {0.1, 0.1}));
        assertThrows(
                IllegalArgumentException.class,
                () -> PropagatedError.of(x -> Math.log(x[0]), new double[] {-1}, new double[] {0.1}));
        assertThrows(
                IllegalArgumentException.class,
                () -> PropagatedError.of(x -> x[0], new double[] {1}, new double[] {-0.1}));
    }

    private static double[] draw(Distribution distribution, String id, int n) {
        double[] draws = Draws.scores(id, 1, n);
        distribution.fill(draws, draws);
        return draws;
    }
}
