package org.scalepan.production.insects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
 * Records of palm-weevil larvae compared with what is published of them: cycles of 15 to 127 days (Monzenga 2017 to Commander 2019), larvae
 * of 1.56 to 6.95 g (Bolondo 2023, Monzenga 2017); and else with what growers usually find (common practice, no source): 1 to 5 kg per
 * container, 2 to 5 pairs stocked, up to 300 eggs per female. Remarks, and never a refusal.
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
    @CsvSource({"14.9, true", "15, false", "28, false", "110, false", "127, false", "127.1, true"})
    void a_cycle_is_15_to_127_days(double days, boolean flagged) {
        assertEquals(flagged, !unusual(larvae().cycleDays(days)).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"143, true", "144, false", "180, false", "641, false", "642, true"})
    void there_are_144_to_641_larvae_to_the_kg(double perKilogram, boolean flagged) {
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
    void a_remark_names_the_sources_and_their_rows() {
        Remark remark = larvae().cycleDays(300).inventory().remarks().stream()
                .filter(one -> one.code().equals(Remark.UNUSUAL))
                .findFirst()
                .orElseThrow();

        assertTrue(remark.text().contains("300 days") && remark.text().contains("15 to 127"), remark::text);
        assertTrue(remark.text().contains("bolondo-2023, commander-2019, ebenebe-okpoko"), remark::text);
        assertFalse(remark.text().contains("no source"), remark::text);
        assertTrue(remark.rows().contains("commander-2019.palm-weevil.business-cycle-days"), remark::toString);
        assertFalse(remark.rows().contains("common-practice.palm-weevil.cycle-days"), remark::toString);
    }

    @Test
    void a_remark_states_that_practice_has_no_source_where_it_has_none() {
        String remark = unusual(larvae().pairs(6)).get(0);

        assertTrue(remark.contains("6 pairs per container") && remark.contains("2 to 5"), remark);
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
