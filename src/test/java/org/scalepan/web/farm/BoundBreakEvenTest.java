package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** What would make a farm equal, and what its uncertainty comes from, when something required is not counted. The farm is invented. */
class BoundBreakEvenTest {
    private static final String FARM = """
            {"kind": "insects", "name": "bucket shed", "product": "palm-weevil", "region": "peru",
             "harvest": {"kg_per_year": 160}, "mortality": 0.3,
             "feed": [{"ingredient": "wheat-bran", "kg": 800, "burden": "mass"}, {"ingredient": "pineapple-residue", "kg": 1500}],
             "energy": [{"carrier": "grid-electricity", "amount": 60}]}""";

    private static JsonNode answer(String path, String rest) {
        Posted posted = Posted.to(path, "application/json", "{\"system\": " + FARM + ", \"draws\": 2000" + rest + "}");
        assertEquals(200, posted.status(), posted.body());
        return posted.tree();
    }

    @ParameterizedTest
    @ValueSource(strings = {"feed", "feed:pineapple-residue"})
    void given_feed_without_a_factor_then_no_break_even_of_feed_is_given(String input) {
        JsonNode answer = answer("/v1/break-even", ", \"against\": \"chicken\", \"input\": \"%s\"".formatted(input));

        assertEquals("none", JsonAt.text(answer, "/status"));
        assertEquals("not-counted", JsonAt.text(answer, "/reason"));
        assertTrue(JsonAt.text(answer, "/sentence").contains("pineapple-residue"), answer.path("sentence")::toString);
        assertEquals("at-least", JsonAt.text(answer, "/system/bound"));
    }

    @Test
    void given_a_lower_bound_then_the_electricity_that_makes_it_equal_is_at_most() {
        JsonNode answer = answer("/v1/break-even", ", \"against\": \"beef\", \"input\": \"energy:grid-electricity\"");

        assertEquals("at-most", JsonAt.text(answer, "/break_even/bound"), answer::toString);
        assertTrue(JsonAt.text(answer, "/break_even/text").startsWith("at most "));
        assertFalse(answer.path("break_even").has("less_when"));
        assertTrue(JsonAt.text(answer, "/sentence").contains("Above that value it has more"));
    }

    @Test
    void given_a_lower_bound_then_it_is_never_said_to_stay_below_whatever_is_changed() {
        JsonNode answer = answer("/v1/break-even", ", \"against\": \"beef\", \"input\": \"mortality\"");

        assertFalse(answer.path("reason").asText("none").equals("always-below"), answer::toString);
    }

    @Test
    void given_a_lower_bound_then_shares_of_variance_are_of_the_counted_part_and_what_is_not_counted_comes_first() {
        JsonNode answer = answer("/v1/sensitivity", "");

        assertTrue(JsonAt.text(answer, "/sentence").startsWith("Not counted, and in no share, are "));
        assertTrue(JsonAt.text(answer, "/analysed/what").startsWith("the counted part of "));
        assertEquals("at-least", JsonAt.text(answer, "/side/bound"));
    }
}
