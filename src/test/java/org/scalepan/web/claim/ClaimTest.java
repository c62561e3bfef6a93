package org.scalepan.web.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.RecordsSent;
import org.scalepan.web.Reply;
import org.scalepan.web.server.Description;

/** The claim check over HTTP. */
class ClaimTest {
    private static final String FARM = """
            {"system": {"kind": "insects", "name": "an invented farm", "product": "palm-weevil",
              "harvest": {"kg_per_year": 600}, "feed": [{"ingredient": "wheat-bran", "kg": 1500, "burden": "mass"}]},
            """;

    private static String asked(String text) {
        return "/v1/claim?text=" + URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** Five common sentences about edible insects: gases, land, feed, water, no impact. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Insects emit a hundred times less greenhouse gas than beef. | holds-only-for | dreyer-2021",
                "Mealworms need ten times less land than beef. | open | dreyer-2021",
                "Crickets need twelve times less feed than cattle. | fails | van-huis-2013",
                "Insects emit no greenhouse gas. | fails | dreyer-2021"
            })
    void the_five_sentences_come_back_with_verdict_reason_citation_and_a_better_sentence(
            String text, String verdict, String source) {
        Reply reply = Reply.to(asked(text) + "&draws=2000");

        assertEquals(200, reply.status(), reply.body());
        JsonNode answer = reply.json();
        assertEquals(verdict, JsonAt.text(answer, "/verdict"));
        assertTrue(JsonAt.text(answer, "/reason").length() > 50);
        String better = JsonAt.text(answer, "/say_instead/sentence");
        assertTrue(better.contains("at least"), better);
        assertTrue(answer.path("say_instead").path("sources").toString().contains(source), better);
        assertTrue(answer.path("references").toString().contains("\"" + source + "\""));
        assertFalse(answer.path("checks").path(0).path("circulating").isEmpty(), "where the claim comes from");
    }

    /** The water of mealworms (Miglietta et al. 2015) is held from memory alone: nothing is printed of it, and the question that opens it works. */
    @Test
    void a_claim_about_what_nobody_has_seen_is_not_traceable_and_names_the_question_that_opens_it() {
        JsonNode closed = Reply.to(asked("Mealworms need two thousand times less water than beef.") + "&draws=2000")
                .json();
        assertEquals("not-traceable", JsonAt.text(closed, "/verdict"));
        assertEquals("unseen-figure", JsonAt.text(closed, "/checks/0/known_instead/code"));
        assertFalse(JsonAt.text(closed, "/reason").contains("memory"), JsonAt.text(closed, "/reason"));

        JsonNode open = Reply.to(JsonAt.text(closed, "/checks/0/known_instead/question"))
                .json();
        assertEquals("fails", JsonAt.text(open, "/verdict"));
        assertTrue(open.path("say_instead").path("sources").toString().contains("miglietta-2015"));
    }

    @Test
    void the_permalink_of_a_sentence_replays_it_without_the_sentence() {
        JsonNode answer =
                Reply.to(asked("mealworms need ten times less land than beef")).json();
        String permalink = JsonAt.text(answer, "/permalink");

        assertTrue(permalink.contains("times_less=10") && !permalink.contains("text="), permalink);
        ObjectNode again = (ObjectNode) Reply.to(permalink).json();
        ObjectNode first = answer.deepCopy();
        first.remove("understood");
        assertEquals(first, again);
    }

    @Test
    void the_same_question_gives_the_same_bytes() {
        String question = "/v1/claim?product=mealworm&reference=pork&percent_less=50&draws=1000";

        assertEquals(Reply.to(question).body(), Reply.to(question).body());
    }

    @Test
    void markdown_has_the_claim_the_verdict_the_grid_and_the_references() {
        String text = Reply.to("/v1/claim?product=mealworm&reference=beef&times_less=100&format=md&draws=1000")
                .body();

        for (String part : List.of(
                "**Claim:**",
                "not as asked; it holds on another basis only",
                "**What can be said:**",
                "| verdict |",
                "References")) {
            assertTrue(text.contains(part), text);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/claim",
                "/v1/claim?product=mealworm&reference=beef",
                "/v1/claim?product=mealworm&times_less=2",
                "/v1/claim?product=mealworm&reference=beef&times_less=0",
                "/v1/claim?product=mealworm&reference=beef&percent_less=100",
                "/v1/claim?product=mealworm&reference=beef&times_less=2&percent_less=50",
                "/v1/claim?product=mealworm&none=no",
                "/v1/claim?product=meelworm&reference=beef&times_less=2",
                "/v1/claim?text=insects%20emit%20less%20than%20meat",
                "/v1/claim?text=insects%20emit%20less%20than%20beef&times_less=3"
            })
    void a_sentence_that_is_no_claim_is_refused_with_a_reason(String question) {
        Reply reply = Reply.to(question);

        assertEquals(400, reply.status(), reply.body());
        assertFalse(reply.json().path("errors").isEmpty());
    }

    @Test
    void a_claim_on_all_insects_with_more_draws_than_are_made_for_it_is_refused_with_the_most_that_are() {
        Reply reply = Reply.to("/v1/claim?product=insects&reference=beef&times_less=2&draws=200000");

        assertEquals(422, reply.status(), reply.body());
        String detail = JsonAt.text(reply.json(), "/detail");
        assertTrue(detail.matches("draws may be at most \\d+ for the \\d+ footprints of this claim.*"), detail);
    }

    @Test
    void a_sentence_may_be_completed_by_parameters() {
        JsonNode answer = Reply.to(asked("half the emissions of chicken") + "&product=mealworm&draws=1000")
                .json();

        assertEquals("mealworm", JsonAt.text(answer, "/question/product"));
        assertEquals("chicken", JsonAt.text(answer, "/question/reference"));
    }

    @Test
    void a_side_may_be_a_farm() {
        Reply reply = post(FARM + "\"reference\": \"chicken\", \"times_less\": 2, \"draws\": 1000}");

        assertEquals(200, reply.status(), reply.body());
        JsonNode answer = reply.json();
        assertEquals("an invented farm", JsonAt.text(answer, "/question/product"));
        assertTrue(answer.path("permalink").isMissingNode(), "records sent have no address");
        assertTrue(answer.path("checks").path(0).path("cells").size() > 1);
    }

    @Test
    void every_described_field_is_accepted() {
        String full = FARM.replace("{\"system\"", "{\"reference_system\"") + """
                 "product": "mealworm", "credit": "no", "indicator": "ghg", "percent_less": 50, "per": "kg-protein",
                 "boundary": "farm-gate", "luc": "include", "gwp": "ar5-100", "region": "western-europe", "grade": "secondary",
                 "protein": "corrected", "quality": "uncapped", "strict": "yes", "of": "mean", "coverage": 0.8, "draws": 1000, "seed": 7}
                """;
        String none = "{\"product\": \"insects\", \"indicator\": \"land\", \"none\": \"yes\", \"draws\": 1000}";
        String text = FARM + "\"text\": \"half the emissions of chicken\", \"draws\": 1000}";
        String farm = FARM + "\"reference\": \"beef\", \"times_less\": 2, \"draws\": 1000}";
        Set<String> used = new TreeSet<>();
        for (String body : List.of(full, none, text, farm)) {
            Reply reply = post(body);
            assertEquals(200, reply.status(), () -> body + " is answered with " + reply.body());
            RecordsSent.read(body).fieldNames().forEachRemaining(used::add);
        }
        Set<String> described = new TreeSet<>(Description.read()
                .schemas()
                .get("ClaimRequest")
                .child("properties")
                .children()
                .keySet());
        assertEquals(described, used);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"product\": \"mealworm\", \"reference\": \"beef\"}",
                "{\"product\": \"mealworm\", \"reference\": \"beef\", \"reference_system\": {}, \"times_less\": 2}",
                "{\"product\": \"mealworm\", \"reference\": \"beef\", \"times_less\": 2, \"unknown\": 1}",
                "{\"text\": \"insects sing less than birds\"}"
            })
    void a_body_that_is_no_claim_is_refused(String body) {
        Reply reply = post(body);

        assertEquals(400, reply.status(), reply.body());
        assertFalse(reply.json().path("errors").isEmpty());
    }

    @Test
    void the_address_answers_both_methods() {
        assertEquals(
                200,
                Reply.to("/v1/claim?product=mealworm&none=yes&indicator=land").status());
        assertEquals(
                200,
                post("{\"product\": \"mealworm\", \"none\": \"yes\", \"indicator\": \"land\"}")
                        .status());
    }

    private static Reply post(String body) {
        return Reply.to("/v1/claim", Map.of("Content-Type", "application/json"), java.util.Optional.of(body));
    }
}
