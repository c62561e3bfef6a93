package org.scalepan.factors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;

/** kg CO2e per kg of gas, as the IPCC assessment reports print them. */
class WarmingSetTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static WarmingSet set(String id) {
        return LIBRARY.warmingSets().get(id);
    }

    /**
     * SAR Table 2.9; TAR Table 6.7; AR4 Table 2.14; AR5 Tables 8.7 and 8.A.1; AR6 WG1 Table 7.15. Before AR6 (AR5: but for the
     * oxidation of fossil methane) a report prints one methane value.
     */
    @ParameterizedTest
    @CsvSource({
        "sar-100,          21,   21,   310",
        "tar-100,          23,   23,   296",
        "ar4-100,          25,   25,   298",
        "ar5-100,          28,   30,   265",
        "ar5-100-feedback, 34,   36,   298",
        "ar6-100,          27.0, 29.8, 273"
    })
    void one_kilogram_of_each_gas_over_100_years(String id, double biogenic, double fossil, double n2o) {
        assertEquals(biogenic, set(id).co2e(Map.of(Gas.CH4_BIOGENIC, 1.0)), 1e-9, "kg CO2e per kg biogenic CH4");
        assertEquals(fossil, set(id).co2e(Map.of(Gas.CH4_FOSSIL, 1.0)), 1e-9, "kg CO2e per kg fossil CH4");
        assertEquals(n2o, set(id).co2e(Map.of(Gas.N2O, 1.0)), 1e-9, "kg CO2e per kg N2O");
        assertEquals(1, set(id).co2e(Map.of(Gas.CO2, 1.0)), 1e-9, "kg CO2e per kg CO2");
    }

    /** Oonincx et al. 2010 give 114 g CH4 per kg gain of cattle, printed there as 2 850 g CO2e under AR4. */
    @ParameterizedTest
    @CsvSource({"ar4-100, 2850", "ar6-100, 3078"})
    void the_methane_of_growing_cattle_in_grams_per_kilogram_of_gain(String id, double grams) {
        assertEquals(grams, set(id).co2e(Map.of(Gas.CH4_BIOGENIC, 114.0)), 1e-9, "g CO2e per kg gain");
    }

    @Test
    void gases_add_up() {
        Map<Gas, Double> masses =
                new EnumMap<>(Map.of(Gas.CO2, 10.0, Gas.CH4_BIOGENIC, 0.5, Gas.CH4_FOSSIL, 0.1, Gas.N2O, 0.02));
        // By hand under AR6: 10 + 0.5 x 27.0 + 0.1 x 29.8 + 0.02 x 273 = 31.94
        assertEquals(31.94, set("ar6-100").co2e(masses), 1e-9, "kg CO2e");
    }

    @Test
    void no_gas_is_no_warming() {
        assertEquals(0, set("ar6-100").co2e(Map.of()), "kg CO2e");
    }

    @Test
    void the_set_of_a_question_that_names_none_is_the_latest_over_100_years() {
        assertEquals("ar6-100", LIBRARY.defaultWarmingSet().id());
    }

    @Test
    void in_every_set_methane_and_nitrous_oxide_are_above_carbon_dioxide_which_is_1() {
        for (WarmingSet set : LIBRARY.warmingSets().values()) {
            assertEquals(1, set.potential(Gas.CO2), set.id());
            assertTrue(set.potential(Gas.CH4_BIOGENIC) > 1, set.id());
            assertTrue(set.potential(Gas.CH4_FOSSIL) >= set.potential(Gas.CH4_BIOGENIC), set.id());
            assertTrue(set.potential(Gas.N2O) > set.potential(Gas.CH4_BIOGENIC), set.id());
        }
    }
}
