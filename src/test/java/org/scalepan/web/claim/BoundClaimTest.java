package org.scalepan.web.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** A farm that leaves something required open has a lower bound, and its advantage is at most the ratio. The farms are invented. */
class BoundClaimTest {
    private static final String FARM = """
            {"kind": "insects", "name": "bucket shed", "product": "palm-weevil", "region": "peru",
             "harvest": {"kg_per_year": 160}%s}""";
    private static final String RESIDUE = ", \"feed\": [{\"ingredient\": \"pineapple-residue\", \"kg\": 1500}]";
    private static final String BRAN =
            ", \"feed\": [{\"ingredient\": \"wheat-bran\", \"kg\": 1500, \"burden\": \"mass\"}]";

    private static JsonNode claim(String records, String rest) {
        return answer("{\"system\": " + FARM.formatted(records) + ", \"reference\": \"beef\"" + rest + "}");
    }

    private static JsonNode answer(String body) {
        Posted posted = Posted.to("/v1/claim", "application/json", body);
        assertEquals(200, posted.status(), posted.body());
        return posted.tree();
    }

    private static JsonNode asked(JsonNode answer) {
        return answer.path("checks").path(0).path("cells").path(0);
    }

    @ParameterizedTest(name = "a farm of {0} kg feed of {1}, energy none, {2}: {3} times less than beef is undecided")
    @CsvSource({"nothing, ghg, 100", "residue, ghg, 100", "residue, land, 100", "nothing, land, 2"})
    void given_feed_that_is_not_counted_then_no_reduction_holds(String fed, String indicator, double times) {
        String records = (fed.equals("residue") ? RESIDUE : "") + ", \"building_m2\": 12";

        JsonNode answer = claim(records, ", \"indicator\": \"%s\", \"times_less\": %s".formatted(indicator, times));

        JsonNode cell = asked(answer);
        assertEquals("undecided", JsonAt.text(cell, "/verdict"));
        assertEquals("undecided", JsonAt.text(answer, "/verdict"));
        assertEquals("at-most", JsonAt.text(cell, "/bound"));
        assertTrue(JsonAt.text(cell, "/times_less/text").startsWith("at most "), cell::toString);
        assertFalse(cell.has("share_of_draws"), "no share of draws rests on a bound");
        assertEquals("at-least", JsonAt.text(cell, "/product/bound"));
        assertTrue(JsonAt.text(cell, "/product/text").startsWith("at least "), cell::toString);
        JsonNode instead = answer.path("say_instead");
        assertFalse(instead.has("times_less"), instead::toString);
        assertFalse(JsonAt.text(instead, "/sentence").contains("% less"), instead::toString);
        assertTrue(JsonAt.text(instead, "/sentence").contains("feed"), "it says what to record");
        assertTrue(JsonAt.text(answer, "/reason").contains("at most"), answer.path("reason")::toString);
    }

    @Test
    void given_a_lower_bound_above_the_claim_then_the_claim_fails() {
        JsonNode answer = claim(BRAN + ", \"building_m2\": 12", ", \"indicator\": \"ghg\", \"times_less\": 100000");

        assertEquals("fails", JsonAt.text(asked(answer), "/verdict"));
        assertEquals("fails", JsonAt.text(answer, "/verdict"));
    }

    @Test
    void given_a_reference_that_is_a_lower_bound_then_a_reduction_can_hold() {
        String hens = """
                {"kind": "herd", "name": "hens", "animals": "layers", "heads": 100, "breeding_stock": "included", "region": "peru",
                 "yield": {"eggs_kg": 900}, "feed": [{"ingredient": "maize", "kg": 40000}]}""";
        JsonNode answer =
                answer("{\"product\": \"mealworm\", \"reference_system\": " + hens + ", \"times_less\": 1.01}");

        assertEquals("at-least", JsonAt.text(asked(answer), "/bound"));
        assertEquals("holds", JsonAt.text(asked(answer), "/verdict"), asked(answer)::toString);
    }

    @Test
    void given_two_lower_bounds_then_nothing_is_compared() {
        String hens = """
                {"kind": "herd", "name": "hens", "animals": "layers", "heads": 100, "breeding_stock": "included", "region": "peru",
                 "yield": {"eggs_kg": 900}, "feed": [{"ingredient": "maize", "kg": 40000}]}""";
        JsonNode answer = answer(
                "{\"system\": " + FARM.formatted("") + ", \"reference_system\": " + hens + ", \"times_less\": 2}");

        assertEquals("none", JsonAt.text(asked(answer), "/bound"));
        assertEquals("undecided", JsonAt.text(asked(answer), "/verdict"));
        assertFalse(asked(answer).has("times_less"));
    }

    @Test
    void given_empty_lists_then_there_was_none_and_nothing_is_left_open() {
        JsonNode open = claim(BRAN, ", \"times_less\": 2");
        JsonNode none = claim(BRAN + ", \"energy\": []", ", \"times_less\": 2");

        assertEquals("at-most", JsonAt.text(asked(open), "/bound"));
        assertEquals("exact", JsonAt.text(asked(none), "/bound"), none::toString);
        assertTrue(asked(none).has("share_of_draws"));
    }
}
