package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.JsonAt;
import org.scalepan.web.RecordsSent;
import org.scalepan.web.Reply;
import org.scalepan.web.server.GeneratedRequestsIT;
import org.scalepan.web.server.RecordsEndpoint;

/**
 * The whole allowed range of amounts, from a billionth of a kilogram to 10^12: every figure is finite, every interval ordered, and rows
 * agree.
 */
class ExtremeAmountsIT {
    private static final List<Double> AMOUNTS = List.of(1e-9, 1e-6, 1e-3, 1.0, 1e6, 1e9, 1e12);
    private static final int CASES = 40;

    private static List<RecordsEndpoint> endpoints() {
        return RecordsEndpoint.ofOneBody();
    }

    @ParameterizedTest
    @MethodSource("endpoints")
    void figures_are_finite_and_intervals_in_order(RecordsEndpoint endpoint) {
        int answered = 0;
        for (int seed = 1; seed <= CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            ObjectNode body = RecordsSent.read(endpoint.right());
            // What is checked holds for any number of draws.
            body.put("draws", 1000);
            stretch(body, random, 1 + random.nextInt(3));
            Reply reply = Reply.to(endpoint.path().replace("?format=md", ""), Map.of(), Optional.of(body.toString()));

            assertTrue(reply.status() == 200 || reply.status() == 400, () -> body + " is answered " + reply.body());
            if (reply.status() == 200) {
                answered++;
                checkText(body, reply.body());
                if (reply.isJson()) {
                    check(body, reply.json());
                }
            }
        }
        assertTrue(answered > 0, "all were refused");
    }

    /** The same farm scaled from the smallest allowed size to the largest. */
    @ParameterizedTest
    @MethodSource("amounts")
    void a_farm_of_any_size_has_the_footprint_per_kilogram_that_its_proportions_give(double kg) {
        ObjectNode usual = farm(1);
        ObjectNode sized = farm(kg);
        Reply reply = Reply.to("/v1/footprint", sized);

        assertEquals(200, reply.status(), reply::body);
        check(sized, reply.json());
        Map<String, Double> expected = medians(Reply.to("/v1/footprint", usual).json());
        Map<String, Double> got = medians(reply.json());
        assertEquals(Set.of("ghg", "land", "energy", "feed"), expected.keySet());
        assertEquals(expected.keySet(), got.keySet());
        expected.forEach((indicator, median) -> assertEquals(median, got.get(indicator), 1e-6 * median, indicator));
    }

    /** Medians per kilogram of the indicators that could be computed. */
    private static Map<String, Double> medians(JsonNode answer) {
        Map<String, Double> medians = new TreeMap<>();
        for (JsonNode figure : JsonAt.array(answer, "/footprints")) {
            if (JsonAt.text(figure, "/status").equals("ok")) {
                medians.put(JsonAt.text(figure, "/indicator"), JsonAt.number(figure, "/footprint/median"));
            }
        }
        return medians;
    }

    static List<Double> amounts() {
        return List.of(1e-3, 1.0, 1e3, 1e6, 1e8);
    }

    private static ObjectNode farm(double kg) {
        return RecordsSent.read("""
                {"system": {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": %s},
                  "feed": [{"ingredient": "wheat-bran", "kg": %s, "burden": "mass"}], "energy": [{"carrier": "diesel", "amount": %s}]},
                 "draws": 1000}
                """.formatted(kg, 2 * kg, kg / 10));
    }

    /** Replaces some numbers by extreme amounts; the number of draws stays. */
    private static void stretch(ObjectNode body, SplittableRandom random, int times) {
        List<Runnable> changes = new ArrayList<>();
        collect(body, random, changes);
        for (int i = 0; i < times && !changes.isEmpty(); i++) {
            changes.get(random.nextInt(changes.size())).run();
        }
    }

    private static void collect(JsonNode node, SplittableRandom random, List<Runnable> changes) {
        if (node instanceof ObjectNode object) {
            object.properties().forEach(field -> {
                boolean amount = field.getValue().isNumber()
                        && !List.of("draws", "seed", "coverage", "year").contains(field.getKey());
                if (amount) {
                    double extreme = AMOUNTS.get(random.nextInt(AMOUNTS.size()));
                    changes.add(() -> object.set(field.getKey(), JsonNodeFactory.instance.numberNode(extreme)));
                }
            });
        }
        node.forEach(inner -> collect(inner, random, changes));
    }

    private static void check(ObjectNode body, JsonNode answer) {
        List<String> faults = new ArrayList<>();
        GeneratedRequestsIT.Ordered.check("", answer, faults);
        if (!faults.isEmpty()) {
            fail(body + "\n" + String.join("\n", faults));
        }
    }

    /** Documents too: no sentence has NaN or infinity. */
    private static void checkText(ObjectNode body, String answer) {
        assertFalse(answer.contains("NaN") || answer.contains("Infinity"), () -> body + "\n" + answer);
    }
}
