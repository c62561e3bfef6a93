package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.production.FieldKind;
import org.scalepan.production.RecordField;
import org.scalepan.web.server.Description;

/**
 * The table of the fields of the records, and what is read from it: the description of the service, the template of a table of farms, and
 * the form of the page for farms.
 */
class RecordFieldsTest {
    private static final Path RESOURCES = Path.of("src", "main", "resources");
    /** Symbols that a unit is made of; a description that leaves one out is of another unit. */
    private static final Pattern SYMBOL =
            Pattern.compile("kWh|kg(?: N| CO2e)?|m2\\*yr|m2|m3|MJ|percent|days|hours|containers|pairs");

    /** Fields whose unit is that of the choice beside them. */
    private static final Set<String> MEASURED = Set.of("energy.#.amount", "transport.#.tonne_km", "frass.nitrogen");

    /** The fields described, by path; one that several kinds of farm share is described as often. */
    private static final Map<String, List<JsonNode>> DESCRIBED = new TreeMap<>();

    private static Description description;

    @BeforeAll
    static void read() {
        description = Description.read();
        walk("", schema("InsectFarm"));
        walk("", schema("Herd"));
        walk("", schema("FishFarm"));
    }

    private static JsonNode schema(String name) {
        return description.root().path("components").path("schemas").path(name);
    }

    private static void walk(String path, JsonNode given) {
        JsonNode schema = followed(given);
        if (Description.isRecordedNumber(given)) {
            DESCRIBED.computeIfAbsent(path, name -> new ArrayList<>()).add(given);
        } else if (schema.path("oneOf").isArray()) {
            schema.path("oneOf").forEach(one -> walk(path, one));
        } else if (schema.has("items")) {
            walk(path + ".#", schema.path("items"));
        } else if (schema.has("properties")) {
            schema.path("properties")
                    .properties()
                    .forEach(field ->
                            walk(path.isEmpty() ? field.getKey() : path + "." + field.getKey(), field.getValue()));
        } else {
            DESCRIBED.computeIfAbsent(path, name -> new ArrayList<>()).add(schema);
        }
    }

    private static JsonNode followed(JsonNode given) {
        return given.has("$ref") ? schema(JsonAt.text(given, "/$ref").replace("#/components/schemas/", "")) : given;
    }

    private static void eachDescribed(boolean numbers, Described check) {
        assertAll(Stream.of(RecordField.values())
                .filter(field -> field.kind().isNumber() == numbers)
                .flatMap(field -> DESCRIBED.getOrDefault(field.path(), List.of()).stream()
                        .map(schema -> () -> check.holds(field, schema))));
    }

    private interface Described {
        void holds(RecordField field, JsonNode schema);
    }

    @Test
    void a_record_has_exactly_the_fields_that_are_described() {
        Set<String> known = new TreeSet<>();
        for (RecordField field : RecordField.values()) {
            assertTrue(known.add(field.path()), () -> field.path() + " stands twice");
        }

        assertEquals(known, DESCRIBED.keySet());
    }

    @Test
    void the_least_and_the_most_of_a_number_are_those_described() {
        eachDescribed(true, (field, schema) -> {
            if (field.kind() == FieldKind.WHOLE_NUMBER) {
                assertEquals("integer", JsonAt.text(schema.path("type"), ""), field.path());
            } else {
                assertTrue(Description.isRecordedNumber(schema), () -> field.path() + " may be a range");
                assertEquals(schema.path("minimum"), schema.at("/items/minimum"), field.path());
                assertEquals(schema.path("maximum"), schema.at("/items/maximum"), field.path());
            }
            assertEquals(JsonAt.number(schema, "/minimum"), field.least(), field.path());
            assertEquals(JsonAt.number(schema, "/maximum"), field.most(), field.path());
        });
    }

    @Test
    void the_unit_of_a_number_is_the_one_described() {
        eachDescribed(true, (field, schema) -> {
            String said = JsonAt.text(schema.path("description"), "").toLowerCase(Locale.ROOT);
            Matcher symbols = SYMBOL.matcher(field.unit());
            while (symbols.find()) {
                String symbol = symbols.group().toLowerCase(Locale.ROOT);
                assertTrue(
                        said.contains(symbol), () -> field.path() + " is in " + field.unit() + ", described: " + said);
            }
            if (field.unit().isEmpty() && field.kind() == FieldKind.NUMBER) {
                assertTrue(said.contains("fraction") && field.most() <= 1, () -> field.path() + " is a share: " + said);
            }
        });
    }

    @Test
    void free_text_and_words_are_described_as_such() {
        eachDescribed(false, (field, schema) -> {
            assertEquals("string", JsonAt.text(schema.path("type"), ""), field.path());
            // Free text is what any characters may stand in, so long as they are not all blank.
            assertEquals(field.kind() == FieldKind.TEXT, schema.has("pattern"), field.path());
        });
    }

    @Test
    void the_template_of_a_table_of_farms_has_columns_of_the_records_only_and_numbers_in_those_of_numbers()
            throws IOException {
        List<String> lines = Files.readAllLines(RESOURCES.resolve("footprints-template.csv"));
        List<String> header = List.of(lines.get(0).split(","));

        assertTrue(lines.size() > 1, "an example is worth more than a header");
        assertEquals(Set.copyOf(header).size(), header.size(), "a column stands twice");
        for (int i = 0; i < header.size(); i++) {
            String column = header.get(i);
            RecordField field = RecordField.at(column.replaceAll("\\.\\d+\\.", ".#."))
                    .orElseThrow(() -> new AssertionError(column + " is no field of the records"));
            for (String line : lines.subList(1, lines.size())) {
                String cell = line.split(",", -1)[i];
                if (field.kind().isNumber() && !cell.isEmpty()) {
                    double value = Double.parseDouble(cell);
                    assertTrue(value >= field.least() && value <= field.most(), () -> column + " is " + value);
                }
            }
        }
    }

    /** Names in the order in which the page asks, as paths of the records. */
    private static Set<String> askedOnThePage() throws IOException {
        String code = Files.readString(RESOURCES.resolve(Path.of("site", "page", "farm-records.js")));
        Set<String> asked = new TreeSet<>();
        String lists = code.substring(code.indexOf("const lines"), code.indexOf("const beside"));
        // A list begins with two blanks and its name.
        for (String list : lists.split("(?m)^  (?=\\w+: \\{)")) {
            names(list).forEach(name -> asked.add(list.replaceAll("(?s):.*", ".#.") + name));
        }
        String groups = code.substring(code.indexOf("const order"), code.indexOf("const elsewhere"));
        Matcher fields = Pattern.compile("(?<!\\n {2})\\[(\"[^\\[\\]]*)\\]").matcher(groups);
        while (fields.find()) {
            names(fields.group(1)).forEach(name -> asked.add(name.replaceFirst("^hens\\.", "")));
        }
        return asked;
    }

    private static List<String> names(String code) {
        return Pattern.compile("\"([a-z0-9_.]+)\"")
                .matcher(code)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void the_page_asks_for_fields_of_the_records_only() throws IOException {
        Set<String> asked = askedOnThePage();

        assertTrue(asked.size() > 45, () -> "the order of the page was not found: " + asked);
        assertAll(asked.stream()
                .map(path -> () ->
                        assertTrue(RecordField.at(path).isPresent(), () -> path + " is no field of the records")));
    }

    @Test
    void a_unit_of_the_records_is_translated_on_the_page() throws IOException {
        for (String language : List.of("en", "fr")) {
            String messages = Files.readString(RESOURCES.resolve(Path.of("site", "page", language + ".js")));
            assertAll(Stream.of(RecordField.values())
                    .map(RecordField::definition)
                    .filter(field ->
                            field.kind() == FieldKind.NUMBER && !field.unit().isEmpty())
                    .filter(field -> !field.path().startsWith("cattle.") && !MEASURED.contains(field.path()))
                    .map(field -> () -> assertTrue(
                            messages.contains("\"" + field.unit() + "\": \"")
                                    || messages.contains(" " + field.unit() + ": \""),
                            () -> language + " has no words for the unit " + field.unit())));
        }
    }

    @Test
    void a_word_of_the_records_is_told_its_choices_or_where_they_are_listed() {
        assertAll(Stream.of(RecordField.values())
                .map(RecordField::definition)
                .filter(field -> field.kind() == FieldKind.WORD)
                .map(field -> () -> assertTrue(
                        field.words().isEmpty() == field.list().isPresent(), () -> field.path() + " has no words")));
    }
}
