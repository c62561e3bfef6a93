package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Libraries;
import org.scalepan.ask.InventedResults;
import org.scalepan.factors.Library;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.HeldOut;

/** Whether the intervals of a library hold what they promise. */
class CalibrationTest {
    private static final Library LIBRARY = Libraries.bundled();

    @TempDir
    Path folder;

    /** Only a row at 90 % that holds fewer than chance allows is a fault; one that holds more is told as wide. */
    @Test
    void intervals_of_ninety_per_cent_of_the_bundled_library_hold_no_fewer_than_chance_allows() {
        for (Calibration.CalibrationTable table : Calibration.of(LIBRARY).tables()) {
            for (HeldOut row : table.rows()) {
                if (row.coverage() == 0.9) {
                    assertFalse(row.isTooNarrow(), table.indicator() + ": " + row);
                }
            }
        }
    }

    @Test
    void every_study_is_left_out_once_of_each_pool_and_each_is_in_the_table_of_its_indicator() {
        Calibration calibration = Calibration.of(LIBRARY);
        List<HeldOut> all = calibration.tables().get(0).rows();

        assertEquals(12, all.size());
        int cases = all.stream()
                .filter(row -> row.coverage() == 0.9)
                .mapToInt(HeldOut::cases)
                .sum();
        assertEquals(calibration.leftOut().size(), cases);
        assertEquals(
                cases,
                calibration.tables().stream()
                        .skip(1)
                        .flatMap(table -> table.rows().stream())
                        .filter(row -> row.coverage() == 0.9)
                        .mapToInt(HeldOut::cases)
                        .sum());
        assertEquals(cases, calibration.leftOut().stream().distinct().count());
        assertTrue(cases > 60, "studies left out: " + cases);
    }

    /** Invented: two studies a factor of 100 apart. What lies in the pool of a broader product is not counted twice. */
    @Test
    void own_rows_are_judged_too_and_studies_that_no_prior_explains_are_not_held() {
        Library library = new InventedResults(folder)
                .exact("cockroach", "oonincx-2010", 0.2, "kg-protein")
                .exact("cockroach", "dreyer-2021", 20, "kg-protein")
                .library();
        List<Calibration.StudyLeftOut> own = Calibration.of(library).leftOut().stream()
                .filter(one -> one.question().product().id().equals("cockroach"))
                .toList();

        assertEquals(2, own.size());
        own.forEach(one -> assertEquals(LeaveOneOut.Remaining.ONE, one.place().remaining()));
        assertEquals(1, own.get(0).place().place() + own.get(1).place().place(), 0.02, "mirrored");
        assertTrue(
                Math.abs(own.get(0).place().place() - 0.5) > 0.45,
                "outside 90 %: " + own.get(0).place());
    }
}
