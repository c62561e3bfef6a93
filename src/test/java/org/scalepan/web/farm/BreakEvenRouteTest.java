package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;
import org.scalepan.web.RecordsSent;

/** Break-even over HTTP; the records are invented. */
class BreakEvenRouteTest {
    private static final String PATH = "/v1/break-even";
    private static final String QUESTION = """
            {"system": {"kind": "insects", "product": "superworm", "name": "three sheds", "region": "peru",
              "harvest": {"containers": 40, "kg_per_container": 1.1, "cycles_per_year": 12},
              "feed": [{"ingredient": "wheat-bran", "kg": 3600, "burden": "mass"}],
              "energy": [{"carrier": "grid-electricity", "amount": 150}, {"carrier": "diesel", "amount": 40}],
              "transport": [{"mode": "truck-average", "tonne_km": 90}],
              "processing": [{"step": "drying", "water_kg": 700, "carrier": "diesel"}]},
             "against": "chicken", "input": "feed", "draws": 2000}
            """;

    private static ObjectNode question() {
        return RecordsSent.read(QUESTION);
    }

    private static JsonNode answer(ObjectNode question) {
        return Posted.to(PATH, "application/json", question.toString()).tree();
    }

    private static Posted posted(ObjectNode question) {
        return Posted.to(PATH, "application/json", question.toString());
    }

    /** The pointer of an input in the records. */
    @ParameterizedTest
    @CsvSource({
        "feed:wheat-bran, /system/feed/0, kg, farm-gate",
        "feed, /system/feed/0, kg, farm-gate",
        "energy:diesel, /system/energy/1, amount, farm-gate",
        "transport, /system/transport/0, tonne_km, farm-gate",
        "yield, /system/harvest, kg_per_container, farm-gate",
        "mortality, /system, mortality, farm-gate",
        "grid_intensity, /system, grid_ghg_per_kwh, farm-gate"
    })
    void the_value_sent_to_footprint_gives_equal_medians(String input, String at, String field, String boundary) {
        ObjectNode question = question();
        question.put("input", input).put("boundary", boundary);
        JsonNode answer = answer(question);
        assertEquals("ok", JsonAt.text(answer, "/status"), answer::toString);

        ObjectNode footprint = RecordsSent.read("{\"indicators\": [\"ghg\"], \"draws\": 2000, \"boundary\": \""
                + boundary + "\", \"compare\": {\"products\": [\"chicken\"]}}");
        footprint.set("system", question.path("system"));
        ((ObjectNode) footprint.at(at)).put(field, JsonAt.number(answer, "/break_even/value"));
        JsonNode there = Posted.answer(footprint.toString()).path("footprints").path(0);

        double farm = JsonAt.number(there, "/footprint/median");
        double chicken = JsonAt.number(there, "/compare/0/footprint/median");
        assertEquals(chicken, farm, 1e-6 * chicken);
        assertEquals(chicken, JsonAt.number(answer, "/break_even/there/reference"));
    }

    @Test
    void the_answer_has_a_sentence_with_the_range() {
        JsonNode answer = answer(question());
        String sentence = JsonAt.text(answer, "/sentence");

        assertTrue(
                sentence.startsWith("Three sheds would equal chicken in greenhouse gas emissions per kg protein,"),
                sentence);
        assertTrue(sentence.contains("times what it is now (3600)"), sentence);
        assertTrue(sentence.endsWith("Below that value it has less."), sentence);
        JsonNode range = answer.path("break_even").path("range");
        assertTrue(JsonAt.number(range, "/low") < JsonAt.number(range, "/even_odds"));
        assertTrue(JsonAt.number(range, "/even_odds") < JsonAt.number(range, "/high"));
        assertFalse(answer.path("references").isEmpty());
    }

    @Test
    void a_published_product_has_no_records_to_change() {
        ObjectNode question = question();
        question.remove("system");
        question.put("product", "mealworm");
        Posted posted = posted(question);

        assertEquals(400, posted.status());
        assertTrue(JsonAt.text(posted.fault("/product"), "/message").contains("no records"));
        posted.fault("/system");
    }

    @Test
    void an_input_that_the_records_do_not_have_is_refused_with_those_they_have() {
        ObjectNode question = question();
        question.put("input", "feed:maize");
        JsonNode fault = posted(question).fault("/input");

        assertTrue(JsonAt.text(fault, "/message").contains("no such feed"), fault::toString);
        assertTrue(fault.path("allowed").toString().contains("feed:wheat-bran"), fault::toString);
        question.put("input", "yields");
        assertEquals("yield", JsonAt.text(posted(question).fault("/input"), "/did_you_mean/0"));
    }

    @Test
    void all_errors_are_reported_at_once() {
        Posted posted = Posted.to(PATH, "application/json", """
                {"system": {"kind": "insects", "product": "palm-weevil"}, "against": "beeef", "against_system": {},
                 "indicator": "smell", "draws": 10, "gpw": "ar6-100"}
                """);

        assertEquals(400, posted.status());
        for (String pointer :
                new String[] {"/system/harvest", "/input", "/against_system", "/indicator", "/draws", "/gpw"}) {
            posted.fault(pointer);
        }
    }

    @Test
    void more_draws_than_twenty_footprints_may_have_are_refused() {
        ObjectNode question = question();
        question.put("draws", 200_000);

        assertTrue(JsonAt.text(posted(question).fault("/draws"), "/message").contains("at most 100000"));
    }

    @Test
    void the_same_question_has_the_same_bytes() {
        assertEquals(posted(question()).body(), posted(question()).body());
    }

    /** Found by generated requests: records within limits whose sum or quotient is outside the limits of one entry. */
    @ParameterizedTest
    @CsvSource({"transport", "yield", "feed", "transport:truck-average"})
    void records_whose_sums_exceed_the_limit_of_one_entry_are_answered(String input) {
        ObjectNode question = RecordsSent.read("""
                {"system": {"kind": "insects", "product": "mealworm",
                  "harvest": {"larvae": 0.001, "larvae_per_kg": 1000000000},
                  "feed": [{"ingredient": "maize", "kg": 1e12}, {"ingredient": "maize", "kg": 1e12}],
                  "transport": [{"mode": "truck-average", "tonne_km": 1e12}, {"mode": "truck-average", "tonne_km": 1}]},
                 "against": "chicken", "draws": 1000}
                """);
        Posted posted = posted(question.put("input", input));

        assertEquals(200, posted.status(), posted::body);
    }
}
