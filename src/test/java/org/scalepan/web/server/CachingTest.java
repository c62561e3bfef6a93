package org.scalepan.web.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.input.Input;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.RequestBody;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** Cache lifetimes, and links pinned to a library. */
class CachingTest {
    private static final String FORMER = "0123456789abcdef";

    @ParameterizedTest
    @ValueSource(strings = {"/v1/value/ghg/mealworm", "/v1/products", "/v1/table?products=beef", "/", "/openapi.yaml"})
    void an_unpinned_answer_is_cacheable_for_an_hour(String question) {
        RunningScalepan.given().get(question).then().header("Cache-Control", equalTo("public, max-age=3600"));
    }

    @Test
    void a_pinned_answer_is_immutable() {
        RunningScalepan.given()
                .get("/v1/value/ghg/mealworm?library=" + RunningScalepan.digest())
                .then()
                .statusCode(200)
                .header("Cache-Control", equalTo("public, max-age=31536000, immutable"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/health/live", "/health/ready", "/metrics", "/v1/sources/no-such-source", "/no/such/address"})
    void probes_and_problems_are_not_cacheable(String question) {
        RunningScalepan.given().get(question).then().header("Cache-Control", equalTo("no-store"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/value/ghg/mealworm?per=kg-protein",
                "/v1/ratio/land/mealworm/beef?coverage=0.95&stat=text",
                "/v1/comparison?products=mealworm:meal,tofu&against=beef&sources=poore-nemecek-2018",
                "/v1/table?products=mealworm,beef&indicators=ghg,land&delim=;&decimal=,",
                "/v1/results?product=mealworm&indicator=land",
                "/v1/sources?ids=dreyer-2021,oonincx-2010&format=ris",
                "/v1/rows/c01"
            })
    void the_permalink_in_content_location_gives_the_same_bytes(String question) {
        Response first = RunningScalepan.given().get(question);
        Response again = RunningScalepan.given().get(first.header("Content-Location"));

        assertEquals(200, again.statusCode());
        assertArrayEquals(first.asByteArray(), again.asByteArray());
        assertEquals(first.header("Content-Location"), again.header("Content-Location"));
    }

    @Test
    void the_permalink_in_the_body_is_the_one_in_the_header() {
        Response reply = RunningScalepan.given().get("/v1/results?source=dreyer-2021");

        assertEquals(reply.header("Content-Location"), reply.path("permalink"));
    }

    @Test
    void a_permalink_keeps_the_format_that_was_chosen_by_accept() {
        Response csv = RunningScalepan.given().accept("text/csv").get("/v1/results?source=dreyer-2021");

        assertEquals(
                csv.asString(),
                RunningScalepan.given().get(csv.header("Content-Location")).asString());
    }

    @Test
    void a_link_pinned_to_another_library_is_refused_with_both_digests() {
        RunningScalepan.given()
                .get("/v1/indicators?library=" + FORMER)
                .then()
                .statusCode(409)
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/other-library"))
                .body("detail", containsString(FORMER))
                .body("detail", containsString(RunningScalepan.digest()))
                .body("errors[0].allowed", hasItem(RunningScalepan.digest()));
    }

    @Test
    void a_cell_pinned_to_another_library_shows_both_digests() {
        RunningScalepan.given()
                .get("/v1/value/ghg/mealworm?library=" + FORMER)
                .then()
                .statusCode(409)
                .body(containsString(FORMER))
                .body(containsString(RunningScalepan.digest()));
    }

    @Test
    void the_cache_buster_is_ignored() {
        assertEquals(
                RunningScalepan.given().get("/v1/value/ghg/mealworm").header("ETag"),
                RunningScalepan.given().get("/v1/value/ghg/mealworm?nocache=17").header("ETag"));
    }

    @Test
    void a_pin_that_is_no_digest_is_not_repeated_in_full() {
        String reply = RunningScalepan.given()
                .get("/v1/indicators?library=" + "f".repeat(1_500))
                .asString();

        assertTrue(reply.contains("f".repeat(57) + "..."), reply);
        assertFalse(reply.contains("f".repeat(61)), reply);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/", "/farm", "/protein", "/programme", "/openapi.yaml", "/docs", "/docs/swagger-ui-bundle.js"})
    void a_fixed_file_is_read_once(String path) {
        Route route = RunningScalepan.routes().stream()
                .filter(found -> path.equals(found.path().replace("{file}", "swagger-ui-bundle.js")))
                .findFirst()
                .orElseThrow();
        Request request = new Request(
                path,
                Map.of("file", "swagger-ui-bundle.js"),
                Input.query(Map.of()),
                "",
                RequestBody.NOTHING,
                "http",
                "",
                Client.at("127.0.0.1"));

        assertSame(route.handling().answer(request), route.handling().answer(request));
        RunningScalepan.given()
                .header("If-None-Match", RunningScalepan.given().get(path).header("ETag"))
                .get(path)
                .then()
                .statusCode(304);
    }
}
