package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.factors.Gas;
import org.scalepan.factors.Grade;

/** The systems of factors/systems: each request is posted as it stands, and then in each unit that its file expects a figure in. */
class WorkedSystemsTest {
    private static final Path FOLDER = Path.of("factors", "systems");
    private static final JsonMapper JSON = new JsonMapper();

    static List<Path> files() {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode read(Path file) {
        try {
            return JSON.readTree(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static long count(boolean invented) {
        return files().stream()
                .filter(file -> read(file).path("about").path("invented").asBoolean() == invented)
                .count();
    }

    @Test
    void there_are_demonstrations_and_systems_rebuilt_from_publications() {
        assertTrue(count(true) >= 3, "invented: " + count(true));
        assertTrue(count(false) >= 3, "rebuilt: " + count(false));
    }

    /** An invented farm must not be taken for evidence, wherever its figures end up. */
    @ParameterizedTest
    @MethodSource("files")
    void an_invented_system_says_so_and_a_rebuilt_one_names_its_source_and_grade(Path file) {
        JsonNode about = read(file).path("about");
        String name = read(file).path("request").path("system").path("name").asText();
        boolean invented = about.path("invented").asBoolean();

        assertTrue(about.path("invented").isBoolean());
        assertEquals(invented, about.path("title").asText().startsWith("Invented: "));
        assertEquals(invented, name.startsWith("invented "), name);
        assertEquals(invented, file.getFileName().toString().startsWith("invented-"));
        assertEquals(invented, about.path("source").isEmpty());
        about.path("source")
                .forEach(source -> assertTrue(
                        RunningScalepan.library().reference(source.asText()).isPresent(), source::toString));
        assertEquals(invented, Grade.of(about.path("check").asText()).isEmpty());
        assertFalse(about.path("note").asText().isBlank());
    }

    @ParameterizedTest
    @MethodSource("files")
    void it_travels_in_the_jar(Path file) throws IOException {
        try (var bundled = WorkedSystemsTest.class.getResourceAsStream("/factors/systems/" + file.getFileName())) {
            assertTrue(bundled != null, file::toString);
            assertEquals(
                    Files.readString(file),
                    new String(bundled.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void it_meets_what_it_expects(Path file) {
        JsonNode system = read(file);
        JsonNode asItStands = Posted.answer(system.path("request").toString());

        asItStands
                .path("footprints")
                .forEach(figure -> assertEquals("ok", figure.path("status").asText(), figure::toString));
        assertFalse(system.path("about").path("expected").isEmpty(), "nothing expected");
        for (JsonNode expected : system.path("about").path("expected")) {
            assertEquals(
                    expected.path("value").asDouble(Double.NaN),
                    found(system.path("request"), expected),
                    expected.path("tolerance").asDouble(Double.NaN),
                    expected::toString);
        }
    }

    /** The whole figure, a stage or a line of it, centrally, per the unit that the file expects it in. */
    private static double found(JsonNode request, JsonNode expected) {
        String per = expected.path("per").asText();
        boolean whole = per.equals("head") || per.equals("year");
        String unit =
                !whole ? per : request.path("system").path("kind").asText().equals("herd") ? "kg-product" : "kg-live";
        ObjectNode asked = request.deepCopy();
        asked.put("per", unit);
        JsonNode answer = Posted.answer(asked.toString());
        JsonNode figure = pick(
                answer.path("footprints"),
                "indicator",
                expected.path("indicator").asText());
        assertEquals(unit, figure.path("per").asText());
        double value = figure.path("first_order").path("value").asDouble();
        if (expected.has("stage")) {
            value = pick(
                            figure.path("by_stage"),
                            "stage",
                            expected.path("stage").asText())
                    .path("value")
                    .asDouble();
        }
        if (expected.has("line")) {
            JsonNode line =
                    pick(figure.path("lines"), "what", expected.path("line").asText());
            assertEquals("kg CH4", expected.path("unit").asText());
            assertEquals(Gas.CH4_BIOGENIC.id(), line.path("flux").asText());
            value = line.path("value").asDouble()
                    / RunningScalepan.library()
                            .warmingSets()
                            .get(figure.path("gwp").asText())
                            .potential(Gas.CH4_BIOGENIC);
        }
        if (whole) {
            // Back from one unit of the product to the whole farm in a year.
            value *= answer.path("system").path("output").asDouble()
                    / answer.path("system").path("burden_share").asDouble();
            return per.equals("year")
                    ? value
                    : value / request.path("system").path("heads").asDouble();
        }
        return value;
    }

    private static JsonNode pick(JsonNode list, String field, String wanted) {
        for (JsonNode item : list) {
            if (item.path(field).asText().equals(wanted)) {
                return item;
            }
        }
        throw new AssertionError("no " + wanted + " in " + list);
    }
}
