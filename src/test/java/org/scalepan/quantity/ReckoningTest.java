package org.scalepan.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** A calculation that is written down gives the same bits when it is done again; the reference is the arithmetic of doubles itself. */
class ReckoningTest {
    private static final Reckoning.Limits ANY = new Reckoning.Limits(-1e12, 1e12);

    /** The plan of a calculation with entries, written with some of them. */
    private static Plan plan(UnaryOperator<List<Amount>> calculation, double... first) {
        Reckoning reckoning = new Reckoning();
        List<Amount> entries = Arrays.stream(first)
                .mapToObj(value -> reckoning.entry(value, ANY))
                .toList();
        return reckoning.plan(calculation.apply(entries));
    }

    private static double[] places(Plan plan, double... entries) {
        return Arrays.copyOf(entries, plan.places());
    }

    /** A made-up farm: feed and energy times factors, less a credit, over the harvest. */
    private static List<Amount> farm(List<Amount> entries) {
        Amount feed = entries.get(0).times(0.37).times(Amount.ONE.minus(entries.get(1)));
        Amount energy = entries.get(2).times(3.6).over(0.9);
        Amount burden = Amount.sum(List.of(feed, energy, Amount.of(0.1)));
        Amount perKilogram = burden.over(entries.get(3));
        return List.of(
                perKilogram,
                perKilogram.times(perKilogram).squareRoot().exponential(),
                feed.atLeast(energy),
                Amount.by(of -> Math.pow(of[0], 0.75), List.of(feed)));
    }

    @Test
    void other_entries_give_the_bits_that_the_calculation_itself_gives_for_them() {
        Plan plan = plan(ReckoningTest::farm, 400, 0.1, 220, 180);
        Random random = new Random(20261125);

        for (int i = 0; i < 2000; i++) {
            double[] entries = {
                1e4 * random.nextDouble(),
                random.nextDouble(),
                1e3 * random.nextDouble(),
                100 + 500 * random.nextDouble()
            };
            List<Amount> itself =
                    farm(Arrays.stream(entries).mapToObj(Amount::of).toList());
            double[] places = places(plan, entries);

            assertTrue(plan.serves(places));
            for (int result = 0; result < itself.size(); result++) {
                assertEquals(itself.get(result).value(), plan.result(places, result), 0.0);
            }
        }
    }

    @Test
    void a_plan_serves_only_entries_that_decide_as_the_first_ones_did() {
        Plan plan = plan(
                entries -> List.of(
                        entries.get(0).isAbove(100)
                                ? entries.get(0).times(2)
                                : entries.get(0).times(3)),
                150);

        assertTrue(plan.serves(places(plan, 101)));
        assertFalse(plan.serves(places(plan, 100)), "100 is not above 100");
        assertFalse(plan.serves(places(plan, 99)));
    }

    @Test
    void a_number_taken_out_of_the_reckoning_binds_the_plan_to_it() {
        Plan plan = plan(entries -> List.of(entries.get(1).times(entries.get(0).value())), 2025, 7);

        assertTrue(plan.serves(places(plan, 2025, 8)));
        assertFalse(plan.serves(places(plan, 2024, 8)));
    }

    @Test
    void zero_is_told_from_all_else() {
        Plan plan = plan(
                entries -> entries.get(0).isZero() ? List.of(Amount.ZERO) : List.of(Amount.ONE.over(entries.get(0))),
                4);

        assertTrue(plan.serves(places(plan, 1e-12)));
        assertFalse(plan.serves(places(plan, 0)));
        assertFalse(plan.serves(places(plan, -0.0)));
    }

    @Test
    void entries_beyond_their_limits_are_not_served() {
        Reckoning reckoning = new Reckoning();
        Amount share = reckoning.entry(0.5, new Reckoning.Limits(0, 0.99));
        Plan plan = reckoning.plan(List.of(share));

        assertTrue(plan.serves(places(plan, 0.99)));
        assertFalse(plan.serves(places(plan, 1)));
        assertFalse(plan.serves(places(plan, Double.NaN)));
    }

    @Test
    void a_result_that_is_not_finite_is_not_served() {
        Plan plan = plan(entries -> List.of(entries.get(0).over(entries.get(1))), 1, 2);

        assertFalse(plan.serves(places(plan, 1, 0)));
    }

    @Test
    void once_the_plan_is_made_amounts_are_numbers_that_bind_nothing() {
        Reckoning reckoning = new Reckoning();
        Amount entry = reckoning.entry(5, ANY);
        Plan plan = reckoning.plan(List.of(entry.times(2)));

        assertEquals(5, entry.value(), 0.0);
        assertEquals(15, entry.times(3).value(), 0.0);
        assertTrue(plan.serves(places(plan, 6)));
    }

    @Test
    void steps_that_lead_nowhere_are_left_out_and_the_same_step_is_done_once() {
        Plan plan = plan(
                entries -> {
                    entries.get(0).times(17);
                    return List.of(
                            entries.get(0).times(3).plus(entries.get(1)),
                            entries.get(0).times(3).minus(entries.get(1)));
                },
                1,
                2);

        assertTrue(plan.toString().startsWith("3 steps from 2 entries under 0 conditions"), plan.toString());
    }

    /** DoubleStream.sum() of Java 17 and later carries its rounding along in the same way. */
    @Test
    void a_sum_carries_along_what_it_rounds_off() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            double[] values = random.doubles(40, -1e6, 1e6).toArray();
            List<Amount> amounts = Arrays.stream(values).mapToObj(Amount::of).toList();

            assertEquals(DoubleStream.of(values).sum(), Amount.sum(amounts).value(), 0.0);
        }
        double[] many = new double[10_000_000];
        Arrays.fill(many, 0.1);
        assertEquals(1_000_000, CarriedSum.of(many), 1e-9);
    }

    @Test
    void a_sentence_is_said_again_with_other_amounts() {
        Wording days = Wording.of(told -> "a cycle of " + (int) told[0] + " days", Amount.of(28));

        assertEquals("a cycle of 28 days", days.text());
        assertEquals("a cycle of 35 days", days.words().apply(new double[] {35}));
    }
}
