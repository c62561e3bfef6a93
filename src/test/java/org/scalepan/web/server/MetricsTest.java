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
        return count(route, status, "");
    }

    private static long count(String route, int status, String refusal) {
        String name = "scalepan_requests_total{route=\"" + route + "\",status=\"" + status + "\",refusal=\"" + refusal
                + "\"} ";
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
        long refused = count("/v1/rows/{id}", 404, "not-found");
        long unchanged = count("/v1/rows/{id}", 304);
        Reply.to("/v1/rows/no-such-row");
        Reply.to("/v1/rows/c01", Map.of("If-None-Match", "*"));

        assertEquals(refused + 1, count("/v1/rows/{id}", 404, "not-found"));
        assertEquals(unchanged + 1, count("/v1/rows/{id}", 304));
    }

    @Test
    void metrics_hold_no_request_data() {
        Reply.to("/v1/value/ghg/secret-product?per=kg-live");

        assertFalse(Reply.to("/metrics").body().contains("secret-product"));
    }

    @Test
    void requests_that_reach_no_route_are_counted_by_the_kind_of_their_refusal() throws InterruptedException {
        Map<String, String[]> requests = Map.of(
                "404 not-found", new String[] {"GET /nope HTTP/1.1", "Host: a"},
                "405 wrong-method", new String[] {"PUT /v1/footprint HTTP/1.1", "Host: a", "Content-Length: 0"},
                "414 beyond-limits", new String[] {"GET /" + "x".repeat(20_000) + " HTTP/1.1", "Host: a"},
                "431 beyond-limits", new String[] {"GET / HTTP/1.1", "Host: a", "X: " + "x".repeat(20_000)},
                "400 malformed-request", new String[] {"GET / HTTP/1.1", "Host : a"});
        for (Map.Entry<String, String[]> request : requests.entrySet()) {
            int status = Integer.parseInt(request.getKey().split(" ")[0]);
            String refusal = request.getKey().split(" ")[1];
            long before = count(Metrics.NO_ROUTE, status, refusal);
            String[] lines = java.util.Arrays.copyOf(request.getValue(), request.getValue().length + 1);
            lines[lines.length - 1] = "Connection: close";

            RawExchange.send(lines);

            // They are counted when they are over, a moment after the answer.
            for (int tick = 0; tick < 50 && count(Metrics.NO_ROUTE, status, refusal) == before; tick++) {
                Thread.sleep(20);
            }
            assertEquals(before + 1, count(Metrics.NO_ROUTE, status, refusal), request.getKey());
        }
    }

    @Test
    void a_request_of_a_route_is_counted_once() {
        long before = all();
        Reply.to("/v1/sources/dreyer-2021");
        Reply.to("/v1/rows/no-such-row");
        long between = all();

        // The first count of all is one request of its own.
        assertEquals(before + 3, between);
    }

    private static long all() {
        return samples(Reply.to("/metrics").body()).entrySet().stream()
                .filter(sample -> sample.getKey().startsWith("scalepan_requests_total{route=\"/"))
                .mapToLong(sample -> sample.getValue().longValue())
                .sum();
    }

    private static Map<String, Double> samples(String text) {
        Map<String, Double> samples = new java.util.LinkedHashMap<>();
        text.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
            int blank = line.lastIndexOf(' ');
            Double earlier = samples.put(line.substring(0, blank), Double.valueOf(line.substring(blank + 1)));
            assertTrue(earlier == null, () -> line + " stands twice");
        });
        return samples;
    }

    @Test
    void times_are_a_histogram_whose_classes_rise_to_its_count() {
        Reply.to("/v1/products");
        Map<String, Double> samples = samples(Reply.to("/metrics").body());
        String name = "scalepan_request_duration_seconds";
        double last = 0;
        int classes = 0;
        for (Map.Entry<String, Double> sample : samples.entrySet()) {
            if (sample.getKey().startsWith(name + "_bucket{route=\"/v1/products\"")) {
                assertTrue(sample.getValue() >= last, sample::toString);
                last = sample.getValue();
                classes++;
            }
        }

        assertEquals(12, classes);
        assertEquals(last, samples.get(name + "_bucket{route=\"/v1/products\",le=\"+Inf\"}"));
        assertEquals(last, samples.get(name + "_count{route=\"/v1/products\"}"));
        assertTrue(samples.get(name + "_sum{route=\"/v1/products\"}") > 0);
    }

    @Test
    void gauges_and_the_build_are_there() {
        Map<String, Double> samples = samples(Reply.to("/metrics").body());
        for (String gauge : new String[] {
            "requests_under_way", "connections", "connections_waiting", "answers_computing", "answers_waiting",
            "answers_places", "runs_computing", "runs_places", "rows_waiting_bytes", "bodies_waiting_bytes",
            "heap_used_bytes", "heap_max_bytes", "start_time_seconds"
        }) {
            assertTrue(samples.containsKey("scalepan_" + gauge), gauge);
        }
        assertTrue(samples.get("scalepan_requests_under_way") >= 1, "this one");
        assertTrue(
                samples.keySet().stream()
                        .anyMatch(key -> key.startsWith("scalepan_build_info{version=\"")
                                && key.contains("digest=\"" + RunningScalepan.digest() + "\"")),
                samples::toString);
    }

    @Test
    void every_line_is_in_the_text_format() {
        // https://prometheus.io/docs/instrumenting/exposition_formats/ : a comment, or a name, labels and a number.
        String sample = "[a-z_]+(\\{([a-z]+=\"[^\"\\\\]*\",?)*})? [0-9]+(\\.[0-9]+)?";

        Reply.to("/metrics")
                .body()
                .lines()
                .forEach(line -> assertTrue(
                        line.startsWith("# HELP ") || line.startsWith("# TYPE ") || line.matches(sample), line));
        RunningScalepan.given().get("/metrics").then().contentType(startsWith("text/plain; version=0.0.4"));
    }
}
