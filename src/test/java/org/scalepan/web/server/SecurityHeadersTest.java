package org.scalepan.web.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;

/** Security headers of responses. */
class SecurityHeadersTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/docs",
                "/docs/reader.js",
                "/page/scalepan.css",
                "/openapi.yaml",
                "/metrics",
                "/health/live",
                "/v1/products",
                "/v1/value/ghg/mealworm",
                "/v1/value/ghg/no-such-product",
                "/v1/table?products=beef",
                "/v1/products?no_such=1",
                "/no/such/address"
            })
    void every_answer_forbids_sniffing_framing_and_referrers(String question) {
        RunningScalepan.given()
                .get(question)
                .then()
                .header("X-Content-Type-Options", equalTo("nosniff"))
                .header("Referrer-Policy", equalTo("no-referrer"))
                .header("Content-Security-Policy", containsString("frame-ancestors 'none'"))
                .header("Server", equalTo(null))
                .header("X-Powered-By", equalTo(null));
    }

    @Test
    void a_request_that_cannot_be_read_is_refused_with_the_same_headers() {
        RawExchange reply = RawExchange.send("NONSENSE");

        assertEquals("nosniff", reply.header("X-Content-Type-Options").orElse("none"));
        assertEquals("no-referrer", reply.header("Referrer-Policy").orElse("none"));
        assertTrue(reply.header("Content-Security-Policy").orElse("none").contains("default-src 'none'"));
        assertTrue(reply.header("Server").isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/products", "/v1/value/ghg/mealworm", "/metrics", "/openapi.yaml"})
    void data_may_load_and_run_nothing(String question) {
        RunningScalepan.given()
                .get(question)
                .then()
                .header("Content-Security-Policy", equalTo("default-src 'none'; frame-ancestors 'none'"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/docs", "/guide", "/guide/tour"})
    void a_page_may_run_only_the_scripts_that_this_service_serves_as_files(String page) {
        RunningScalepan.given()
                .get(page)
                .then()
                .header("Content-Security-Policy", containsString("default-src 'self'"))
                .header("Content-Security-Policy", not(containsString("unsafe-eval")))
                .header("Content-Security-Policy", not(containsString("script-src")));
    }
}
