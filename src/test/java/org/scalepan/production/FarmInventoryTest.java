package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;

/** Energy, transport, materials and ground, by hand from the rows of the library. */
class FarmInventoryTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final String GHANA = "ember-2026-04.grid-electricity.ghg-life-cycle.ghana.2024";
    /** Of what is generated in Ghana, 11.54228 % does not arrive (World Bank, 2022). */
    private static final double ARRIVES_IN_GHANA = 1 - 0.1154228;

    @TempDir
    Path folder;

    private static InsectRecordsFixture farm() {
        return InsectRecordsFixture.of(LIBRARY, "mealworm", 100);
    }

    private static double of(Inventory inventory, Flux flux) {
        return Tally.yearly(inventory, flow -> flow.stage() == Stage.ENERGY && flow.flux() == flux);
    }

    /**
     * Diesel, 100 litres: 0.83241 kg per litre (the middle of 0.820 to 0.845), 43.0 MJ/kg and per GJ 74.1 kg CO2, 0.010 kg CH4 and 0.0006 kg
     * N2O (IPCC 2006, volume 2, tables 1.2, 2.2, 2.5); 0.62409 kg CO2e per litre before the tank (UK 2025).
     */
    @Test
    void diesel_by_hand() {
        Inventory inventory = farm().energy("diesel", 100).inventory();
        double gigajoules = 100 * Math.sqrt(0.820 * 0.845) * 43.0 / 1000;

        assertEquals(1000 * gigajoules, of(inventory, Flux.ENERGY_ON_FARM), 1e-6, "MJ");
        assertEquals(74.1 * gigajoules, of(inventory, Flux.CO2), 1e-6, "265 kg");
        assertEquals(0.010 * gigajoules, of(inventory, Flux.CH4_FOSSIL), 1e-9);
        assertEquals(0.0006 * gigajoules, of(inventory, Flux.N2O), 1e-9);
        assertEquals(62.409, of(inventory, Flux.CO2E), 1e-9, "per litre, however heavy the litre");
    }

    /** A litre's upstream burden does not depend on its density: it cancels in the uncertainty too. */
    @Test
    void a_factor_per_litre_has_no_uncertainty_from_the_density() {
        Inventory inventory = farm().energy("diesel", 100).inventory();
        Flow upstream = inventory.flows().stream()
                .filter(flow -> flow.stage() == Stage.ENERGY && flow.flux() == Flux.CO2E)
                .findFirst()
                .orElseThrow();
        Inventory only = new Inventory(
                "upstream", inventory.output(), java.util.List.of(upstream), java.util.List.of(), java.util.List.of());

        // The default spread of a factor without one alone: a GSD of 1.219.
        assertEquals(
                Math.log(1.219), Tally.of(LIBRARY, only).system().firstOrder().lnSd(), 1e-9);
    }

    /** Firewood, 200 kg at 15.6 MJ/kg: 0.3 kg CH4 and 0.004 kg N2O per GJ are counted, its 112 kg CO2 per GJ are biogenic. */
    @Test
    void smoke_of_firewood_counts_and_its_carbon_dioxide_does_not() {
        Inventory inventory = farm().energy("firewood", 200).inventory();
        double gigajoules = 200 * 15.6 / 1000;

        assertEquals(0, of(inventory, Flux.CO2), 0.0);
        assertEquals(0.3 * gigajoules, of(inventory, Flux.CH4_BIOGENIC), 1e-9);
        assertEquals(0, of(inventory, Flux.CH4_FOSSIL), 0.0);
        assertEquals(0.004 * gigajoules, of(inventory, Flux.N2O), 1e-9);
        assertTrue(Tally.remarks(inventory, Remark.METHOD).stream()
                .anyMatch(text -> text.contains("firewood is biogenic")));
    }

    /** Ember, copy of April 2026: 468.89 g CO2e per kWh generated in Ghana (2024), of which 88.45772 % arrive. */
    @Test
    void the_grid_is_that_of_the_country_and_its_lines_lose_some_on_the_way() {
        Inventory inventory = farm().in("ghana").energy("grid-electricity", 100).inventory();

        assertEquals(46.889 / ARRIVES_IN_GHANA, of(inventory, Flux.CO2E), 1e-9);
        assertEquals(360, of(inventory, Flux.ENERGY_ON_FARM), 1e-9, "MJ at the meter");
        assertFalse(Tally.gaps(inventory).contains("region"));
        assertTrue(Tally.gaps(inventory).contains("year"), "the latest of 2024 and before");
        assertEquals(
                List.of(GHANA, "world-bank-wdi-losses.grid-electricity.line-loss.ghana.2022"),
                inventory.flows().stream()
                        .filter(flow -> flow.stage() == Stage.ENERGY && flow.flux() == Flux.CO2E)
                        .flatMap(flow -> flow.rows().stream())
                        .toList());
    }

    /** Panels on the roof feed the farm itself: 26 to 60 g about 41 g CO2e per kWh (IPCC AR5, working group 3). */
    @Test
    void what_is_made_on_the_spot_loses_nothing_in_the_lines() {
        Inventory inventory = farm().in("ghana").energy("solar-pv-rooftop", 100).inventory();

        assertEquals(4.1, of(inventory, Flux.CO2E), 0.2);
        assertTrue(inventory.flows().stream()
                .flatMap(flow -> flow.rows().stream())
                .noneMatch(row -> row.contains("line-loss")));
    }

    /** Ember: 200.77 g CO2e per kWh in Middle Africa (2024), 458.29 g in the world (2025); losses of 16.04 % and 6.59 %. */
    @Test
    void a_country_without_a_grid_of_its_own_takes_the_nearest_and_says_so() {
        Inventory bangui = farm().in("central-african-republic")
                .energy("grid-electricity", 100)
                .inventory();
        Inventory nowhere = farm().energy("grid-electricity", 100).inventory();

        assertEquals(20.077 / (1 - 0.1604), of(bangui, Flux.CO2E), 1e-9);
        assertTrue(Tally.gaps(bangui).contains("region"));
        assertEquals(45.829 / (1 - 0.0659), of(nowhere, Flux.CO2E), 1e-9);
        assertTrue(Tally.gaps(nowhere).contains("region"));
    }

    /** Of the European Union no loss is held: Europe's is the nearest. Malawi has a grid, and the losses of Eastern Africa. */
    @ParameterizedTest
    @CsvSource({
        "eu-27,   0.20989671, 0.072",
        "europe,  0.27119,    0.072",
        "norway,  0.02811,    0.0473547",
        "denmark, 0.11441,    0.0565931",
        "malawi,  0.05465,    0.1847"
    })
    void a_place_takes_its_own_grid_and_the_losses_nearest_to_it(String place, double intensity, double loss) {
        Inventory inventory = farm().in(place).energy("grid-electricity", 100).inventory();

        assertEquals(100 * intensity / (1 - loss), of(inventory, Flux.CO2E), 1e-9);
        assertTrue(inventory.gaps().stream()
                .noneMatch(
                        gap -> gap.field().equals("region") && gap.indicators().contains("ghg")));
    }

    @Test
    void the_european_union_is_nearer_to_a_place_in_europe_than_the_world() {
        assertEquals(
                List.of("norway", "northern-europe", "europe", "eu-27", "world"),
                LIBRARY.regions().nearestFirst("norway"));
    }

    @Test
    void of_several_years_the_nearest_one_is_used_and_the_latest_when_none_is_given() {
        Library library = new OwnFolder(folder)
                .rowLike(
                        "energy_factors",
                        GHANA,
                        Map.of("id", "invented.ghana.2015", "year", "2015", "value", "0.3", "use", "kept"))
                .library();

        assertEquals(30 / ARRIVES_IN_GHANA, of(ghana(library).year(2016).inventory(), Flux.CO2E), 1e-9);
        assertTrue(Tally.gaps(ghana(library).year(2016).inventory()).contains("year"), "2015 is not 2016");
        assertEquals(30 / ARRIVES_IN_GHANA, of(ghana(library).year(2015).inventory(), Flux.CO2E), 1e-9);
        assertFalse(Tally.gaps(ghana(library).year(2015).inventory()).contains("year"));
        assertEquals(46.889 / ARRIVES_IN_GHANA, of(ghana(library).year(2024).inventory(), Flux.CO2E), 1e-9);
        assertEquals(46.889 / ARRIVES_IN_GHANA, of(ghana(library).inventory(), Flux.CO2E), 1e-9);
    }

    private static InsectRecordsFixture ghana(Library library) {
        return InsectRecordsFixture.of(library, "mealworm", 100).in("ghana").energy("grid-electricity", 100);
    }

    /** UK 2025, per t·km: a lorry of 3.5 to 7.5 t 0.52761 kg in use; before the tank the broader mode's 0.04332 kg. */
    @Test
    void transport_by_hand() {
        Inventory inventory = farm().transport("truck-rigid-3.5-7.5t", 90).inventory();

        assertEquals(90 * (0.52761 + 0.04332), Tally.yearly(inventory, flow -> flow.stage() == Stage.TRANSPORT), 1e-9);
    }

    @Test
    void transport_without_a_factor_per_load_is_a_gap() {
        assertTrue(
                Tally.gaps(farm().transport("motorcycle-small", 5).inventory()).contains("transport/motorcycle-small"));
    }

    /** UK 2025: 2.5776 kg CO2e per kg of polypropylene; 10 kg that last four years are 2.5 kg a year. */
    @Test
    void a_material_counts_its_mass_over_its_lifetime() {
        Inventory inventory = farm().material("plastic-pp", 10, 4).inventory();

        assertEquals(10 / 4.0 * 2.5776, Tally.yearly(inventory, "plastic-pp", Flux.CO2E), 1e-9);
    }

    @Test
    void a_material_without_a_factor_is_counted_as_another_or_not_counted_and_that_is_reported() {
        Inventory rope = farm().material("rope", 2, 1).inventory();
        Inventory sack = farm().material("jute-sack", 2, 1).inventory();

        assertEquals(2 * 2.5776, Tally.yearly(rope, "rope", Flux.CO2E), 1e-9, "as polypropylene");
        assertTrue(Tally.gaps(rope).contains("materials/rope"));
        assertEquals(0, Tally.yearly(sack, "jute-sack", Flux.CO2E), 0.0);
        assertTrue(Tally.gaps(sack).contains("materials/jute-sack"));
    }

    @Test
    void the_ground_under_the_farm_is_land_and_water_is_water() {
        Inventory inventory = farm().area(40, 30).water(15).inventory();

        assertEquals(70, Tally.yearly(inventory, "buildings and yard", Flux.LAND), 0.0);
        assertEquals(15, Tally.yearly(inventory, Flux.WATER), 0.0);
    }

    @Test
    void every_line_names_rows_that_the_library_holds() {
        Inventory inventory = farm().in("ghana")
                .feed("maize", 100)
                .energy("diesel", 10)
                .energy("grid-electricity", 10)
                .transport("van-petrol", 3)
                .material("plastic-pp", 1, 2)
                .inventory();
        java.util.Set<String> held = new java.util.HashSet<>();
        LIBRARY.tables()
                .forEach(table -> table.rows().forEach(row -> row.optional("id").ifPresent(held::add)));

        for (Flow flow : inventory.flows()) {
            assertTrue(held.containsAll(flow.rows()), flow::toString);
            assertTrue(!flow.rows().isEmpty() || flow.term().uses().isEmpty(), flow::toString);
        }
        Flow diesel = inventory.flows().stream()
                .filter(flow -> flow.what().equals("diesel") && flow.flux() == Flux.CO2)
                .findFirst()
                .orElseThrow();
        assertTrue(diesel.rows().contains("fuel-densities.diesel.density"), diesel::toString);
    }
}
