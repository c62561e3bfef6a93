package org.scalepan.web.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** Sentences about what foods contain, over HTTP. */
class ContentSentenceTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "crickets have more protein than beef | house-cricket | beef | protein | 1",
                "Crickets have more iron than beef. | house-cricket | beef | iron | 1",
                "insects have twice the calcium of beef | insects | beef | calcium | 2",
                "Insects have two or three times the protein of beef | insects | beef | protein | 2",
                "mealworms contain 50 % more zinc than pork | mealworm | pork | zinc | 1.5",
                "dried mealworms have three times as much vitamin B12 as chicken | mealworm:dried | chicken | vitamin-b12 | 3",
                "cricket flour has more protein than beef | house-cricket:meal | beef | protein | 1",
                "mealworms are richer in unsaturated fat than beef | mealworm | beef | unsaturated-fat | 1",
                "locusts are higher in protein than eggs | migratory-locust | egg | protein | 1",
                "more iron than beef | insects | beef | iron | 1"
            })
    void an_amount_is_read(String text, String product, String reference, String content, double times) {
        JsonNode question = JsonAt.node(answer(text), "/question");

        assertEquals(product, JsonAt.text(question, "/product"));
        assertEquals(reference, JsonAt.text(question, "/reference"));
        assertEquals(content, JsonAt.text(question, "/content"));
        assertEquals(times, JsonAt.number(question, "/times_more"), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "insects contain all nine essential amino acids | amino-acids",
                "palm weevil larvae have every essential amino acid | amino-acids",
                "cricket protein is a complete protein | complete-protein",
                "mealworms are as good a protein as meat | protein-quality",
                "Insects contain all nine essential amino acids, so their protein equals meat | protein-quality"
            })
    void a_quality_is_read(String text, String content) {
        assertEquals(content, JsonAt.text(answer(text), "/question/content"));
    }

    @Test
    void twenty_essential_amino_acids_are_put_right() {
        JsonNode answer = answer("mealworms contain all twenty essential amino acids");

        assertEquals("holds", JsonAt.text(answer, "/verdict"));
        assertTrue(JsonAt.texts(answer, "/corrections").get(0).contains("not 20"));
    }

    @Test
    void the_permalink_of_a_sentence_replays_it_without_the_sentence() {
        JsonNode answer = answer("crickets have more protein than beef");

        ObjectNode again =
                (ObjectNode) Reply.to(JsonAt.text(answer, "/permalink")).json();
        ObjectNode first = answer.deepCopy();
        first.remove("understood");
        assertEquals(first, again);
    }

    @Test
    void the_iron_of_crickets_stands_beside_what_women_absorbed_and_memory_is_opened_by_a_question() {
        JsonNode answer = answer("crickets have more iron than beef");

        assertEquals("not-traceable", JsonAt.text(answer, "/verdict"));
        assertFalse(JsonAt.array(answer, "/contents/0/absorption").isEmpty());
        assertTrue(answer.path("circulating").toString().contains("\"c29\""));
        JsonNode open = Reply.to(JsonAt.text(answer, "/suggestions/0/question")).json();
        assertEquals("open", JsonAt.text(open, "/verdict"));
    }

    /** Lesser mealworms and locusts were measured dried only; drying takes no amino acid away. */
    @Test
    void an_amino_acid_of_a_dried_insect_is_one_of_the_insect() {
        JsonNode answer = answer("insects contain every essential amino acid");

        assertEquals("insects contain every indispensable amino acid", JsonAt.text(answer, "/claim"));
        JsonAt.array(answer, "/contents").stream()
                .filter(one -> JsonAt.text(one, "/product").equals("lesser-mealworm"))
                .forEach(one -> assertEquals("holds", JsonAt.text(one, "/verdict")));
    }

    @Test
    void several_contents_are_as_many_claims() {
        Reply reply = Reply.to(asked("crickets have more protein, iron and calcium than beef"));

        assertEquals(
                List.of("protein", "iron", "calcium"),
                JsonAt.array(reply.json(), "/claims").stream()
                        .map(one -> JsonAt.text(one, "/answer/question/content"))
                        .toList());
    }

    @Test
    void protein_as_a_unit_stays_a_claim_of_a_footprint() {
        JsonNode answer = answer("Mealworm protein takes a tenth of the land of beef protein");

        assertEquals("land", JsonAt.text(answer, "/question/indicator"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"crickets have more protein than beef", "insects contain every essential amino acid"})
    void markdown_has_the_claim_the_grid_and_the_cautions(String text) {
        String markdown = Reply.to(asked(text) + "&format=md").body();

        for (String part : List.of("**Claim:**", "**Verdict:**", "| verdict |", "malnutrition", "allergic")) {
            assertTrue(markdown.contains(part), markdown);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/claim?product=mealworm&reference=beef&content=protein&per=kg-protein",
                "/v1/claim?product=mealworm&reference=beef&content=protein&times_more=2&times_less=2",
                "/v1/claim?product=mealworm&content=protein",
                "/v1/claim?product=mealworm&reference=mealworm&content=protein",
                "/v1/claim?product=mealworm&reference=beef&content=amino-acids",
                "/v1/claim?product=mealworm&reference=beef&content=starch",
                "/v1/claim?product=mealworm&reference=beef&times_less=2&times_more=2",
                "/v1/claim?product=mealworm&content=amino-acids&times_more=2"
            })
    void what_makes_no_claim_of_contents_is_refused(String question) {
        assertEquals(400, Reply.to(question).status());
    }

    private static String asked(String text) {
        return "/v1/claim?text=" + URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static JsonNode answer(String text) {
        Reply reply = Reply.to(asked(text));
        assertEquals(200, reply.status(), reply.body());
        return reply.json();
    }
}
