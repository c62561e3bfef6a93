package org.scalepan.web.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;
import org.scalepan.web.Reply;

/** A ratio of a product to itself is 1 by arithmetic and says nothing. The farm is invented. */
class BesideItselfTest {
    private static final String FARM = """
            {"kind": "insects", "name": "bucket shed", "product": "mealworm", "harvest": {"kg_per_year": 160},
             "feed": [{"ingredient": "maize", "kg": 400}], "energy": [], "frass": {"kg": 100}}""";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/ratio/ghg/beef/beef",
                "/v1/ratio/ghg/mealworm/mealworm:fresh?stat=text",
                "/v1/claim?product=beef&reference=beef&times_less=2",
                "/v1/brief?products=mealworm,beef&against=beef"
            })
    void is_refused_with_the_reason(String question) {
        Reply reply = Reply.to(question);

        assertEquals(400, reply.status(), reply.body());
        assertTrue(reply.body().contains("is compared with itself"), reply.body());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/v1/claim | \"reference_system\": %s, \"times_less\": 2",
                "/v1/brief | \"against_system\": %s",
                "/v1/break-even | \"against_system\": %s, \"input\": \"feed\"",
                "/v1/sensitivity | \"against_system\": %s"
            })
    void records_beside_the_same_records_are_refused(String path, String rest) {
        Posted posted = Posted.to(path, "application/json", "{\"system\": " + FARM + ", " + rest.formatted(FARM) + "}");

        assertEquals(400, posted.status(), posted.body());
        assertTrue(posted.body().contains("bucket shed is compared with itself"), posted.body());
    }

    @Test
    void another_form_of_the_product_is_another_product() {
        assertFalse(Reply.to("/v1/claim?product=mealworm:meal&reference=mealworm&times_less=2")
                .body()
                .contains("compared with itself"));
    }

    @Test
    void in_a_comparison_it_is_a_row_without_a_ratio() {
        JsonNode answer = Reply.to("/v1/comparison?products=beef,mealworm&against=beef&draws=2000")
                .json();

        JsonNode itself = answer.at("/items/0");
        assertEquals("ok", JsonAt.text(itself, "/status"));
        assertTrue(itself.has("footprint"));
        assertFalse(
                itself.has("times_less") || itself.has("share") || itself.has("against_sentence"), itself::toString);
        assertTrue(answer.at("/items/1").has("times_less"));
    }

    @Test
    void of_insects_the_one_that_is_the_reference_is_left_out() {
        JsonNode answer = Reply.to("/v1/claim?product=insects&reference=mealworm&times_less=2&draws=2000")
                .json();

        assertFalse(answer.path("checks").findValuesAsText("product").contains("mealworm"));
        assertTrue(answer.path("checks").findValuesAsText("product").contains("black-soldier-fly"));
    }

    @Test
    void the_same_records_beside_a_footprint_have_no_ratio() {
        JsonNode answer = Posted.answer(
                "{\"system\": " + FARM + ", \"indicators\": [\"ghg\"], \"compare\": {\"systems\": [" + FARM + "]}}");

        assertFalse(answer.at("/footprints/0/compare/0").has("times_less"));
    }
}
