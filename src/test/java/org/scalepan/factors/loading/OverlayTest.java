package org.scalepan.factors.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;
import org.scalepan.factors.LibraryCopy;
import org.scalepan.factors.LibraryVersion;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.table.Fault;

/** A user's own folder overlays the bundled library. The figures of the user's rows are invented. */
class OverlayTest {
    private static final String MEALWORM_GHG = "oonincx-deboer-2012.mealworm.ghg.kg-live";

    @TempDir
    Path folder;

    private static PublishedResult result(Library library, String id) {
        List<PublishedResult> found =
                library.results().stream().filter(row -> row.id().equals(id)).toList();
        assertEquals(1, found.size(), () -> id + " stands " + found.size() + " times");
        return found.get(0);
    }

    @Test
    void a_row_with_a_known_id_replaces_the_bundled_one_in_its_place() {
        Library library = new OwnFolder(folder)
                .rowLike("results", MEALWORM_GHG, Map.of("value", "3.10"))
                .library();
        assertEquals(3.10, result(library, MEALWORM_GHG).printed().value().getAsDouble(), "kg CO2e per kg live");
        assertTrue(result(library, MEALWORM_GHG).overlaid());
        assertEquals(
                Libraries.bundled().results().stream().map(PublishedResult::id).toList(),
                library.results().stream().map(PublishedResult::id).toList());
    }

    @Test
    void a_row_with_a_new_id_is_added_and_no_other_is_marked() {
        Library library = new OwnFolder(folder)
                .rowLike("results", MEALWORM_GHG, Map.of("id", "own.mealworm.ghg", "finding", "own.mealworm.ghg"))
                .library();
        assertEquals(Libraries.bundled().results().size() + 1, library.results().size());
        assertEquals(
                List.of("own.mealworm.ghg"),
                library.results().stream()
                        .filter(PublishedResult::overlaid)
                        .map(PublishedResult::id)
                        .toList());
        assertFalse(result(library, MEALWORM_GHG).overlaid());
    }

    @Test
    void own_rows_change_the_version_and_the_digest_and_are_counted() {
        LibraryVersion bundled = Libraries.bundled().version();
        LibraryVersion own = new OwnFolder(folder)
                .rowLike("results", MEALWORM_GHG, Map.of("value", "3.10"))
                .rowLike("composition", "finke-2002.mealworm.fresh.protein", Map.of("value", "0.20"))
                .library()
                .version();
        assertEquals(bundled.version() + "+own", own.version());
        assertEquals(2, own.ownRows());
        assertNotEquals(bundled.digest(), own.digest());
        assertEquals(0, bundled.ownRows());
    }

    @Test
    void a_row_that_cites_a_source_of_the_users_own_is_sound() throws IOException {
        Files.writeString(folder.resolve("sources.json"), """
                [{"id": "own-farm-2026", "type": "report", "title": "Records of our own farm",
                  "custom": {"check": "fulltext"}}]
                """);
        Library library = new OwnFolder(folder)
                .rowLike(
                        "results",
                        MEALWORM_GHG,
                        Map.of("id", "own.ghg", "finding", "own.ghg", "source", "own-farm-2026"))
                .library();
        assertEquals(
                "Records of our own farm",
                library.reference("own-farm-2026").orElseThrow().title());
        assertTrue(library.reference("oonincx-deboer-2012").isPresent());
    }

    private void assertOneFault(String place, String what) {
        List<Fault> faults = faults(new OwnFolder(folder));
        assertEquals(
                List.of(place + ": " + what),
                faults.stream().map(fault -> fault.file() + ": " + fault.what()).toList());
    }

    @Test
    void a_folder_without_any_table_is_reported() {
        assertOneFault(folder.toString(), "the folder holds no table");
    }

    @Test
    void a_whole_copy_of_the_bundled_folder_loads() {
        new LibraryCopy(folder);
        assertEquals(
                Libraries.bundled().results().size(),
                Libraries.withOwn(folder).results().size());
    }

    @Test
    void a_data_package_of_the_users_own_is_refused() throws IOException {
        new LibraryCopy(folder).write("datapackage.json", "{}");
        assertOneFault(
                folder.resolve("datapackage.json").toString(), "the columns cannot be changed by a folder of your own");
    }

    @Test
    void a_folder_in_the_place_of_a_table_and_a_link_in_a_circle_are_reported() throws IOException {
        Path results = folder.resolve("results.csv");
        Files.createDirectory(results);
        assertOneFault(results.toString(), "it is not a regular file");
        Files.delete(results);
        Files.createSymbolicLink(results, results);
        assertOneFault(results.toString(), "it is not a regular file");
    }

    @Test
    void a_file_above_32_megabytes_is_not_read() throws IOException {
        Path results = folder.resolve("results.csv");
        try (var file = new java.io.RandomAccessFile(results.toFile(), "rw")) {
            file.setLength(32L * 1024 * 1024 + 1);
        }
        assertOneFault(results.toString(), "the file is larger than 32 MB");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[] []", "[{\"id\": \"a\", \"id\": \"b\"}]"})
    void sources_with_a_second_document_or_a_name_given_twice_are_not_read(String json) throws IOException {
        Files.writeString(folder.resolve("sources.json"), json);
        Fault fault = faults(new OwnFolder(folder)).get(0);
        assertTrue(
                List.of("not JSON from here on", "the field \"id\" stands twice in one object")
                        .contains(fault.what()),
                fault::toString);
        assertFalse(fault.toString().matches(".*(Feature|Source:|jackson|`).*"), fault::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e13", "1e-13", "1e-400", "1e300"})
    void a_value_that_nothing_measured_can_have_is_refused(String value) {
        List<String> faults =
                faults(new OwnFolder(folder).rowLike("results", MEALWORM_GHG, Map.of("value", value))).stream()
                        .map(Fault::what)
                        .toList();
        assertTrue(faults.contains("value is " + value), faults::toString);
    }

    @Test
    void a_name_with_a_line_break_is_refused() {
        List<String> faults =
                faults(new OwnFolder(folder).rowLike("products", "beef", Map.of("name", "be\nef"))).stream()
                        .map(Fault::what)
                        .toList();
        assertTrue(faults.contains("name holds a line break, a tab or another control character"), faults::toString);
    }

    @Test
    void a_fault_names_the_users_file_and_the_users_line() {
        OwnFolder own = new OwnFolder(folder)
                .rowLike("results", MEALWORM_GHG, Map.of("id", "own.a", "finding", "own.a"))
                .rowLike("results", MEALWORM_GHG, Map.of("id", "own.b", "finding", "own.b", "product", "beeef"));
        List<Fault> faults = faults(own);
        assertEquals(1, faults.size(), faults::toString);
        assertEquals(folder.resolve("results.csv").toString(), faults.get(0).file());
        assertEquals(3, faults.get(0).line());
        assertEquals("unknown product \"beeef\"", faults.get(0).what());
    }

    @Test
    void faults_of_several_own_files_are_reported_at_once() {
        OwnFolder own = new OwnFolder(folder)
                .rowLike("results", MEALWORM_GHG, Map.of("id", "own.a", "finding", "own.a", "product", "beeef"))
                .rowLike(
                        "composition",
                        "finke-2002.mealworm.fresh.protein",
                        Map.of("id", "own.p", "value", "19 %", "use", "kept"))
                .rowLike("composition", "finke-2002.mealworm.fresh.dry-matter", Map.of("id", "", "use", "kept"));
        assertEquals(
                List.of("value \"19 %\" is not a number", "id is missing", "unknown product \"beeef\""),
                faults(own).stream().map(Fault::what).toList());
    }

    @Test
    void an_own_default_beside_the_bundled_one_is_refused_because_there_can_be_only_one() {
        List<Fault> faults = faults(new OwnFolder(folder)
                .rowLike("composition", "finke-2002.mealworm.fresh.protein", Map.of("id", "own.p", "value", "0.19")));
        assertEquals(
                List.of("a second default for mealworm/fresh/protein/kg-edible"),
                faults.stream().map(Fault::what).toList());
        assertEquals(folder.resolve("composition.csv").toString(), faults.get(0).file());
    }

    private static List<Fault> faults(OwnFolder own) {
        LibraryLoad load =
                LibraryLoader.load(new FactorFiles.Bundled(), Optional.of(new FactorFiles.Folder(own.path())));
        return assertInstanceOf(LibraryLoad.Broken.class, load).faults();
    }

    @Test
    void a_misspelt_file_name_is_reported_with_the_name_that_was_meant() throws IOException {
        Files.writeString(folder.resolve("result.csv"), "id\n");
        LibraryLoad load = LibraryLoader.load(new FactorFiles.Bundled(), Optional.of(new FactorFiles.Folder(folder)));
        LibraryLoad.Broken broken = assertInstanceOf(LibraryLoad.Broken.class, load);
        assertEquals(
                List.of(
                        folder.resolve("result.csv")
                                + ":1:1: no table has this file name; did you mean results.csv? see factors/README.md for the files"),
                broken.faults().stream().map(Fault::toString).toList());
    }

    /** The example that shows how own rows are written must itself be right. */
    @Test
    void the_example_in_the_readme_of_the_factors_loads() throws IOException {
        String readme = Files.readString(Path.of("factors/README.md"));
        Files.writeString(folder.resolve("results.csv"), block(readme, "csv"));
        Files.writeString(folder.resolve("sources.json"), block(readme, "json"));
        LibraryLoad load = LibraryLoader.load(new FactorFiles.Bundled(), Optional.of(new FactorFiles.Folder(folder)));
        Library library =
                assertInstanceOf(LibraryLoad.Loaded.class, load, load::toString).library();
        assertEquals(1, library.version().ownRows());
        assertEquals(
                3.1, result(library, "own-trial.mealworm.ghg").printed().value().getAsDouble(), "kg CO2e per kg live");
    }

    private static String block(String markdown, String language) {
        String opening = "```" + language + "\n";
        int start = markdown.indexOf(opening) + opening.length();
        return markdown.substring(start, markdown.indexOf("```", start));
    }
}
