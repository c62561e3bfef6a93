package org.scalepan.production.herd;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.production.IpccTables;
import org.scalepan.production.IpccTables.Where;

/** Volatile solids, nitrogen and manure methane of IPCC volume 4, chapter 10, from the tables of the library. */
class ManureTest {
    private static final IpccTables REFINEMENT = IpccTables.of(Libraries.bundled(), "2019");

    private static double cell(String quantity, Where where) {
        return REFINEMENT.find(quantity, where).orElseThrow().printed().value().orElseThrow();
    }

    /** Gross energy 304.63 MJ of the dairy cow of Western Europe; 8.4 kg per 1 000 kg and day printed in table 10.13A (2019). */
    @Test
    void volatile_solids_of_the_western_european_cow() {
        double perDay = Methane.volatileSolids(304.63, 71, 0.04, 0.08);

        assertEquals(5.0127, perDay, 0.0001, "kg a day");
        assertEquals(8.355, perDay / 600 * 1000, 0.0005, "kg per 1 000 kg and day");
        assertEquals(8.4, perDay / 600 * 1000, 0.05, "as printed");
        assertEquals(8.4, cell("vs-rate", Where.of("dairy-cattle").in("ipcc.western-europe", "mean")), 0.0);
    }

    /** The test of an open research package: 200 MJ, 65 %, 8 % ash give 3.889431 kg a day. */
    @Test
    void urinary_energy_is_a_share_of_gross_and_not_of_digestible_energy() {
        double right = Methane.volatileSolids(200, 65, 0.04, 0.08);

        assertEquals(3.889431, right, 1e-6);
        assertNotEquals(3.7503, right, 0.01, "what a share of digestible energy would give");
    }

    /** Rates and masses of 2019, tables 10.19 and 10A.5; the products as a second source prints them. */
    @ParameterizedTest
    @CsvSource({
        "ipcc.north-america,      0.59, 650, 140",
        "ipcc.western-europe,     0.54, 600, 118",
        "ipcc.eastern-europe,     0.42, 550,  84",
        "ipcc.oceania,            0.72, 488, 128",
        "ipcc.latin-america,      0.39, 508,  72",
        "ipcc.asia,               0.44, 386,  62",
        "ipcc.africa,             0.44, 260,  42",
        "ipcc.middle-east,        0.50, 349,  64",
        "ipcc.indian-subcontinent,0.65, 285,  68"
    })
    void a_dairy_cow_excretes_the_nitrogen_printed_for_its_region(
            String region, double rate, double mass, double printed) {
        Where cow = Where.of("dairy-cattle").in(region, "mean");

        assertEquals(rate, cell("n-excretion-rate", cow), 0.0, "kg N per 1 000 kg and day");
        assertEquals(mass, cell("typical-mass", cow), 0.0, "kg");
        assertEquals(printed, Nitrogen.excreted(rate, mass), 0.5, "kg N per head and year");
    }

    /** 2019, table 10.14: 0.6 g CH4 per kg volatile solids on pasture, MCF 0.47 % (table 10.17) and Bo 0.19 (table 10.16). */
    @Test
    void manure_on_pasture_gives_six_tenths_of_a_gram_per_kg_of_solids() {
        Where pasture = Where.of("all-animals").manure("mms.pasture", "any-climate");
        double grams = 1000 * Methane.ofManure(cell("bo", pasture), 100 * cell("mcf", pasture));

        assertEquals(0.598, grams, 0.0005);
        assertEquals(0.6, grams, 0.05, "as printed");
    }

    /**
     * Dairy solid storage, 2019, table 10.14. The mean of high and low productivity (Bo 0.24 and 0.13, table 10.16) unrounded, and as
     * printed, where each was rounded to a tenth first.
     */
    @ParameterizedTest
    @CsvSource({"cool, 2, 2.479, 2.45", "temperate, 4, 4.958, 4.95", "warm, 5, 6.198, 6.2"})
    void solid_storage_of_dairy_manure(String climate, double mcf, double unrounded, double printed) {
        Where storage = Where.of("dairy-cattle").manure("mms.solid-storage", climate);
        double high = 1000 * Methane.ofManure(bo("high"), 100 * cell("mcf", storage));
        double low = 1000 * Methane.ofManure(bo("low"), 100 * cell("mcf", storage));

        assertEquals(mcf, 100 * cell("mcf", storage), 1e-12, "percent");
        assertEquals(unrounded, (high + low) / 2, 0.0005, "g CH4 per kg volatile solids");
        assertEquals(printed, (tenth(high) + tenth(low)) / 2, 1e-9);
        assertEquals(printed, cell("manure-ch4-ef", storage), 1e-9);
    }

    private static double bo(String productivity) {
        return cell("bo", Where.of("dairy-cattle").in("ipcc.other-regions", productivity));
    }

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    /** The test of an open research package: half at 1.5 %, 30 % at 4, 15 % at 35 and 5 % at 0.5 make 7.225 %. */
    @Test
    void manure_in_several_systems_is_manure_at_their_mean_conversion() {
        double bo = 0.24;
        double apart = 0.50 * Methane.ofManure(bo, 1.5)
                + 0.30 * Methane.ofManure(bo, 4.0)
                + 0.15 * Methane.ofManure(bo, 35.0)
                + 0.05 * Methane.ofManure(bo, 0.5);

        assertEquals(Methane.ofManure(bo, 7.225), apart, 1e-12);
        assertEquals(0.07225 * 0.24 * 0.67, apart, 1e-12, "kg CH4 per kg volatile solids");
    }

    /** Equation 10.32 by hand: 304.63 / 18.45 x 0.16 / 6.25 = 0.42269 kg N a day. */
    @Test
    void nitrogen_eaten_by_hand() {
        assertEquals(0.42269, Nitrogen.intake(304.63, 16), 0.00001);
    }

    /** Equation 10.33 by hand: 20.3 x 0.0358 / 6.38 = 0.113909 in milk; 0.9 x (268 - 7.03 x 11.66 / 0.9) / 6250 = 0.025477 in gain. */
    @Test
    void nitrogen_retained_by_hand() {
        assertEquals(0.113909, Nitrogen.retained(20.3, 3.58, 0, 0), 0.000001);
        assertEquals(0.025477, Nitrogen.retained(0, 0, 0.9, 11.66), 0.000001);
    }
}
