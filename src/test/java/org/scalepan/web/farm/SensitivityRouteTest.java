package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** Sensitivity over HTTP; the records are invented. */
class SensitivityRouteTest {
    private static final String SYSTEM = """
            {"kind": "insects", "product": "palm-weevil", "name": "three sheds", "harvest": {"kg_per_year": 1200},
             "feed": [{"ingredient": "wheat-bran", "kg": 3600, "burden": "mass"}], "energy": [{"carrier": "diesel", "amount": 40}]}
            """;

    private static Posted posted(String question) {
        return Posted.to("/v1/sensitivity", "application/json", question);
    }

    private static JsonNode answer(String question) {
        Posted posted = posted(question);
        assertEquals(200, posted.status(), posted::body);
        return posted.tree();
    }

    private static boolean warns(JsonNode answer, String code) {
        for (JsonNode warning : answer.path("warnings")) {
            if (JsonAt.text(warning, "/code").equals(code)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void a_farm_shows_its_uncertain_factors_and_what_can_be_changed() {
        JsonNode answer = answer("{\"system\": " + SYSTEM + ", \"spread\": [{\"input\": \"feed\", \"percent\": 50}]}");

        assertTrue(JsonAt.text(answer, "/sentence")
                .startsWith("The three inputs that matter most to the uncertainty are "));
        assertTrue(answer.path("inputs").size() > 4);
        JsonNode feed = answer.path("you_can_change").path(0);
        assertEquals("feed", JsonAt.text(feed, "/id"));
        assertEquals(5400, JsonAt.number(feed, "/higher/value"));
        assertTrue(JsonAt.number(feed, "/higher/change_percent") > 30);
        assertTrue(warns(answer, "records-certain"));
    }

    @Test
    void a_ratio_of_published_products_has_the_differences_between_studies_of_both() {
        JsonNode answer = answer("{\"product\": \"mealworm\", \"against\": \"beef\", \"boundary\": \"farm-gate\"}");

        assertEquals("between-studies", JsonAt.text(answer, "/inputs/0/kind"));
        assertTrue(JsonAt.array(answer, "/you_can_change").isEmpty());
        assertEquals(10_000, JsonAt.integer(answer, "/question/draws"));
    }

    @Test
    void with_few_draws_the_shares_have_a_noise_warning() {
        assertTrue(warns(answer("{\"product\": \"beef\", \"draws\": 1000}"), "noisy-shares"));
    }

    @Test
    void more_draws_than_the_inputs_allow_are_refused_with_what_is_allowed() {
        JsonNode fault = posted("{\"product\": \"beef\", \"draws\": 200000}").fault("/draws");

        assertTrue(JsonAt.text(fault, "/message").matches("draws may be at most \\d+ for the \\d+ uncertain inputs.*"));
    }

    @Test
    void a_question_without_a_side_or_with_two_is_refused() {
        posted("{}").fault("/product");
        posted("{\"product\": \"beef\", \"system\": " + SYSTEM + "}").fault("/system");
        posted("{\"product\": \"beef\", \"against\": \"pork\", \"against_system\": " + SYSTEM + "}")
                .fault("/against_system");
    }

    @Test
    void inputs_to_vary_must_be_in_the_records() {
        posted("{\"system\": " + SYSTEM + ", \"spread\": [{\"input\": \"water\", \"percent\": 10}]}")
                .fault("/spread/0/input");
        posted("{\"system\": " + SYSTEM + ", \"spread\": [{\"input\": \"feed\"}]}")
                .fault("/spread/0/percent");
        posted("{\"product\": \"beef\", \"spread\": [{\"input\": \"feed\", \"percent\": 10}]}")
                .fault("/spread");
    }

    @Test
    void a_boundary_at_retail_is_refused_for_records() {
        posted("{\"system\": " + SYSTEM + ", \"boundary\": \"retail\"}").fault("/boundary");
    }

    @Test
    void without_evidence_the_reason_is_given() {
        JsonNode answer = answer("{\"product\": \"palm-weevil\"}");

        assertEquals("not-computed", JsonAt.text(answer, "/status"));
        assertTrue(JsonAt.text(answer, "/reason").contains("palm"), answer::toString);
        assertTrue(JsonAt.array(answer, "/inputs").isEmpty());
    }

    @Test
    void the_same_question_has_the_same_bytes() {
        String question = "{\"system\": " + SYSTEM + ", \"against\": \"chicken\"}";
        assertEquals(posted(question).body(), posted(question).body());
    }
}
