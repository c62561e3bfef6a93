package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** Records by which more comes out of a farm than its feed holds. All farms are invented. */
class ImpossibleFarmTest {
    private static String mealworms(String feed, double kilograms, String frass) {
        return """
                {"kind": "insects", "name": "attic trays", "product": "mealworm", "region": "netherlands",
                 "harvest": {"kg_per_year": 1000}, "feed": [{"ingredient": "%s", "kg": %s%s}],
                 "energy": [{"carrier": "grid-electricity", "amount": 300}]%s}""".formatted(feed, kilograms, feed.equals("wheat-bran") ? ", \"burden\": \"economic\"" : "", frass);
    }

    private static final String FRASS = ", \"frass\": {\"kg\": 900}";
    private static final String IMPOSSIBLE = mealworms("maize", 600, FRASS);

    private static JsonNode answer(String path, String body) {
        Posted posted = Posted.to(path, "application/json", body);
        assertEquals(200, posted.status(), posted.body());
        return posted.tree();
    }

    private static JsonNode footprint(String system) {
        return answer(
                "/v1/footprint",
                "{\"system\": " + system
                        + ", \"indicators\": [\"ghg\"], \"draws\": 1000, \"compare\": {\"products\": [\"beef\"]}}");
    }

    private static JsonNode balance(JsonNode answer, String kind) {
        return StreamSupport.stream(answer.path("balances").spliterator(), false)
                .filter(balance -> JsonAt.text(balance, "/kind").equals(kind))
                .findFirst()
                .orElseThrow(() -> new AssertionError(answer.path("balances").toString()));
    }

    /** Larvae 18.7 % protein: 29.9 kg N. Frass 3.18 % N: 28.6 kg. Maize 86.907 % dry matter with 8.514 % protein: 11.84 kg N a tonne. */
    @ParameterizedTest
    @CsvSource({"600, 7.10", "1500, 17.76"})
    void given_more_nitrogen_in_larvae_and_frass_than_in_maize_then_the_figure_stands_without_a_ratio(
            double maize, double nitrogen) {
        JsonNode answer = footprint(mealworms("maize", maize, FRASS));

        JsonNode balance = balance(answer, "nitrogen");
        assertEquals("impossible", JsonAt.text(balance, "/verdict"));
        assertEquals(nitrogen, JsonAt.number(balance, "/in"), 0.01, "kg N a year");
        assertEquals(29.92 + 28.62, JsonAt.number(balance, "/out"), 0.01, "kg N a year");
        assertTrue(JsonAt.number(answer, "/footprints/0/footprint/median") > 0);
        assertEquals("none", JsonAt.text(answer, "/footprints/0/bound"));
        assertTrue(JsonAt.text(answer, "/footprints/0/contradictions/0").startsWith("more nitrogen comes out"));
        assertFalse(answer.at("/footprints/0/compare/0").has("times_less"));
        assertFalse(answer.at("/footprints/0/compare/0").has("share_of_draws_less"));
    }

    /** 1 500 kg of wheat bran hold about 40 kg N: enough for the larvae, not for the frass beside them. */
    @Test
    void given_feed_that_holds_the_larvae_but_not_the_frass_then_it_is_impossible_only_with_the_frass() {
        JsonNode with = balance(footprint(mealworms("wheat-bran", 1500, FRASS)), "nitrogen");
        JsonNode without = balance(footprint(mealworms("wheat-bran", 1500, "")), "nitrogen");

        assertEquals(40, JsonAt.number(with, "/in"), 3, "kg N a year");
        assertEquals("impossible", JsonAt.text(with, "/verdict"));
        assertEquals("unusual", JsonAt.text(without, "/verdict"), without::toString);
        assertTrue(JsonAt.text(without, "/reason").contains("parodi-2020"), without::toString);
    }

    @Test
    void given_usual_practice_then_every_balance_is_possible_and_the_ratio_stands() {
        JsonNode answer = footprint(mealworms("wheat-bran", 3600, ""));

        answer.path("balances")
                .forEach(balance -> assertEquals("possible", JsonAt.text(balance, "/verdict"), balance::toString));
        assertTrue(answer.at("/footprints/0/compare/0").has("times_less"));
    }

    @Test
    void given_feed_of_unknown_composition_then_the_balance_is_not_made_and_says_of_what() {
        JsonNode balance = balance(footprint(mealworms("artificial-diet", 2000, FRASS)), "nitrogen");

        assertEquals("not-made", JsonAt.text(balance, "/verdict"));
        assertTrue(JsonAt.text(balance, "/reason").contains("artificial-diet"), balance::toString);
    }

    /** 100 kg of anything hold at most 100 kg dry matter, less than the 381 kg of the larvae. */
    @Test
    void given_feed_of_unknown_composition_too_little_whatever_it_holds_then_it_is_impossible() {
        JsonNode balance = balance(footprint(mealworms("artificial-diet", 100, "")), "dry-matter");

        assertEquals("impossible", JsonAt.text(balance, "/verdict"));
        assertEquals(100, JsonAt.number(balance, "/in"), 1e-9, "kg a year");
        assertEquals(381, JsonAt.number(balance, "/out"), 1e-9, "kg a year");
    }

    @Test
    void given_impossible_records_then_no_claim_is_decided_and_nothing_is_said_instead() {
        JsonNode answer = answer(
                "/v1/claim",
                "{\"system\": " + IMPOSSIBLE
                        + ", \"reference\": \"beef\", \"indicator\": \"ghg\", \"times_less\": 10, \"draws\": 1000}");

        assertEquals("undecided", JsonAt.text(answer, "/verdict"));
        assertTrue(JsonAt.text(answer, "/reason").contains("more nitrogen comes out than goes in"), answer::toString);
        assertFalse(answer.path("say_instead").has("times_less"));
        assertEquals("undecided", JsonAt.text(answer, "/checks/0/cells/0/verdict"));
        assertFalse(answer.at("/checks/0/cells/0").has("share_of_draws"), answer::toString);
        assertFalse(answer.at("/checks/0/cells/0").has("times_less"), answer::toString);
    }

    @Test
    void given_impossible_records_then_no_entry_makes_them_equal_and_no_input_is_ranked() {
        String rest = ", \"indicator\": \"ghg\", \"draws\": 1000";
        JsonNode even = answer(
                "/v1/break-even",
                "{\"system\": " + IMPOSSIBLE + ", \"against\": \"chicken\", \"input\": \"feed\"" + rest + "}");
        JsonNode shares = answer("/v1/sensitivity", "{\"system\": " + IMPOSSIBLE + rest + "}");

        assertEquals("impossible-balance", JsonAt.text(even, "/reason"));
        assertEquals("not-computed", JsonAt.text(shares, "/status"));
        assertTrue(JsonAt.text(shares, "/reason").contains("nitrogen"), shares::toString);
    }

    @Test
    void given_impossible_records_then_nothing_is_saved() {
        JsonNode answer = answer(
                "/v1/substitution",
                "{\"system\": " + IMPOSSIBLE
                        + ", \"kg_per_year\": 1000, \"displacement_rate\": 0.5, \"baseline\": [{\"product\": \"beef\", \"share\": 1}],"
                        + " \"draws\": 1000}");

        JsonNode change = answer.at("/indicators/0");
        assertFalse(change.has("avoided"), answer::toString);
        assertTrue(JsonAt.text(change, "/reason").contains("more nitrogen"), answer::toString);
    }

    @Test
    void given_an_impossible_row_among_others_then_it_keeps_its_figure_and_names_the_balance() {
        Posted posted = Posted.to("/v1/footprints?indicators=ghg", "text/csv", """
                name,kind,product,harvest.kg_per_year,feed.1.ingredient,feed.1.kg,feed.1.burden,frass.kg
                sound,insects,mealworm,1000,wheat-bran,3600,economic,
                impossible,insects,mealworm,1000,maize,600,,900
                """);

        String[] lines = posted.body().split("\r?\n");
        assertTrue(lines[1].startsWith("1,sound,mealworm,fresh,farm-gate,ok,"), lines[1]);
        assertTrue(lines[2].startsWith("2,impossible,mealworm,fresh,farm-gate,impossible,1.8"), lines[2]);
        assertTrue(lines[2].contains("more nitrogen comes out than goes in"), lines[2]);
    }
}
