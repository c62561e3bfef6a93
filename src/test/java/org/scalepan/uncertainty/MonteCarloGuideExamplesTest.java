package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The worked examples of JCGM 101:2008 (GUM Supplement 1), clause 9, drawn with this library. */
class MonteCarloGuideExamplesTest {
    private static final int N = 400_000;

    /** 9.2.2, table 2: u = 2.0, 95 % interval ±3.92. */
    @Test
    void four_normal_quantities_add_up() {
        Normal standard = new Normal(0, 1);

        double[] sum = sumOf(standard, standard, standard, standard);

        assertEquals(2.0, sd(sum), 0.01);
        assertInterval(-3.92, 3.92, sum, 0.03);
    }

    /** 9.2.3: u = 2.0, 95 % interval ±3.88, in closed form 2√3(2 − 0.6^¼). */
    @Test
    void four_rectangular_quantities_add_up_to_a_narrower_interval_than_a_normal() {
        Uniform rectangular = rectangularWithSd(1);

        double[] sum = sumOf(rectangular, rectangular, rectangular, rectangular);

        double expected = 2 * Math.sqrt(3) * (2 - Math.pow(0.6, 0.25));
        assertEquals(3.88, expected, 0.005);
        assertEquals(2.0, sd(sum), 0.01);
        assertInterval(-expected, expected, sum, 0.02);
    }

    /** 9.2.4: u = 10.1, 95 % interval ±17.0. */
    @Test
    void one_dominant_rectangular_quantity_shapes_the_sum() {
        Uniform rectangular = rectangularWithSd(1);

        double[] sum = sumOf(rectangular, rectangular, rectangular, rectangularWithSd(10));

        assertEquals(10.15, sd(sum), 0.05);
        assertInterval(-17.0, 17.0, sum, 0.06);
    }

    /**
     * 9.3, calibration of a weight in air: published 1.2341 mg, u = 0.0754 mg, shortest 95 % interval [1.0834, 1.3825] (figures
     * from memory). First-order propagation gives 0.0539 and so misses much of the spread.
     */
    @Test
    void a_weight_is_calibrated_in_air() {
        int n = 1_000_000;
        double[] massOfReference = draw(new Normal(100_000, 0.050), "mRc", n);
        double[] massAdded = draw(new Normal(1.234, 0.020), "dmRc", n);
        double[] air = draw(new Uniform(1.10, 1.30), "air", n);
        double[] weight = draw(new Uniform(7_000, 9_000), "weight", n);
        double[] reference = draw(new Uniform(7_950, 8_050), "reference", n);
        double[] deviation = new double[n];
        for (int i = 0; i < n; i++) {
            deviation[i] = excessMass(massOfReference[i], massAdded[i], air[i], weight[i], reference[i]);
        }

        Summary summary = Summary.of(deviation, 0.95);
        double[] shortest = shortestInterval(deviation, 0.95);

        assertEquals(1.2341, summary.mean(), 4e-4);
        assertEquals(0.0754, sd(deviation), 3e-4);
        assertEquals(1.0834, shortest[0], 3e-3);
        assertEquals(1.3825, shortest[1], 3e-3);
        ErrorPropagation.PropagatedError firstOrder = ErrorPropagation.PropagatedError.of(
                x -> excessMass(x[0], x[1], x[2], x[3], x[4]),
                new double[] {100_000, 1.234, 1.2, 8_000, 8_000},
                new double[] {0.050, 0.020, 0.1 / Math.sqrt(3), 1_000 / Math.sqrt(3), 50 / Math.sqrt(3)});
        assertEquals(1.2340, firstOrder.value(), 5e-5);
        assertEquals(0.0539, firstOrder.standardUncertainty(), 5e-5);
    }

    private static double excessMass(
            double reference, double added, double air, double weight, double referenceDensity) {
        return (reference + added) * (1 + (air - 1.2) * (1 / weight - 1 / referenceDensity)) - 100_000;
    }

    private static Uniform rectangularWithSd(double sd) {
        return new Uniform(-sd * Math.sqrt(3), sd * Math.sqrt(3));
    }

    private static double[] sumOf(Distribution... terms) {
        double[] sum = new double[N];
        for (int t = 0; t < terms.length; t++) {
            double[] term = draw(terms[t], "term " + t, N);
            Arrays.setAll(sum, i -> sum[i] + term[i]);
        }
        return sum;
    }

    private static double[] draw(Distribution distribution, String id, int n) {
        double[] draws = Draws.scores(id, 1, n);
        distribution.fill(draws, draws);
        return draws;
    }

    private static double sd(double[] draws) {
        return Summary.of(draws, 0.95).meanStandardError() * Math.sqrt(draws.length);
    }

    private static void assertInterval(double low, double high, double[] draws, double tolerance) {
        Summary summary = Summary.of(draws, 0.95);
        assertEquals(low, summary.low(), tolerance);
        assertEquals(high, summary.high(), tolerance);
    }

    private static double[] shortestInterval(double[] draws, double coverage) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        int span = (int) Math.round(coverage * sorted.length);
        int best = 0;
        for (int i = 0; i + span < sorted.length; i++) {
            if (sorted[i + span] - sorted[i] < sorted[best + span] - sorted[best]) {
                best = i;
            }
        }
        return new double[] {sorted[best], sorted[best + span]};
    }
}
