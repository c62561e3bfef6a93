package org.scalepan.uncertainty.hierarchy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Do intervals hold what they promise? Each study of each pool is left out in turn, the rest are pooled, and it is counted how often the
 * interval for the next statement holds the study left out. As many should be held as the coverage promises, within what chance allows.
 *
 * <p>Sources: cross-validatory predictive checks, Gelfand, Dey and Chang (1992), in Bayesian Statistics 4, 147–167; exact binomial limits, Clopper
 * and Pearson (1934), Biometrika 26, 404–413. Cases of one pool are not independent of each other, so that the limits are somewhat too
 * narrow.
 */
public final class LeaveOneOut {
    /** One in a hundred: how rarely chance alone passes a limit. */
    private static final double ONE_SIDED = 0.01;

    private static final double[] COVERAGES = {0.5, 0.8, 0.9, 0.95};

    private LeaveOneOut() {}

    /** How many studies remain when one is left out. */
    public enum Remaining {
        ONE,
        TWO,
        THREE_OR_MORE;

        static Remaining of(int studies) {
            return studies == 1 ? ONE : studies == 2 ? TWO : THREE_OR_MORE;
        }
    }

    /** What a row says of the intervals. */
    public enum Finding {
        NO_CASES,
        AS_PROMISED,
        /** Fewer are held than chance allows: the interval promises too much. */
        TOO_NARROW,
        /** More are held than chance allows: the interval is wider than it says. */
        WIDE
    }

    /**
     * One row of the table.
     *
     * @param remaining how many studies the interval rests on
     * @param coverage the share of statements that the interval should hold: 0.5, 0.8, 0.9 or 0.95
     * @param cases how many studies were left out, one at a time; may be 0
     * @param held how many of them the interval held
     * @param fewest so many at least are held with a probability of 99 %, if the coverage is true
     * @param most so many at most are held with a probability of 99 %, if the coverage is true
     */
    public record HeldOut(Remaining remaining, double coverage, int cases, int held, int fewest, int most) {
        static HeldOut of(Remaining remaining, double coverage, int cases, int held) {
            BinomialDistribution promised = BinomialDistribution.of(cases, coverage);
            return new HeldOut(
                    remaining,
                    coverage,
                    cases,
                    held,
                    promised.inverseCumulativeProbability(ONE_SIDED),
                    promised.inverseSurvivalProbability(ONE_SIDED));
        }

        /** The share of the cases that was held, 0 to 1; empty where there are none. */
        public OptionalDouble share() {
            return cases == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) held / cases);
        }

        /** The fewest as a share of the cases, 0 to 1; 0 where there are none. */
        public double fewestShare() {
            return cases == 0 ? 0 : (double) fewest / cases;
        }

        /** The most as a share of the cases, 0 to 1; 0 where there are none. */
        public double mostShare() {
            return cases == 0 ? 0 : (double) most / cases;
        }

        /** How the row compares with what the coverage promises. */
        public Finding finding() {
            if (cases == 0) {
                return Finding.NO_CASES;
            }
            return isTooNarrow() ? Finding.TOO_NARROW : isWide() ? Finding.WIDE : Finding.AS_PROMISED;
        }

        /** Whether fewer are held than chance allows: the interval promises too much. */
        public boolean isTooNarrow() {
            return held < fewest;
        }

        /** Whether more are held than chance allows: the interval is wider than it says. */
        public boolean isWide() {
            return held > most;
        }
    }

    /**
     * The table: by number of remaining studies, then by coverage; twelve rows.
     *
     * @param pools the studies of each pool; one with a single study has none to leave out
     * @param scale σ of the half-normal prior of τ
     * @throws IllegalArgumentException when the scale is out of range
     */
    public static List<HeldOut> table(List<StudyEffects> pools, double scale) {
        return table(
                pools.stream().flatMap(pool -> leftOut(pool, scale).stream()).toList());
    }

    /**
     * One study left out.
     *
     * @param remaining how many others its pool has
     * @param place where it lies in what they said of the next statement: the share of that distribution below it, 0 to 1
     */
    public record LeftOut(Remaining remaining, double place) {}

    /**
     * Each study of a pool, left out in turn, in the order of the pool; none where the pool has only one.
     *
     * @param scale σ of the half-normal prior of τ
     * @throws IllegalArgumentException when the scale is out of range
     */
    public static List<LeftOut> leftOut(StudyEffects pool, double scale) {
        return pool.size() < 2
                ? List.of()
                : IntStream.range(0, pool.size())
                        .mapToObj(left -> new LeftOut(Remaining.of(pool.size() - 1), place(pool, left, scale)))
                        .toList();
    }

    /** The table of studies left out: by number of remaining studies, then by coverage; twelve rows. */
    public static List<HeldOut> table(List<LeftOut> each) {
        Map<Remaining, List<Double>> places = new EnumMap<>(Remaining.class);
        each.forEach(one -> places.computeIfAbsent(one.remaining(), none -> new ArrayList<>())
                .add(one.place()));
        List<HeldOut> table = new ArrayList<>();
        for (Remaining remaining : Remaining.values()) {
            List<Double> of = places.getOrDefault(remaining, List.of());
            for (double coverage : COVERAGES) {
                int held = (int)
                        of.stream().filter(place -> holds(coverage, place)).count();
                table.add(HeldOut.of(remaining, coverage, of.size(), held));
            }
        }
        return List.copyOf(table);
    }

    /**
     * Where the study left out lies in what the others said of the next statement: the share of that distribution below it, 0 to 1. Over
     * many studies these are spread evenly if the intervals are right.
     *
     * @param pool at least two studies
     * @param left the place of the study left out
     * @param scale σ of the half-normal prior of τ
     * @throws IllegalArgumentException when fewer than two studies are given, or the scale is out of range
     */
    public static double place(StudyEffects pool, int left, double scale) {
        if (pool.size() < 2) {
            throw new IllegalArgumentException("leaving one study out needs at least two, not " + pool.size());
        }
        return HeterogeneityPosterior.of(pool.without(left), scale)
                .nextStatement()
                .shareBelow(pool.effect(left));
    }

    /** Whether the central interval of that coverage holds what lies at that place. */
    static boolean holds(double coverage, double place) {
        return Math.abs(place - 0.5) <= coverage / 2;
    }
}
