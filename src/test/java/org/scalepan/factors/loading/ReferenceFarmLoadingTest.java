package org.scalepan.factors.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.factors.Library;
import org.scalepan.factors.LibraryCopy;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.factors.table.Fault;

/** A reference farm whose inputs do not rest on rows is no reference: the service does not start on it. */
class ReferenceFarmLoadingTest {
    private static final String FARM = "reference_farms/mealworm-heated-small-temperate.json";

    @TempDir
    private Path folder;

    @BeforeEach
    void copied() {
        new LibraryCopy(folder);
    }

    @Test
    void every_farm_of_the_folder_is_read() throws IOException {
        LibraryLoad load = LibraryLoader.load(new FactorFiles.Folder(folder), Optional.empty());

        if (load instanceof LibraryLoad.Broken broken) {
            throw new AssertionError(String.join(
                    "\n", broken.faults().stream().map(Fault::toString).toList()));
        }
        Library library = ((LibraryLoad.Loaded) load).library();
        try (Stream<Path> files = Files.list(Path.of("factors", "reference_farms"))) {
            assertEquals(
                    files.map(file -> file.getFileName().toString().replace(".json", ""))
                            .sorted()
                            .toList(),
                    library.referenceFarms().stream()
                            .map(ReferenceFarm::id)
                            .sorted()
                            .toList(),
                    "datapackage.json lists every file of the folder among its documents");
        }
    }

    @Test
    void a_farm_that_is_listed_and_not_there_is_refused() throws IOException {
        Files.delete(folder.resolve(FARM));

        assertFault("the file is missing", "every file named in datapackage.json must be there");
    }

    @Test
    void a_number_with_nothing_behind_it_is_refused() throws IOException {
        replace("\"harvest\": {", "\"cycle_days\": 84, \"harvest\": {");

        assertFault("/system/cycle_days: a number with nothing behind it", "add an input for cycle_days");
    }

    @Test
    void a_row_that_no_table_has_is_refused_with_the_nearest_one() throws IOException {
        replace(
                "bioboost-inagro.mealworm-heated-small-farm.feed-conversion",
                "bioboost-inagro.mealworm.feed-conversion");

        assertFault("/inputs/1/rows: no table has a row \"bioboost-inagro.mealworm.feed-conversion\"", "");
    }

    @Test
    void a_number_outside_its_rows_is_refused_with_their_span() throws IOException {
        replace("[1600, 2000, 3000]", "[1600, 2000, 4000]");

        assertFault("feed.0.kg [1600.0, 2000.0, 4000.0] is outside what its rows print", "from 1600.00 to 3000.00");
    }

    @Test
    void a_grade_better_than_that_of_the_worst_row_is_refused() throws IOException {
        replace("\"grade\": \"secondary\"", "\"grade\": \"fulltext\"");

        assertFault("grade \"fulltext\" of feed.0.kg", "its lowest grade is secondary");
    }

    @Test
    void practice_without_a_source_must_be_told_as_such() throws IOException {
        replace("Common practice, no source: 100 trays", "100 trays");

        assertFault("practice that is not told as such", "say \"common practice, no source\"");
    }

    @Test
    void a_range_the_wrong_way_round_is_refused() throws IOException {
        replace("\"building_m2\": [5, 20]", "\"building_m2\": [20, 5]");

        assertFault("/system/building_m2: the range [20.0, 5.0]", "the least first");
    }

    @Test
    void a_second_default_for_one_product_and_climate_is_refused() throws IOException {
        replace(
                "\"product\": \"mealworm\", \"climate\": \"temperate\"}",
                "\"product\": \"house-cricket\", \"climate\": \"tropical\"}");

        assertFault("a second default for house-cricket in a tropical climate", "leave one");
    }

    @Test
    void a_member_that_nothing_reads_is_refused() throws IOException {
        replace("\"scale\": \"small\"", "\"size\": \"small\"");

        assertFault("/size: a member that nothing reads", "it must be one of");
        assertFault("/scale: \"scale\" is \"\"", "it must be one of [small, large]");
    }

    private void replace(String what, String with) throws IOException {
        Path file = folder.resolve(FARM);
        String text = Files.readString(file);
        assertTrue(text.contains(what), "the file has " + what);
        Files.writeString(file, text.replaceFirst(java.util.regex.Pattern.quote(what), with));
    }

    private void assertFault(String what, String right) {
        LibraryLoad load = LibraryLoader.load(new FactorFiles.Folder(folder), Optional.empty());
        List<Fault> faults = load instanceof LibraryLoad.Broken broken ? broken.faults() : List.of();
        assertTrue(
                faults.stream()
                        .anyMatch(fault -> fault.file().endsWith(FARM)
                                && fault.line() >= 1
                                && fault.what().contains(what)
                                && fault.right().contains(right)),
                () -> what + " is not among " + faults);
    }
}
