package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords.Burden;

/** What a farm feeds: mass, dry matter, and the burden that comes with it. */
class FeedTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static InsectNotebook fed(Fed fed) {
        return InsectNotebook.of(LIBRARY, "mealworm", 100).feed(fed);
    }

    private static double ghg(Inventory inventory) {
        return Tally.yearly(inventory, flow -> flow.stage() == Stage.FEED && flow.flux() == Flux.CO2E);
    }

    /** FAOSTAT 2018: maize in Ghana 1.9474 t/ha, cassava in Nigeria 8.6789 t/ha, soybeans in Brazil 3.3903 t/ha; m2·yr = 10 / yield. */
    @ParameterizedTest
    @CsvSource({
        "maize, ghana, 1.9474",
        "cassava-root, nigeria, 8.6789",
        "soybean, brazil, 3.3903",
        // Senegal has no yield of its own: Western Africa's serves.
        "maize, senegal, 1.9538"
    })
    void land_of_a_crop_is_ten_over_its_yield(String crop, String place, double tonnesPerHectare) {
        Inventory inventory = fed(Fed.of(crop, 250)).in(place).inventory();

        assertEquals(250 * 10 / tonnesPerHectare, Tally.yearly(inventory, crop, Flux.LAND), 1e-9, "m2·yr");
    }

    /** Bran carries land by mass, as the grain does: 10 / 3.4228 t/ha of wheat in the world (FAOSTAT 2018). */
    @Test
    void bran_carries_its_share_of_the_field() {
        Inventory inventory = fed(Fed.of("wheat-bran", 100)).inventory();

        assertEquals(
                100 * 10 / 3.4228, Tally.yearly(inventory, "wheat-bran", Flux.LAND), 0.2, "m2·yr, printed 2.92 per kg");
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
    void moisture_given_is_taken_and_moisture_not_given_is_a_gap() {
        Inventory given = fed(Fed.of("wheat-bran", 100).moisture(0.10)).inventory();
        Inventory open = fed(Fed.of("wheat-bran", 100)).inventory();

        assertEquals(90, Tally.yearly(given, Flux.FEED_DRY_MATTER), 1e-12);
        assertFalse(Tally.gaps(given).contains("feed/wheat-bran/moisture"));
        // NASEM 2021: 90.095 % dry matter.
        assertEquals(90.095, Tally.yearly(open, Flux.FEED_DRY_MATTER), 0.2);
        assertTrue(Tally.gaps(open).contains("feed/wheat-bran/moisture"));
    }

    /** Dry matter closes: what the lines hold is what went in less its water. */
    @Test
    void dry_matter_closes_over_all_ingredients() {
        Inventory inventory = InsectNotebook.of(LIBRARY, "mealworm", 100)
                .feed(Fed.of("wheat-bran", 300).moisture(0.10))
                .feed(Fed.of("carrot", 200).moisture(0.88))
                .feed(Fed.of("cassava-peel", 50).moisture(0.70))
                .inventory();

        assertEquals(300 * 0.90 + 200 * 0.12 + 50 * 0.30, Tally.yearly(inventory, Flux.FEED_DRY_MATTER), 1e-9);
        assertEquals(550, Tally.yearly(inventory, Flux.FEED), 1e-9);
    }

    /** birkenmaier-2024, abstract: 0.186 kg CO2e per kg of carrots to the supermarket, of which cultivation 21 to 22 %. */
    @Test
    void carrots_are_counted_to_the_farm_and_not_to_the_supermarket() {
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
    void a_feed_whose_source_splits_its_stages_is_carried_to_the_farm(
            String crop, double retail, double farm, double total) {
        Inventory inventory = fed(Fed.of(crop, 1)).inventory();

        assertEquals(retail * farm / total, ghg(inventory), 0.005);
        assertTrue(Tally.remarks(inventory, Remark.RETAIL_FEED).stream().noneMatch(text -> text.startsWith("the ghg")));
    }

    @Test
    void what_is_held_at_retail_only_is_told_and_ones_own_factor_silences_it() {
        Inventory published = fed(Fed.of("banana", 1)).inventory();
        Inventory own = fed(Fed.of("banana", 1).own(0.2, 1)).inventory();

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
                        .contains("market-waste is cut off as a residue: a choice of method, not evidence"),
                inventory::toString);
    }

    /** Peel that was fed to goats: half a kg of maize must replace each kg, 86.907 % dry (NASEM 2021) at 0.39 kg CO2e (Adom 2012). */
    @Test
    void a_residue_with_another_use_brings_the_burden_of_what_replaces_it() {
        Inventory inventory = fed(Fed.of("cassava-peel", 1000).displacing("maize", 0.5))
                .in("ghana")
                .inventory();

        assertEquals(1000 * 0.5 * 0.86907 * 0.39, ghg(inventory), 0.5);
        assertEquals(1000 * 0.5 * 10 / 1.9474, Tally.yearly(inventory, "maize", Flux.LAND), 1e-9);
        assertEquals(1000, Tally.yearly(inventory, Flux.FEED), 0.0, "the farm feeds peel, not maize");
    }

    @Test
    void an_allocation_that_nobody_published_is_told() {
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
}
