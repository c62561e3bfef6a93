package org.scalepan.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.jetty.http.HttpField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.route.ResponseCache;

/** A cached response equals the computed one. */
class ResponseCacheTest {
    private static ResponseCache.CachedQuestion question(Map<String, String> given) {
        return ResponseCache.CachedQuestion.of("/v1/comparison", given, "*/*");
    }

    @Test
    void the_cache_buster_and_the_order_of_parameters_do_not_make_another_question() {
        assertEquals(
                question(Map.of("products", "mealworm", "per", "kg-live")),
                question(Map.of("per", "kg-live", "nocache", "17", "products", "mealworm")));
    }

    @Test
    void another_value_pin_or_accepted_type_makes_another_question() {
        ResponseCache.CachedQuestion one = question(Map.of("products", "mealworm"));

        assertNotEquals(one, question(Map.of("products", "beef")));
        assertNotEquals(one, question(Map.of("products", "mealworm", "library", "0123456789abcdef")));
        assertNotEquals(
                one, ResponseCache.CachedQuestion.of("/v1/comparison", Map.of("products", "mealworm"), "text/csv"));
        assertNotEquals(one, ResponseCache.CachedQuestion.of("/v1/table", Map.of("products", "mealworm"), "*/*"));
    }

    private static final ResponseCache.CachedResponse ANSWER = ResponseCache.CachedResponse.of(
            Answer.of(Answer.TEXT, "7.3"), "/v1/value", List.of(new HttpField("Vary", "Accept")));

    @Test
    void a_cached_response_is_returned_unchanged() {
        ResponseCache cache = new ResponseCache();

        assertTrue(cache.find(question(Map.of())).isEmpty());
        cache.put(question(Map.of()), ANSWER);
        assertEquals(ANSWER, cache.find(question(Map.of())).orElseThrow());
    }

    @Test
    void it_is_found_by_its_request_target_only_after_they_were_linked() {
        ResponseCache cache = new ResponseCache();
        ResponseCache.RawTarget asked = new ResponseCache.RawTarget("/v1/comparison?products=mealworm", "*/*");
        ResponseCache.CachedQuestion question = question(Map.of("products", "mealworm"));

        cache.put(question, ANSWER);
        assertTrue(cache.find(asked).isEmpty());
        cache.link(asked, question);
        assertEquals(ANSWER, cache.find(asked).orElseThrow());
        assertTrue(cache.find(new ResponseCache.RawTarget(asked.target(), "text/csv"))
                .isEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/comparison?products=mealworm&against=beef",
                "/v1/comparison?against=beef&products=mealworm&nocache=17",
                "/v1/comparison?products=meal%77orm&against=beef&format=csv",
                "/v1/value/ghg/mealworm",
                "/v1/comparison?products=mealworm&against=beef&format=xlsx",
                "/v1/table?products=mealworm,beef&format=csv",
                "/v1/table?products=mealworm,beef&format=xml",
                "/v1/comparison?products=mealworm&against=beef&format=md"
            })
    void a_cached_answer_equals_the_computed_one(String question) {
        Whole made = whole(question);

        assertEquals(200, made.status());
        assertEquals(made, whole(question));
        assertEquals(made, whole(question));
    }

    @Test
    void head_and_304_of_a_cached_answer_are_as_of_a_computed_one() {
        String question = "/v1/comparison?products=house-cricket&against=beef";
        Whole computed = whole(question);
        assertEquals(computed, whole(question));

        Response head = RunningScalepan.given().head(question);
        assertEquals(computed.headers(), headers(head));
        assertEquals(0, head.asByteArray().length);
        assertEquals(
                304,
                RunningScalepan.given()
                        .header("If-None-Match", head.header("ETag"))
                        .get(question)
                        .statusCode());
        assertEquals(405, RunningScalepan.given().put(question).statusCode());
    }

    private record Whole(int status, Map<String, String> headers, String body) {}

    private static Whole whole(String question) {
        Response response = RunningScalepan.given().urlEncodingEnabled(false).get(question);
        return new Whole(
                response.statusCode(), headers(response), HexFormat.of().formatHex(response.asByteArray()));
    }

    /** All headers but Date. */
    private static Map<String, String> headers(Response response) {
        Map<String, String> headers = new TreeMap<>();
        response.headers().forEach(header -> headers.put(header.getName(), header.getValue()));
        headers.remove("Date");
        return headers;
    }
}
