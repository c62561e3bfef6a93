package org.scalepan.web.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** An invalid request is never answered with defaults: that would be a wrong figure in a spreadsheet. */
class StrictQueryTest {
    @Test
    void an_unknown_parameter_is_refused_with_the_nearest_known() {
        RunningScalepan.given()
                .get("/v1/comparison?products=mealworm&against=beef&boundry=retail")
                .then()
                .statusCode(400)
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/bad-query"))
                .body("errors", hasSize(1))
                .body("errors[0].parameter", equalTo("boundry"))
                .body("errors[0].did_you_mean", hasItem("boundary"))
                .body("errors[0].allowed", hasItem("boundary"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/page/scalepan.css?x=1",
                "/health/live?x=1",
                "/v1/products/beef?x=1",
                "/v1/rows/c01?x=1",
                "/v1/sources/dreyer-2021?x=1",
                "/v1/value/ghg/mealworm?x=1",
                "/v1/products?PRODUCTS=1"
            })
    void no_route_accepts_an_unknown_parameter(String question) {
        assertEquals(400, RunningScalepan.given().get(question).statusCode());
    }

    @Test
    void an_unknown_word_is_refused_with_the_words_allowed_and_the_nearest() {
        RunningScalepan.given()
                .get("/v1/comparison?products=mealworm&against=beef&per=kg-protien")
                .then()
                .statusCode(400)
                .body("errors[0].parameter", equalTo("per"))
                .body("errors[0].allowed", hasItem("kg-protein"))
                .body("errors[0].did_you_mean[0]", equalTo("kg-protein"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"crickets", "Acheta%20domesticus", "house_cricket", "House%20Cricket"})
    void a_product_under_a_name_that_only_it_has_is_that_product(String name) {
        RunningScalepan.given()
                .get("/v1/comparison?products=" + name + "&against=beef")
                .then()
                .statusCode(200)
                .body("question.products[0]", equalTo("house-cricket"));
    }

    @ParameterizedTest
    @CsvSource({
        "/v1/value/ghg/hen's%20egg,/v1/value/ghg/egg",
        "/v1/value/feed/BSF,/v1/value/feed/black-soldier-fly",
        "/v1/value/ghg/beef?region=KE,/v1/value/ghg/beef?region=kenya",
        "/v1/value/ghg/beef?region=Kenya,/v1/value/ghg/beef?region=kenya",
        "/v1/value/ghg/beef?region=USA,/v1/value/ghg/beef?region=united-states"
    })
    void the_names_that_people_type_give_the_answer_of_the_id(String typed, String id) {
        assertEquals(Reply.to(id).body(), Reply.to(typed).body());
        assertEquals(200, Reply.to(typed).status());
    }

    @ParameterizedTest
    @CsvSource({
        "/v1/value/ghg/beef?boundary=cradle-to-gate,farm-gate or processing-gate",
        "/v1/value/carbon/beef,ghg",
        "/v1/value/fcr/beef,feed or feed-dry-matter"
    })
    void a_word_of_the_field_leads_to_the_name_here(String address, String meant) {
        String line = Reply.to(address).body();
        assertTrue(line.endsWith(": did you mean " + meant + "?"), line);
    }

    @ParameterizedTest
    @ValueSource(strings = {"against=beef,pork", "against=beef&indicator=ghg,land"})
    void a_list_where_one_name_is_asked_for_is_told_so(String parameters) {
        String answer =
                Reply.to("/v1/comparison?products=mealworm&" + parameters).body();
        assertTrue(answer.contains("takes one name here, not a list"), answer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/value/ghg/", "/v1/value/ghg", "/v1/ratio/ghg/mealworm/"})
    void an_address_of_a_cell_with_a_name_left_blank_is_answered_in_one_line(String address) {
        Reply refused = Reply.to(address);
        assertEquals(404, refused.status());
        assertTrue(refused.body().startsWith("#a name is missing in the address"), refused.body());
        assertEquals(200, Reply.to(address + "?on_error=200").status());
        assertTrue(refused.body().lines().count() == 1, refused.body());
    }

    @Test
    void all_errors_are_reported_at_once() {
        RunningScalepan.given()
                .get("/v1/comparison?products=mealwrm&per=x&draws=1&coverage=2&no_such=1")
                .then()
                .statusCode(400)
                .body("detail", equalTo("6 parameters are wrong"))
                .body("errors.parameter", hasItem("against"))
                .body("errors", hasSize(6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"per=kg-live&per=kg-protein", "per=kg-live&per=kg-live", "per=kg-live&p%65r=kg-protein"})
    void a_parameter_given_twice_is_refused(String query) {
        RunningScalepan.given()
                .get("/v1/comparison?products=mealworm&against=beef&" + query)
                .then()
                .statusCode(400)
                .body("errors[0].parameter", equalTo("per"))
                .body("errors[0].message", containsString("given twice"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"%zz", "%4", "%", "%C3%28", "%C0%AF", "%ED%A0%80", "kg%-live"})
    void what_is_not_percent_encoded_utf_8_is_refused(String value) {
        RawExchange reply = RawExchange.send(
                "GET /v1/value/ghg/mealworm?per=" + value + " HTTP/1.1",
                "Host: localhost",
                "Accept: application/problem+json",
                "Connection: close");

        assertEquals(400, reply.status());
        assertTrue(reply.body().contains("percent-encoded UTF-8"), reply.body());
    }

    @Test
    void a_blank_value_counts_as_not_given() {
        assertEquals(
                RunningScalepan.given().get("/v1/value/ghg/mealworm").asString(),
                RunningScalepan.given()
                        .get("/v1/value/ghg/mealworm?per=&boundary=%20&draws=&coverage")
                        .asString());
    }

    @Test
    void a_missing_required_product_is_reported() {
        RunningScalepan.given()
                .get("/v1/comparison?products=&against=")
                .then()
                .statusCode(400)
                .body("errors.parameter", hasItem("products"))
                .body("errors.parameter", hasItem("against"));
    }

    @Test
    void blanks_around_the_entries_of_a_list_do_not_matter() {
        assertEquals(
                RunningScalepan.given().get("/v1/table?products=mealworm,beef").asString(),
                RunningScalepan.given()
                        .get("/v1/table?products=%20mealworm%20,+beef,,mealworm")
                        .asString());
    }

    @Test
    void a_value_of_more_than_2000_characters_is_refused() {
        RunningScalepan.given()
                .get("/v1/comparison?products=mealworm&against=" + "b".repeat(2_001))
                .then()
                .statusCode(400)
                .body("errors.message", hasItem(containsString("longer than 2000 characters")));
    }

    @Test
    void a_wrong_value_is_shortened_when_it_is_repeated() {
        String message = RunningScalepan.given()
                .get("/v1/comparison?products=mealworm&against=" + "b".repeat(1_999))
                .path("errors[0].message");

        assertTrue(message.length() < 100, message);
    }

    @Test
    void a_comparison_of_more_than_20_products_is_refused() {
        String products = String.join(
                ",",
                RunningScalepan.library().products().keySet().stream().limit(21).toList());
        RunningScalepan.given()
                .get("/v1/comparison?against=beef&products=" + products)
                .then()
                .statusCode(422)
                .body("detail", equalTo("products has 21 entries; at most 20 are allowed"));
    }

    @Test
    void a_table_of_more_than_200_rows_is_refused() {
        String products = String.join(
                ",",
                RunningScalepan.library().products().keySet().stream().limit(41).toList());
        RunningScalepan.given()
                .get("/v1/table?indicators=ghg,land,energy,water,feed&products=" + products)
                .then()
                .statusCode(422)
                .body("detail", containsString("at most 200"));
    }

    private static String pairs(int count) {
        return String.join(
                "&",
                java.util.stream.IntStream.range(0, count)
                        .mapToObj(i -> "x" + i + "=1")
                        .toList());
    }

    @Test
    void more_than_64_parameters_are_one_error() {
        RunningScalepan.given()
                .get("/v1/products?" + pairs(65))
                .then()
                .statusCode(422)
                .body("errors", hasSize(1))
                .body("errors[0].message", containsString("more than 64"));
    }

    @Test
    void of_many_errors_the_first_are_reported_with_the_number_of_the_rest() {
        RunningScalepan.given()
                .get("/v1/products?" + pairs(64))
                .then()
                .statusCode(400)
                .body("detail", equalTo("64 parameters are wrong"))
                .body("errors", hasSize(20))
                .body("errors[18].parameter", notNullValue())
                .body("errors[19].message", equalTo("and 45 more faults"));
    }

    @Test
    void a_long_name_is_not_repeated_in_full() {
        String name = "x".repeat(1_000);

        for (String query : new String[] {name + "=1", name + "=1&" + name + "=2"}) {
            RunningScalepan.given()
                    .get("/v1/products?" + query)
                    .then()
                    .statusCode(400)
                    .body("errors[0].parameter", equalTo("x".repeat(57) + "..."))
                    .body(not(containsString("x".repeat(61))));
        }
    }

    @Test
    void raw_bytes_that_are_not_utf_8_are_refused_and_raw_utf_8_is_not() {
        RawExchange latin1 =
                RawExchange.send("GET /v1/products?nocache=caf\u00e9 HTTP/1.1", "Host: localhost", "Connection: close");
        assertEquals(400, latin1.status());
        assertTrue(latin1.body().contains("percent-encoded UTF-8"), latin1::body);

        String utf8 = new String("caf\u00e9".getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
        RawExchange raw = RawExchange.send(
                "GET /v1/products?nocache=" + utf8 + " HTTP/1.1", "Host: localhost", "Connection: close");
        assertEquals(200, raw.status());
    }
}
