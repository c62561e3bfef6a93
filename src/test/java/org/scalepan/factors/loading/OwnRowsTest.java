package org.scalepan.factors.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.OwnFolder;
import org.scalepan.factors.table.Fault;

/** Rows of a user's own that would give wrong figures, or none in silence, are refused where they stand. All figures are invented. */
class OwnRowsTest {
    private static final String MEALWORM_GHG = "oonincx-deboer-2012.mealworm.ghg.kg-live";
    private static final String MEALWORM_FEED = "oonincx-2015.mealworm.over-diets.feed.kg-live";

    @TempDir
    Path folder;

    private List<Fault> faults() {
        LibraryLoad load = LibraryLoader.load(new FactorFiles.Bundled(), Optional.of(new FactorFiles.Folder(folder)));
        return assertInstanceOf(LibraryLoad.Broken.class, load).faults();
    }

    private static String told(Fault fault) {
        return fault.what() + "; " + fault.right();
    }

    private static Map<String, String> cells(String changed) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String cell : changed.split(" ")) {
            cells.put(cell.split("=", -1)[0], cell.split("=", -1)[1]);
        }
        return cells;
    }

    @ParameterizedTest
    @CsvSource({
        "value=-3 spread=none reliability=2 completeness=2 technology=2, value is -3",
        "value=0 spread=none reliability=2 completeness=2 technology=2, value is 0",
        "value= spread=range low=-5 high=-1 reliability= completeness= technology=, high is -1",
        "value=2 spread=range low=-1 high=4.4 reliability= completeness= technology=, low is -1",
        "value=2 spread=range low=0 high=4.4 reliability= completeness= technology=, low is 0",
        "value=-1 spread=sd low=-3 high=1 reliability= completeness= technology=, value is -1"
    })
    void a_footprint_at_or_below_zero_is_refused(String changed, String what) {
        new OwnFolder(folder).rowLike("results", MEALWORM_GHG, cells(changed));

        assertTrue(
                faults().stream()
                        .map(OwnRowsTest::told)
                        .anyMatch((what + "; a footprint or ratio must be above zero")::equals),
                () -> faults().toString());
    }

    @Test
    void feed_below_zero_is_refused_too() {
        new OwnFolder(folder).rowLike("feed_conversion", MEALWORM_FEED, Map.of("low", "-1"));

        assertEquals("low is -1", faults().get(0).what());
    }

    @Test
    void percentiles_beside_another_spread_are_refused() {
        new OwnFolder(folder).rowLike("results", MEALWORM_GHG, Map.of("p5", "2"));

        assertEquals("p5 without spread percentiles", faults().get(0).what());
    }

    @Test
    void a_number_printed_alone_needs_its_three_pedigree_scores() {
        new OwnFolder(folder)
                .rowLike(
                        "results",
                        MEALWORM_GHG,
                        cells("value=3 spread=none low= high= reliability= completeness=2 technology="));

        assertEquals(
                List.of("reliability is missing", "technology is missing"),
                faults().stream().map(Fault::what).toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Results.CSV",
                "results.txt",
                "RESULTS.csv",
                "results.csv.txt",
                "results.xlsx",
                "results.tsv",
                "Sources.json"
            })
    void a_file_that_only_looks_like_a_table_is_not_ignored_in_silence(String name) throws IOException {
        Files.writeString(
                folder.resolve("sources.json"),
                "[{\"id\": \"own\", \"type\": \"report\", \"title\": \"T\", \"custom\": {\"check\": \"fulltext\"}}]");
        Files.writeString(folder.resolve(name), "id\n");

        assertEquals(
                List.of(folder.resolve(name) + ": no table has this file name"),
                faults().stream()
                        .map(fault -> fault.file() + ": " + fault.what())
                        .toList());
    }

    @Test
    void hidden_files_and_notes_beside_the_tables_are_no_tables() throws IOException {
        new OwnFolder(folder).rowLike("results", MEALWORM_GHG, Map.of("note", "invented"));
        Files.writeString(folder.resolve(".results.csv"), "id\n");
        Files.writeString(folder.resolve("README.md"), "notes");

        assertInstanceOf(
                LibraryLoad.Loaded.class,
                LibraryLoader.load(new FactorFiles.Bundled(), Optional.of(new FactorFiles.Folder(folder))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"beef", "beef-dairy-herd"})
    void a_product_that_includes_itself_is_refused(String broader) {
        new OwnFolder(folder).rowLike("products", "beef", Map.of("broader", broader));

        assertTrue(
                faults().stream().map(Fault::what).anyMatch("the product beef is included in itself"::equals),
                () -> faults().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1000"})
    void a_unit_with_a_factor_that_is_not_above_zero_is_refused(String factor) {
        new OwnFolder(folder).rowLike("units", "kg CO2e", Map.of("factor", factor));

        assertEquals(
                List.of("factor is " + factor + "; a unit must be above zero"),
                faults().stream().map(OwnRowsTest::told).toList());
    }

    @ParameterizedTest
    @CsvSource({"name, beef", "aliases, Beef", "aliases, house crickets", "aliases, yellow-mealworm"})
    void a_name_that_means_another_product_already_is_refused(String column, String name) {
        new OwnFolder(folder).rowLike("products", "superworm", Map.of(column, name));

        assertEquals(1, faults().size(), () -> faults().toString());
        assertTrue(faults().get(0).what().startsWith("the name \"" + name + "\" means "), () -> faults().toString());
    }

    @Test
    void an_unknown_grade_of_a_source_is_refused_with_the_known_ones_at_its_line() throws IOException {
        Files.writeString(folder.resolve("sources.json"), """
                [
                  {"id": "own", "type": "report", "title": "Own records",
                   "custom": {"check": "best"}}
                ]
                """);

        Fault fault = faults().get(0);
        assertEquals(
                "unknown custom.check \"best\" of own; it must be one of fulltext, abstract, secondary, memory",
                told(fault));
        assertEquals(3, fault.line());
    }

    @Test
    void whole_numbers_are_told_as_whole_numbers() {
        new OwnFolder(folder)
                .rowLike("results", MEALWORM_GHG, Map.of("id", "a", "data_year", "2026.5"))
                .rowLike("results", MEALWORM_GHG, Map.of("id", "b", "data_year", "2101"));

        assertEquals(
                List.of(
                        "data_year \"2026.5\" is not a whole number; write digits alone, such as 2012",
                        "data_year is 2101; it must be at most 2100"),
                faults().stream().map(OwnRowsTest::told).toList());
    }

    /** What the parsers say is in words of their own settings. */
    @ParameterizedTest
    @ValueSource(
            strings = {"[NaN]", "[1", "{", "[{\"id\": 1e}]", "[] []", "[{\"a\":1,\"a\":2}]", "[\"\u0001\"]", "[tru]"})
    void no_message_of_a_parser_reaches_the_user(String json) throws IOException {
        Files.writeString(folder.resolve("sources.json"), json);

        String told = faults().toString();
        for (String inner : List.of("Feature", "Source:", "jackson", "Unexpected", "token", "JsonParser", "`")) {
            assertFalse(told.contains(inner), told);
        }
    }
}
