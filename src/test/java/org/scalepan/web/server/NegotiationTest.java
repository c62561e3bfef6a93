package org.scalepan.web.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** The format of an answer: {@code format=} before the Accept header (RFC 9110, section 12.5.1) before the default. */
class NegotiationTest {
    private static final String RESULTS = "/v1/results?source=dreyer-2021";

    private static String chosen(String question, String accept) {
        return Reply.to(question, Map.of("Accept", accept)).mediaType();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "*/*                                         | application/json",
                "application/*                               | application/json",
                "text/*                                      | text/csv",
                "text/csv                                    | text/csv",
                "TEXT/CSV                                    | text/csv",
                "text/csv; header=present                    | text/csv",
                "application/json, text/csv                  | application/json",
                "text/csv, application/json                  | text/csv",
                "text/csv, */*                               | text/csv",
                "application/json;q=0.5, text/csv            | text/csv",
                "application/json;q=0.5, text/csv;q=0.4      | application/json",
                "application/json ; q=0.5 , text/csv ; q=0.9 | text/csv",
                "application/json;q=0.5, */*;q=0.8           | text/csv",
                "text/csv\t ;  q=0.9  ;x=1, image/png         | text/csv",
                "application/json;q=0, */*                   | text/csv",
                "image/png, text/csv;q=0.1                   | text/csv",
                "image/png, */*;q=0.1                        | application/json",
                "application/json;q=2, text/csv;q=0.1        | text/csv",
            })
    void the_offered_format_with_the_highest_quality_is_sent(String accept, String mediaType) {
        assertEquals(mediaType, chosen(RESULTS, accept));
    }

    @Test
    void without_an_accept_header_the_default_format_is_sent() {
        assertEquals("application/json", Reply.to(RESULTS).mediaType());
        assertEquals("text/csv", Reply.to("/v1/table?products=beef").mediaType());
    }

    @ParameterizedTest
    @CsvSource({
        "image/png",
        "text/html",
        "application/json;q=0",
        "'application/json;q=0, text/csv;q=0.0'",
        "*/*;q=0",
        "application/problem+json",
        "nonsense"
    })
    void when_no_accepted_format_is_offered_the_problem_lists_the_offer(String accept) {
        RunningScalepan.given()
                .header("Accept", accept)
                .get(RESULTS)
                .then()
                .statusCode(406)
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/not-acceptable"))
                .body("detail", containsString("application/json, text/csv"));
    }

    @Test
    void the_format_parameter_takes_precedence_over_the_accept_header() {
        assertEquals("text/csv", chosen(RESULTS + "&format=csv", "application/json"));
        assertEquals("application/json", chosen(RESULTS + "&format=json", "image/png"));
    }

    @Test
    void a_format_that_is_not_offered_is_refused_with_those_that_are() {
        RunningScalepan.given()
                .get(RESULTS + "&format=xml")
                .then()
                .statusCode(400)
                .body("errors[0].parameter", equalTo("format"))
                .body("errors[0].allowed", equalTo(List.of("json", "csv")));
    }

    @ParameterizedTest
    @CsvSource({
        "bibtex, application/x-bibtex, @",
        "ris, application/x-research-info-systems, TY  - ",
        "csl, application/vnd.citationstyles.csl+json, [",
        "text, text/plain, Dreyer M"
    })
    void references_come_in_the_formats_of_reference_managers(String format, String mediaType, String start) {
        RunningScalepan.given()
                .get("/v1/sources/dreyer-2021?format=" + format)
                .then()
                .statusCode(200)
                .contentType(startsWith(mediaType))
                .body(startsWith(start));
        assertEquals(mediaType, chosen("/v1/sources/dreyer-2021", mediaType));
    }

    @Test
    void vary_names_accept() {
        RunningScalepan.given().get(RESULTS).then().header("Vary", equalTo("Accept"));
    }
}
