package org.scalepan.web.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.route.Route;
import org.scalepan.web.server.BusyScalepan;
import org.scalepan.web.server.WebServer;

/** Computing requests are limited; others are answered meanwhile. */
class ConcurrencyLimiterTest {
    private static final Duration LONG = Duration.ofMinutes(1);
    private static final Client ONE = Client.at("192.0.2.1");
    private static final Client OTHER = Client.at("192.0.2.2");
    private static final Client THIRD = Client.at("192.0.2.3");

    @Test
    void without_a_permit_or_a_queue_the_next_is_refused_at_once() {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(1, 1, 0, LONG);

        ProblemException refused = assertThrows(
                ProblemException.class, () -> limiter.run(ONE, () -> limiter.run(OTHER, () -> "the second at once")));

        assertEquals(503, refused.problem().status());
        assertTrue(
                refused.problem().line().startsWith("#busy: "),
                refused.problem().line());
    }

    @Test
    void a_request_that_waits_longer_than_the_timeout_is_refused_and_leaves_the_queue() {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(1, 1, 1, Duration.ofMillis(1));

        ProblemException refused = assertThrows(
                ProblemException.class, () -> limiter.run(ONE, () -> limiter.run(OTHER, () -> "the second at once")));
        assertEquals(503, refused.problem().status());
        assertEquals(0, limiter.waiting());
    }

    @Test
    void a_permit_is_released_after_an_answer_and_after_a_failure() {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(1, 1, 0, LONG);

        assertEquals("answer", limiter.run(ONE, () -> "answer"));
        assertThrows(
                IllegalStateException.class,
                () -> limiter.run(ONE, () -> {
                    throw new IllegalStateException("a fault of the answer");
                }));
        assertEquals("answer", limiter.run(ONE, () -> "answer"));
    }

    @Test
    void a_queued_request_runs_once_a_permit_is_free_and_one_beyond_the_queue_is_refused() {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(1, 1, 1, LONG);

        CompletableFuture<String> second = limiter.run(ONE, () -> {
            CompletableFuture<String> inLine = inLine(limiter, OTHER, () -> "the second");
            ProblemException third = assertThrows(ProblemException.class, () -> limiter.run(THIRD, () -> "the third"));
            assertEquals(503, third.problem().status());
            assertFalse(inLine.isDone());
            return inLine;
        });

        assertEquals("the second", second.join());
    }

    /** Starts a request and returns once it is queued. */
    private static <T> CompletableFuture<T> inLine(ConcurrencyLimiter limiter, Client client, Supplier<T> work) {
        int before = limiter.waiting();
        CompletableFuture<T> waiting =
                CompletableFuture.supplyAsync(() -> limiter.run(client, work), task -> new Thread(task).start());
        while (limiter.waiting() == before) {
            Thread.onSpinWait();
        }
        return waiting;
    }

    @Test
    void one_client_gets_half_of_permits_and_queue_and_429_beyond() {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(1, 1, 5, LONG);
        Runnable leave = limiter.acquire(ONE);
        CompletableFuture<String> second = inLine(limiter, ONE, () -> "the second");
        CompletableFuture<String> third = inLine(limiter, ONE, () -> "the third");

        ProblemException fourth = assertThrows(ProblemException.class, () -> limiter.run(ONE, () -> "the fourth"));

        assertEquals(3, limiter.clientLimit());
        assertEquals(429, fourth.problem().status());
        assertTrue(
                fourth.problem().line().contains("3 answers being computed or in line"),
                fourth.problem().line());
        CompletableFuture<String> other = inLine(limiter, OTHER, () -> "another's");
        leave.run();
        assertEquals("another's", other.join());
        assertEquals("the second", second.join());
        assertEquals("the third", third.join());
        assertEquals("the fourth", limiter.run(ONE, () -> "the fourth"));
    }

    @Test
    void a_free_permit_goes_to_the_client_with_the_fewest_and_then_to_the_first_in_the_queue() {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(2, 2, 10, LONG);
        Runnable first = limiter.acquire(ONE);
        Runnable second = limiter.acquire(ONE);
        List<String> order = Collections.synchronizedList(new ArrayList<>());
        CompletableFuture<Boolean> third = inLine(limiter, ONE, () -> order.add("his third"));
        CompletableFuture<Boolean> fourth = inLine(limiter, ONE, () -> order.add("his fourth"));
        CompletableFuture<Boolean> others = inLine(limiter, OTHER, () -> order.add("another's first"));

        first.run();
        CompletableFuture.allOf(third, fourth, others).join();
        second.run();

        assertEquals(List.of("another's first", "his third", "his fourth"), order);
    }

    @Test
    void with_a_client_maximum_one_client_leaves_permits_for_others() {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(2, 1, 1, Duration.ofMillis(1));
        Runnable leave = limiter.acquire(ONE);

        ProblemException second = assertThrows(ProblemException.class, () -> limiter.acquire(ONE));

        assertEquals(429, second.problem().status());
        assertTrue(
                second.problem().line().contains("you have one answer being computed"),
                second.problem().line());
        assertEquals("another's", limiter.run(OTHER, () -> "another's"));
        leave.run();
        limiter.acquire(ONE).run();
        assertEquals(0, limiter.waiting());
    }

    @Test
    void the_routes_that_draw_or_pool_the_whole_library_are_the_ones_that_are_limited() {
        Set<String> computing = new TreeSet<>();
        RunningScalepan.routes().stream().filter(Route::computes).forEach(route -> computing.add(route.path()));

        assertEquals(
                Set.of(
                        "/v1/brief",
                        "/v1/calibration",
                        "/v1/calibration/modelled",
                        "/v1/claim",
                        "/v1/comparison",
                        "/v1/break-even",
                        "/v1/sensitivity",
                        "/v1/footprint",
                        "/v1/substitution",
                        "/v1/table",
                        "/v1/value/{indicator}/{product}",
                        "/v1/ratio/{indicator}/{product}/{reference}"),
                computing);
    }

    @Test
    void a_busy_service_answers_with_retry_after_and_still_serves_its_vocabularies() {
        try (BusyScalepan busy = new BusyScalepan()) {
            Reply comparison = Reply.to(busy.uri("/v1/comparison?products=mealworm&against=beef"), Map.of());
            assertEquals(503, comparison.status());
            assertEquals(Optional.of("1"), comparison.header("Retry-After"));
            assertEquals("/problems/busy", JsonAt.text(comparison.json(), "/type"));

            Reply cell = Reply.to(busy.uri("/v1/value/ghg/mealworm"), Map.of());
            assertEquals(503, cell.status());
            assertEquals("text/plain", cell.mediaType());
            assertTrue(cell.body().startsWith("#busy: "), cell.body());
            assertEquals(
                    200,
                    Reply.to(busy.uri("/v1/value/ghg/mealworm?on_error=200"), Map.of())
                            .status());

            assertEquals(200, Reply.to(busy.uri("/v1/products"), Map.of()).status());
            assertEquals(200, Reply.to(busy.uri("/health/ready"), Map.of()).status());
        }
    }

    @Test
    void cached_and_cheap_answers_are_given_while_all_permits_are_held() {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(1, 1, 0, Duration.ZERO);
        try (WebServer server =
                new WebServer(RunningScalepan.library(), limiter, limiter, DeploymentSettings.NONE, List.of())) {
            server.start("127.0.0.1", 0);
            String here = "http://127.0.0.1:" + server.port();
            URI asked = URI.create(here + "/v1/comparison?products=mealworm&against=beef");
            Reply before = Reply.to(asked, Map.of());
            Runnable leave = limiter.acquire(OTHER);

            assertEquals(200, before.status());
            assertEquals(before.body(), Reply.to(asked, Map.of()).body());
            for (String light :
                    List.of("/v1/results?product=beef", "/v1/nutrition?products=mealworm", "/docs", "/metrics")) {
                assertEquals(200, Reply.to(URI.create(here + light), Map.of()).status(), light);
            }
            Reply refused = Reply.to(URI.create(asked + "&seed=2"), Map.of());
            assertEquals(503, refused.status());
            assertTrue(refused.body().contains("one answer at a time"), refused::body);
            Reply rows = Reply.to(
                    URI.create(here + "/v1/footprints"),
                    Map.of("Content-Type", "application/x-ndjson"),
                    Optional.of("{\"kind\":\"insects\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":1}}"));
            assertEquals(503, rows.status());
            assertEquals(Optional.of("1"), rows.header("Retry-After"));

            leave.run();
            assertEquals(200, Reply.to(URI.create(asked + "&seed=2"), Map.of()).status());
        }
    }
}
