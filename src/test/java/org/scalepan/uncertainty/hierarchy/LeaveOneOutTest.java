package org.scalepan.uncertainty.hierarchy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.scalepan.uncertainty.StandardNormal;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.HeldOut;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.Remaining;

class LeaveOneOutTest {
    private static final double SCALE = 0.5;
    private static final double[] COVERAGES = {0.5, 0.8, 0.9, 0.95};

    @Test
    void every_study_of_every_pool_is_left_out_once_and_counted_by_how_many_remain() {
        List<HeldOut> table =
                LeaveOneOut.table(List.of(pool(1), pool(1.0, 1.1), pool(1, 1.1, 5), pool(1, 2, 3, 4, 5)), SCALE);

        assertEquals(12, table.size());
        assertEquals(
                List.of(0.5, 0.8, 0.9, 0.95),
                table.stream().limit(4).map(HeldOut::coverage).toList());
        assertEquals(2, table.get(0).cases());
        assertEquals(Remaining.ONE, table.get(0).remaining());
        assertEquals(3, table.get(4).cases());
        assertEquals(Remaining.TWO, table.get(4).remaining());
        assertEquals(5, table.get(8).cases());
        assertEquals(Remaining.THREE_OR_MORE, table.get(8).remaining());
    }

    /** One study remains: the next statement lies N(y, s² + τ² + s² + τ²); 1.1 is well inside, 5 far outside. */
    @Test
    void a_study_near_the_others_is_held_and_one_far_off_is_not() {
        assertEquals(2, LeaveOneOut.table(List.of(pool(1, 1.1)), SCALE).get(0).held());
        assertEquals(0, LeaveOneOut.table(List.of(pool(1, 5)), SCALE).get(3).held());
        assertEquals(0.5, LeaveOneOut.place(pool(1, 1), 0, SCALE), 1e-12);
        assertEquals(1 - LeaveOneOut.place(pool(1, 1.7), 0, SCALE), LeaveOneOut.place(pool(1, 1.7), 1, SCALE), 1e-12);
    }

    /** Binomial with 34 trials and a chance of 0.9: P(≤ 25) = 0.0051, P(≤ 26) = 0.0169; all 34 held has 0.0278. */
    @Test
    void limits_are_exact_and_of_one_in_a_hundred_on_each_side() {
        HeldOut row = HeldOut.of(Remaining.ONE, 0.9, 34, 20);

        assertEquals(26, row.fewest());
        assertEquals(34, row.most());
        assertTrue(row.isTooNarrow());
        assertFalse(row.isWide());
        assertFalse(HeldOut.of(Remaining.ONE, 0.9, 34, 26).isTooNarrow());
        assertTrue(HeldOut.of(Remaining.ONE, 0.9, 34, 25).isTooNarrow());
        assertTrue(HeldOut.of(Remaining.ONE, 0.5, 34, 33).isWide());
    }

    @Test
    void where_nothing_can_be_left_out_nothing_is_amiss() {
        for (HeldOut row : LeaveOneOut.table(List.of(pool(1)), SCALE)) {
            assertEquals(0, row.cases());
            assertFalse(row.isTooNarrow() || row.isWide());
        }
        assertThrows(IllegalArgumentException.class, () -> LeaveOneOut.place(pool(1), 0, SCALE));
    }

    /**
     * A thousand libraries, each of one pool of every size, with τ drawn from its prior: one study is left out of each pool, so that cases are independent.
     * What is promised is held, at every coverage and every number of remaining studies.
     */
    @Test
    void in_libraries_drawn_from_the_prior_intervals_hold_what_they_promise() {
        SplittableRandom random = new SplittableRandom(5);
        for (int remaining : new int[] {1, 2, 3, 6}) {
            double[] places = new double[1000];
            for (int library = 0; library < places.length; library++) {
                places[library] = LeaveOneOut.place(simulated(random, remaining + 1, SCALE), remaining, SCALE);
            }
            for (double coverage : COVERAGES) {
                int held = (int) Arrays.stream(places)
                        .filter(place -> LeaveOneOut.holds(coverage, place))
                        .count();
                HeldOut row = HeldOut.of(Remaining.of(remaining), coverage, places.length, held);
                assertFalse(row.isTooNarrow(), "too narrow with " + remaining + " remaining: " + row);
                assertFalse(row.isWide(), "too wide with " + remaining + " remaining: " + row);
            }
            Arrays.sort(places);
            for (int i = 0; i < places.length; i++) {
                assertEquals((i + 0.5) / places.length, places[i], 1.628 / Math.sqrt(places.length), "spread evenly");
            }
        }
    }

    @Test
    void studies_that_differ_more_than_the_prior_allows_are_seen_to_be_promised_too_much() {
        SplittableRandom random = new SplittableRandom(6);
        List<StudyEffects> pools = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            pools.add(simulated(random, 2, 4 * SCALE));
        }

        HeldOut atNinety = LeaveOneOut.table(pools, SCALE).get(2);

        assertTrue(atNinety.isTooNarrow(), atNinety.toString());
    }

    private static StudyEffects simulated(SplittableRandom random, int studies, double scale) {
        double tau = scale * Math.abs(normal(random));
        double error = 0.1 + 0.3 * random.nextDouble();
        double mean = 6 * random.nextDouble();
        double[] effects = new double[studies];
        double[] errors = new double[studies];
        for (int i = 0; i < studies; i++) {
            errors[i] = error;
            effects[i] = mean + tau * normal(random) + error * normal(random);
        }
        return StudyEffects.of(effects, errors);
    }

    private static double normal(SplittableRandom random) {
        return StandardNormal.score(random.nextDouble(1e-12, 1));
    }

    private static StudyEffects pool(double... effects) {
        double[] errors = new double[effects.length];
        Arrays.fill(errors, 0.2);
        return StudyEffects.of(effects, errors);
    }
}
