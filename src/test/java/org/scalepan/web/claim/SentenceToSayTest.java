package org.scalepan.web.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** The sentence that a claim's answer offers instead of the claim. */
class SentenceToSayTest {
    private static final String BOTH_IN_ONE_PAPER =
            "/v1/claim?product=beans&reference=beef&indicator=land&times_less=2&draws=1000";
    private static final String REDUCTION = "/v1/claim?product=mealworm&reference=beef&times_less=100&draws=1000";

    @ParameterizedTest
    @CsvSource({
        "en, ghg, emits at least",
        "en, land, needs at least",
        "fr, ghg, émet au moins",
    })
    void says_of_each_indicator_what_a_product_does(String language, String indicator, String verb) {
        JsonNode answer = Reply.to(REDUCTION + "&indicator=" + indicator + "&lang=" + language)
                .json();

        assertTrue(JsonAt.text(answer, "/say_instead/sentence").contains(verb), answer::toString);
    }

    @ParameterizedTest
    @CsvSource({"en, times less, % less", "fr, fois moins, de moins"})
    void says_a_reduction_in_per_cent_beside_times_less(String language, String times, String part) {
        JsonNode instead = Reply.to(REDUCTION + "&lang=" + language).json().at("/say_instead");
        String sentence = JsonAt.text(instead, "/sentence");

        assertTrue(sentence.contains(times), sentence);
        assertTrue(sentence.contains(part), sentence);
        double ratio = JsonAt.number(instead, "/times_less");
        assertTrue(JsonAt.number(instead, "/percent_less") <= 100 - 100 / ratio + 1e-9, instead::toString);
    }

    @ParameterizedTest
    @CsvSource({
        "en, no comparative assertion in the sense of ISO 14044",
        "fr, pas une affirmation comparative au sens de l’ISO 14044"
    })
    void says_that_it_is_no_comparative_assertion_in_json_and_document(String language, String words) {
        for (String question : new String[] {REDUCTION, BOTH_IN_ONE_PAPER}) {
            String asked = question + "&lang=" + language;
            String caveat = JsonAt.text(Reply.to(asked).json(), "/say_instead/caveat");
            assertTrue(caveat.contains(words), caveat);
        }
        String document = Reply.to(REDUCTION + "&format=md").body();
        assertTrue(
                document.replaceAll("\\s+", " ").contains("no comparative assertion in the sense of ISO 14044"),
                document);
    }

    @Test
    void repeats_the_ratio_of_the_one_paper_that_compares_both_where_no_draws_support_a_sentence() {
        JsonNode answer = Reply.to(BOTH_IN_ONE_PAPER).json();
        JsonNode instead = answer.at("/say_instead");
        String sentence = JsonAt.text(instead, "/sentence");

        assertEquals("sabate-2014", JsonAt.text(instead, "/paper"));
        assertEquals("sabate-2014", JsonAt.text(instead, "/sources/0"));
        assertTrue(sentence.contains("in that paper beef has 18 times"), sentence);
        assertTrue(sentence.contains("the ratio of that paper alone"), sentence);
        assertFalse(instead.has("times_less"), "it is not what the draws support");
    }

    @ParameterizedTest
    @CsvSource({
        "product=beans&reference=beef&indicator=land, seen in its abstract",
        "product=black-soldier-fly:meal&reference=soybean-meal&indicator=ghg, seen second hand"
    })
    void says_how_the_ratio_of_a_paper_was_seen(String question, String seen) {
        JsonNode instead =
                Reply.to("/v1/claim?times_less=2&draws=1000&" + question).json().at("/say_instead");

        assertTrue(JsonAt.text(instead, "/sentence").contains("(" + seen), instead::toString);
    }

    @Test
    void needs_no_paper_where_the_draws_support_a_sentence() {
        JsonNode answer = Reply.to("/v1/claim?product=mealworm&reference=beef&times_less=100&draws=1000")
                .json();

        assertFalse(answer.at("/say_instead").has("paper"), "the draws support a sentence of their own");
    }
}
