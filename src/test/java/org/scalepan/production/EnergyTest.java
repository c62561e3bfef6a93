package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.insects.InsectFarm;
import org.scalepan.production.insects.InsectInventory;

/** Energy by carrier (electricity, gas, firewood and others), by hand from the rows of the library. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EnergyTest {
    /** Read for this class alone, so that no factor is one that another test had read before. */
    private final Library library = Libraries.readAgain();

    private InsectRecordsFixture farm() {
        return InsectRecordsFixture.of(library, "mealworm", 100);
    }

    private static double of(Inventory inventory, Flux flux) {
        return Tally.yearly(inventory, flow -> flow.stage() == Stage.ENERGY && flow.flux() == flux);
    }

    private static Gap gap(Inventory inventory, String field) {
        return inventory.gaps().stream()
                .filter(gap -> gap.field().equals(field))
                .findFirst()
                .orElseThrow();
    }

    private Inventory withSuppliersIntensity(String carrier, double intensity) {
        InsectFarm farm = farm().in("ghana").energy(carrier, 100).farm();
        return InsectInventory.inventory(
                library, farm.withRecords(farm.records().withGridIntensity(RecordedNumber.known(intensity))));
    }

    @Test
    void the_intensity_stated_by_the_supplier_replaces_that_of_the_library() {
        Inventory inventory = withSuppliersIntensity("grid-electricity", 0.12);

        assertEquals(12, of(inventory, Flux.CO2E), 1e-12, "100 kWh");
        assertEquals(360, of(inventory, Flux.ENERGY_ON_FARM), 1e-9, "MJ");
        Flow line = inventory.flows().stream()
                .filter(flow -> flow.flux() == Flux.CO2E && flow.stage() == Stage.ENERGY)
                .findFirst()
                .orElseThrow();
        assertEquals(List.of(), line.rows(), "no row of the library stands behind it");
        assertEquals(Optional.of("not-stated"), line.warmingSet());
        assertFalse(Tally.gaps(inventory).contains("region"));
    }

    /** Panels on the roof are not the grid: 41 g CO2e (IPCC AR5, working group 3, table A.III.2) and 30.9 cm2 a year per kWh (UNECE 2021). */
    @Test
    void the_intensity_stated_by_the_supplier_does_not_apply_to_own_panels() {
        Inventory inventory = withSuppliersIntensity("solar-pv-rooftop", 0.12);

        assertEquals(4.1, of(inventory, Flux.CO2E), 0.2, "the middle of 26 to 60 g about 41 g");
        assertEquals(0.309, of(inventory, Flux.LAND), 1e-9, "m2·yr");
        assertEquals(360, of(inventory, Flux.ENERGY_ON_FARM), 1e-9, "MJ");
    }

    /** IPCC 2006, volume 2, tables 1.2, 2.2 and 2.5; UK 2025 before the tank. LPG: 47.3 MJ per kg, 63.1 kg CO2, 5 g CH4 and 0.1 g N2O per GJ. */
    @Test
    void a_fuel_bought_by_the_kilogram_has_no_density() {
        Inventory inventory = farm().energy("lpg", 26).inventory();
        double gigajoules = 26 * 47.3 / 1000;

        assertEquals(1000 * gigajoules, of(inventory, Flux.ENERGY_ON_FARM), 1e-9, "two bottles of 13 kg");
        assertEquals(63.1 * gigajoules, of(inventory, Flux.CO2), 1e-9);
        assertEquals(0.005 * gigajoules, of(inventory, Flux.CH4_FOSSIL), 1e-12);
        assertEquals(0.0001 * gigajoules, of(inventory, Flux.N2O), 1e-12);
        assertEquals(0.34929 * 26, of(inventory, Flux.CO2E), 1e-9, "per kg, not the row per litre");
    }

    /** Natural gas is metered in kWh: 56.1 kg CO2 per GJ (IPCC 2006), 0.03347 kg CO2e per kWh before the meter (UK 2025, net). */
    @Test
    void a_fuel_metered_in_kilowatt_hours_is_burnt_by_the_kilowatt_hour() {
        Inventory inventory = farm().energy("natural-gas", 1000).inventory();

        assertEquals(3600, of(inventory, Flux.ENERGY_ON_FARM), 1e-9, "MJ");
        assertEquals(56.1 * 3.6, of(inventory, Flux.CO2), 1e-9);
        assertEquals(33.47, of(inventory, Flux.CO2E), 1e-9);
        assertEquals(0, of(inventory, Flux.LAND), 0.0);
    }

    /** Kerosene: 43.8 MJ per kg, 71.9 kg CO2 per GJ (IPCC 2006); the library holds nothing of it before the tank. */
    @Test
    void a_fuel_without_a_figure_before_the_tank_counts_its_burning() {
        Inventory inventory = farm().energy("kerosene", 10).inventory();

        assertEquals(10 * Math.sqrt(0.775 * 0.840) * 0.0438 * 71.9, of(inventory, Flux.CO2), 1e-6);
        assertEquals(0, of(inventory, Flux.CO2E), 0.0);
    }

    /**
     * Charcoal, 100 kg: 29.5 MJ per kg, 0.2 kg CH4 and 1 g N2O per GJ in the stove (IPCC 2006); 32 to 62 g CH4 and 0.011 to 0.3 g N2O per kg
     * in the kiln (Pennise et al. 2001); its carbon was a tree.
     */
    @Test
    void charcoal_emits_in_the_kiln_and_in_the_stove() {
        Inventory inventory = farm().energy("charcoal", 100).inventory();
        double gigajoules = 100 * 29.5 / 1000;

        assertEquals(0, of(inventory, Flux.CO2), 0.0);
        assertEquals(0, of(inventory, Flux.CH4_FOSSIL), 0.0);
        assertEquals(
                0.2 * gigajoules + 100 * Math.sqrt(0.032 * 0.062),
                of(inventory, Flux.CH4_BIOGENIC),
                1e-6,
                "kiln methane at the middle of its range on the logarithm");
        assertEquals(0.001 * gigajoules + 100 * Math.sqrt(0.000011 * 0.0003), of(inventory, Flux.N2O), 1e-6);
        assertEquals(0, of(inventory, Flux.CO2E), 0.0, "the whole of the kiln as CO2e is kept, not counted twice");
    }

    /** UK 2025: 52.14 g CO2e per kg of firewood before the stove. */
    @Test
    void firewood_has_the_burden_of_felling_and_transport() {
        assertEquals(200 * 0.05214, of(farm().energy("firewood", 200).inventory(), Flux.CO2E), 1e-9);
    }

    @Test
    void husks_of_which_only_the_heat_is_known_are_energy_and_no_gas() {
        Inventory inventory = farm().energy("other-solid-biomass", 10).inventory();

        assertEquals(116, of(inventory, Flux.ENERGY_ON_FARM), 1e-9, "11.6 MJ per kg (IPCC 2006, volume 2, table 1.2)");
        assertEquals(
                Set.of(Flux.ENERGY_ON_FARM, Flux.ENERGY),
                inventory.flows().stream()
                        .filter(flow -> flow.stage() == Stage.ENERGY)
                        .map(Flow::flux)
                        .collect(Collectors.toSet()));
    }

    /** Ember, copy of April 2026: Ghana has a figure of 2024, the world one of 2025. */
    @Test
    void the_year_and_the_place_of_an_intensity_are_reported_where_they_are_not_those_of_the_records() {
        Inventory other =
                farm().in("ghana").year(2020).energy("grid-electricity", 100).inventory();
        Inventory nowhere = farm().energy("grid-electricity", 100).inventory();

        assertEquals(
                "intensity of grid electricity of 2024, the nearest year held",
                gap(other, "year").filledWith());
        assertEquals(
                "intensity of grid electricity of the world, 2025",
                gap(nowhere, "region").filledWith());
        assertEquals(1, gap(nowhere, "region").rows().size());
        assertEquals(
                "intensity of grid electricity of 2025, the latest year held",
                gap(nowhere, "year").filledWith());
        assertEquals(
                List.of(gap(other, "year").rows()),
                List.of(List.of("ember-2026-04.grid-electricity.ghg-life-cycle.ghana.2024")));
    }

    @ParameterizedTest
    @CsvSource({"ghana, 0.46889, 0.1154228", "senegal, 0.53997, 0.1306272"})
    void the_intensity_that_would_be_taken_can_be_asked_for(String place, double generated, double lost) {
        FarmRecords records =
                farm().in(place).energy("grid-electricity", 1).farm().records();

        assertEquals(
                generated / (1 - lost),
                EnergyInventory.intensity(library, "grid-electricity", records).orElseThrow(),
                1e-9);
        assertEquals(OptionalDouble.empty(), EnergyInventory.intensity(library, "diesel", records), "diesel has none");
    }

    @ParameterizedTest
    @ValueSource(strings = {"whale-oil", ""})
    void a_carrier_that_the_library_does_not_know_is_refused_by_name(String carrier) {
        InsectRecordsFixture notebook = farm().energy(carrier, 1);

        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, notebook::inventory);
        assertEquals("unknown energy carrier " + carrier, refusal.getMessage());
    }

    @Test
    void energy_beyond_the_gate_is_counted_beyond_the_gate() {
        Inventory inventory = farm().energyForProcessing("lpg", 26).inventory();

        assertEquals(0, Tally.yearly(inventory, flow -> flow.stage() == Stage.ENERGY), 0.0);
        assertEquals(
                26 * 47.3,
                Tally.yearly(inventory, flow -> flow.stage() == Stage.PROCESSING && flow.flux() == Flux.ENERGY_ON_FARM),
                1e-9);
        assertTrue(Tally.gaps(inventory).stream().noneMatch("energy"::equals));
    }
}
