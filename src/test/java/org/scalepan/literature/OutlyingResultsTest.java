package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;

/** A published result far from its neighbours is a mistake of unit or basis, or it has a reason. */
class OutlyingResultsTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static Set<String> flagged(Library library) {
        return OutlyingResults.of(library).stream()
                .map(row -> row.result().id())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> explained() {
        return LIBRARY.table("outliers").rows().stream()
                .map(row -> row.text("id"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void every_result_beyond_a_factor_of_three_has_its_reason() {
        List<String> unexplained = OutlyingResults.of(LIBRARY).stream()
                .filter(row -> !explained().contains(row.result().id()))
                .map(row -> String.format(
                        Locale.ROOT,
                        "%s is %.3g times the median of %s: check its unit and basis; correct it, or give outliers.csv the reason",
                        row.result().id(),
                        row.ratio(),
                        row.basis()))
                .toList();
        assertEquals(List.of(), unexplained);
    }

    @Test
    void no_reason_is_kept_for_a_result_that_is_no_outlier() {
        Set<String> stale = explained();
        stale.removeAll(flagged(LIBRARY));
        assertEquals(Set.of(), stale, "withdraw these rows of outliers.csv");
    }

    /** Mealworms per kilogram live, entered a thousand times too large, as grams read for kilograms would be. */
    @Test
    void a_mistake_of_unit_is_flagged_and_says_how_far_out_it_is(@TempDir Path folder) {
        String id = "dreyer-2021.mealworm.ghg.kg-protein";
        Library own = new OwnFolder(folder)
                .rowLike("results", id, Map.of("value", "20400"))
                .library();
        OutlyingResults.OutlyingResult row = OutlyingResults.of(own).stream()
                .filter(item -> item.result().id().equals(id))
                .findFirst()
                .orElseThrow();
        assertEquals("mealworm/fresh/ghg/farm-gate/kg-protein", row.basis());
        assertEquals(20400, row.value(), 1e-6, "kg CO2e per kg protein, as printed");
        assertTrue(row.ratio() > 500, "times the median: " + row.ratio());
    }

    @Test
    void results_are_compared_after_conversion_to_one_functional_unit(@TempDir Path folder) {
        String id = "dreyer-2021.mealworm.ghg.kg-protein";
        Library own = new OwnFolder(folder)
                .rowLike("results", id, Map.of("per", "kg-live"))
                .library();
        assertTrue(flagged(own).contains(id), "20.4 kg CO2e per kg live is over 100 per kg protein");
    }

    @Test
    void a_result_with_land_use_change_is_not_held_against_those_without(@TempDir Path folder) {
        String id = "dreyer-2021.mealworm.ghg.kg-protein";
        Library own = new OwnFolder(folder)
                .rowLike("results", id, Map.of("luc", "included", "value", "2040"))
                .library();
        assertTrue(!flagged(own).contains(id), "alone on its basis, it is its own median");
    }
}
