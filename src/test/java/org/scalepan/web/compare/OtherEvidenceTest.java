package org.scalepan.web.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** Where the kind of evidence asked for has nothing and the other has: the answer says so, with a question that works when pasted. */
class OtherEvidenceTest {
    private static final String ADDRESS = "/v1/";

    @ParameterizedTest
    @CsvSource({
        // Superworms have a reference farm and no study; soya has studies and no reference farm.
        "/v1/value/ghg/superworm, evidence=modelled gives a modelled figure",
        "/v1/value/ghg/superworm?per=kg-live&draws=1000, evidence=modelled gives a modelled figure",
        "/v1/value/ghg/soybean?evidence=modelled, evidence=published gives a published figure",
        "/v1/ratio/ghg/superworm/chicken, evidence=modelled gives modelled figures",
        "/v1/ratio/ghg/soybean/beef?evidence=modelled, evidence=published gives published figures",
    })
    void a_cell_names_the_address_by_which_the_other_kind_answers(String asked, String words) {
        Reply refused = Reply.to(asked);

        assertEquals(404, refused.status());
        assertTrue(refused.body().startsWith("#no evidence: "), refused.body());
        assertTrue(refused.body().contains("; " + words + ": "), refused.body());
        String address = refused.body().substring(refused.body().lastIndexOf(ADDRESS));
        Reply answered = Reply.to(address);
        assertEquals(200, answered.status(), address + " " + answered.body());
        assertTrue(Double.parseDouble(answered.body()) > 0, answered.body());
    }

    @Test
    void two_bounds_have_no_ratio_by_the_other_kind_either_and_no_address_is_given() {
        String refused = Reply.to("/v1/ratio/ghg/superworm/beef").body();

        assertTrue(
                refused.contains(
                        "evidence=modelled gives modelled figures without a ratio (both sides are only bounds"),
                refused);
        assertFalse(refused.contains(ADDRESS), refused);
    }

    @Test
    void nothing_is_offered_where_the_other_kind_has_nothing_either() {
        String refused = Reply.to("/v1/value/ghg/superworm?boundary=retail").body();

        assertTrue(refused.startsWith("#no evidence: "), refused);
        assertFalse(refused.contains("evidence=modelled"), refused);
    }

    @Test
    void a_side_without_a_figure_is_not_called_a_bound() {
        String refused =
                Reply.to("/v1/ratio/ghg/soybean/beef?evidence=modelled").body();

        assertFalse(refused.contains("a side is a bound"), refused);
    }

    @ParameterizedTest
    @CsvSource({
        "/v1/comparison?products=superworm&against=chicken, /items/0, modelled-figure",
        "/v1/comparison?products=soybean&against=chicken&evidence=modelled, /items/0, published-figure",
        "/v1/table?products=superworm&indicators=ghg&format=json, /rows/0, modelled-figure",
        "/v1/table?products=soybean&indicators=ghg&format=json&evidence=modelled, /rows/0, published-figure",
        "/v1/claim?product=superworm&reference=chicken&times_less=2, /checks/0, modelled-figure",
        "/v1/claim?product=soybean&reference=beef&times_less=2&evidence=modelled, /checks/0, published-figure",
    })
    void json_has_the_question_that_the_other_kind_answers(String asked, String place, String code) {
        JsonNode known = Reply.to(asked).json().at(place).path("known_instead");

        assertEquals(code, JsonAt.text(known, "/code"));
        JsonNode answered = Reply.to(JsonAt.text(known, "/question")).json();
        assertFalse(answered.at(place).has("known_instead"), answered.at(place).toString());
    }

    @Test
    void a_claim_says_it_in_its_reason_and_in_what_can_be_said() {
        JsonNode claim = Reply.to("/v1/claim?product=soybean&reference=beef&times_less=2&evidence=modelled")
                .json();

        assertTrue(
                JsonAt.text(claim, "/reason")
                        .contains("there is no modelled figure: no reference farm of soybean is in this library;"
                                + " evidence=published gives published figures."),
                JsonAt.text(claim, "/reason"));
        assertTrue(
                JsonAt.text(claim, "/say_instead/sentence").contains("; evidence=published gives published figures; "),
                JsonAt.text(claim, "/say_instead/sentence"));
    }

    @Test
    void a_brief_says_it_of_a_product_without_studies() {
        String brief = Reply.to("/v1/brief?products=superworm&against=chicken&draws=1000")
                .body();

        assertTrue(brief.contains("evidence=modelled gives modelled figures"), brief);
    }
}
