package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
 * What says the fields of the records beside their table says the same: the description of the service, the template of a table of
 * farms, and the list of the page for farms.
 */
class RecordFieldsTest {
    private static final Path RESOURCES = Path.of("src", "main", "resources");
    /** Symbols that a unit is made of; a description that leaves one out is of another unit. */
    private static final Pattern SYMBOL =
            Pattern.compile("kWh|kg(?: N| CO2e)?|m2\\*yr|m2|m3|MJ|percent|days|hours|containers|pairs");

    /** The page's names of units, and the units that they are short for. */
    private static final Map<String, Set<String>> ON_THE_PAGE = Map.ofEntries(
            Map.entry("kg", Set.of("kg a year", "kg as fed a year")),
            Map.entry("kgkept", Set.of("kg in use")),
            Map.entry("kgeach", Set.of("kg live")),
            Map.entry("m3", Set.of("m3 a year")),
            Map.entry("m2", Set.of("m2")),
            Map.entry("percent", Set.of("", "kg N per kg")),
            Map.entry("count", Set.of("containers")),
            Map.entry("ayear", Set.of("a year")),
            Map.entry("perkg", Set.of("per kg")),
            Map.entry("days", Set.of("days")),
            Map.entry("years", Set.of("years")),
            Map.entry("year", Set.of("")),
            Map.entry("eachbox", Set.of("pairs per container")),
            Map.entry("hens", Set.of("heads")),
            Map.entry("price", Set.of("per kg, in the currency of the records")),
            Map.entry("kgperkg", Set.of("kg per kg")),
            Map.entry("ghgperkg", Set.of("kg CO2e per kg")),
            Map.entry("landperkg", Set.of("m2*yr per kg")),
            Map.entry("mjperkg", Set.of("MJ per kg")),
            Map.entry("m3perkg", Set.of("m3 per kg")),
            Map.entry("ghgperkwh", Set.of("kg CO2e per kWh")),
            Map.entry("kwhperkg", Set.of("kWh of delivered energy per kg of water removed")),
            Map.entry("energy-carriers", Set.of("a year")),
            Map.entry("transport-modes", Set.of("tonne-km a year")));

    /** The fields described, by path; one that farms and herds share is described twice. */
    private static final Map<String, List<JsonNode>> DESCRIBED = new TreeMap<>();

    private static Description description;

    @BeforeAll
    static void read() {
        description = Description.read();
        walk("", schema("InsectFarm"));
        walk("", schema("Herd"));
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

    /** A field of the page's list: a call of {@code num}, {@code pick} or {@code text}, with the unit or the words given to it. */
    private record OnPage(String path, String call, String second) {}

    private static final Pattern CALL =
            Pattern.compile("\\b(num|pick|text)\\(\"([a-z0-9_.]+)\"(?:, (\"[a-z0-9-]+\"|\\[[^\\]]*\\]))?");

    private static List<OnPage> page() throws IOException {
        String code = Files.readString(RESOURCES.resolve(Path.of("site", "page", "farm-records.js")));
        List<OnPage> fields = new ArrayList<>();
        String lists = code.substring(code.indexOf("export const lists"), code.indexOf("export const together"));
        // A list begins with two blanks and its name.
        for (String list : lists.split("(?m)^  (?=\\w+: \\{)")) {
            add(fields, list.replaceAll("(?s):.*", ".#."), list);
        }
        add(fields, "", code.substring(code.indexOf("export const groups"), code.indexOf("export function lineOf")));
        return fields;
    }

    private static void add(List<OnPage> fields, String before, String code) {
        Matcher calls = CALL.matcher(code);
        while (calls.find()) {
            String second = calls.group(3) == null ? "" : calls.group(3);
            fields.add(new OnPage(before + calls.group(2).replaceFirst("^hens\\.", ""), calls.group(1), second));
        }
    }

    private static void eachOnPage(String call, Shown check) throws IOException {
        List<OnPage> called =
                page().stream().filter(one -> one.call().equals(call)).toList();
        assertFalse(called.isEmpty(), () -> "the page has no " + call);
        assertAll(called.stream()
                .map(one -> () -> check.holds(
                        RecordField.at(one.path())
                                .orElseThrow(() -> new AssertionError(one.path() + " is no field of the records")),
                        one.second())));
    }

    private interface Shown {
        void holds(RecordField field, String second);
    }

    @Test
    void a_number_asked_for_on_the_page_is_a_number_of_the_records_in_the_same_unit() throws IOException {
        eachOnPage("num", (field, second) -> {
            String shown = second.replace("\"", "");
            assertTrue(field.kind().isNumber(), field.path());
            assertTrue(
                    ON_THE_PAGE.getOrDefault(shown, Set.of()).contains(field.unit()),
                    () -> field.path() + " is in \"" + field.unit() + "\", the page asks for " + shown);
        });
    }

    @Test
    void a_text_asked_for_on_the_page_is_free_text_of_the_records() throws IOException {
        eachOnPage("text", (field, second) -> assertEquals(FieldKind.TEXT, field.kind(), field.path()));
    }

    @Test
    void a_choice_on_the_page_is_a_word_of_the_records_and_offers_the_words_described() throws IOException {
        eachOnPage("pick", (field, second) -> {
            assertEquals(FieldKind.WORD, field.kind(), field.path());
            if (second.startsWith("[")) {
                Set<String> offered = new TreeSet<>();
                Matcher words = Pattern.compile("\"([a-z-]+)\"").matcher(second);
                while (words.find()) {
                    offered.add(words.group(1));
                }
                Set<String> described = new TreeSet<>();
                DESCRIBED
                        .getOrDefault(field.path(), List.of())
                        .forEach(schema -> schema.path("enum").forEach(word -> described.add(JsonAt.text(word, ""))));
                assertEquals(described, offered, field.path());
            }
        });
    }
}
