package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.herd.Herd;
import org.scalepan.words.Message;

/** What the records leave open bears on some indicators and not on others. The herds are invented. */
class GapTest {
    private static final Library LIBRARY = Libraries.bundled();

    /** A herd that records all that adds to land and energy: its maize has a yield and its own energy and water. */
    private static HerdRecordsFixture cows(String manure) {
        return HerdRecordsFixture.of(LIBRARY, "dairy-cattle", 10)
                .in("kenya")
                .climate("tropical-wet")
                .gives(Herd.AnimalKind.MILK, 60_000)
                .manure(manure, 1)
                .feed(Fed.of("maize", 45_000).moisture(0.13))
                .energy("diesel", 90)
                .area(40, 500);
    }

    private static Scope scope(String indicator, Boundary boundary) {
        return new Scope(
                LIBRARY.indicators().get(indicator),
                FunctionalUnit.KG_LIVE,
                boundary,
                LIBRARY.warmingSets().get("ar6-100"),
                false);
    }

    private static Bound bound(Inventory inventory, String indicator) {
        return inventory.bound(scope(indicator, Boundary.FARM_GATE));
    }

    private static Gap gap(Inventory inventory, String field) {
        return inventory.gaps().stream()
                .filter(gap -> gap.field().equals(field))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no gap " + field + " among " + inventory.gaps()));
    }

    @Test
    void given_manure_without_a_factor_of_nitrous_oxide_then_greenhouse_gases_are_a_lower_bound_and_land_is_not() {
        Inventory inventory = cows("mms.aerobic-treatment").inventory();

        assertEquals(
                Gap.Kind.NOT_COUNTED,
                gap(inventory, "manure/mms.aerobic-treatment").kind());
        assertEquals(
                List.of("ghg"), gap(inventory, "manure/mms.aerobic-treatment").indicators());
        assertEquals(Bound.AT_LEAST, bound(inventory, "ghg"));
        assertEquals(Bound.EXACT, bound(inventory, "land"));
    }

    @Test
    void given_no_water_meter_then_water_is_a_lower_bound_and_feed_is_not() {
        Inventory inventory = cows("mms.pasture").inventory();

        assertEquals(
                List.of("water", "water-on-farm"), gap(inventory, "water_m3").indicators());
        assertEquals(Bound.AT_LEAST, bound(inventory, "water"));
        assertEquals(Bound.EXACT, bound(inventory, "feed"));
        assertEquals(Bound.EXACT, bound(inventory, "feed-dry-matter"));
    }

    @Test
    void a_field_that_a_default_fills_makes_no_lower_bound_whatever_its_words() {
        Gap filled = new Gap(
                "x", Gap.Kind.FILLED, List.of("ghg"), Message.verbatim("some words: not counted as bought"), List.of());

        assertFalse(filled.lowers(scope("ghg", Boundary.FARM_GATE)));
    }

    /** A farm that records all that is required of greenhouse gases, land and feed; transport and materials it leaves open. */
    private static InsectRecordsFixture mealworms() {
        return InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .in("france")
                .feed("wheat-bran", 200)
                .energy("grid-electricity", 60)
                .area(12, 0);
    }

    @Test
    void transport_and_materials_that_nobody_wrote_down_are_cut_off_and_make_no_bound() {
        Inventory inventory = mealworms().inventory();

        assertEquals(Gap.Kind.CUT_OFF, gap(inventory, "transport").kind());
        assertEquals(Gap.Kind.CUT_OFF, gap(inventory, "materials").kind());
        assertEquals(
                Bound.EXACT, bound(inventory, "ghg"), () -> inventory.gaps().toString());
        assertEquals(Bound.EXACT, bound(inventory, "land"));
        assertEquals(Bound.EXACT, bound(inventory, "feed"));
    }

    @Test
    void given_no_feed_then_every_indicator_is_at_least_and_the_animals_own_gases_are_not() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .in("france")
                .energy("grid-electricity", 60)
                .area(12, 0)
                .inventory();

        for (String indicator : Scope.INDICATORS) {
            // The meters of the farm are read, whatever was fed.
            Bound expected = indicator.equals("energy-on-farm") ? Bound.EXACT : Bound.AT_LEAST;
            assertEquals(expected, bound(inventory, indicator), indicator);
        }
    }

    @Test
    void given_no_energy_then_greenhouse_gases_are_at_least_at_the_farm_gate_and_exact_at_the_animals() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .in("france")
                .feed("wheat-bran", 200)
                .inventory();

        assertEquals(Bound.AT_LEAST, inventory.bound(scope("ghg", Boundary.FARM_GATE)));
        assertEquals(Bound.EXACT, inventory.bound(scope("ghg", Boundary.ANIMAL)));
    }

    @ParameterizedTest(name = "{0} kg of 1000 kg feed without a published figure: {1}")
    @CsvSource({"5, EXACT", "9, EXACT", "11, AT_LEAST", "400, AT_LEAST"})
    void feed_without_a_factor_makes_a_bound_from_one_per_cent_of_the_feed_on(double unknown, Bound expected) {
        Inventory inventory = mealworms()
                .feed("wheat-bran", 790 - unknown + 10)
                .feed("pineapple-residue", unknown)
                .inventory();

        assertEquals(expected, bound(inventory, "ghg"), () -> inventory.gaps().toString());
    }

    @Test
    void lines_without_a_factor_are_added_up_before_they_are_called_negligible() {
        Inventory inventory = mealworms()
                .feed("wheat-bran", 790)
                .feed("pineapple-residue", 7)
                .feed("plantain-peel", 7)
                .inventory();

        assertEquals(
                Bound.AT_LEAST, bound(inventory, "ghg"), () -> inventory.gaps().toString());
    }
}
