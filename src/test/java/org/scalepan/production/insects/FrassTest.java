package org.scalepan.production.insects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.Fed;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.production.Inventory;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.Tally;
import org.scalepan.production.insects.InsectFarm.Fate;

/** Nitrogen in frass, and its emissions: computed as manure of other animals (IPCC 2019). */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FrassTest {
    private static final double TO_N2O = 44.0 / 28.0;

    /** Read for this class alone, so that no row is one that another test had found before. */
    private final Library library = Libraries.readAgain();

    private InsectRecordsFixture farm(String product) {
        return InsectRecordsFixture.of(library, product, 1000)
                .feed(Fed.of("wheat-bran", 3000).moisture(0.10));
    }

    private static double n2o(Inventory inventory, String how) {
        return Tally.yearly(inventory, "frass, " + how, Flux.N2O);
    }

    private static Gap gap(Inventory inventory, String field) {
        return inventory.gaps().stream()
                .filter(gap -> gap.field().equals(field))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no gap " + field + " among " + inventory.gaps()));
    }

    /** Table 10.21: EF3 0.01; table 10.22, other animals: 12 % lost as gas, 2 % leached; table 11.3: EF4 0.01 and EF5 0.011. */
    @Test
    void frass_in_store_gives_nitrous_oxide_like_solid_manure_of_other_animals() {
        Inventory inventory =
                farm("mealworm").frass(100, 0.03, Fate.STORED, false).inventory();

        assertEquals(3 * 0.01 * TO_N2O, n2o(inventory, "stored"), 1e-9);
        assertEquals(3 * 0.12 * 0.01 * TO_N2O, n2o(inventory, "volatilised"), 1e-9);
        assertEquals(3 * 0.02 * 0.011 * TO_N2O, n2o(inventory, "leached"), 1e-9);
        assertEquals(0, n2o(inventory, "spread"), 0.0);
        assertFalse(Tally.gaps(inventory).contains("frass/nitrogen"));
        assertFalse(Tally.gaps(inventory).contains("frass/climate"));
    }

    /** Tables 11.1 and 11.3 of 2019: EF1 0.01; 21 % lost as gas at EF4 0.01; 24 % leached at EF5 0.011, as in a wet climate. */
    @Test
    void frass_on_a_field_gives_nitrous_oxide_like_organic_fertiliser() {
        Inventory inventory =
                farm("mealworm").frass(100, 0.03, Fate.SPREAD, false).inventory();

        assertEquals(3 * 0.01 * TO_N2O, n2o(inventory, "spread"), 1e-9);
        assertEquals(3 * 0.21 * 0.01 * TO_N2O, n2o(inventory, "volatilised"), 1e-9);
        assertEquals(3 * 0.24 * 0.011 * TO_N2O, n2o(inventory, "leached"), 1e-9);
        assertEquals(
                "leaching counted as in a wet climate",
                gap(inventory, "frass/climate").filledWith());
    }

    /** Amorim et al. 2024: 3.18 % N in frass of mealworms. */
    @Test
    void weighed_frass_without_analysis_uses_the_nitrogen_published_for_the_species() {
        Inventory inventory = farm("mealworm").frassWeighed(100, Fate.STORED).inventory();

        assertEquals(3.18 * 0.01 * TO_N2O, n2o(inventory, "stored"), 1e-6);
        assertEquals(
                List.of("amorim-2024.mealworm.nitrogen"),
                gap(inventory, "frass/nitrogen").rows());
    }

    /** Crickets' frass has no published nitrogen: 2 700 kg dry bran x 17.403 % less 1 000 kg of crickets x 20.5 %, over 6.25. */
    @Test
    void without_published_nitrogen_frass_has_that_of_feed_less_larvae() {
        Inventory inventory =
                farm("house-cricket").frassWeighed(100, Fate.STORED).inventory();

        assertEquals((2700 * 0.17403 - 1000 * 0.205) / 6.25 * 0.01 * TO_N2O, n2o(inventory, "stored"), 1e-4);
        assertEquals(
                "nitrogen of the feed less nitrogen of the larvae; stored like solid manure unless said otherwise",
                gap(inventory, "frass/nitrogen").filledWith());
    }

    @Test
    void a_fate_is_used_without_a_weight() {
        Inventory spread = farm("mealworm").frass(Fate.SPREAD).inventory();

        assertTrue(n2o(spread, "spread") > 0);
        assertEquals(0, n2o(spread, "stored"), 0.0);
        assertTrue(Tally.gaps(spread).contains("frass/nitrogen"));
        assertFalse(Tally.gaps(spread).contains("frass"), "it was told of");
    }

    /** Of locusts the library holds no protein, of market waste no nitrogen: no nitrogen balance can be computed for either. */
    @Test
    void without_the_nitrogen_of_feed_or_larvae_frass_is_not_counted_and_that_is_reported() {
        Inventory locusts = farm("migratory-locust").inventory();
        Inventory waste = InsectRecordsFixture.of(library, "mealworm", 1000)
                .feed(Fed.of("market-waste", 5000).moisture(0.8))
                .inventory();

        for (Inventory inventory : List.of(locusts, waste)) {
            assertEquals(0, Tally.yearly(inventory, flow -> flow.stage() == Stage.MANURE), 0.0);
            assertEquals(
                    "not counted: neither its nitrogen nor that of feed and larvae is known",
                    gap(inventory, "frass").filledWith());
        }
    }

    @Test
    void larvae_do_not_live_on_air() {
        Inventory inventory =
                InsectRecordsFixture.of(library, "mealworm", 1000).none("feed").inventory();

        assertTrue(
                Tally.remarks(inventory, Remark.AGAINST_PHYSICS).stream()
                        .anyMatch(text -> text.startsWith("more nitrogen comes out than goes in")),
                inventory::toString);
        assertEquals(0, Tally.yearly(inventory, flow -> flow.stage() == Stage.MANURE), 0.0);
    }

    /** 4.5719 kg CO2e per kg N of bought fertiliser (European standard value of 2019, from memory, AR4). */
    @Test
    void a_credit_is_subtracted_where_asked_for_and_reported_as_a_method() {
        Inventory credited =
                farm("mealworm").frass(100, 0.03, Fate.SPREAD, true).inventory();
        Inventory plain = farm("mealworm").frass(100, 0.03, Fate.SPREAD, false).inventory();
        Flow credit = credited.flows().stream()
                .filter(flow -> flow.stage() == Stage.CREDIT)
                .findFirst()
                .orElseThrow();

        assertEquals(-3 * 4.5719, credit.term().central(), 1e-9);
        assertEquals(Optional.of("ar4-100"), credit.warmingSet());
        assertTrue(credit.rows().contains("jrc-2019-biofuels.nitrogen-average.ghg-production"));
        assertTrue(Tally.remarks(credited, Remark.METHOD).stream()
                .anyMatch(text -> text.contains("replaced a kg of bought nitrogen")));
        assertTrue(plain.flows().stream().noneMatch(flow -> flow.stage() == Stage.CREDIT));
        assertTrue(Tally.remarks(plain, Remark.METHOD).stream().noneMatch(text -> text.contains("bought nitrogen")));
    }

    /**
     * 3 kg N of fertiliser not applied: 0.01 direct, 0.11 volatilised x 0.01, 0.24 leached x 0.011, times 44/28 (IPCC 2019, tables 11.1 and
     * 11.3). Frass itself volatilises 0.21, so that less is credited than spread frass gives off.
     */
    @Test
    void the_field_of_the_fertiliser_is_credited_as_the_field_of_the_frass_is_charged() {
        Inventory credited =
                farm("mealworm").frass(100, 0.03, Fate.SPREAD, true).inventory();
        double avoided = Tally.yearly(credited, flow -> flow.stage() == Stage.CREDIT && flow.flux() == Flux.N2O);
        double charged = Tally.yearly(credited, flow -> flow.stage() == Stage.MANURE && flow.flux() == Flux.N2O);

        assertEquals(-3 * (0.01 + 0.11 * 0.01 + 0.24 * 0.011) * 44 / 28, avoided, 1e-3, "kg N2O a year");
        assertTrue(charged > -avoided, "kg N2O a year: " + charged + " against " + avoided);
    }

    @Test
    void stored_frass_has_no_field_and_gets_no_credit_for_one() {
        Inventory credited =
                farm("mealworm").frass(100, 0.03, Fate.STORED, true).inventory();
        assertEquals(0, Tally.yearly(credited, flow -> flow.stage() == Stage.CREDIT && flow.flux() == Flux.N2O), 0.0);
    }
}
