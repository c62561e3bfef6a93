package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DistributionRefusalTest {
    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void no_parameter_may_be_nan_or_infinite(double bad) {
        refused(() -> new Constant(bad));
        refused(() -> new Normal(bad, 1));
        refused(() -> new Normal(1, bad));
        refused(() -> new Lognormal(bad, 1));
        refused(() -> new Lognormal(1, bad));
        refused(() -> Lognormal.ofMeanAndSd(bad, 1));
        refused(() -> Lognormal.ofMeanAndSd(1, bad));
        refused(() -> Lognormal.ofMedianAndSd(bad, 1));
        refused(() -> Lognormal.ofMedianAndSd(1, bad));
        refused(() -> Lognormal.ofMedianAndGsd(bad, 2));
        refused(() -> Lognormal.ofMedianAndGsd(1, bad));
        refused(() -> Lognormal.ofQuantiles(bad, 1, 0.9, 2));
        refused(() -> Lognormal.ofQuantiles(0.1, bad, 0.9, 2));
        refused(() -> Lognormal.ofQuantiles(0.1, 1, bad, 2));
        refused(() -> Lognormal.ofQuantiles(0.1, 1, 0.9, bad));
        refused(() -> new Uniform(bad, 1));
        refused(() -> new Uniform(1, bad));
        refused(() -> new Triangular(bad, 1, 2));
        refused(() -> new Triangular(0, bad, 2));
        refused(() -> new Triangular(0, 1, bad));
        refused(() -> new LogUniform(bad, 1));
        refused(() -> new LogUniform(1, bad));
        refused(() -> new BetaFraction(bad, 1));
        refused(() -> new BetaFraction(1, bad));
        refused(() -> BetaFraction.ofMeanAndSd(bad, 0.1));
        refused(() -> BetaFraction.ofMeanAndSd(0.5, bad));
        refused(() -> new Scaled(new Constant(1), bad));
        refused(() -> new PercentileCurve(new double[] {0.1, bad}, new double[] {1, 2}));
        refused(() -> new PercentileCurve(new double[] {0.1, 0.9}, new double[] {1, bad}));
    }

    @Test
    void a_refusal_names_the_value() {
        assertMessage("standard deviation must be zero or more and finite, not -1.0", () -> new Normal(2, -1));
        assertMessage("mean must be positive and finite, not 0.0", () -> Lognormal.ofMeanAndSd(0, 1));
        assertMessage(
                "geometric standard deviation must be 1 or more and finite, not 0.9",
                () -> Lognormal.ofMedianAndGsd(1, 0.9));
        assertMessage("p1 must be below p2, but p1 is 0.9 and p2 is 0.1", () -> Lognormal.ofQuantiles(0.9, 1, 0.1, 2));
        assertMessage(
                "x2 must not be below x1, but x1 is 3.0 and x2 is 2.0", () -> Lognormal.ofQuantiles(0.1, 3, 0.9, 2));
        assertMessage("low must be below high, but low is 2.0 and high is 2.0", () -> new Uniform(2, 2));
        assertMessage("mode 5.0 lies outside 1.0 to 3.0", () -> new Triangular(1, 5, 3));
        assertMessage("low must be positive and finite, not 0.0", () -> new LogUniform(0, 1));
        assertMessage("factor must be positive and finite, not 0.0", () -> new Scaled(new Constant(1), 0));
        assertMessage("sigma must be positive and finite, not 0.0", () -> new LognormalBelowOne(new Lognormal(-1, 0)));
        assertMessage(
                "probability below 1 must be positive and finite, not 0.0",
                () -> new LognormalBelowOne(new Lognormal(50, 1)));
    }

    @Test
    void a_percentile_curve_must_have_points_that_rise_together() {
        assertMessage(
                "probabilities must rise, but 0.5 follows 0.5",
                () -> new PercentileCurve(new double[] {0.5, 0.5}, new double[] {1, 2}));
        assertMessage(
                "percentile values must not fall, but 1.0 follows 2.0",
                () -> new PercentileCurve(new double[] {0.1, 0.5}, new double[] {2, 1}));
        assertMessage(
                "a percentile curve needs at least two points, not 1",
                () -> new PercentileCurve(new double[] {0.5}, new double[] {2}));
        assertMessage(
                "probabilities and values must be equally many, not 2 and 1",
                () -> new PercentileCurve(new double[] {0.1, 0.5}, new double[] {2}));
        assertMessage(
                "percentile value must be positive and finite, not 0.0",
                () -> new PercentileCurve(new double[] {0.1, 0.5}, new double[] {0, 1}));
        refused(() -> new PercentileCurve(new double[] {0, 0.5}, new double[] {1, 2}));
        refused(() -> new PercentileCurve(new double[] {0.5, 1}, new double[] {1, 2}));
    }

    private static void assertMessage(String expected, Executable making) {
        assertEquals(
                expected, assertThrows(IllegalArgumentException.class, making).getMessage());
    }

    private static void refused(Executable making) {
        assertThrows(IllegalArgumentException.class, making);
    }
}
