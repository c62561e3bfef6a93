package org.scalepan.production.herd;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.production.herd.EnergyNeed.Animal;
import org.scalepan.production.herd.EnergyNeed.Coefficients;

/**
 * IPCC volume 4, chapter 10, equations 10.3 to 10.16 and 10.21. The animals are those of table 10A.1, as quoted by a second source;
 * the emission factors are printed in table 10.11.
 */
class EnergyNeedTest {
    /** Cfi 0.386 for lactating cows (table 10.4), C 0.8 for females, Cpregnancy 0.10 (table 10.7). */
    private static Coefficients lactating(double activity) {
        return new Coefficients(0.386, activity, 0.8, 0.10);
    }

    private static Animal cow(double weight, double milk, double fat, double pregnant, double digestibility) {
        return new Animal(weight, weight, 0, milk, fat, pregnant, 0, digestibility);
    }

    private static Animal northAmerican() {
        return cow(600, 23.0, 4, 0.90, 75);
    }

    /** 2006: Ym 6.5 %. Gross energy and factor are the chain worked apart from this program, the last column is printed. */
    @ParameterizedTest
    @CsvSource({
        "North America,          600, 23.0, 0.90, 75, 0,    299.86, 127.84, 128",
        "Western Europe,         600, 16.4, 0.90, 70, 0,    273.77, 116.72, 117",
        "Latin America,          400,  2.2, 0.80, 60, 0.17, 168.16,  71.69,  72",
        "Africa and Middle East, 275,  1.3, 0.67, 60, 0,    107.15,  45.68,  46"
    })
    void the_dairy_cow_of_2006_emits_what_table_10_11_prints(
            String region,
            double weight,
            double milk,
            double pregnant,
            double digestibility,
            double activity,
            double gross,
            double computed,
            double printed) {
        EnergyNeed need = EnergyNeed.of(cow(weight, milk, 4, pregnant, digestibility), lactating(activity));
        double factor = Methane.enteric(need.gross(), 6.5);

        assertEquals(gross, need.gross(), 0.005, region + ", MJ a day");
        assertEquals(computed, factor, 0.005, region + ", kg CH4 a year");
        assertEquals(printed, factor, 0.5, region + ", kg CH4 a year as printed");
    }

    /** 2019: 20.3 kg milk of 4.2 % fat, digestibility 71 %, Ym 6.3 % for a medium yield (table 10.12); 126 printed in table 10.11. */
    @Test
    void the_dairy_cow_of_western_europe_in_2019_emits_what_table_10_11_prints() {
        EnergyNeed need = EnergyNeed.of(cow(600, 20.3, 4.2, 0.90, 71), lactating(0));

        assertEquals(46.795, need.maintenance(), 0.0005);
        assertEquals(63.945, need.lactation(), 0.0005);
        assertEquals(4.212, need.pregnancy(), 0.0005);
        assertEquals(0.53148, need.forMaintenance(), 0.000005);
        assertEquals(304.63, need.gross(), 0.005);
        assertEquals(16.511, need.feedDryMatter(), 0.0005);
        assertEquals(125.87, Methane.enteric(need.gross(), 6.3), 0.005);
        assertEquals(126, Methane.enteric(need.gross(), 6.3), 0.5);
    }

    /** The steps of the North American cow of 2006, worked apart from this program. */
    @Test
    void each_step_of_the_chain_has_its_value() {
        EnergyNeed need = EnergyNeed.of(northAmerican(), lactating(0));

        assertEquals(46.795, need.maintenance(), 0.0005, "386 kJ x 600^0.75");
        assertEquals(0, need.activity(), 0.0);
        assertEquals(70.610, need.lactation(), 0.0005, "23 x (1.47 + 0.40 x 4)");
        assertEquals(4.212, need.pregnancy(), 0.0005);
        assertEquals(0.54085, need.forMaintenance(), 0.0001, "rounded on the way");
        assertEquals(16.253, need.feedDryMatter(), 0.0005, "at 18.45 MJ per kg");
    }

    /** Equation 10.6 by hand: 22.02 x (300 / (1.0 x 600))^0.75 x 0.9^1.097 = 22.02 x 0.594604 x 0.890849 = 11.6640. */
    @Test
    void growth_by_hand() {
        Animal steer = new Animal(300, 600, 0.9, 0, 0, 0, 0, 65);
        EnergyNeed need = EnergyNeed.of(steer, new Coefficients(0.322, 0, 1.0, 0.10));

        assertEquals(22.02 * 0.594604 * Math.exp(1.097 * Math.log(0.9)), need.growth(), 0.0005);
    }

    /** Equation 10.11: a tenth of maintenance for each hour of work. */
    @Test
    void five_hours_of_work_are_half_of_maintenance() {
        Animal ox = new Animal(350, 350, 0, 0, 0, 0, 5, 55);
        EnergyNeed need = EnergyNeed.of(ox, new Coefficients(0.322, 0.17, 1.0, 0.10));

        assertEquals(need.maintenance() / 2, need.work(), 1e-12);
        assertEquals(0.17 * need.maintenance(), need.activity(), 1e-12);
    }

    @Test
    void an_animal_that_does_not_gain_spends_nothing_on_growth() {
        assertEquals(0, EnergyNeed.of(northAmerican(), lactating(0)).growth(), 0.0);
    }

    /** Property: feed that is easier to digest is eaten less and gives less methane, other things equal. */
    @Test
    void better_feed_means_less_methane() {
        double last = Double.POSITIVE_INFINITY;
        for (double digestibility = 45; digestibility <= 85; digestibility += 2.5) {
            double gross = EnergyNeed.of(cow(500, 10, 4, 0.8, digestibility), lactating(0))
                    .gross();
            assertTrue(gross < last, "at " + digestibility + " %: " + gross);
            last = gross;
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void an_invalid_weight_is_refused(double weight) {
        assertThrows(IllegalArgumentException.class, () -> cow(weight, 10, 4, 0.5, 60));
    }

    @ParameterizedTest
    @ValueSource(doubles = {39.9, 90.1, Double.NaN})
    void a_digestibility_beyond_any_feed_is_refused(double digestibility) {
        assertThrows(IllegalArgumentException.class, () -> cow(500, 10, 4, 0.5, digestibility));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void a_share_of_pregnant_cows_outside_0_to_1_is_refused(double pregnant) {
        assertThrows(IllegalArgumentException.class, () -> cow(500, 10, 4, pregnant, 60));
    }

    @Test
    void a_growing_animal_needs_a_mature_weight() {
        assertThrows(IllegalArgumentException.class, () -> new Animal(300, 0, 0.5, 0, 0, 0, 0, 60));
    }

    /**
     * The whole chain of a steer in a stall, equations 10.3 to 10.16 by hand: 0.322 x 300^0.75 = 23.2112 MJ for maintenance, 11.6642 for
     * growth; at 65 % digestibility REM is 1.123 - 0.26598 + 0.0475735 - 0.3907692 = 0.5138243 and REG is 1.164 - 0.3354 + 0.055263 -
     * 0.5753846 = 0.3084784; (23.2112 / 0.5138243 + 11.6642 / 0.3084784) / 0.65 = 127.67 MJ.
     */
    @Test
    void gross_energy_of_a_growing_steer_by_hand() {
        Animal steer = new Animal(300, 600, 0.9, 0, 0, 0, 0, 65);
        EnergyNeed need = EnergyNeed.of(steer, new Coefficients(0.322, 0, 1.0, 0.10));

        assertEquals(23.2112, need.maintenance(), 0.0005);
        assertEquals(0.5138243, need.forMaintenance(), 1e-7);
        assertEquals(0.3084784, need.forGrowth(), 1e-7);
        assertEquals(127.67, need.gross(), 0.01);
    }

    /** All that an animal does is covered by feed: milk, a calf, a way to walk and work each add to its gross energy by REM. */
    @Test
    void all_energy_needs_but_growth_are_met_at_the_same_efficiency() {
        Coefficients grazing = new Coefficients(0.386, 0.36, 0.8, 0.10);
        EnergyNeed need = EnergyNeed.of(new Animal(400, 400, 0, 8, 4, 0.5, 3, 60), grazing);
        double all = need.maintenance() + need.activity() + need.lactation() + need.work() + need.pregnancy();

        assertEquals(0.36 * need.maintenance(), need.activity(), 1e-12, "table 10.5, grazing large areas");
        assertEquals(0.3 * need.maintenance(), need.work(), 1e-12, "equation 10.11, three hours");
        assertEquals(0.05 * need.maintenance(), need.pregnancy(), 1e-12, "equation 10.13, half of the cows");
        assertEquals(all, need.gross() * 0.60 * need.forMaintenance(), 1e-9);
    }

    /** Equation 10.6: bulls put on leaner gain than castrates, and these leaner than heifers, which needs less energy per kg. */
    @Test
    void a_heifer_needs_more_energy_for_the_same_gain_than_a_bull() {
        Animal young = new Animal(300, 600, 0.9, 0, 0, 0, 0, 65);
        double heifer =
                EnergyNeed.of(young, new Coefficients(0.322, 0, 0.8, 0.10)).growth();
        double bull =
                EnergyNeed.of(young, new Coefficients(0.322, 0, 1.2, 0.10)).growth();

        assertEquals(Math.pow(1.2 / 0.8, 0.75), heifer / bull, 1e-12);
    }

    /** The limits of each range are real animals: no milk, all pregnant, a whole day at work, feed at 40 or 90 %. */
    @Test
    void the_ends_of_the_ranges_are_within_them() {
        new Animal(0.1, 0, 0, 0, 0, 0, 0, 40);
        new Animal(900, 900, 0, 60, 15, 1, 24, 90);
    }

    @ParameterizedTest
    @CsvSource({
        "-1, 0, 0, 0, 0, mature weight is -1.0; it must be 0 kg or more",
        "500, -0.1, 0, 0, 0, gain is -0.1; it must be 0 kg a day or more",
        "0, 0.5, 0, 0, 0, mature weight of a growing animal is 0.0; it must be above 0 kg",
        "500, 0, -2, 0, 0, milk is -2.0; it must be 0 kg a day or more",
        "500, 0, 10, -1, 0, fat is -1.0; it must be 0 to 15 percent",
        "500, 0, 10, 15.1, 0, fat is 15.1; it must be 0 to 15 percent",
        "500, 0, 10, 4, -1, 'work is -1.0; it must be 0 to 24 hours a day'",
        "500, 0, 10, 4, 24.5, 'work is 24.5; it must be 0 to 24 hours a day'",
        "NaN, 0, 10, 4, 0, mature weight is NaN; it must be 0 kg or more"
    })
    void an_animal_that_cannot_be_is_refused_by_the_name_of_what_is_wrong(
            double mature, double gain, double milk, double fat, double work, String refusal) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> new Animal(500, mature, gain, milk, fat, 0.5, work, 60));

        assertEquals(refusal, refused.getMessage());
    }
}
