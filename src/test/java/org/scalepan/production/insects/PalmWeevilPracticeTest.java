package org.scalepan.production.insects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.production.Inventory;
import org.scalepan.production.Remark;
import org.scalepan.production.Tally;

/**
 * Records of palm-weevil larvae compared with what growers usually find (common practice, no source): harvest at 21 to 28 days, 150 to 180
 * larvae per kg, 1 to 5 kg per container, 2 to 5 pairs stocked, up to 300 eggs per female. Remarks, and never a refusal.
 */
class PalmWeevilPracticeTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static InsectRecordsFixture larvae() {
        return InsectRecordsFixture.of(LIBRARY, "palm-weevil", 600).feed("maize", 3000);
    }

    private static InsectRecordsFixture boxes(double kilograms, double cycles) {
        return larvae().harvest(new Harvest.ByContainer(20, kilograms, cycles));
    }

    private static List<String> unusual(InsectRecordsFixture notebook) {
        return Tally.remarks(notebook.inventory(), Remark.UNUSUAL);
    }

    private static List<String> impossible(InsectRecordsFixture notebook) {
        return Tally.remarks(notebook.inventory(), Remark.AGAINST_PHYSICS);
    }

    @ParameterizedTest
    @CsvSource({"20.9, true", "21, false", "28, false", "28.1, true"})
    void a_cycle_is_21_to_28_days(double days, boolean flagged) {
        assertEquals(flagged, !unusual(larvae().cycleDays(days)).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"149, true", "150, false", "180, false", "181, true"})
    void there_are_150_to_180_larvae_to_the_kg(double perKilogram, boolean flagged) {
        assertEquals(
                flagged,
                !unusual(larvae().harvest(new Harvest.ByNumber(90_000, perKilogram)))
                        .isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"0.99, true", "1, false", "5, false", "5.01, true"})
    void a_container_gives_1_to_5_kg_a_cycle(double kilograms, boolean flagged) {
        assertEquals(flagged, !unusual(boxes(kilograms, 5)).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"1, true", "2, false", "5, false", "6, true"})
    void two_to_five_pairs_are_stocked(double pairs, boolean flagged) {
        assertEquals(flagged, !unusual(larvae().pairs(pairs)).isEmpty());
    }

    /** Two pairs lay at most 600 eggs; at no fewer than 150 larvae per kg they are 4 kg at most. */
    @ParameterizedTest
    @CsvSource({"4.0, 2, false", "4.1, 2, true", "4.1, 3, false"})
    void no_more_larvae_are_harvested_than_eggs_were_laid(double kilograms, double pairs, boolean flagged) {
        List<String> remarks = impossible(boxes(kilograms, 5).pairs(pairs));

        assertEquals(flagged, remarks.stream().anyMatch(text -> text.contains("eggs")), remarks::toString);
    }

    @ParameterizedTest
    @CsvSource({"13, 28, false", "13.1, 28, true", "14, 26, false", "14, 28, true"})
    void cycles_cannot_take_more_days_than_a_year_has(double cycles, double days, boolean flagged) {
        List<String> remarks = impossible(boxes(2, cycles).cycleDays(days));

        assertEquals(flagged, remarks.stream().anyMatch(text -> text.contains("more than a year")), remarks::toString);
    }

    @Test
    void a_remark_states_that_practice_has_no_source() {
        String remark = unusual(larvae().cycleDays(40)).get(0);

        assertTrue(remark.contains("40 days") && remark.contains("21 to 28"), remark);
        assertTrue(remark.contains("common practice, no source"), remark);
    }

    @Test
    void records_within_practice_have_no_remark_and_the_figure_does_not_depend_on_remarks() {
        InsectRecordsFixture usual = boxes(2.5, 12).cycleDays(26).pairs(4);
        Inventory odd = boxes(2.5, 12).cycleDays(400).pairs(40).inventory();

        assertEquals(List.of(), unusual(usual));
        assertEquals(List.of(), impossible(usual));
        assertEquals(
                Tally.of(LIBRARY, usual.inventory()).value(),
                Tally.of(LIBRARY, odd).value(),
                0.0);
    }

    /** Practice of one species does not apply to another. */
    @Test
    void mealworms_are_not_compared_with_the_practice_of_palm_weevils() {
        InsectRecordsFixture mealworms = InsectRecordsFixture.of(LIBRARY, "mealworm", 600)
                .feed("wheat-bran", 3000)
                .cycleDays(90)
                .pairs(100);

        assertEquals(List.of(), unusual(mealworms));
    }
}
