package org.scalepan.web.server;

import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** Counts in the Prometheus text format, by route and status. */
class MetricsTest {
    private static long count(String route, int status) {
        String name = "scalepan_answers_total{route=\"" + route + "\",status=\"" + status + "\"} ";
        return Reply.to("/metrics")
                .body()
                .lines()
                .filter(line -> line.startsWith(name))
                .mapToLong(line -> Long.parseLong(line.substring(name.length())))
                .sum();
    }

    @Test
    void an_answer_is_counted_under_its_route_and_status() {
        long before = count("/v1/sources/{id}", 200);
        Reply.to("/v1/sources/dreyer-2021");
        Reply.to("/v1/sources/oonincx-2010");

        assertEquals(before + 2, count("/v1/sources/{id}", 200));
    }

    @Test
    void a_cached_answer_is_counted_like_any_other() {
        String question = "/v1/comparison?products=mealworm&against=beef&seed=977";
        long before = count("/v1/comparison", 200);
        for (int i = 0; i < 3; i++) {
            Reply.to(question);
        }

        assertEquals(before + 3, count("/v1/comparison", 200));
    }

    @Test
    void a_refusal_and_a_304_are_counted_as_what_they_are() {
        long refused = count("/v1/rows/{id}", 404);
        long unchanged = count("/v1/rows/{id}", 304);
        Reply.to("/v1/rows/no-such-row");
        Reply.to("/v1/rows/c01", Map.of("If-None-Match", "*"));

        assertEquals(refused + 1, count("/v1/rows/{id}", 404));
        assertEquals(unchanged + 1, count("/v1/rows/{id}", 304));
    }

    @Test
    void metrics_hold_no_request_data() {
        Reply.to("/v1/value/ghg/secret-product?per=kg-live");

        assertFalse(Reply.to("/metrics").body().contains("secret-product"));
    }

    @Test
    void every_line_is_in_the_text_format() {
        // https://prometheus.io/docs/instrumenting/exposition_formats/ : a comment, or a name, labels and a number.
        String sample = "[a-z_]+(\\{([a-z]+=\"[^\"\\\\]*\",?)*})? [0-9.E-]+";

        Reply.to("/metrics")
                .body()
                .lines()
                .forEach(line -> assertTrue(
                        line.startsWith("# HELP ") || line.startsWith("# TYPE ") || line.matches(sample), line));
        RunningScalepan.given().get("/metrics").then().contentType(startsWith("text/plain; version=0.0.4"));
    }
}
