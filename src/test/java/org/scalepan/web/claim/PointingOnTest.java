package org.scalepan.web.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.Libraries;
import org.scalepan.factors.Claim;
import org.scalepan.web.Reply;

/** A sentence that somebody heard and pastes is checked, or refused with a question that can be asked instead. */
class PointingOnTest {
    private static final ConcurrentHashMap<String, Integer> FOLLOWED = new ConcurrentHashMap<>();

    static Stream<String> circulating() {
        return Libraries.bundled().claims().stream().map(Claim::claim);
    }

    @ParameterizedTest
    @MethodSource("circulating")
    void a_circulating_claim_pasted_word_for_word_is_answered_or_leads_on(String claim) {
        Reply reply = asked(claim);

        isAnsweredOrLeadsOn(reply);
        if (reply.status() == 400) {
            assertTrue(
                    questions(reply).anyMatch(question -> question.equals("/v1/rows/" + idOf(claim))),
                    () -> "no pointer to the claim itself: " + reply.body());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sun beetle larvae emit a hundred times less than beef",
                "these larvae emit a hundred times less than beef",
                "our beetle larvae emit no greenhouse gas",
                "rhinoceros beetle larvae emit 100 times less than beef",
                "insects emit no greenhouse gases",
                "palm weevils emit no greenhouse gas",
                "insects need little space",
                "mealworms need 10 times less space than beef",
                "insects need far less land",
                "insects need little land compared with beef",
                "crickets have more protein than beef",
                "insects have more calcium than beef",
                "crickets have more iron than beef",
                "insects contain all essential amino acids",
                "palm weevil larvae have all twenty essential amino acids",
                "insects could replace imported meat",
                "insect meal could replace fishmeal",
                "mealworm meal emits less than fishmeal",
                "1 kg of mealworms emits 100 times less than 1 kg of beef",
                "insects are carbon neutral",
                "insects produce no methane",
                "eating mealworms instead of beef cuts emissions by 90%",
                "les insectes émettent cent fois moins que le boeuf",
                "mealworms emit 100x less than cattle",
                "insects cause a hundred times fewer emissions than cows",
                "mealworms have 99% lower emissions than beef",
                "insects are cheaper protein than beef",
                "crickets are tasty",
                "insects need far less land than beef",
                "insect meal emits less than fishmeal",
                "crickets are twice as efficient at converting feed",
                "insects could replace soybean meal",
                "cricket flour has more protein than beef",
                "crickets have more protein, iron and calcium than beef",
                "Crickets emit less than beef. They have more iron than beef.",
                "grasshoppers emit 10 times less than beef",
                "les grillons ont plus de fer que le boeuf",
                "qwertz"
            })
    void a_sentence_of_somebody_who_sells_insects_is_answered_or_leads_on(String sentence) {
        isAnsweredOrLeadsOn(asked(sentence));
    }

    @Test
    void a_word_that_is_not_understood_comes_with_the_nearest_that_would_be() {
        JsonNode refused = asked("crikets emit ten times less than beef").json();

        assertTrue(JsonAt.text(refused, "/errors/0/message").contains("crikets"));
        assertTrue(JsonAt.texts(refused, "/errors/0/did_you_mean").contains("crickets"), refused.toString());
    }

    @Test
    void what_is_said_of_ones_own_animals_leads_to_a_question_with_records_and_to_a_modelled_farm() {
        JsonNode refused =
                asked("these larvae emit ten times less than chicken").json();

        assertTrue(JsonAt.text(refused, "/suggestions/0/question").contains("evidence=modelled"));
        assertEquals("/v1/claim", JsonAt.text(refused, "/suggestions/0/post/route"));
    }

    private static String idOf(String text) {
        return Libraries.bundled().claims().stream()
                .filter(claim -> claim.claim().equals(text))
                .map(Claim::id)
                .findFirst()
                .orElseThrow();
    }

    private static Reply asked(String text) {
        return Reply.to("/v1/claim?text=" + URLEncoder.encode(text, StandardCharsets.UTF_8));
    }

    private static Stream<String> questions(Reply reply) {
        return StreamSupport.stream(reply.json().path("suggestions").spliterator(), false)
                .map(one -> JsonAt.text(one, "/question"));
    }

    private static void isAnsweredOrLeadsOn(Reply reply) {
        if (reply.status() == 200) {
            return;
        }
        assertEquals(400, reply.status(), reply.body());
        List<JsonNode> suggestions = StreamSupport.stream(
                        reply.json().path("suggestions").spliterator(), false)
                .toList();
        assertFalse(suggestions.isEmpty(), reply.body());
        for (JsonNode suggestion : suggestions) {
            String question = JsonAt.text(suggestion, "/question");
            int status = FOLLOWED.computeIfAbsent(
                    question, address -> Reply.to(address).status());
            assertEquals(200, status, () -> question + " of " + reply.body());
            if (suggestion.has("post")) {
                String body = JsonAt.text(suggestion, "/post/body");
                int sent = FOLLOWED.computeIfAbsent(
                        body,
                        posted -> Reply.to(JsonAt.text(suggestion, "/post/route"), read(posted))
                                .status());
                assertEquals(200, sent, () -> body + " of " + reply.body());
            }
        }
    }

    private static JsonNode read(String body) {
        try {
            return new ObjectMapper().readTree(body);
        } catch (IOException e) {
            throw new AssertionError("not JSON: " + body, e);
        }
    }
}
