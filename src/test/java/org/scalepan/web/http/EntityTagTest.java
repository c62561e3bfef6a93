package org.scalepan.web.http;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;

/** Entity tags and If-None-Match (RFC 9110, sections 8.8.3 and 13.1.2). */
class EntityTagTest {
    private static final String QUESTION = "/v1/table?products=mealworm,beef";

    private static Response asking(String ifNoneMatch) {
        return RunningScalepan.given().header("If-None-Match", ifNoneMatch).get(QUESTION);
    }

    private static String tag() {
        return RunningScalepan.given().get(QUESTION).header("ETag");
    }

    @Test
    void a_tag_is_strong_and_quoted() {
        assertTrue(tag().matches("\"[0-9a-f]{32}\""), tag());
    }

    @Test
    void the_same_body_has_the_same_tag_and_another_body_another() {
        assertEquals(tag(), tag());
        assertNotEquals(
                tag(), RunningScalepan.given().get(QUESTION + "&format=json").header("ETag"));
        assertNotEquals(tag(), RunningScalepan.given().get(QUESTION + "&seed=2").header("ETag"));
    }

    @Test
    void the_tag_itself_is_answered_304_without_a_body() {
        Response reply = asking(tag());

        assertEquals(304, reply.statusCode());
        assertEquals("", reply.asString());
        assertEquals(tag(), reply.header("ETag"));
    }

    /** What is no list of entity tags matches nothing: the whole answer is never wrong. */
    @ParameterizedTest
    @ValueSource(strings = {"%sgarbage", "garbage%s", "%s %s", "%s; q=1", "\"unclosed, %s"})
    void a_malformed_list_matches_nothing(String header) {
        assertEquals(200, asking(header.replace("%s", tag())).statusCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"%s, \"other\"", "\"other\",,  W/%s", " , %s ,"})
    void any_tag_of_a_list_may_match(String header) {
        assertEquals(304, asking(header.replace("%s", tag())).statusCode());
    }

    @Test
    void a_304_repeats_what_a_cache_needs_to_freshen_its_copy() {
        Response full = RunningScalepan.given().get(QUESTION);
        Response reply = asking(tag());

        // RFC 9110, section 15.4.5.
        for (String name : new String[] {"Cache-Control", "Content-Location", "ETag", "Vary"}) {
            assertEquals(full.header(name), reply.header(name), name);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"W/%s", "\"other\", %s", "%s,\"other\"", "W/\"other\", W/%s ,\"more\"", " %s "})
    void the_tag_in_a_list_or_marked_weak_is_answered_304(String pattern) {
        assertEquals(304, asking(String.format(pattern, tag())).statusCode());
    }

    @Test
    void a_star_is_answered_304() {
        assertEquals(304, asking("*").statusCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"other\"", "\"\"", "nonsense", "\"*\"", "W/\"other\", \"more\""})
    void another_tag_is_answered_in_full(String other) {
        Response reply = asking(other);

        assertEquals(200, reply.statusCode());
        assertTrue(reply.asString().startsWith("product,"), reply.asString());
    }

    @Test
    void a_tag_without_quotes_does_not_match() {
        assertEquals(200, asking(tag().replace("\"", "")).statusCode());
    }

    @Test
    void a_refusal_has_no_tag_and_is_never_answered_304() {
        RunningScalepan.given()
                .header("If-None-Match", "*")
                .get("/v1/sources/no-such-source")
                .then()
                .statusCode(404)
                .header("ETag", equalTo(null));
        assertNull(RunningScalepan.given().get("/v1/products?no_such=1").header("ETag"));
    }
}
