package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;

/** A spreadsheet sends HEAD before GET and gives up at an error status, so that HEAD must answer as GET would (RFC 9110, 9.3.2). */
class HeadTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/value/ghg/mealworm?per=kg-protein",
                "/v1/value/ghg/mealwrm",
                "/v1/value/ghg/mealwrm?on_error=200",
                "/v1/comparison?products=mealworm&against=beef&indicator=land",
                "/v1/table?products=mealworm&format=xml",
                "/v1/products?no_such_parameter=1",
                "/v1/sources/no-such-source",
                "/v1/indicators?library=0000000000000000",
                "/",
                "/openapi.yaml",
                "/no/such/address"
            })
    void head_has_the_status_and_the_headers_of_get_and_no_body(String question) {
        Response get = RunningScalepan.given().get(question);
        Response head = RunningScalepan.given().head(question);

        assertEquals("", head.asString());
        assertEquals(get.statusCode(), head.statusCode());
        for (String name : new String[] {
            "Content-Type", "Content-Length", "ETag", "Cache-Control", "Content-Location", "Library-Digest"
        }) {
            assertEquals(get.header(name), head.header(name), name);
        }
        assertEquals(Integer.toString(get.asByteArray().length), head.header("Content-Length"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/value/ghg/mealworm", "/v1/products"})
    void head_with_the_right_tag_is_answered_304(String question) {
        String tag = RunningScalepan.given().get(question).header("ETag");

        RunningScalepan.given()
                .header("If-None-Match", tag)
                .head(question)
                .then()
                .statusCode(304);
    }
}
