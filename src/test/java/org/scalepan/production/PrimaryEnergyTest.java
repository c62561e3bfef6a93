package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;

/** The energy of a farm: what its meters count, and all primary energy behind that. The farms are invented. */
class PrimaryEnergyTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static InsectRecordsFixture farm(String region) {
        return InsectRecordsFixture.of(LIBRARY, "mealworm", 10).in(region).none("feed");
    }

    private static Bound bound(Inventory inventory, String indicator) {
        // The balances of a farm without feed are another matter.
        return new Inventory("energy", inventory.output(), inventory.flows(), inventory.gaps(), List.of())
                .bound(new Scope(
                        LIBRARY.indicators().get(indicator),
                        FunctionalUnit.KG_LIVE,
                        Boundary.FARM_GATE,
                        LIBRARY.warmingSets().get("ar6-100"),
                        false));
    }

    /**
     * MJ primary per MJ delivered: grid 1.9 (eu-2023-807.grid-electricity.primary-energy-total), natural gas 1.15 and firewood 1.1
     * (uk-energy-coefficients); firewood 15.6 MJ per kg.
     */
    @ParameterizedTest
    @CsvSource({
        "grid-electricity, 100, 360, 684",
        "natural-gas, 1000, 3600, 4140",
        "firewood, 200, 3120, 3432",
    })
    void given_a_factor_of_all_primary_energy_then_it_multiplies_what_the_meter_counts(
            String carrier, double amount, double metered, double primary) {
        Inventory inventory = farm("france").energy(carrier, amount).inventory();

        assertEquals(metered, Tally.yearly(inventory, Flux.ENERGY_ON_FARM), 1e-6, "MJ at the meter");
        assertEquals(primary, Tally.yearly(inventory, Flux.ENERGY), 1e-6, "MJ primary");
        assertEquals(Bound.EXACT, bound(inventory, "energy-on-farm"));
        assertEquals(Bound.EXACT, bound(inventory, "energy"));
    }

    /** Of the panels only the non-renewable share is held (0.0, geg-2020), which is another kind. */
    @ParameterizedTest
    @CsvSource({"solar-pv-rooftop, france", "grid-electricity, ghana"})
    void given_no_factor_of_all_primary_energy_then_what_the_meter_counts_is_the_least(String carrier, String region) {
        Inventory inventory = farm(region).energy(carrier, 100).inventory();

        assertEquals(360, Tally.yearly(inventory, Flux.ENERGY), 1e-9, "MJ as delivered");
        assertEquals(Bound.AT_LEAST, bound(inventory, "energy"));
        assertEquals(Bound.EXACT, bound(inventory, "energy-on-farm"));
        assertTrue(Tally.gaps(inventory).contains("energy/" + carrier + "/primary"));
    }

    @Test
    void given_feed_without_a_factor_of_energy_then_the_energy_is_at_least_and_the_meters_stay_exact() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .in("france")
                .feed("wheat-bran", 360)
                .energy("grid-electricity", 100)
                .inventory();

        assertEquals(684, Tally.yearly(inventory, Flux.ENERGY), 1e-6, "MJ primary of the grid alone");
        assertEquals(Bound.AT_LEAST, bound(inventory, "energy"));
        assertEquals(Bound.EXACT, bound(inventory, "energy-on-farm"));
    }

    /** 360 kg of bran at the grower's own 2 MJ per kg. */
    @Test
    void given_the_growers_own_energy_of_feed_then_it_counts_and_the_figure_is_exact() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .in("france")
                .feed(Fed.of("wheat-bran", 360).energy(2))
                .energy("grid-electricity", 100)
                .inventory();

        assertEquals(684 + 720, Tally.yearly(inventory, Flux.ENERGY), 1e-6, "MJ primary");
        assertEquals(360, Tally.yearly(inventory, Flux.ENERGY_ON_FARM), 1e-9, "MJ at the meter");
        assertEquals(Bound.EXACT, bound(inventory, "energy"));
    }

    @Test
    void given_a_van_then_its_energy_is_a_gap_and_the_figure_is_at_least() {
        Inventory inventory = farm("france")
                .energy("grid-electricity", 100)
                .transport("van-diesel", 20)
                .inventory();

        assertTrue(Tally.gaps(inventory).contains("transport/energy"));
        assertEquals(Bound.AT_LEAST, bound(inventory, "energy"));
    }

    @Test
    void given_a_water_meter_then_what_the_farm_draws_is_known_and_all_that_is_withdrawn_for_it_is_at_least_that() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .feed("wheat-bran", 360)
                .water(3)
                .inventory();

        assertEquals(3, Tally.yearly(inventory, Flux.WATER_ON_FARM), 1e-9, "m3");
        assertEquals(Bound.EXACT, bound(inventory, "water-on-farm"));
        assertEquals(Bound.AT_LEAST, bound(inventory, "water"));
    }
}
