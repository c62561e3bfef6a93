package org.scalepan.production.insects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.Fed;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.production.Inventory;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.Tally;
import org.scalepan.production.insects.InsectFarm.CoProductRule;
import org.scalepan.production.insects.InsectFarm.Fate;

/** From the records of an insect farm to the lines of its inventory. */
class InsectInventoryTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final double TO_N2O = 44.0 / 28.0;

    private static InsectRecordsFixture farm(String product, double kilograms) {
        return InsectRecordsFixture.of(LIBRARY, product, kilograms);
    }

    /** A thousand kg of mealworms on three tonnes of bran with 10 % water. */
    private static InsectRecordsFixture mealworms() {
        return farm("mealworm", 1000).feed(Fed.of("wheat-bran", 3000).moisture(0.10));
    }

    @Test
    void three_ways_to_count_one_harvest_give_one_inventory() {
        Inventory weighed = farm("palm-weevil", 1200).feed("maize", 3000).inventory();
        Inventory contained = farm("palm-weevil", 1)
                .harvest(new Harvest.ByContainer(40, 2.5, 12))
                .feed("maize", 3000)
                .inventory();
        Inventory counted = farm("palm-weevil", 1)
                .harvest(new Harvest.ByNumber(198_000, 165))
                .feed("maize", 3000)
                .inventory();

        assertEquals(1200, weighed.output().amount(), 1e-9);
        assertEquals(weighed.output(), contained.output());
        assertEquals(weighed.output(), counted.output());
        assertEquals(weighed.flows(), contained.flows());
        assertEquals(weighed.flows(), counted.flows());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void a_harvest_of_nothing_is_refused_in_any_way_of_counting(double wrong) {
        assertThrows(IllegalArgumentException.class, () -> new Harvest.Weighed(wrong));
        assertThrows(IllegalArgumentException.class, () -> new Harvest.ByContainer(wrong, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Harvest.ByContainer(1, wrong, 1));
        assertThrows(IllegalArgumentException.class, () -> new Harvest.ByContainer(1, 1, wrong));
        assertThrows(IllegalArgumentException.class, () -> new Harvest.ByNumber(wrong, 1));
        assertThrows(IllegalArgumentException.class, () -> new Harvest.ByNumber(1, wrong));
    }

    @Test
    void the_share_for_breeding_is_not_sold() {
        assertEquals(950, mealworms().keptForBreeding(0.05).inventory().output().amount(), 1e-9);
    }

    /**
     * Nitrogen balance: what the larvae do not retain is in the frass. Bran holds 17.403 % protein of dry matter (NASEM 2021), mealworms
     * 18.7 % fresh (Finke 2002), both N x 6.25: 2 700 x 0.17403 / 6.25 - 1 000 x 0.187 / 6.25 = 45.261 kg N.
     */
    @Test
    void nitrogen_of_the_frass_is_that_of_the_feed_less_that_of_the_larvae() {
        Inventory inventory = mealworms().inventory();
        double nitrogen = Tally.yearly(inventory, "frass, stored", Flux.N2O) / TO_N2O / 0.01;

        assertEquals(
                2700 * 0.17403 / 6.25 - 1000 * 0.187 / 6.25, nitrogen, 0.005, "kg N at EF3 0.01 (2019, table 10.21)");
        assertTrue(Tally.gaps(inventory).contains("frass"), inventory::toString);
    }

    /** Bran beside peel of unknown nitrogen: that of the bran is counted, and the peel's is named as not counted. */
    @Test
    void nitrogen_that_is_not_known_does_not_hide_the_nitrogen_that_is() {
        Inventory alone = mealworms().inventory();
        Inventory both =
                mealworms().feed(Fed.of("cassava-peel", 500).moisture(0.7)).inventory();

        assertEquals(
                Tally.yearly(alone, "frass, stored", Flux.N2O), Tally.yearly(both, "frass, stored", Flux.N2O), 0.0);
        assertTrue(
                both.gaps().stream()
                        .anyMatch(gap -> gap.filledWith().contains("not counted: the nitrogen of cassava-peel")),
                both::toString);
    }

    /** Maize alone holds less nitrogen than the larvae; that of the peel is not known, so that no balance can be computed. */
    @Test
    void larvae_may_have_their_nitrogen_from_feed_that_is_not_known() {
        Inventory inventory = farm("mealworm", 1000)
                .feed(Fed.of("maize", 2000).moisture(0.13))
                .feed(Fed.of("cassava-peel", 5000).moisture(0.7))
                .inventory();

        assertEquals(List.of(), Tally.remarks(inventory, Remark.AGAINST_PHYSICS));
        assertEquals(0, Tally.yearly(inventory, flow -> flow.stage() == Stage.MANURE), 0.0);
    }

    /** IPCC 2019, tables 11.1 and 11.3: EF1 0.01 of the N spread; 50 kg of frass with 3 % N are 1.5 kg N. */
    @Test
    void weighed_frass_is_used_as_weighed() {
        Inventory inventory = mealworms().frass(50, 0.03, Fate.SPREAD, false).inventory();

        assertEquals(1.5 * 0.01 * TO_N2O, Tally.yearly(inventory, "frass, spread", Flux.N2O), 1e-9);
        assertEquals(0, Tally.yearly(inventory, "frass, stored", Flux.N2O), 0.0);
        assertTrue(Tally.yearly(inventory, "frass, leached", Flux.N2O) > 0);
        assertTrue(Tally.gaps(inventory).contains("frass/climate"));
    }

    @Test
    void no_frass_is_no_frass_and_no_sign_of_missing_feed() {
        Inventory inventory = mealworms().frass(0, 0.03, Fate.STORED, false).inventory();

        assertEquals(0, Tally.yearly(inventory, flow -> flow.stage() == Stage.MANURE), 0.0);
        assertEquals(List.of(), Tally.remarks(inventory, Remark.AGAINST_PHYSICS));
    }

    @Test
    void larvae_cannot_hold_more_nitrogen_than_they_ate() {
        Inventory inventory = farm("mealworm", 1000)
                .feed(Fed.of("maize", 2000).moisture(0.13))
                .inventory();

        // 1 740 kg dry x 8.514 % / 6.25 = 23.7 kg N eaten, 29.9 kg N harvested.
        assertEquals(1, Tally.remarks(inventory, Remark.AGAINST_PHYSICS).size(), inventory::toString);
        assertTrue(Tally.remarks(inventory, Remark.AGAINST_PHYSICS)
                .get(0)
                .startsWith("more nitrogen comes out than goes in"));
        assertEquals(0, Tally.yearly(inventory, flow -> flow.stage() == Stage.MANURE), 0.0);
    }

    /** Mealworms hold 38.1 % dry matter (Finke 2002): 381 kg in a tonne, 1.10 times what 346 kg hold. */
    @ParameterizedTest
    @CsvSource({"380, true", "390, false"})
    void feed_cannot_hold_less_dry_matter_than_the_harvest(double bran, boolean flagged) {
        Inventory inventory = farm("mealworm", 1000)
                .feed(Fed.of("wheat-bran", bran).moisture(0.10))
                .inventory();

        assertEquals(
                flagged,
                Tally.remarks(inventory, Remark.AGAINST_PHYSICS).stream()
                        .anyMatch(text -> text.startsWith("more dry matter")),
                inventory::toString);
    }

    /** Oonincx et al. 2010: 7.58 g CO2e per kg of mealworm gained (AR4); animals that die have grown too. */
    @Test
    void gases_of_the_larvae_count_for_all_that_grew() {
        Inventory alive = mealworms().inventory();
        Inventory half = mealworms().mortality(0.5).inventory();
        double gases = Tally.yearly(alive, "gases of the larvae", Flux.CO2E);

        assertEquals(7.58, gases, 0.5, "kg CO2e; the middle of a skewed distribution with that mean");
        assertEquals(2 * gases, Tally.yearly(half, "gases of the larvae", Flux.CO2E), 1e-9);
        assertTrue(Tally.gaps(alive).contains("mortality"));
        assertFalse(Tally.gaps(half).contains("mortality"));
    }

    /** Oonincx et al. 2010: from 1.57 g (house cricket) to 121.86 g (sun beetle) per kg gained. */
    @Test
    void unmeasured_gases_range_over_the_insects_measured() {
        Inventory inventory = farm("palm-weevil", 1).feed("maize", 3).inventory();
        Flow gases = inventory.flows().stream()
                .filter(flow -> flow.what().equals("gases of the larvae"))
                .findFirst()
                .orElseThrow();
        double[] draws = new double[20_000];
        gases.term().addTo(draws, 1, new CommonRandomNumbers(1, draws.length));

        for (double draw : draws) {
            assertTrue(draw >= 0.00157 - 1e-12 && draw <= 0.12186 + 1e-12, "kg CO2e: " + draw);
        }
        assertTrue(Tally.gaps(inventory).contains("direct gases of palm-weevil"));
    }

    /** Parodi et al. 2020 count 16.8 g CO2e per kg of dry larvae of the black soldier fly, 38.8 % dry (as the library's sample). */
    @Test
    void gases_measured_per_dry_matter_are_counted_on_dry_matter() {
        Inventory inventory =
                farm("black-soldier-fly", 1000).feed("wheat-bran", 3000).inventory();

        assertEquals(1000 * 0.388 * 0.0168, Tally.yearly(inventory, "gases of the larvae", Flux.CO2E), 0.9);
    }

    static Stream<Arguments> coProducts() {
        // 900 kg of larvae at 8 a kg, 300 kg of oil at 4 and 1 800 kg of frass at 0.5: 7 200, 1 200 and 900.
        return Stream.of(
                Arguments.of(CoProductRule.NONE, 1.0),
                Arguments.of(CoProductRule.MASS, 900.0 / (900 + 300 + 1800)),
                Arguments.of(CoProductRule.ECONOMIC, 7200.0 / (7200 + 1200 + 900)));
    }

    @ParameterizedTest
    @MethodSource("coProducts")
    void co_products_are_allocated_by_the_rule_asked_for(CoProductRule rule, double share) {
        InsectRecordsFixture alone = farm("mealworm", 900).feed("wheat-bran", 3000);
        Inventory inventory = farm("mealworm", 900)
                .feed("wheat-bran", 3000)
                .coProduct("oil", 300, 4)
                .coProduct("frass", 1800, 0.5)
                .allocate(rule, 8)
                .inventory();

        assertEquals(share, inventory.output().share(), 1e-12);
        assertEquals(
                share * Tally.of(LIBRARY, alone.inventory()).value(),
                Tally.of(LIBRARY, inventory).value(),
                1e-12);
        assertEquals(
                rule == CoProductRule.NONE,
                Tally.remarks(inventory, Remark.METHOD)
                        .contains("co-products carry no burden; all rests on the product"));
    }

    /** Water boils off for no less than 2.257 MJ per kg, and heated from 25 degrees for 2.57 MJ (physical constants). */
    @ParameterizedTest
    @CsvSource({"drying, 2.257", "blanching, 0.31", "freezing, 0.47"})
    void no_step_takes_less_heat_than_thermodynamics_requires(String step, double floor) {
        Inventory inventory = farm("mealworm", 1000)
                .feed("wheat-bran", 3000)
                .sold("dried", 400)
                .process(step, 600, "natural-gas")
                .inventory();
        Flow heat = inventory.flows().stream()
                .filter(flow -> flow.stage() == Stage.PROCESSING && flow.flux() == Flux.ENERGY_ON_FARM)
                .findFirst()
                .orElseThrow();
        double[] draws = new double[10_000];
        heat.term().addTo(draws, 1.0 / 600, new CommonRandomNumbers(1, draws.length));
        double least = java.util.Arrays.stream(draws).min().orElseThrow();

        if (step.equals("drying")) {
            assertTrue(least >= floor, "MJ per kg of water: " + least);
        } else {
            // The physical minimum is used, and the answer says so.
            assertEquals(floor, heat.term().central() / 600, 0.01, "MJ per kg");
            assertTrue(Tally.gaps(inventory).contains("processing/" + step + "/energy"));
        }
    }

    @Test
    void processing_counts_beyond_the_farm_gate_only() {
        Inventory raw = farm("mealworm", 1000)
                .feed("wheat-bran", 3000)
                .sold("dried", 400)
                .inventory();
        Inventory dried = farm("mealworm", 1000)
                .feed("wheat-bran", 3000)
                .sold("dried", 400)
                .process("drying", 600, "natural-gas")
                .energyForProcessing("grid-electricity", 50)
                .inventory();

        assertEquals(Tally.of(LIBRARY, raw).value(), Tally.of(LIBRARY, dried).value(), 1e-12, "at the farm gate");
        assertTrue(Tally.of(LIBRARY, dried).at("processing-gate").value()
                > 1.1 * Tally.of(LIBRARY, raw).at("processing-gate").value());
        assertEquals(FunctionalUnit.KG_PRODUCT, dried.output().per());
        assertEquals(400, dried.output().amount(), 0.0);
    }

    /** Records with a harvest, one feed and one meter: every other field is open, and each is named. */
    @Test
    void three_fields_are_enough_and_every_gap_is_named() {
        Inventory inventory = farm("palm-weevil", 500)
                .feed("wheat-bran", 2000)
                .energy("grid-electricity", 100)
                .inventory();

        assertEquals(
                List.of(
                        "feed/wheat-bran/moisture",
                        "feed/wheat-bran/land-use change",
                        "feed/wheat-bran/burden",
                        "feed/energy",
                        "feed/water",
                        "year",
                        "region",
                        "region",
                        "energy/grid-electricity/primary",
                        "water_m3",
                        "building_m2, yard_m2",
                        "transport",
                        "materials",
                        "mortality",
                        "direct gases of palm-weevil",
                        "frass",
                        "processing",
                        "kept_for_breeding",
                        "sold_kg",
                        "co_products"),
                Tally.gaps(inventory));
        assertTrue(Tally.of(LIBRARY, inventory).per(FunctionalUnit.KG_PROTEIN).value() > 0);
    }

    /** Oonincx et al. 2010 measured five insects per kg gained, under AR4; beef and pork of the same study are no insects. */
    @Test
    void unmeasured_gases_range_from_the_lowest_to_the_highest_insect_and_name_all_of_them() {
        Inventory inventory = farm("palm-weevil", 1).feed("maize", 3).inventory();
        Gap gap = gap(inventory, "direct gases of palm-weevil");
        Flow gases = line(inventory, "gases of the larvae");
        double[] draws = new double[20_000];
        gases.term().addTo(draws, 1, new CommonRandomNumbers(1, draws.length));

        assertEquals(
                "never measured; anything between the lowest and the highest insect measured, 0.0016 to 0.122 kg CO2e per kg"
                        + " gained",
                gap.filledWith());
        assertEquals(
                Set.of(
                        "oonincx-2010.house-cricket.ghg.kg-live",
                        "oonincx-2010.mealworm.ghg.kg-live",
                        "oonincx-2010.migratory-locust.ghg.kg-live",
                        "oonincx-2010.cockroach.ghg.kg-live",
                        "oonincx-2010.sun-beetle.ghg.kg-live"),
                Set.copyOf(gap.rows()));
        assertEquals(Set.copyOf(gap.rows()), Set.copyOf(gases.rows()));
        assertEquals(0.00157, Arrays.stream(draws).min().orElseThrow(), 1e-5);
        assertEquals(0.12186, Arrays.stream(draws).max().orElseThrow(), 1e-3);
    }

    @Test
    void gases_of_larvae_stay_under_the_warming_set_of_their_source() {
        Flow gases = line(mealworms().inventory(), "gases of the larvae");

        assertEquals(List.of("oonincx-2010.mealworm.ghg.kg-live"), gases.rows());
        assertEquals(
                LIBRARY.results().stream()
                        .filter(result -> result.id().equals("oonincx-2010.mealworm.ghg.kg-live"))
                        .findFirst()
                        .orElseThrow()
                        .gwp(),
                gases.warmingSet());
    }

    /** All that grew is counted, the dead too: a harvest of 1 000 kg after 20 % died is a gain of 1 250 kg. */
    @Test
    void the_gain_is_the_harvest_and_what_died_before() {
        assertEquals(
                Tally.yearly(farm("mealworm", 1250).inventory(), "gases of the larvae", Flux.CO2E),
                Tally.yearly(farm("mealworm", 1000).mortality(0.2).inventory(), "gases of the larvae", Flux.CO2E),
                1e-9);
    }

    /** 600 kg of water at 1.2 kWh each are 720 kWh or 2 592 MJ; what was measured is no gap. */
    @Test
    void a_dryer_that_was_metered_counts_as_metered() {
        Inventory inventory = mealworms()
                .sold("dried", 400)
                .process("blanching", 600, "natural-gas", 1.2)
                .inventory();

        assertEquals(2592, heat(inventory), 1e-9, "MJ");
        assertFalse(Tally.gaps(inventory).contains("processing/blanching/energy"));
    }

    private static double heat(Inventory inventory) {
        return Tally.yearly(inventory, flow -> flow.stage() == Stage.PROCESSING && flow.flux() == Flux.ENERGY_ON_FARM);
    }

    /** Nwakuba et al. 2016: dryers take 4.22 to 24.99 MJ per kg of water; that is measured use and not a minimum. */
    @Test
    void drying_uses_the_range_of_measured_dryers() {
        Inventory inventory = mealworms()
                .sold("dried", 400)
                .process("drying", 600, "natural-gas")
                .inventory();

        assertEquals(600 * Math.sqrt(4.22 * 24.99), heat(inventory), 1e-6, "the middle on the logarithm");
        assertFalse(Tally.gaps(inventory).contains("processing/drying/energy"));
    }

    @Test
    void a_step_of_which_no_energy_is_known_is_not_counted_and_reported() {
        Inventory inventory = mealworms()
                .sold("meal", 400)
                .process("milling", 400, "grid-electricity")
                .inventory();

        assertEquals(0, heat(inventory), 0.0);
        assertEquals(
                "not counted: no energy demand in this library",
                gap(inventory, "processing/milling").filledWith());
    }

    @Test
    void a_physical_minimum_in_place_of_a_measured_use_is_reported_with_its_row() {
        Inventory inventory = mealworms()
                .sold("frozen", 900)
                .process("freezing", 600, "grid-electricity")
                .inventory();

        assertEquals(
                List.of("physics.freezing.heat-floor"),
                gap(inventory, "processing/freezing/energy").rows());
    }

    @Test
    void sold_weight_is_not_reduced_by_breeding() {
        Inventory inventory =
                mealworms().keptForBreeding(0.05).sold("dried", 400).inventory();

        assertEquals(400, inventory.output().amount(), 0.0);
        assertEquals("dried", inventory.output().form());
        assertFalse(Tally.gaps(inventory).contains("kept_for_breeding"));
        assertTrue(Tally.gaps(mealworms().inventory()).contains("kept_for_breeding"));
    }

    @ParameterizedTest
    @CsvSource({"NONE, none", "MASS, mass", "ECONOMIC, economic"})
    void the_allocation_rule_is_named(CoProductRule rule, String named) {
        assertEquals(
                named,
                mealworms()
                        .coProduct("oil", 300, 4)
                        .allocate(rule, 8)
                        .inventory()
                        .output()
                        .allocation());
    }

    @Test
    void a_farm_with_one_product_gets_no_remark_on_co_products() {
        assertTrue(Tally.remarks(mealworms().inventory(), Remark.METHOD).stream()
                .noneMatch(text -> text.contains("co-products")));
    }

    private static Gap gap(Inventory inventory, String field) {
        return inventory.gaps().stream()
                .filter(gap -> gap.field().equals(field))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no gap " + field + " among " + inventory.gaps()));
    }

    private static Flow line(Inventory inventory, String what) {
        return inventory.flows().stream()
                .filter(flow -> flow.what().equals(what))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + what + " among " + inventory.flows()));
    }

    /** Of palm pith the library knows no dry matter, so that mass balance cannot be checked, but usual practice can. */
    @ParameterizedTest
    @CsvSource({"999, true", "1000, false"})
    void less_feed_than_harvest_is_odd_where_the_dry_matter_of_the_feed_is_not_known(double pith, boolean flagged) {
        Inventory inventory = farm("mealworm", 1000)
                .feed("palm-pith", pith - 10)
                .feed(Fed.of("wheat-bran", 10).moisture(0.10))
                .inventory();

        assertEquals(
                flagged,
                Tally.remarks(inventory, Remark.UNUSUAL).stream()
                        .anyMatch(text -> text.startsWith("less feed as fed than live harvest")));
        assertEquals(List.of(), Tally.remarks(inventory, Remark.AGAINST_PHYSICS));
    }

    @Test
    void economic_allocation_needs_a_price_of_every_product() {
        FarmRecords.CoProduct oil = new FarmRecords.CoProduct("oil", RecordedNumber.of(30), RecordedNumber.known(2));
        FarmRecords.CoProduct frass = new FarmRecords.CoProduct("frass", RecordedNumber.of(400), Optional.empty());
        Optional<RecordedNumber> price = RecordedNumber.known(5);

        assertTrue(CoProductRule.ECONOMIC.obstacle(price, List.of(oil)).isEmpty());
        assertTrue(CoProductRule.MASS.obstacle(Optional.empty(), List.of(frass)).isEmpty());
        assertEquals(
                "co_product_allocation",
                CoProductRule.ECONOMIC
                        .obstacle(price, List.of(oil, frass))
                        .orElseThrow()
                        .field());
        assertTrue(
                CoProductRule.ECONOMIC.obstacle(Optional.empty(), List.of(oil)).isPresent());
        assertTrue(CoProductRule.ECONOMIC
                .obstacle(RecordedNumber.known(0), List.of(oil))
                .isPresent());
    }
}
