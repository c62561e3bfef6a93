package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.herd.Herd.AnimalKind;
import org.scalepan.production.insects.InsectFarm.Fate;

/** An inventory summed on a basis. */
class SystemFootprintTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static Inventory of(Consumer<InventoryBuilder> lines) {
        InventoryBuilder builder = new InventoryBuilder();
        lines.accept(builder);
        Output output = new Output(LIBRARY.products().get("mealworm"), "fresh", FunctionalUnit.KG_LIVE, 1, 1, "none");
        return builder.inventory("by hand", output);
    }

    private static Inventory oneKilogram(Flux gas) {
        return of(builder -> builder.flow(Stage.ANIMALS, "gas", gas, ActivityTerm.of(1)));
    }

    /** The potentials of the assessment reports: SAR 2.9, TAR 6.7, AR4 2.14, AR5 8.7 and 8.A.1, AR6 7.15. */
    @ParameterizedTest
    @CsvSource({
        "sar-100, 21, 310",
        "tar-100, 23, 296",
        "ar4-100, 25, 298",
        "ar5-100, 28, 265",
        "ar5-100-feedback, 34, 298",
        "ar6-100, 27.0, 273"
    })
    void one_inventory_is_characterised_by_any_warming_set(String set, double methane, double nitrousOxide) {
        assertEquals(
                methane,
                Tally.of(LIBRARY, oneKilogram(Flux.CH4_BIOGENIC)).gwp(set).value(),
                0.0);
        assertEquals(
                nitrousOxide, Tally.of(LIBRARY, oneKilogram(Flux.N2O)).gwp(set).value(), 0.0);
        assertEquals(1, Tally.of(LIBRARY, oneKilogram(Flux.CO2)).gwp(set).value(), 0.0);
    }

    @Test
    void a_part_has_a_share_of_a_footprint_that_is_not_zero() {
        assertEquals(
                0.25,
                Tally.of(LIBRARY, oneKilogram(Flux.CO2))
                        .indicator("ghg")
                        .system()
                        .shareOf(0.25)
                        .orElseThrow(),
                1e-12);
        Inventory nothing = of(builder -> builder.flow(Stage.ANIMALS, "gas", Flux.CO2, ActivityTerm.of(0)));
        assertTrue(Tally.of(LIBRARY, nothing).system().shareOf(0).isEmpty());
    }

    /** AR6, table 7.15: fossil methane adds its own carbon dioxide. */
    @Test
    void fossil_methane_weighs_more_than_biogenic() {
        assertEquals(29.8, Tally.of(LIBRARY, oneKilogram(Flux.CH4_FOSSIL)).value(), 0.0);
    }

    @Test
    void what_its_source_gives_as_co2e_only_stays_as_published() {
        Inventory inventory = of(builder -> builder.co2e(Stage.FEED, "feed", ActivityTerm.of(3), "ar4-100"));

        assertEquals(3, Tally.of(LIBRARY, inventory).gwp("ar6-20").value(), 0.0);
    }

    private static Inventory everyStage() {
        return of(builder -> {
            for (Stage stage : Stage.values()) {
                double sign = stage == Stage.CREDIT ? -1 : 1;
                builder.flow(stage, stage.id(), Flux.CO2, ActivityTerm.of(sign * Math.pow(2, stage.ordinal())));
            }
        });
    }

    private static Set<Stage> stages(Tally tally) {
        return tally.system().byStage().keySet();
    }

    @Test
    void at_the_animal_only_gases_of_animals_and_manure_count() {
        assertEquals(
                Set.of(Stage.ANIMALS, Stage.MANURE),
                stages(Tally.of(LIBRARY, everyStage()).at("animal")));
        assertEquals(
                Set.of(Stage.ANIMALS, Stage.MANURE),
                stages(Tally.of(LIBRARY, everyStage()).at("animal").credited()));
    }

    @Test
    void processing_counts_at_the_processing_gate_only() {
        assertFalse(stages(Tally.of(LIBRARY, everyStage())).contains(Stage.PROCESSING));
        assertTrue(stages(Tally.of(LIBRARY, everyStage()).at("processing-gate")).contains(Stage.PROCESSING));
    }

    @Test
    void a_credit_counts_when_it_is_asked_for_only() {
        assertFalse(stages(Tally.of(LIBRARY, everyStage())).contains(Stage.CREDIT));
        assertTrue(stages(Tally.of(LIBRARY, everyStage()).credited()).contains(Stage.CREDIT));
    }

    @Test
    void stages_gases_and_lines_each_add_up_to_the_whole() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 500)
                .in("kenya")
                .feed("wheat-bran", 1500)
                .energy("diesel", 30)
                .energy("grid-electricity", 400)
                .transport("van-diesel", 12)
                .material("plastic-pp", 30, 5)
                .inventory();
        SystemFootprint system =
                Tally.of(LIBRARY, inventory).per(FunctionalUnit.KG_PROTEIN).system();
        double whole = system.central();

        assertEquals(whole, sum(system.byStage().values()), 1e-9 * whole);
        assertEquals(whole, sum(system.byGas().values()), 1e-9 * whole);
        assertEquals(whole, sum(system.byFlow().values()), 1e-9 * whole);
    }

    private static double sum(java.util.Collection<Double> parts) {
        return parts.stream().mapToDouble(part -> part).sum();
    }

    /** Composition of the library: mealworms are eaten whole and hold 18.7 % protein (Finke 2002). */
    @Test
    void per_kg_protein_is_per_kg_live_over_the_protein() {
        Inventory inventory = oneKilogram(Flux.CO2);

        assertEquals(
                1 / 0.187,
                Tally.of(LIBRARY, inventory).per(FunctionalUnit.KG_PROTEIN).value(),
                1e-6);
    }

    @Test
    void an_indicator_that_nothing_counts_for_is_empty_and_not_zero() {
        assertTrue(Tally.of(LIBRARY, oneKilogram(Flux.CO2))
                .indicator("water")
                .system()
                .isEmpty());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void an_output_of_nothing_is_refused(double amount) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Output(
                        LIBRARY.products().get("mealworm"), "fresh", FunctionalUnit.KG_LIVE, amount, 1, "none"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
    void an_allocated_share_outside_0_to_1_is_refused(double share) {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Output(
                        LIBRARY.products().get("mealworm"), "fresh", FunctionalUnit.KG_LIVE, 1, share, "none"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
    void an_amount_that_is_not_finite_is_refused(double amount) {
        assertThrows(IllegalArgumentException.class, () -> ActivityTerm.of(amount));
    }

    /**
     * The credit is 4.5719 kg CO2e per kg N (European standard value, from memory) for 100 kg of frass with 3 % N, and the N2O of a field
     * without this fertiliser: 0.01 + 0.11 x 0.01 + 0.24 x 0.011 kg N2O-N per kg N (IPCC 2019), GWP 273.
     */
    @Test
    void a_credit_for_fertiliser_by_hand() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 200)
                .feed("wheat-bran", 600)
                .frass(100, 0.03, Fate.SPREAD, true)
                .inventory();
        double without = Tally.of(LIBRARY, inventory).value();
        double with = Tally.of(LIBRARY, inventory).credited().value();

        double field = (0.01 + 0.11 * 0.01 + 0.24 * 0.011) * 44 / 28 * 273;
        assertEquals(-100 * 0.03 * (4.5719 + field) / 200, with - without, 1e-3, "kg CO2e per kg live");
        assertEquals(
                Tally.of(LIBRARY, inventory).at("animal").value(),
                Tally.of(LIBRARY, inventory).at("animal").credited().value(),
                0.0);
    }

    @Test
    void feed_is_feed_at_the_animal_too_and_its_field_is_not() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .feed("wheat-bran", 250)
                .inventory();

        assertEquals(
                2.5, Tally.of(LIBRARY, inventory).indicator("feed").at("animal").value(), 1e-12);
        assertTrue(Tally.of(LIBRARY, inventory)
                .indicator("land")
                .at("animal")
                .system()
                .isEmpty());
    }

    @Test
    void eggs_are_counted_as_sold_and_per_kg_of_their_protein() {
        Inventory hens = HerdRecordsFixture.of(LIBRARY, "layers", 10)
                .in("ghana")
                .gives(AnimalKind.EGGS, 40)
                .inventory();
        double perEgg = Tally.of(LIBRARY, hens).value();

        // 88 % without shell, 12.56 % protein (USDA SR 27).
        double perProtein = perEgg / 0.88 / 0.1256;
        assertEquals(
                perProtein,
                Tally.of(LIBRARY, hens).per(FunctionalUnit.KG_PROTEIN).value(),
                5e-4 * perProtein);
    }

    /** A warming set applies to gases, and not to land. */
    @Test
    void a_footprint_names_its_basis_and_a_warming_set_for_gases_only() {
        Inventory inventory = of(builder -> {
            builder.flow(Stage.ANIMALS, "gas", Flux.CH4_BIOGENIC, ActivityTerm.of(2));
            builder.flow(Stage.SITE, "yard", Flux.LAND, ActivityTerm.of(7));
        });
        Footprint gases = Tally.of(LIBRARY, inventory).gwp("ar4-100").system().footprint(new CommonRandomNumbers(1, 3));
        Footprint ground =
                Tally.of(LIBRARY, inventory).indicator("land").system().footprint(new CommonRandomNumbers(1, 3));

        assertEquals(Optional.of("ar4-100"), gases.warmingSet());
        assertEquals("ghg", gases.indicator());
        assertArrayEquals(new double[] {50, 50, 50}, gases.draws(), 1e-12);
        assertEquals(Optional.empty(), ground.warmingSet());
        assertEquals(FunctionalUnit.KG_LIVE, ground.per());
        assertEquals(Boundary.FARM_GATE, ground.boundary());
        assertArrayEquals(new double[] {7, 7, 7}, ground.draws(), 1e-12);
        assertFalse(Tally.of(LIBRARY, inventory).indicator("land").system().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"ANIMAL, ANIMAL", "FARM_GATE, FARM_GATE", "PROCESSING_GATE, PROCESSING_GATE", "RETAIL, FARM_GATE"})
    void records_end_at_a_gate_where_a_question_would_end_at_retail(Boundary usual, Boundary ofRecords) {
        assertEquals(ofRecords, Scope.boundaryOfRecords(usual));
    }

    @ParameterizedTest
    @CsvSource({
        "ANIMALS, animals, ANIMAL",
        "MANURE, manure, ANIMAL",
        "FEED, feed, FARM_GATE",
        "CREDIT, credit, FARM_GATE",
        "PROCESSING, processing, PROCESSING_GATE"
    })
    void each_stage_belongs_to_the_animals_the_farm_or_the_processing(Stage stage, String id, Boundary narrowest) {
        assertEquals(id, stage.id());
        assertEquals(narrowest, stage.boundary());
    }
}
