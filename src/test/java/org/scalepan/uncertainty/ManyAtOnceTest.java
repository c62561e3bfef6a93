package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Vectorised results agree bit for bit with results computed draw by draw: the answers depend on it. */
class ManyAtOnceTest {
    private static final int COUNT = 200_000;
    private static final double[] EDGES = {
        0,
        -0.0,
        1,
        -1,
        Double.MIN_VALUE,
        1e-300,
        3.7e-9,
        3.8e-9,
        0.346573,
        0.3465736,
        0.34657363,
        1.03972,
        699.9,
        700.1,
        709.7,
        709.8,
        -700.1,
        -708.3,
        -745.1,
        -745.2,
        1e300,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        Double.NaN
    };

    private static double[] drawn(DoubleSupplier one) {
        return DoubleStream.generate(one).limit(COUNT).toArray();
    }

    /** Exponents of every kind: usual ones, next to the half powers of two where fdlibm rounds, far out, and any double at all. */
    private static Stream<double[]> exponents() {
        SplittableRandom random = new SplittableRandom(20261125);
        return Stream.of(
                EDGES,
                drawn(() -> random.nextDouble(-10, 10)),
                drawn(() ->
                        (random.nextInt(-20, 21) + 0.5) * StrictMath.log(2) * (1 + 1e-9 * random.nextDouble(-1, 1))),
                drawn(() -> random.nextDouble(-800, 800)),
                drawn(() -> 1e-8 * random.nextDouble(-1, 1)),
                drawn(() -> Double.longBitsToDouble(random.nextLong())));
    }

    private static double[] eachAlone(double[] values, DoubleUnaryOperator alone) {
        return Arrays.stream(values).map(alone).toArray();
    }

    @ParameterizedTest
    @MethodSource("exponents")
    void exponentials_are_those_of_strict_math(double[] exponents) {
        double[] together = exponents.clone();
        Exponentials.replace(together);

        assertArrayEquals(eachAlone(exponents, StrictMath::exp), together);
    }

    private static Stream<Distribution> distributions() {
        return Stream.of(
                new Lognormal(1.3, 0.4),
                new Lognormal(-2, 0),
                new LogUniform(0.2, 31),
                new LognormalBelowOne(new Lognormal(-0.2, 0.3)),
                new PercentileCurve(new double[] {0.05, 0.5, 0.95}, new double[] {9, 30, 105}),
                new PercentileCurve(new double[] {0.1, 0.5, 0.9}, new double[] {9, 9, 105}));
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void draws_are_the_values_at_their_scores(Distribution distribution) {
        double[] scores = Draws.scores("many-at-once", 1, COUNT);
        double[] draws = new double[COUNT];
        distribution.fill(scores, draws);
        assertArrayEquals(eachAlone(scores, distribution::atScore), draws);

        distribution.fill(scores, scores);
        assertArrayEquals(draws, scores);
    }
}
