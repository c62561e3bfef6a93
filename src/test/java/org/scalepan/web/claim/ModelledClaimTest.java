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

/** Claims about reference farms: each sentence says what they are, none counts studies, and bounds decide only what they can. */
class ModelledClaimTest {
    private static final String WORDS = "modelled from published practice, not a study";

    private static JsonNode claim(String product, String reference, double times) {
        return Reply.to("/v1/claim?product=" + product + "&reference=" + reference + "&times_less=" + times
                        + "&evidence=modelled")
                .json();
    }

    @ParameterizedTest
    @CsvSource({
        "mealworm, chicken",
        "mealworm, beef",
        "mealworm, egg",
        "superworm, chicken",
        "silkworm-pupae, beef",
        "chicken, beef",
        "pork, milk",
        "house-cricket, pork"
    })
    void every_sentence_says_modelled_and_none_counts_studies(String product, String reference) {
        JsonNode claim = claim(product, reference, 5);
        String reason = JsonAt.text(claim, "/reason");
        String said = JsonAt.text(claim, "/say_instead/sentence");

        assertTrue(said.contains(WORDS), said);
        assertTrue(reason.contains(WORDS) || reason.contains("there is no modelled figure"), reason);
        for (String sentence : new String[] {reason, said}) {
            assertFalse(sentence.contains("studies") || sentence.contains("1 study"), sentence);
            assertFalse(sentence.contains("is thin"), sentence);
            assertFalse(sentence.contains("measured"), sentence);
        }
    }

    @Test
    void a_lower_bound_of_the_product_can_refute_a_claim_and_never_support_one() {
        // The energy of heated mealworm farms is published nowhere: at least so much, so that chicken has at most so
        // many times as much.
        JsonNode refuted = claim("mealworm", "chicken", 5);
        JsonNode open = claim("mealworm", "chicken", 1.1);

        assertEquals("fails", JsonAt.text(refuted, "/verdict"));
        assertEquals("undecided", JsonAt.text(open, "/verdict"));
        assertFalse(open.at("/say_instead").has("times_less"));
    }

    @Test
    void a_lower_bound_of_the_reference_supports_at_least() {
        JsonNode claim = claim("chicken", "beef", 5);

        assertEquals("holds", JsonAt.text(claim, "/verdict"));
        assertTrue(JsonAt.text(claim, "/say_instead/sentence").contains("% less greenhouse gas than beef"));
        assertTrue(JsonAt.text(claim, "/say_instead/sentence").contains("of beef: the true figure is higher"));
    }

    @Test
    void two_lower_bounds_decide_nothing() {
        JsonNode claim = claim("mealworm", "beef", 5);

        assertEquals("undecided", JsonAt.text(claim, "/checks/0/cells/0/verdict"));
        assertFalse(claim.at("/checks/0/cells/0").has("times_less"));
    }

    @Test
    void the_table_of_a_claim_counts_no_studies() {
        String table = Reply.to("/v1/claim?product=chicken&reference=beef&times_less=5&evidence=modelled&format=md")
                .body();

        assertTrue(table.contains("| verdict | evidence |"), table);
        assertFalse(table.contains("0 / 0"), table);
    }
}
