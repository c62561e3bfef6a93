package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.scalepan.uncertainty.Sobol.Estimator;
import org.scalepan.uncertainty.Sobol.VarianceShare;

/** Shares of variance, checked on functions whose shares are known in closed form. */
class SobolTest {
    private static final int N = 100_000;

    /** Results of a function of uniform inputs, for the two samples and those with one input exchanged. */
    private static final class Sample {
        private final int inputs;
        private final ToDoubleFunction<double[]> function;
        private final double[][] a;
        private final double[][] b;

        Sample(int inputs, long seed, int n, ToDoubleFunction<double[]> function) {
            this.inputs = inputs;
            this.function = function;
            this.a = new double[inputs][];
            this.b = new double[inputs][];
            for (int i = 0; i < inputs; i++) {
                a[i] = Draws.uniforms("x" + i, seed, n);
                b[i] = Draws.uniforms("anew/x" + i, seed, n);
            }
        }

        double[] results(double[][] columns) {
            double[] results = new double[columns[0].length];
            double[] point = new double[inputs];
            for (int draw = 0; draw < results.length; draw++) {
                for (int i = 0; i < inputs; i++) {
                    point[i] = columns[i][draw];
                }
                results[draw] = function.applyAsDouble(point);
            }
            return results;
        }

        double[] mixed(int input) {
            double[][] columns = a.clone();
            columns[input] = b[input];
            return results(columns);
        }

        Sobol sobol() {
            return Sobol.of(results(a), results(b), inputs, this::mixed);
        }

        Sobol sobol(Estimator estimator) {
            return Sobol.of(results(a), results(b), inputs, this::mixed, estimator, estimator);
        }
    }

    /** sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1 with inputs even between −π and π (Ishigami and Homma 1990). */
    private static double ishigami(double[] u) {
        double x1 = Math.PI * (2 * u[0] - 1);
        double x2 = Math.PI * (2 * u[1] - 1);
        double x3 = Math.PI * (2 * u[2] - 1);
        return Math.sin(x1) + 7 * Math.pow(Math.sin(x2), 2) + 0.1 * Math.pow(x3, 4) * Math.sin(x1);
    }

    @ParameterizedTest
    @EnumSource(Estimator.class)
    void both_estimators_give_the_shares_of_the_ishigami_function(Estimator estimator) {
        // Closed form of Homma and Saltelli (1996), as printed with a = 7, b = 0.1 in three open test suites.
        double[] first = {0.313905191147811, 0.442411144790041, 0};
        double[] total = {0.557588855209960, 0.442411144790041, 0.243683664062148};

        Sobol sobol = new Sample(3, 1, N, SobolTest::ishigami).sobol(estimator);

        assertEquals(13.844588, sobol.variance(), 4 * sobol.varianceStandardError());
        assertTrue(sobol.varianceStandardError() < 0.1);
        for (int i = 0; i < 3; i++) {
            VarianceShare share = sobol.shares().get(i);
            assertEquals(first[i], share.first(), 4 * share.firstStandardError(), "first order of x" + (i + 1));
            assertEquals(total[i], share.total(), 4 * share.totalStandardError() + 1e-12, "total of x" + (i + 1));
            assertTrue(share.firstStandardError() < 0.012 && share.totalStandardError() < 0.012, share::toString);
        }
    }

    @Test
    void in_a_sum_no_input_interacts() {
        // x1 + 2·x2 + 3·x3 of equal spread: variances in the proportion 1 : 4 : 9, of 14.
        Sobol sobol = new Sample(3, 1, N, u -> u[0] + 2 * u[1] + 3 * u[2]).sobol();

        for (int i = 0; i < 3; i++) {
            double part = (i + 1) * (i + 1) / 14.0;
            assertEquals(part, sobol.shares().get(i).first(), 0.012);
            assertEquals(part, sobol.shares().get(i).total(), 0.012);
        }
    }

    @Test
    void the_total_share_is_never_below_the_first_order_one_beyond_their_errors() {
        Random random = new Random(5);
        for (int run = 0; run < 30; run++) {
            double[] c = random.doubles(6, -2, 2).toArray();
            Sobol sobol = new Sample(
                            3,
                            run,
                            4_000,
                            u -> c[0] * u[0]
                                    + c[1] * u[1] * u[2]
                                    + c[2] * u[2]
                                    + c[3] * u[0] * u[1] * u[2]
                                    + c[4] * u[1])
                    .sobol();
            for (VarianceShare share : sobol.shares()) {
                double error = Math.hypot(share.firstStandardError(), share.totalStandardError());
                assertTrue(share.total() >= share.first() - 4 * error, () -> share.toString());
                assertTrue(share.total() >= 0 && share.total() < 1 + 4 * share.totalStandardError(), share::toString);
            }
        }
    }

    @Test
    void the_standard_error_is_the_scatter_of_the_shares_over_seeds() {
        int runs = 200;
        double[] first = new double[runs];
        double[] total = new double[runs];
        double reported = 0;
        double toldTotal = 0;
        for (int run = 0; run < runs; run++) {
            VarianceShare share = new Sample(3, run, 2_000, SobolTest::ishigami)
                    .sobol()
                    .shares()
                    .get(0);
            first[run] = share.first();
            total[run] = share.total();
            reported += share.firstStandardError() / runs;
            toldTotal += share.totalStandardError() / runs;
        }
        // The scatter of 200 runs is itself known to about 5 %.
        assertEquals(1, scatter(first) / reported, 0.2);
        assertEquals(1, scatter(total) / toldTotal, 0.2);
    }

    private static double scatter(double[] values) {
        Summary summary = Summary.of(values, 0.9);
        return summary.meanStandardError() * Math.sqrt(values.length);
    }

    @Test
    void the_same_seed_gives_the_same_shares_to_the_last_bit() {
        assertEquals(
                new Sample(3, 9, 2_000, SobolTest::ishigami).sobol(),
                new Sample(3, 9, 2_000, SobolTest::ishigami).sobol());
    }

    @Test
    void an_unused_input_has_no_share_and_a_constant_result_has_no_shares() {
        VarianceShare idle = new Sample(2, 1, 1_000, u -> u[0]).sobol().shares().get(1);
        assertEquals(0, idle.total());
        assertEquals(0, idle.first());

        Sobol certain = new Sample(2, 1, 1_000, u -> 3.7).sobol();
        assertEquals(0, certain.variance());
        assertEquals(List.of(), certain.shares());
    }

    @Test
    void invalid_samples_are_refused() {
        double[] two = {1, 2};
        assertThrows(IllegalArgumentException.class, () -> Sobol.of(new double[] {1}, new double[] {1}, 0, i -> two));
        assertThrows(IllegalArgumentException.class, () -> Sobol.of(two, new double[] {1, 2, 3}, 0, i -> two));
        assertThrows(IllegalArgumentException.class, () -> Sobol.of(new double[] {1, Double.NaN}, two, 0, i -> two));
        assertThrows(
                IllegalArgumentException.class,
                () -> Sobol.of(two, two, 1, i -> new double[] {1, Double.POSITIVE_INFINITY}));
    }
}
