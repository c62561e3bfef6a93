package org.scalepan.web.farm;

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
import org.scalepan.JsonAt;
import org.scalepan.factors.Gas;
import org.scalepan.factors.Grade;
import org.scalepan.web.Posted;
import org.scalepan.web.RunningScalepan;

/** The systems of factors/systems: each request is posted unchanged, and then in each unit for which its file expects a figure. */
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
                .filter(file -> JsonAt.flag(read(file), "/about/invented") == invented)
                .count();
    }

    @Test
    void there_are_demonstrations_and_systems_rebuilt_from_publications() {
        assertTrue(count(true) >= 3, "invented: " + count(true));
        assertTrue(count(false) >= 3, "rebuilt: " + count(false));
    }

    /** An invented farm must be recognisable as such wherever its figures are used. */
    @ParameterizedTest
    @MethodSource("files")
    void an_invented_system_says_so_and_a_rebuilt_one_names_its_source_and_grade(Path file) {
        JsonNode about = read(file).path("about");
        String name = JsonAt.text(read(file), "/request/system/name");
        boolean invented = JsonAt.flag(about, "/invented");

        assertEquals(invented, JsonAt.text(about, "/title").startsWith("Invented: "));
        assertEquals(invented, name.startsWith("invented "), name);
        assertEquals(invented, file.getFileName().toString().startsWith("invented-"));
        List<String> sources = JsonAt.texts(about, "/source");
        assertEquals(invented, sources.isEmpty());
        sources.forEach(
                source -> assertTrue(RunningScalepan.library().reference(source).isPresent(), source));
        assertEquals(invented, !about.has("check"));
        assertTrue(invented || Grade.of(JsonAt.text(about, "/check")).isPresent(), about::toString);
        assertFalse(JsonAt.text(about, "/note").isBlank());
    }

    @ParameterizedTest
    @MethodSource("files")
    void each_worked_system_is_in_the_jar(Path file) throws IOException {
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
                .forEach(figure -> assertEquals("ok", JsonAt.text(figure, "/status"), figure::toString));
        assertFalse(system.path("about").path("expected").isEmpty(), "nothing expected");
        for (JsonNode expected : system.path("about").path("expected")) {
            assertEquals(
                    JsonAt.number(expected, "/value"),
                    found(system.path("request"), expected),
                    JsonAt.number(expected, "/tolerance"),
                    expected::toString);
        }
    }

    /** The whole figure, a stage or a line of it, centrally, per the unit that the file expects it in. */
    private static double found(JsonNode request, JsonNode expected) {
        String per = JsonAt.text(expected, "/per");
        boolean whole = per.equals("head") || per.equals("year");
        String unit = !whole ? per : JsonAt.text(request, "/system/kind").equals("herd") ? "kg-product" : "kg-live";
        ObjectNode asked = request.deepCopy();
        asked.put("per", unit);
        JsonNode answer = Posted.answer(asked.toString());
        JsonNode figure = pick(answer.path("footprints"), "indicator", JsonAt.text(expected, "/indicator"));
        assertEquals(unit, JsonAt.text(figure, "/per"));
        double value = JsonAt.number(figure, "/first_order/value");
        if (expected.has("stage")) {
            value = JsonAt.number(pick(figure.path("by_stage"), "stage", JsonAt.text(expected, "/stage")), "/value");
        }
        if (expected.has("line")) {
            JsonNode line = pick(figure.path("lines"), "what", JsonAt.text(expected, "/line"));
            assertEquals("kg CH4", JsonAt.text(expected, "/unit"));
            assertEquals(Gas.CH4_BIOGENIC.id(), JsonAt.text(line, "/flux"));
            value = JsonAt.number(line, "/value")
                    / RunningScalepan.library()
                            .warmingSets()
                            .get(JsonAt.text(figure, "/gwp"))
                            .potential(Gas.CH4_BIOGENIC);
        }
        if (whole) {
            // Back from one unit of the product to the whole farm in a year.
            value *= JsonAt.number(answer, "/system/output") / JsonAt.number(answer, "/system/burden_share");
            return per.equals("year") ? value : value / JsonAt.number(request, "/system/heads");
        }
        return value;
    }

    private static JsonNode pick(JsonNode list, String field, String wanted) {
        for (JsonNode item : list) {
            if (JsonAt.text(item, "/" + field).equals(wanted)) {
                return item;
            }
        }
        throw new AssertionError("no " + wanted + " in " + list);
    }
}
