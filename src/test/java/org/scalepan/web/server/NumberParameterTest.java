package org.scalepan.web.server;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;

/** Numbers in a request are plain decimals within limits; other notations that Java would parse are refused. */
class NumberParameterTest {
    private static final String QUESTION = "/v1/comparison?products=mealworm&against=beef&indicator=land&";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN", "-NaN", "Infinity", "-Infinity", "inf", "1d", "0.9f", "0x1p-1", "0x1p3", "1e999", "-1e999",
                        "0,9",
                ".9", "0.9.1", "1e", "--1", "90%25", "0.499999", "0.990001", "0", "-0.9", "1e-999", "%D9%A0.9", "0.9_0"
            })
    void a_coverage_that_is_not_a_plain_decimal_from_0_5_to_0_99_is_refused(String value) {
        RunningScalepan.given()
                .get(QUESTION + "coverage=" + value)
                .then()
                .statusCode(400)
                .body("errors[0].parameter", equalTo("coverage"))
                .body("errors[0].message", equalTo("coverage must be a number from 0.5 to 0.99"));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.5", "0.99, 0.99", "0.900, 0.9", "9e-1, 0.9", "00.9, 0.9", "0.95, 0.95"})
    void a_coverage_may_be_written_as_any_plain_decimal(String value, double read) {
        assertEquals(
                read,
                RunningScalepan.given()
                        .get(QUESTION + "coverage=" + value)
                        .jsonPath()
                        .getDouble("question.coverage"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "999",
                "200001",
                "1e4",
                "10000.0",
                "10_000",
                "10,000",
                "0x2710",
                "-10000",
                "%2B10000",
                "10000L",
                "9223372036854775808",
                "99999999999999999999999",
                "ten"
            })
    void draws_that_are_not_an_integer_from_1000_to_200000_are_refused(String value) {
        RunningScalepan.given()
                .get(QUESTION + "draws=" + value)
                .then()
                .statusCode(value.equals("200001") ? 422 : 400)
                .body("errors[0].parameter", equalTo("draws"))
                .body("errors[0].message", equalTo("draws must be a whole number from 1000 to 200000"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "2147483648", "1.0", "NaN", "seed"})
    void a_seed_that_is_not_a_31_bit_integer_is_refused(String value) {
        RunningScalepan.given()
                .get(QUESTION + "seed=" + value)
                .then()
                .statusCode(400)
                .body("errors[0].message", equalTo("seed must be a whole number from 0 to 2147483647"));
    }

    @ParameterizedTest
    @CsvSource({"draws, '', 10000", "seed, '', 1", "draws, %20, 10000", "seed, 0, 0", "seed, 2147483647, 2147483647"})
    void an_empty_number_is_the_default_and_the_limits_are_inclusive(String name, String value, int read) {
        RunningScalepan.given()
                .get(QUESTION + name + "=" + value)
                .then()
                .statusCode(200)
                .body("question." + name, is(read));
    }
}
