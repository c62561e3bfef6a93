package org.scalepan.web.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.util.thread.ThreadPool;
import org.junit.jupiter.api.Test;
import org.scalepan.ask.Sampling;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;
import org.scalepan.web.route.Route;

/** Limits on the cost of one request. */
class CostTest {
    private static String products(int count) {
        return String.join(
                ",",
                RunningScalepan.library().products().keySet().stream()
                        .limit(count)
                        .toList());
    }

    @Test
    void too_many_draws_for_the_number_of_products_are_refused_with_the_largest_number_allowed() {
        String question = "/v1/comparison?against=beef&products=" + products(16) + "&draws=";
        int most = Sampling.MOST_DRAWS_OF_AN_ANSWER / 16;

        RunningScalepan.given()
                .get(question + (most + 1))
                .then()
                .statusCode(422)
                .body("errors", hasSize(1))
                .body("errors[0].parameter", equalTo("draws"))
                .body("errors[0].message", containsString("at most " + most + " for 16 "));
    }

    @Test
    void a_table_counts_its_rows() {
        Response reply = RunningScalepan.given()
                .get("/v1/table?indicators=ghg,land&products=" + products(8) + "&draws=125001&format=json");

        assertEquals(422, reply.statusCode());
        assertEquals(List.of("draws"), reply.path("errors.parameter"));
    }

    @Test
    void a_table_with_too_many_rows_gets_that_error_and_none_about_draws() {
        String all = products(60);
        String indicators =
                String.join(",", RunningScalepan.library().indicators().keySet());

        assertEquals(
                List.of("products"),
                RunningScalepan.given()
                        .get("/v1/table?indicators=" + indicators + "&products=" + all)
                        .path("errors.parameter"));
    }

    @Test
    void when_memory_is_exhausted_the_answer_is_503_with_retry_after() {
        Route hungry = Route.of("/v1/hungry", List.of(), request -> {
            throw new OutOfMemoryError("invented");
        });
        try (WebServer server = new WebServer(
                RunningScalepan.library(),
                ConcurrencyLimiter.ofAnswers(),
                ConcurrencyLimiter.ofRuns(),
                DeploymentSettings.NONE,
                List.of(hungry))) {
            server.start("127.0.0.1", 0);
            Reply reply = Reply.to(java.net.URI.create("http://127.0.0.1:" + server.port() + "/v1/hungry"), Map.of());

            assertEquals(503, reply.status());
            assertEquals("application/problem+json", reply.mediaType());
            assertEquals("1", reply.header("Retry-After").orElse("none"));
        }
    }

    @Test
    void fewer_clients_may_be_connected_than_there_are_threads_to_serve_them() {
        try (WebServer server = new WebServer(RunningScalepan.library())) {
            server.start("127.0.0.1", 0);
            int threads = ((ThreadPool.SizedThreadPool) server.jetty().getThreadPool()).getMaxThreads();
            int connections =
                    server.jetty().getBean(NetworkConnectionLimit.class).getMaxNetworkConnectionCount();

            assertTrue(connections < threads, connections + " connections, " + threads + " threads");
        }
    }
}
