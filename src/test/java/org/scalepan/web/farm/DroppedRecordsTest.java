package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** Whatever is taken from the records of a worked system, nothing is claimed of it that rests on the figure being lower for it. */
class DroppedRecordsTest {
    private static final JsonMapper JSON = new JsonMapper();

    static Stream<Arguments> damaged() throws IOException {
        List<Arguments> cases = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("factors", "systems"))) {
            for (Path file : files.sorted().toList()) {
                ObjectNode system =
                        (ObjectNode) JSON.readTree(Files.readString(file)).at("/request/system");
                String name = file.getFileName().toString();
                cases.add(Arguments.of(name, "no feed", "ghg", without(system, "feed")));
                cases.add(Arguments.of(name, "no feed", "land", without(system, "feed")));
                cases.add(Arguments.of(name, "no energy", "ghg", without(system, "energy")));
                cases.add(Arguments.of(name, "no site", "land", without(system, "building_m2", "yard_m2")));
                for (int line = 0; line < system.path("feed").size(); line++) {
                    for (String indicator : List.of("ghg", "land")) {
                        cases.add(Arguments.of(
                                name, "feed line " + line + " without a factor", indicator, unknown(system, line)));
                    }
                }
            }
        }
        return cases.stream();
    }

    private static ObjectNode without(ObjectNode system, String... fields) {
        ObjectNode left = system.deepCopy();
        left.remove(List.of(fields));
        return left;
    }

    /** The same mass of something that this library has no factor of. */
    private static ObjectNode unknown(ObjectNode system, int line) {
        ObjectNode other = system.deepCopy();
        ObjectNode fed = (ObjectNode) other.path("feed").path(line);
        double kilograms = JsonAt.number(fed, "/kg");
        fed.removeAll();
        fed.put("ingredient", "pineapple-residue").put("kg", kilograms);
        return other;
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @MethodSource("damaged")
    void nothing_that_rests_on_an_upper_bound_is_claimed(
            String name, String damage, String indicator, ObjectNode system) {
        JsonNode claim = posted(
                "/v1/claim", ask(system, indicator).put("reference", "beef").put("times_less", 1.01));

        JsonNode check = claim.path("checks").path(0);
        JsonNode asked = check.path("cells").path(0);
        if (JsonAt.text(asked, "/verdict").equals("no-evidence")) {
            return;
        }
        // Of little protein, the other feed may hold less nitrogen than the larvae: then nothing is decided at all.
        boolean contradicted = asked.path("product").has("contradictions");
        assertEquals(contradicted ? "none" : "at-most", JsonAt.text(asked, "/bound"), asked::toString);
        if (contradicted) {
            assertEquals("undecided", JsonAt.text(asked, "/verdict"), asked::toString);
        }
        for (JsonNode cell : check.path("cells")) {
            if (cell.path("bound").asText("").equals("at-most")) {
                assertFalse(JsonAt.text(cell, "/verdict").startsWith("holds"), cell::toString);
                assertFalse(JsonAt.text(cell, "/verdict").startsWith("leans"), cell::toString);
                assertFalse(cell.has("share_of_draws"), cell::toString);
            }
        }
        assertFalse(
                claim.path("say_instead").has("times_less"),
                () -> claim.path("say_instead").toString());

        ObjectNode beside = ask(system, indicator);
        beside.remove("indicator");
        beside.putArray("indicators").add(indicator);
        beside.putObject("compare").putArray("products").add("beef");
        JsonNode other = posted("/v1/footprint", beside).at("/footprints/0/compare/0");
        assertFalse(other.has("share_of_draws_less"), other::toString);
    }

    /** No protein of dried black soldier fly is in the library, so that no programme on equal protein can be made with it. */
    static Stream<Arguments> damagedFresh() throws IOException {
        return damaged().filter(one -> !((ObjectNode) one.get()[3]).has("form"));
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @MethodSource("damagedFresh")
    void no_saving_that_rests_on_an_upper_bound_is_to_be_quoted(
            String name, String damage, String indicator, ObjectNode system) {
        ObjectNode programme = JSON.createObjectNode();
        programme.set("system", system);
        programme.put("kg_per_year", 1).put("displacement_rate", 1).put("draws", 1000);
        programme.putArray("baseline").addObject().put("product", "beef");

        for (JsonNode change : JsonAt.array(posted("/v1/substitution", programme), "/indicators")) {
            if (JsonAt.text(change, "/indicator").equals(indicator) && change.has("avoided")) {
                assertEquals("at-most", JsonAt.text(change, "/avoided/bound"), change::toString);
                assertFalse(JsonAt.node(change, "/conservative").has("value"), change::toString);
            }
        }
    }

    private static ObjectNode ask(ObjectNode system, String indicator) {
        ObjectNode question = JSON.createObjectNode();
        question.set("system", system);
        return question.put("indicator", indicator).put("draws", 1000);
    }

    private static JsonNode posted(String path, ObjectNode question) {
        try {
            Posted posted = Posted.to(path, "application/json", JSON.writeValueAsString(question));
            assertEquals(200, posted.status(), posted.body());
            return posted.tree();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
