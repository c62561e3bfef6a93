package org.scalepan.web.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** A text that claims several things is answered claim by claim. */
class SeveralClaimsTest {
    private static Reply asked(String text, String more) {
        return Reply.to("/v1/claim?draws=1000&text=" + URLEncoder.encode(text, StandardCharsets.UTF_8) + more);
    }

    private static List<String> claims(Reply reply) {
        List<String> claims = new ArrayList<>();
        JsonAt.node(reply.json(), "/claims").forEach(claim -> claims.add(JsonAt.text(claim, "/answer/claim")));
        return claims;
    }

    @Test
    void what_a_lecturer_says_in_one_breath_is_three_claims() {
        Reply reply = asked("Insects need less land and feed and emit far less than cattle", "");

        assertEquals(200, reply.status());
        assertEquals(
                List.of(
                        "insects need less land than beef",
                        "insects need less feed than beef",
                        "insects emit less greenhouse gas than beef"),
                claims(reply));
    }

    /** Who reads a part by itself must find the same answer as by asking for it alone. */
    @Test
    void each_answer_is_that_of_the_claim_by_itself() {
        for (JsonNode claim : JsonAt.node(
                asked("Crickets need 80 % less land than beef. They emit 13 times less.", "")
                        .json(),
                "/claims")) {
            JsonNode answer = JsonAt.node(claim, "/answer");

            JsonNode alone = Reply.to(JsonAt.text(answer, "/permalink")).json();

            assertEquals(JsonAt.text(alone, "/verdict"), JsonAt.text(answer, "/verdict"));
            assertEquals(JsonAt.node(alone, "/checks"), JsonAt.node(answer, "/checks"));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Insects need 80 % less land and 50 % less feed than beef|insects need at least 80 % less land than beef"
                        + "|insects need at least 50 % less feed than beef",
                "Mealworms have more protein than beef. They need half the feed.|yellow mealworm has more protein than beef"
                        + "|yellow mealworm needs at least 2 times less feed than beef",
                "crickets contain twice the calcium of beef and all essential amino acids"
                        + "|house cricket has at least 2 times as much calcium as beef"
                        + "|house cricket contains every indispensable amino acid",
                "Les insectes émettent 100 fois moins que le bœuf et ont besoin de 10 fois moins de terre"
                        + "|insects emit at least 100 times less greenhouse gas than beef"
                        + "|insects need at least 10 times less land than beef",
            })
    void subject_amount_and_reference_are_those_of_each_claim(String text, String first, String second) {
        assertEquals(List.of(first, second), claims(asked(text, "")));
    }

    @Test
    void what_cannot_be_checked_is_refused_by_itself_and_points_on() {
        JsonNode answer = asked(
                        "Insects are great. They emit 100 times less greenhouse gas than beef; eating them cures anaemia.",
                        "")
                .json();

        JsonNode claims = JsonAt.node(answer, "/claims");
        assertEquals(3, claims.size());
        assertTrue(JsonAt.text(claims, "/0/errors/0/message").startsWith("no claim was found"));
        assertFalse(JsonAt.node(claims, "/2/suggestions").isEmpty());
        assertEquals(
                "insects emit at least 100 times less greenhouse gas than beef",
                JsonAt.text(claims, "/1/answer/claim"));
    }

    @Test
    void a_basis_beside_the_text_is_that_of_every_claim() {
        JsonNode claims = JsonAt.node(
                asked("mealworms need less land, energy and feed than pork", "&per=kg-edible")
                        .json(),
                "/claims");

        assertEquals(3, claims.size());
        claims.forEach(claim -> assertEquals("kg-edible", JsonAt.text(claim, "/answer/question/per")));
    }

    @Test
    void a_wrong_basis_is_told_once() {
        Reply reply = asked("Insects need less land and feed than cattle", "&grade=foo");

        assertEquals(400, reply.status());
        assertEquals(1, JsonAt.node(reply.json(), "/errors").size());
        assertEquals("grade", JsonAt.text(reply.json(), "/errors/0/parameter"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"times_less=5", "indicator=land", "content=iron", "times_more=2", "none=yes"})
    void what_each_claim_says_for_itself_must_not_stand_beside_the_text(String parameter) {
        Reply reply = asked("Insects need less land and feed than cattle", "&" + parameter);

        assertEquals(400, reply.status());
        assertEquals(parameter.replaceAll("=.*", ""), JsonAt.text(reply.json(), "/errors/0/parameter"));
    }

    @Test
    void of_more_than_six_claims_none_is_lost_in_silence() {
        JsonNode claims = JsonAt.node(
                asked(
                                "Mealworms need less land, water, energy and feed than beef. Crickets need less land, water, energy and feed than beef.",
                                "")
                        .json(),
                "/claims");

        assertEquals(6, claims.size());
        assertTrue(JsonAt.text(claims, "/5/errors/0/message").contains("at most 6 claims"), claims.toString());
        assertEquals(3, JsonAt.node(claims, "/5/suggestions").size());
    }

    /** One claim, or none that is understood, is answered as before. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Insects are tasty and healthy",
                "beans and peas",
                "Insects emit 100 times less greenhouse gas than beef",
                "Mealworms need no land."
            })
    void a_text_of_one_claim_has_no_list(String text) {
        assertFalse(asked(text, "").json().has("claims"));
    }

    @Test
    void more_than_six_claims_are_not_read() {
        String many = "Mealworms need less land than beef. ".repeat(20);

        assertTrue(JsonAt.node(asked(many, "").json(), "/claims").size() <= 6);
    }

    @Test
    void as_text_and_as_a_workbook_too() {
        String text = "Mealworms have more protein than beef. They need half the feed.";
        Reply document = asked(text, "&format=md");

        assertTrue(document.body().contains("## \"Mealworms have more protein than beef\""), document.body());
        assertTrue(document.body().contains("needs at least 2 times less feed than beef"), document.body());
        assertEquals(200, asked(text, "&format=xlsx").status());
    }
}
