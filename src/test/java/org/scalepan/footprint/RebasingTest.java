package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Cited;
import org.scalepan.factors.Gas;
import org.scalepan.factors.GasShares;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.WarmingSet;

/** CO2e is converted from one warming set to another by the shares of its gases. */
class RebasingTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final int N = 5_000;

    private static WarmingSet set(String id) {
        return LIBRARY.warmingSets().get(id);
    }

    private static GasShares shares(Map<Gas, Double> known) {
        Cited invented = new Cited("invented", "for this test", Grade.MEMORY);
        return new GasShares("invented", "beef", Boundary.FARM_GATE, "ar4-100", known, invented, Optional.empty());
    }

    private static Rebasing rebasing(Map<Gas, Double> known, String under, String from, String to) {
        return new Rebasing(shares(known), set(under), set(from), set(to));
    }

    private static double[] drawn(Rebasing rebasing) {
        double[] values = new double[N];
        Arrays.fill(values, 1);
        rebasing.apply(values, new CommonRandomNumbers(1, N));
        return values;
    }

    /** 114 g CH4 per kg gain is 2 850 g CO2e under AR4 and 3 078 under AR6, that is 27 / 25 (Oonincx et al. 2010; AR6 Table 7.15). */
    @Test
    void pure_methane_goes_up_by_27_over_25_from_ar4_to_ar6() {
        Rebasing methane = rebasing(Map.of(Gas.CH4_BIOGENIC, 1.0), "ar4-100", "ar4-100", "ar6-100");
        assertEquals(27.0 / 25.0, methane.multiplier(), 1e-12);
        assertFalse(methane.isOpen());
        assertEquals(3_078, 2_850 * methane.multiplier(), 1e-9, "g CO2e per kg gain");
    }

    @Test
    void known_shares_by_hand() {
        // 0.3 + 0.5 x 27/25 + 0.2 x 273/298 = 0.3 + 0.54 + 0.183221 = 1.023221
        Rebasing known =
                rebasing(Map.of(Gas.CO2, 0.3, Gas.CH4_BIOGENIC, 0.5, Gas.N2O, 0.2), "ar4-100", "ar4-100", "ar6-100");
        assertEquals(1.023221, known.multiplier(), 1e-6);
        assertFalse(known.isOpen());
    }

    @Test
    void shares_stated_under_another_set_than_the_number_by_hand() {
        // Masses under AR5 with feedback, per kg CO2e: 0.3 CO2, 0.5/34 CH4, 0.2/298 N2O.
        // AR4: 0.3 + 25 x 0.5/34 + 0.2 = 0.867647; AR6: 0.3 + 27 x 0.5/34 + 273 x 0.2/298 = 0.880280; ratio 1.014559.
        Rebasing known = rebasing(
                Map.of(Gas.CO2, 0.3, Gas.CH4_BIOGENIC, 0.5, Gas.N2O, 0.2), "ar5-100-feedback", "ar4-100", "ar6-100");
        assertEquals(1.014559, known.multiplier(), 2e-6);
    }

    /** Property: for any shares, to the same set is the identity, there and back is the identity, and draws stay in bounds. */
    @Test
    void identity_round_trip_and_bounds_for_any_shares_and_sets() {
        SplittableRandom random = new SplittableRandom(42);
        List<String> sets = List.copyOf(LIBRARY.warmingSets().keySet());
        for (int i = 0; i < 200; i++) {
            Map<Gas, Double> known = randomShares(random);
            String under = sets.get(random.nextInt(sets.size()));
            String from = sets.get(random.nextInt(sets.size()));
            String to = sets.get(random.nextInt(sets.size()));
            String what = known + " under " + under + ", " + from + " to " + to;
            assertEquals(1, rebasing(known, under, from, from).multiplier(), 1e-12, what);
            Rebasing there = rebasing(known, under, from, to);
            assertEquals(
                    1, there.multiplier() * rebasing(known, under, to, from).multiplier(), 1e-12, what);
            double[] bounds = there.bounds();
            assertTrue(bounds[0] <= there.multiplier() && there.multiplier() <= bounds[1], what);
            for (double value : drawn(there)) {
                assertTrue(value >= bounds[0] - 1e-12 && value <= bounds[1] + 1e-12, what);
            }
        }
    }

    private static Map<Gas, Double> randomShares(SplittableRandom random) {
        Map<Gas, Double> known = new EnumMap<>(Gas.class);
        double methane = random.nextDouble();
        known.put(Gas.CH4_BIOGENIC, methane);
        if (random.nextBoolean()) {
            known.put(Gas.CO2, (1 - methane) * random.nextDouble());
        }
        return known;
    }

    @Test
    void an_open_rest_is_drawn_from_all_carbon_dioxide_to_all_nitrous_oxide() {
        Rebasing open = rebasing(Map.of(Gas.CH4_BIOGENIC, 0.5), "ar4-100", "ar4-100", "ar6-100");
        assertTrue(open.isOpen());
        // All CO2: 0.5 + 0.54 = 1.04. All N2O: 0.54 + 0.5 x 273/298 = 0.998054.
        assertEquals(0.998054, open.bounds()[0], 1e-6);
        assertEquals(1.04, open.bounds()[1], 1e-12);
        double[] drawn = drawn(open);
        assertEquals(0.998054, Arrays.stream(drawn).min().getAsDouble(), 1e-4);
        assertEquals(1.04, Arrays.stream(drawn).max().getAsDouble(), 1e-4);
    }

    @Test
    void an_unknown_rest_of_a_single_gas_is_no_range() {
        Rebasing rest = rebasing(Map.of(Gas.CH4_BIOGENIC, 0.5, Gas.CO2, 0.3), "ar4-100", "ar4-100", "ar6-100");
        assertFalse(rest.isOpen());
        assertEquals(1.023221, rest.multiplier(), 1e-6);
        assertEquals(rest.multiplier(), drawn(rest)[0], 1e-15);
    }

    @Test
    void two_results_with_the_same_unknown_shares_use_the_same_draws_of_them() {
        Rebasing open = rebasing(Map.of(Gas.CH4_BIOGENIC, 0.5), "ar4-100", "ar4-100", "ar6-100");
        assertTrue(Arrays.equals(drawn(open), drawn(open)));
    }

    /**
     * Poore & Nemecek 2018, Data S2, publish beef from beef herds under both AR5 with feedback and AR4. The methane share in the
     * library is derived from the two means; the percentiles are an outside check of it: 30.27 and 25.94 kg CO2e per 100 g
     * protein at the median, 105.2 and 90.25 at the 90th percentile.
     */
    @Test
    void re_based_beef_meets_the_percentiles_that_the_study_publishes_under_the_other_set() {
        GasShares beef = LIBRARY.gasShares().stream()
                .filter(shares -> shares.product().equals("beef-beef-herd"))
                .findFirst()
                .orElseThrow();
        Rebasing toAr4 = new Rebasing(beef, set("ar5-100-feedback"), set("ar5-100-feedback"), set("ar4-100"));
        assertEquals(25.94, 30.27 * toAr4.multiplier(), 0.01 * 25.94, "kg CO2e per 100 g protein, median");
        assertEquals(90.25, 105.2 * toAr4.multiplier(), 0.01 * 90.25, "kg CO2e per 100 g protein, p90");
        assertEquals(42.72, 49.89 * toAr4.multiplier(), 0.01, "kg CO2e per 100 g protein, mean");
    }
}
