package org.scalepan.factors.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.Libraries;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Cited;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.GasShares;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.LibraryCopy;
import org.scalepan.factors.PairedRatio;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.StageSplit;
import org.scalepan.factors.table.Table;
import org.scalepan.factors.table.TableSchema;

/** Invariants of the bundled library, whatever its number of rows. */
class BundledLibraryTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final Path FOLDER = LibraryCopy.bundledFolder();

    @Test
    void it_loads_without_a_fault() {
        assertTrue(LibraryLoader.bundled() instanceof LibraryLoad.Loaded);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "house-cricket",
                "field-cricket",
                "mealworm",
                "superworm",
                "black-soldier-fly",
                "housefly",
                "palm-weevil",
                "migratory-locust",
                "silkworm-pupae",
                "beef",
                "beef-beef-herd",
                "beef-dairy-herd",
                "lamb",
                "pork",
                "chicken",
                "egg",
                "milk",
                "cheese",
                "tilapia",
                "farmed-fish",
                "shrimp",
                "tofu",
                "peas",
                "pulses",
                "groundnut",
                "soybean-meal",
                "fishmeal"
            })
    void it_knows_the_products_that_people_compare(String product) {
        assertTrue(LIBRARY.products().containsKey(product));
    }

    @Test
    void insects_livestock_and_plants_are_distinguished() {
        assertEquals("insect", LIBRARY.products().get("palm-weevil").group());
        assertEquals("livestock", LIBRARY.products().get("egg").group());
        assertEquals("fish", LIBRARY.products().get("shrimp").group());
        assertEquals("plant", LIBRARY.products().get("groundnut").group());
        assertEquals("feed", LIBRARY.products().get("fishmeal").group());
    }

    @Test
    void beef_includes_both_herds_and_nothing_else() {
        assertEquals(
                Set.of("beef", "beef-beef-herd", "beef-dairy-herd"),
                LIBRARY.withNarrower(LIBRARY.products().get("beef")).stream()
                        .map(Product::id)
                        .collect(Collectors.toSet()));
    }

    @Test
    void the_description_names_every_file_and_every_file_is_described() throws IOException {
        Set<String> described = new TreeSet<>();
        for (JsonNode resource : dataPackage().path("resources")) {
            described.add(JsonAt.text(resource, "/path"));
        }
        try (Stream<Path> files = Files.list(FOLDER)) {
            Set<String> there = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".csv") || name.equals("sources.json"))
                    .collect(Collectors.toCollection(TreeSet::new));
            described.add("sources.json");
            assertEquals(there, described);
        }
    }

    @Test
    void the_schema_describes_every_column_in_the_order_of_the_file() throws IOException {
        for (JsonNode resource : dataPackage().path("resources")) {
            String path = JsonAt.text(resource, "/path");
            if (path.endsWith(".csv")) {
                List<String> names = new ArrayList<>();
                for (JsonNode field : resource.path("schema").path("fields")) {
                    names.add(JsonAt.text(field, "/name"));
                    assertTrue(
                            JsonAt.text(field, "/description").length() > 3,
                            () -> path + ": " + JsonAt.text(field, "/name") + " is not described");
                    assertTrue(Set.of("string", "number", "integer").contains(JsonAt.text(field, "/type")));
                }
                String header = Files.readAllLines(FOLDER.resolve(path)).get(0);
                assertEquals(header, String.join(",", names), path);
            }
        }
    }

    @Test
    void the_version_of_the_description_is_that_of_the_library() throws IOException {
        assertEquals(LIBRARY.version().version(), JsonAt.text(dataPackage(), "/version"));
    }

    private static JsonNode dataPackage() throws IOException {
        return new ObjectMapper().readTree(Files.readAllBytes(FOLDER.resolve("datapackage.json")));
    }

    @Test
    void ids_are_unique() {
        for (Table table : LIBRARY.tables()) {
            List<String> ids = table.rows().stream().map(row -> row.text("id")).toList();
            assertEquals(ids.size(), new HashSet<>(ids).size(), table.schema().path());
        }
    }

    /** An order that a person can follow: that of products.csv; so a new row has one place. */
    @ParameterizedTest
    @ValueSource(strings = {"results", "feed_conversion", "composition", "stage_splits"})
    void rows_are_in_the_order_of_the_products(String name) {
        List<String> order = List.copyOf(LIBRARY.products().keySet());
        List<Integer> places = LIBRARY.table(name).rows().stream()
                .map(row -> order.indexOf(row.text("product")))
                .toList();
        assertEquals(places.stream().sorted().toList(), places, name);
    }

    @Test
    void sources_are_in_alphabetical_order() {
        List<String> ids = List.copyOf(LIBRARY.references().keySet());
        assertEquals(ids.stream().sorted().toList(), ids);
    }

    @Test
    void every_source_is_cited_and_every_cited_source_is_there() {
        Set<String> cited = new TreeSet<>();
        for (Table table : LIBRARY.tables()) {
            table.schema().fields().stream()
                    .filter(TableSchema.Field::citesSource)
                    .forEach(field -> table.rows().forEach(row -> cited.addAll(row.list(field.name()))));
        }
        assertEquals(new TreeSet<>(LIBRARY.references().keySet()), cited);
    }

    /** "Seen in the full text" or "in the abstract" can only be said of a number whose publication was seen so far. */
    @Test
    void no_number_is_graded_as_seen_in_a_publication_that_was_not_seen() {
        List<Cited> numbers = Stream.of(
                        LIBRARY.results().stream().map(PublishedResult::cited),
                        LIBRARY.composition().stream().map(CompositionRow::cited),
                        LIBRARY.stageSplits().stream().map(StageSplit::cited),
                        LIBRARY.gasShares().stream().map(GasShares::cited),
                        LIBRARY.pairedRatios().stream().map(PairedRatio::cited))
                .flatMap(cited -> cited)
                .filter(cited -> cited.check().isAtLeast(Grade.ABSTRACT))
                .toList();
        assertTrue(numbers.size() > 100);
        for (Cited cited : numbers) {
            Reference reference = LIBRARY.reference(cited.source()).orElseThrow();
            Grade seen = Grade.of(reference.check()).orElseThrow();
            assertTrue(seen.isAtLeast(cited.check()), () -> cited + ", but the source itself was seen as " + seen.id());
        }
    }

    @Test
    void common_practice_has_no_source_and_the_grade_memory() {
        List<Cited> practice = LIBRARY.composition().stream()
                .map(CompositionRow::cited)
                .filter(cited -> cited.source().equals("common-practice"))
                .toList();
        assertTrue(!practice.isEmpty());
        practice.forEach(cited -> {
            assertEquals("no source", cited.locator());
            assertEquals(Grade.MEMORY, cited.check());
        });
    }

    /** Palm weevil is the case for which nothing but composition is published; a figure for it would be an invention. */
    @Test
    void there_is_no_footprint_of_palm_weevil() {
        assertEquals(
                List.of(),
                LIBRARY.results().stream()
                        .filter(result -> result.product().equals("palm-weevil"))
                        .toList());
        assertTrue(LIBRARY.composition().stream().anyMatch(row -> row.product().equals("palm-weevil")));
    }

    /** Chapters of the IPCC have many authors, of whom the records seen name the first. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "ipcc-2006-v4ch10, Dong et al. 2006",
                "ipcc-ar6-wg1-ch7, Forster et al. 2021",
                "ipcc-ar5-wg1-ch8, Myhre et al. 2013",
                "ipcc-2019-v4ch11, Hergoualc'h et al. 2019",
                "thevenot-2018, Thévenot et al. 2018",
                "finke-2002, Finke 2002"
            })
    void a_reference_of_which_not_every_author_is_known_does_not_pass_for_one_of_a_single_author(
            String source, String label) {
        assertEquals(label, Libraries.bundled().reference(source).orElseThrow().label());
    }

    /** Such rows are withdrawn or kept: by default nothing stands that its own note says flatters insects. */
    @Test
    void no_default_flatters_insects_by_its_own_word() {
        List<String> flattering = LIBRARY.tables().stream()
                .flatMap(table -> table.rows().stream())
                .filter(row -> row.optional("note")
                        .filter(note -> note.toLowerCase(Locale.ROOT).contains("flatters"))
                        .isPresent())
                .filter(row -> row.optional("use").orElse("default").equals("default"))
                .map(row -> row.text("id"))
                .toList();
        assertEquals(List.of(), flattering);
    }

    /**
     * Within one source several findings of one product at one boundary differ in a column, or in a system or diet that the finding's name
     * says. Two that differ in nothing are two statements of one finding.
     */
    @Test
    void findings_of_one_source_differ_in_something_that_is_said() {
        Map<String, Set<String>> alike = new TreeMap<>();
        for (PublishedResult result : LIBRARY.results()) {
            String same = String.join(
                    " ",
                    result.study(),
                    result.cited().source(),
                    result.product(),
                    result.form(),
                    result.indicator(),
                    result.boundary().id(),
                    result.luc(),
                    result.region(),
                    result.substrate().orElse(""),
                    result.allocation().orElse(""),
                    result.energyKind().orElse(""),
                    result.feedBasis().orElse(""),
                    result.dataYear().toString());
            String plain = result.cited().source() + "." + result.product() + "." + result.indicator();
            String said = result.finding().equals(plain) ? "" : result.finding();
            alike.computeIfAbsent(same + " " + (said.isEmpty() ? "unnamed" : said), key -> new TreeSet<>())
                    .add(result.finding());
        }
        alike.forEach((same, findings) -> assertEquals(1, findings.size(), same + ": " + findings));
    }

    @Test
    void dry_feed_is_never_counted_as_feed_as_it_is_fed() {
        LIBRARY.results().stream()
                .filter(result -> result.feedBasis().isPresent())
                .forEach(result -> assertEquals(
                        result.feedBasis().filter("dry-matter"::equals).isPresent() ? "feed-dry-matter" : "feed",
                        result.indicator(),
                        result.id()));
    }

    /** Where one entry of the nutrient table has both, yield and protein are of one cut. */
    @ParameterizedTest
    @ValueSource(strings = {"beef", "chicken", "turkey", "duck"})
    void yield_and_protein_are_of_one_cut(String product) {
        assertEquals(entry(product, "bone-free-fraction"), entry(product, "protein"), product);
    }

    private static String entry(String product, String quantity) {
        return LIBRARY.composition().stream()
                .filter(row -> row.product().equals(product)
                        && row.form().equals("fresh")
                        && row.quantity().equals(quantity)
                        && row.use() == CompositionRow.RowUse.DEFAULT)
                .map(row -> row.cited().locator().replaceAll("\\D*0*(\\d{4,5}).*", "$1"))
                .findFirst()
                .orElseThrow();
    }
}
