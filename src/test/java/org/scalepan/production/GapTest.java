package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.herd.Herd;

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
                .feed(Fed.of("maize", 9000).moisture(0.13))
                .energy("diesel", 90)
                .area(40, 500);
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
        assertTrue(inventory.isLowerBound("ghg"));
        assertFalse(inventory.isLowerBound("land"));
    }

    @Test
    void given_no_water_meter_then_water_is_a_lower_bound_and_feed_is_not() {
        Inventory inventory = cows("mms.pasture").inventory();

        assertEquals(List.of("water"), gap(inventory, "water_m3").indicators());
        assertTrue(inventory.isLowerBound("water"));
        assertFalse(inventory.isLowerBound("feed"));
        assertFalse(inventory.isLowerBound("feed-dry-matter"));
    }

    @Test
    void a_field_that_a_default_fills_makes_no_lower_bound_whatever_its_words() {
        Gap filled =
                new Gap("x", Gap.Kind.FILLED, List.of("ghg"), "some words: not counted as bought", List.of());

        assertFalse(filled.lowers("ghg"));
    }
}
