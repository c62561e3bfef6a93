package org.scalepan.ask.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.Fed;
import org.scalepan.production.HerdRecordsFixture;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.production.herd.Herd.AnimalKind;

/** The figures a grower knows the farm by. */
class KeyFiguresTest {
    private static final String PROTEIN = "protein_out_kg_per_kg_protein_in";
    private static final Library LIBRARY = Libraries.bundled();

    private static double cell(String table, String id) {
        return LIBRARY.table(table).rows().stream()
                .filter(row -> row.text("id").equals(id))
                .findFirst()
                .orElseThrow()
                .number("value")
                .orElseThrow();
    }

    /** By hand from the rows of the feed library (NASEM 2021) and of the composition of mealworms. */
    @Test
    void protein_of_the_larvae_per_protein_of_the_bran() {
        double in = 220
                * cell("ingredient_composition", "nasem-2021.wheat-bran.dry-matter")
                * cell("ingredient_composition", "nasem-2021.wheat-bran.protein");
        double out = 100
                * LIBRARY.composition().stream()
                        .filter(row -> row.product().equals("mealworm")
                                && row.form().equals("fresh")
                                && row.quantity().equals("protein")
                                && row.use() == org.scalepan.factors.CompositionRow.RowUse.DEFAULT)
                        .findFirst()
                        .orElseThrow()
                        .printed()
                        .value()
                        .orElseThrow();

        double told = KeyFigures.of(
                        LIBRARY,
                        InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                                .feed(Fed.of("wheat-bran", 220))
                                .inventory())
                .get(PROTEIN);

        assertEquals(out / in, told, 0.02 * out / in, "kg per kg; edible is taken as the whole larva");
    }

    @Test
    void it_is_left_out_where_the_protein_of_an_ingredient_is_not_known() {
        assertFalse(KeyFigures.of(
                        LIBRARY,
                        InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                                .feed(Fed.of("wheat-bran", 200))
                                .feed(Fed.of("palm-pith", 100))
                                .inventory())
                .containsKey(PROTEIN));
    }

    /** The library has no dry matter of palm pith. */
    @Test
    void neither_is_dry_matter_told_of_a_part_of_the_feed() {
        InsectRecordsFixture notebook =
                InsectRecordsFixture.of(LIBRARY, "mealworm", 100).feed(Fed.of("wheat-bran", 200));

        assertTrue(KeyFigures.of(LIBRARY, notebook.inventory()).containsKey("feed_dry_matter_kg_per_kg_live"));
        assertFalse(
                KeyFigures.of(LIBRARY, notebook.feed(Fed.of("palm-pith", 100)).inventory())
                        .containsKey("feed_dry_matter_kg_per_kg_live"));
    }

    @Test
    void a_herd_without_recorded_feed_has_none() {
        assertFalse(KeyFigures.of(
                        LIBRARY,
                        HerdRecordsFixture.of(LIBRARY, "layers", 10)
                                .gives(AnimalKind.EGGS, 40)
                                .inventory())
                .containsKey(PROTEIN));
    }

    /** Milk and meat share the feed by protein, so each has the protein conversion of the herd as a whole. */
    @Test
    void products_that_share_the_burden_by_protein_share_the_conversion() {
        HerdRecordsFixture herd = HerdRecordsFixture.of(LIBRARY, "dairy-cattle", 10)
                .gives(AnimalKind.MILK, 60_000)
                .gives(AnimalKind.LIVE, 2_000)
                .feed(Fed.of("maize", 30_000))
                .feed(Fed.of("soybean-meal", 8_000));
        double milk = KeyFigures.of(LIBRARY, herd.asked("milk").inventory()).get(PROTEIN);
        double beef = KeyFigures.of(LIBRARY, herd.asked("beef").inventory()).get(PROTEIN);

        assertEquals(milk, beef, 1e-12 * milk);
    }
}
