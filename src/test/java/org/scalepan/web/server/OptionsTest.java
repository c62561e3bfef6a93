package org.scalepan.web.server;

import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.equalTo;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;

/** Spreadsheets send OPTIONS first; it must never fail for an existing path. */
class OptionsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/value/ghg/mealworm",
                "/v1/value/ghg/no-such-product",
                "/v1/table?no_such_parameter=1",
                "/v1/comparison",
                "/v1/sources/no-such-source",
                "/",
                "/metrics"
            })
    void options_is_answered_204_with_the_methods_allowed(String question) {
        RunningScalepan.given()
                .options(question)
                .then()
                .statusCode(204)
                .header("Allow", equalTo("GET, HEAD, OPTIONS"))
                .body(emptyString());
    }
}
