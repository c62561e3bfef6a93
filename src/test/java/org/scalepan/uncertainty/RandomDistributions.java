package org.scalepan.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Distributions of every kind with random parameters, the same for the same seed. */
final class RandomDistributions {
    private final SplittableRandom random;

    RandomDistributions(long seed) {
        random = new SplittableRandom(seed);
    }

    List<Distribution> ofEveryKind() {
        double low = between(0.01, 5);
        double high = low * between(1.01, 20);
        List<Distribution> all = new ArrayList<>(List.of(
                new Constant(between(-3, 3)),
                new Normal(between(-3, 3), between(0, 2)),
                lognormal(),
                new Uniform(-low, high),
                new SplitNormal(low, low + between(0, 1) * (high - low), high),
                new Triangular(low, low + between(0, 1) * (high - low), high),
                new LogUniform(low, high),
                new BetaFraction(between(0.4, 60), between(0.4, 60)),
                percentileCurve(),
                new LognormalBelowOne(Lognormal.ofMedianAndGsd(between(0.05, 1.2), between(1.05, 2.5))),
                new CappedFraction(new Normal(between(0, 1), between(0.05, 0.5)))));
        all.add(new Scaled(all.get(random.nextInt(all.size())), between(0.01, 50)));
        return all;
    }

    double score() {
        return between(-4.5, 4.5);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private Lognormal lognormal() {
        return new Lognormal(between(-3, 3), between(0, 0.9));
    }

    private PercentileCurve percentileCurve() {
        double[] probabilities = {0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95};
        double[] values = new double[probabilities.length];
        double value = between(0.1, 10);
        for (int i = 0; i < values.length; i++) {
            values[i] = value;
            value *= random.nextInt(4) == 0 ? 1 : between(1, 1.6);
        }
        return new PercentileCurve(probabilities, values);
    }
}
