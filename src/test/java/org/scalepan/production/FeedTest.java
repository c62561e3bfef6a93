package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords.Burden;

/** A farm's feed: mass, dry matter, and upstream burden. */
class FeedTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static InsectRecordsFixture fed(Fed fed) {
        return InsectRecordsFixture.of(LIBRARY, "mealworm", 100).feed(fed);
    }

    private static double ghg(Inventory inventory) {
        return Tally.yearly(inventory, flow -> flow.stage() == Stage.FEED && flow.flux() == Flux.CO2E);
    }

    /** FAOSTAT 2018: maize in Ghana 1.9474 t/ha, cassava in Nigeria 8.6789 t/ha, soybeans in Brazil 3.3903 t/ha; m2·yr = 10 / yield. */
    @ParameterizedTest
    @CsvSource({
        "maize, ghana, 2.4815",
        "cassava-root, nigeria, 6.5823",
        "soybean, brazil, 3.2495",
        // Of Ethiopia no yield of cassava is held: Eastern Africa's serves.
        "cassava-root, ethiopia, 8.1770"
    })
    void land_of_a_crop_is_ten_over_its_yield(String crop, String place, double tonnesPerHectare) {
        Inventory inventory = fed(Fed.of(crop, 250)).in(place).inventory();

        assertEquals(250 * 10 / tonnesPerHectare, Tally.yearly(inventory, crop, Flux.LAND), 1e-9, "m2·yr");
    }

    /** Bran carries land by mass, as the grain does: 10 / 3.5266 t/ha of wheat in the world (FAOSTAT, mean of 2018 to 2022). */
    @Test
    void land_is_allocated_to_bran() {
        Inventory inventory = fed(Fed.of("wheat-bran", 100)).inventory();

        assertEquals(
                100 * 10 / 3.5266, Tally.yearly(inventory, "wheat-bran", Flux.LAND), 0.5, "m2·yr, printed 2.84 per kg");
    }

    /** Adom et al. 2012: 0.39 kg CO2e per kg of maize dry matter. */
    @Test
    void a_footprint_per_dry_matter_counts_the_dry_matter() {
        Inventory dry = fed(Fed.of("maize", 100).moisture(0.12)).inventory();
        Inventory wet = fed(Fed.of("maize", 100).moisture(0.30)).inventory();

        assertEquals(100 * 0.88 * 0.39, ghg(dry), 1e-9);
        assertEquals(100 * 0.70 * 0.39, ghg(wet), 1e-9);
    }

    @Test
    void recorded_moisture_is_used_and_missing_moisture_is_a_gap() {
        Inventory given = fed(Fed.of("wheat-bran", 100).moisture(0.10)).inventory();
        Inventory open = fed(Fed.of("wheat-bran", 100)).inventory();

        assertEquals(90, Tally.yearly(given, Flux.FEED_DRY_MATTER), 1e-12);
        assertFalse(Tally.gaps(given).contains("feed/wheat-bran/moisture"));
        // NASEM 2021: 90.095 % dry matter.
        assertEquals(90.095, Tally.yearly(open, Flux.FEED_DRY_MATTER), 0.2);
        assertTrue(Tally.gaps(open).contains("feed/wheat-bran/moisture"));
    }

    /** Dry matter balance: the lines add up to the feed less its water. */
    @Test
    void dry_matter_balances_over_all_ingredients() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .feed(Fed.of("wheat-bran", 300).moisture(0.10))
                .feed(Fed.of("carrot", 200).moisture(0.88))
                .feed(Fed.of("cassava-peel", 50).moisture(0.70))
                .inventory();

        assertEquals(300 * 0.90 + 200 * 0.12 + 50 * 0.30, Tally.yearly(inventory, Flux.FEED_DRY_MATTER), 1e-9);
        assertEquals(550, Tally.yearly(inventory, Flux.FEED), 1e-9);
    }

    /** birkenmaier-2024, abstract: 0.186 kg CO2e per kg of carrots to the supermarket, of which cultivation 21 to 22 %. */
    @Test
    void carrots_are_counted_up_to_the_farm_gate_and_not_to_retail() {
        Inventory inventory = fed(Fed.of("carrot", 100)).inventory();

        assertEquals(100 * 0.186 * 0.215, ghg(inventory), 0.1);
        assertEquals(
                List.of(
                        "the land of carrot is counted up to retail (poore-nemecek-2018.carrot.land), not to the farm: it"
                                + " errs high"),
                Tally.remarks(inventory, Remark.RETAIL_FEED));
    }

    /** poore-nemecek-2018: retail means 0.98 and 3.23; of the world total 0.717 of 0.896 and 1.425 of 2.497 arise on the farm. */
    @ParameterizedTest
    @CsvSource({"peas, 0.98, 0.717, 0.896", "groundnut, 3.23, 1.425, 2.497"})
    void a_feed_whose_source_splits_its_stages_is_converted_to_the_farm_gate(
            String crop, double retail, double farm, double total) {
        Inventory inventory = fed(Fed.of(crop, 1)).inventory();

        assertEquals(retail * farm / total, ghg(inventory), 0.005);
        assertTrue(Tally.remarks(inventory, Remark.RETAIL_FEED).stream().noneMatch(text -> text.startsWith("the ghg")));
    }

    @Test
    void what_is_held_at_retail_only_is_told_and_ones_own_factor_silences_it() {
        Inventory published = fed(Fed.of("tomato", 1)).inventory();
        Inventory own = fed(Fed.of("tomato", 1).own(0.2, 1)).inventory();

        assertEquals(2, Tally.remarks(published, Remark.RETAIL_FEED).size(), "ghg and land");
        assertEquals(List.of(), Tally.remarks(own, Remark.RETAIL_FEED));
    }

    @Test
    void burden_free_is_nothing_and_is_called_a_choice() {
        Inventory inventory =
                fed(Fed.of("wheat-bran", 100).burden(Burden.BURDEN_FREE)).inventory();

        assertEquals(0, ghg(inventory), 0.0);
        assertEquals(0, Tally.yearly(inventory, "wheat-bran", Flux.LAND), 0.0);
        assertEquals(
                List.of("wheat-bran is counted burden-free: a choice of method, not evidence that it has no burden"),
                Tally.remarks(inventory, Remark.METHOD));
        assertEquals(100, Tally.yearly(inventory, Flux.FEED), 0.0, "it is still feed");
    }

    @Test
    void a_residue_that_its_source_cuts_off_is_nothing_and_is_called_a_choice() {
        Inventory inventory = fed(Fed.of("market-waste", 100)).inventory();

        assertEquals(0, ghg(inventory), 0.0);
        assertTrue(
                Tally.remarks(inventory, Remark.METHOD)
                        .contains("market-waste is burden-free as a residue: a choice of method, not evidence"),
                inventory::toString);
    }

    /** Peel that was fed to goats: half a kg of maize must replace each kg, 86.907 % dry (NASEM 2021) at 0.39 kg CO2e (Adom 2012). */
    @Test
    void a_residue_with_another_use_brings_the_burden_of_what_replaces_it() {
        Inventory inventory = fed(Fed.of("cassava-peel", 1000).displacing("maize", 0.5))
                .in("ghana")
                .inventory();

        assertEquals(1000 * 0.5 * 0.86907 * 0.39, ghg(inventory), 0.5);
        assertEquals(1000 * 0.5 * 10 / 2.4815, Tally.yearly(inventory, "maize", Flux.LAND), 1e-9);
        assertEquals(1000, Tally.yearly(inventory, Flux.FEED), 0.0, "the farm feeds peel, not maize");
    }

    @Test
    void an_allocation_that_is_not_published_is_reported() {
        Inventory inventory =
                fed(Fed.of("wheat-bran", 100).burden(Burden.ECONOMIC)).inventory();

        assertTrue(ghg(inventory) > 0);
        assertTrue(Tally.gaps(inventory).contains("feed/wheat-bran/burden"), inventory::toString);
    }

    @Test
    void the_growers_own_factors_win_over_the_librarys() {
        Inventory inventory = fed(Fed.of("wheat-bran", 100).own(0.1, 0.5)).inventory();

        assertEquals(10, ghg(inventory), 1e-12);
        assertEquals(50, Tally.yearly(inventory, "wheat-bran", Flux.LAND), 1e-12);
    }

    @Test
    void feed_without_any_published_figure_is_a_gap_and_a_lower_bound() {
        Inventory inventory = fed(Fed.of("palm-pith", 100)).inventory();

        assertTrue(Tally.gaps(inventory)
                .containsAll(List.of("feed/palm-pith/ghg", "feed/palm-pith/land", "feed/palm-pith/moisture")));
        Gap ghg = inventory.gaps().stream()
                .filter(gap -> gap.field().equals("feed/palm-pith/ghg"))
                .findFirst()
                .orElseThrow();
        assertTrue(ghg.filledWith().contains("lower bound"), ghg::toString);
    }

    /** Regulation (EU) 2017/893 and (EC) 1069/2009: catering waste, manure and slaughter waste are no feed for farmed insects. */
    @ParameterizedTest
    @ValueSource(strings = {"kitchen-waste", "poultry-manure", "cattle-manure", "pig-manure", "slaughter-waste"})
    void a_substrate_barred_in_the_eu_is_remarked(String substrate) {
        List<String> remarks = Tally.remarks(fed(Fed.of(substrate, 100)).inventory(), Remark.LEGALITY);

        assertEquals(1, remarks.size());
        assertTrue(remarks.get(0).startsWith(substrate + " is "), remarks::toString);
        assertTrue(remarks.get(0).contains("not lawful"), remarks::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"wheat-bran", "carrot", "brewers-grains-wet", "bakery-by-product", "market-waste"})
    void a_vegetable_substrate_is_not(String substrate) {
        assertEquals(List.of(), Tally.remarks(fed(Fed.of(substrate, 100)).inventory(), Remark.LEGALITY));
    }

    /** Adom et al. 2013: dairy feed as mixed, 0.62 kg CO2e per kg by price and 0.93 by mass. */
    @ParameterizedTest
    @CsvSource({"ECONOMIC, 0.62", "MASS, 0.93"})
    void of_two_published_allocations_the_one_asked_for_is_used(Burden burden, double printed) {
        Inventory inventory =
                fed(Fed.of("compound-dairy-feed", 100).burden(burden)).inventory();

        assertEquals(100 * printed, ghg(inventory), 1e-9);
        assertFalse(Tally.gaps(inventory).contains("feed/compound-dairy-feed/burden"), inventory::toString);
    }

    /**
     * Price reflects better than mass why a crop is grown; a substitution (Dalgaard et al. 2008) is a model, and comes after a plain
     * figure.
     */
    @ParameterizedTest
    @CsvSource({
        "compound-dairy-feed, adom-2013.compound-dairy-feed.ghg.economic",
        "soybean-meal, adom-2012.soybean-meal.ghg"
    })
    void without_a_requested_allocation_the_preferred_one_is_used(String ingredient, String row) {
        Inventory inventory = fed(Fed.of(ingredient, 100)).inventory();
        Flow line = inventory.flows().stream()
                .filter(flow -> flow.what().equals(ingredient) && flow.flux() == Flux.CO2E)
                .findFirst()
                .orElseThrow();

        assertTrue(line.rows().contains(row), line::toString);
    }

    @Test
    void an_allocation_used_instead_of_the_one_asked_for_is_named() {
        Inventory inventory =
                fed(Fed.of("soybean-meal", 100).burden(Burden.ECONOMIC)).inventory();

        assertEquals(
                "no ghg with economic allocation is published; not-stated is taken",
                filledWith(inventory, "feed/soybean-meal/burden"));
    }

    private static String filledWith(Inventory inventory, String field) {
        return inventory.gaps().stream()
                .filter(gap -> gap.field().equals(field))
                .map(Gap::filledWith)
                .findFirst()
                .orElse("no such gap");
    }

    /** NASEM 2021: wheat bran is 90.095 % dry. */
    @Test
    void a_default_moisture_is_reported_in_percent() {
        assertEquals(
                "moisture 10 %, the published dry matter",
                filledWith(fed(Fed.of("wheat-bran", 100)).inventory(), "feed/wheat-bran/moisture"));
    }

    /** Residue that is worth as much as what replaces it: a kilogram for a kilogram, where nothing else is said. */
    @Test
    void a_residue_is_replaced_kilogram_for_kilogram_unless_stated_otherwise() {
        FarmRecords.FeedUse peel = new FarmRecords.FeedUse(
                "cassava-peel",
                RecordedNumber.of(1000),
                Optional.empty(),
                Optional.of(Burden.DISPLACED),
                Optional.of("maize"),
                Optional.empty(),
                FarmRecords.OwnFactors.NONE);

        assertEquals(
                ghg(fed(Fed.of("cassava-peel", 1000).displacing("maize", 1)).inventory()),
                ghg(fed(new Fed(peel)).inventory()),
                1e-9);
    }

    /** Everything that a grower may know of his feed, per kg as fed: 0.1 kg CO2e, 0.5 m2, 3 MJ and 0.02 m3. */
    @Test
    void energy_and_water_of_feed_count_where_the_grower_states_them() {
        FarmRecords.OwnFactors own = new FarmRecords.OwnFactors(
                RecordedNumber.known(0.1),
                RecordedNumber.known(0.5),
                RecordedNumber.known(3),
                RecordedNumber.known(0.02));
        FarmRecords.FeedUse bran = Fed.of("wheat-bran", 100).use();
        Inventory inventory = fed(new Fed(new FarmRecords.FeedUse(
                        bran.ingredient(),
                        bran.kilograms(),
                        bran.moisture(),
                        bran.burden(),
                        bran.displaces(),
                        bran.displacedPerKilogram(),
                        own)))
                .inventory();

        assertEquals(300, Tally.yearly(inventory, "wheat-bran", Flux.ENERGY), 1e-9, "MJ");
        assertEquals(2, Tally.yearly(inventory, "wheat-bran", Flux.WATER), 1e-9, "m3");
        assertFalse(Tally.gaps(inventory).contains("feed/wheat-bran/ghg"));
        assertFalse(Tally.gaps(inventory).contains("feed/wheat-bran/land"));
    }

    /** What is missing of greenhouse gases and land is reported by feed; hardly any feed has a figure of energy or water. */
    @Test
    void missing_energy_and_water_of_feed_are_reported_once_and_not_feed_by_feed() {
        Inventory inventory =
                fed(Fed.of("palm-pith", 100)).feed(Fed.of("wheat-bran", 10)).inventory();
        List<String> gaps = Tally.gaps(inventory);

        assertEquals("not counted: no published energy of palm-pith, wheat-bran", filledWith(inventory, "feed/energy"));
        assertEquals("not counted: no published water of palm-pith, wheat-bran", filledWith(inventory, "feed/water"));

        assertFalse(gaps.contains("feed/palm-pith/energy"));
        assertFalse(gaps.contains("feed/palm-pith/water"));
        assertFalse(Tally.gaps(fed(Fed.of("maize", 100)).inventory()).contains("feed/maize/land"), "it has a yield");
    }

    /** Protein of bran per dry matter (17.403 %, NASEM 2021), of carrots as they are (0.93 %). */
    @Test
    void protein_is_counted_on_the_basis_on_which_it_is_published() {
        Inventory bran = fed(Fed.of("wheat-bran", 100).moisture(0.20)).inventory();
        Inventory carrot = fed(Fed.of("carrot", 100).moisture(0.88)).inventory();

        assertEquals(80 * 0.17403, Tally.yearly(bran, Flux.FEED_PROTEIN), 0.001);
        assertEquals(0.93, Tally.yearly(carrot, Flux.FEED_PROTEIN), 0.001);
    }

    @ParameterizedTest
    @CsvSource({"economic, ECONOMIC", "mass, MASS", "burden-free, BURDEN_FREE", "displaced, DISPLACED"})
    void a_burden_has_the_name_under_which_it_is_asked_for(String id, Burden burden) {
        assertEquals(Optional.of(burden), Burden.of(id));
        assertEquals(id, burden.id());
        assertEquals(Optional.empty(), Burden.of("heavy"));
    }

    @Test
    void a_note_on_feed_law_comes_with_the_remark() {
        String remark = Tally.remarks(fed(Fed.of("poultry-manure", 100)).inventory(), Remark.LEGALITY)
                .get(0);

        assertTrue(remark.contains("(Manure may not be fed"), remark);
    }

    /** A share by price of 0.6 kg CO2e per kg, invented, beside the share by mass of bran that the library derives from Adom et al. 2012. */
    @Test
    void allocation_by_price_comes_before_allocation_by_mass_in_any_order(@TempDir Path folder) {
        Library own = new OwnFolder(folder)
                .rowLike(
                        "ingredient_factors",
                        "adom-2012.wheat-bran.ghg.mass",
                        Map.of(
                                "id",
                                "invented.by-price",
                                "allocation",
                                "economic",
                                "value",
                                "0.6",
                                "low",
                                "",
                                "high",
                                "",
                                "spread",
                                "none"))
                .library();
        Inventory inventory = InsectRecordsFixture.of(own, "mealworm", 100)
                .feed("wheat-bran", 100)
                .inventory();

        assertEquals(60, ghg(inventory), 1e-9);
    }
}
