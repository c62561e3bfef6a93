package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** An answer that was given before is given again, whole and unchanged. */
class KeptAnswersTest {
    private static KeptAnswers.Question question(Map<String, String> given) {
        return KeptAnswers.Question.of("/v1/comparison", given, "*/*");
    }

    @Test
    void the_cache_buster_and_the_order_of_parameters_do_not_make_another_question() {
        assertEquals(
                question(Map.of("products", "mealworm", "per", "kg-live")),
                question(Map.of("per", "kg-live", "nocache", "17", "products", "mealworm")));
    }

    @Test
    void another_value_pin_or_accepted_type_does() {
        KeptAnswers.Question one = question(Map.of("products", "mealworm"));

        assertNotEquals(one, question(Map.of("products", "beef")));
        assertNotEquals(one, question(Map.of("products", "mealworm", "library", "0123456789abcdef")));
        assertNotEquals(one, KeptAnswers.Question.of("/v1/comparison", Map.of("products", "mealworm"), "text/csv"));
        assertNotEquals(one, KeptAnswers.Question.of("/v1/table", Map.of("products", "mealworm"), "*/*"));
    }

    @Test
    void what_is_kept_comes_back_as_it_was() {
        KeptAnswers kept = new KeptAnswers();
        KeptAnswers.Kept answer = new KeptAnswers.Kept(Answer.of(Answer.TEXT, "7.3"), "/v1/value/ghg/beef?library=0");

        assertTrue(kept.find(question(Map.of())).isEmpty());
        kept.keep(question(Map.of()), answer);
        assertEquals(answer, kept.find(question(Map.of())).orElseThrow());
    }
}
