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

/** Who computes is counted, and who only reads is not kept waiting by those who compute. */
class ConcurrencyLimiterTest {
    private static final Duration LONG = Duration.ofMinutes(1);
    private static final Client ONE = Client.at("192.0.2.1");
    private static final Client OTHER = Client.at("192.0.2.2");
    private static final Client THIRD = Client.at("192.0.2.3");

    @Test
    void without_a_place_or_a_line_the_next_is_refused_at_once() {
        ConcurrencyLimiter turnstile = new ConcurrencyLimiter(1, 1, 0, LONG);

        ProblemException refused = assertThrows(
                ProblemException.class,
                () -> turnstile.pass(ONE, () -> turnstile.pass(OTHER, () -> "the second at once")));

        assertEquals(503, refused.problem().status());
        assertTrue(
                refused.problem().line().startsWith("#busy: "),
                refused.problem().line());
    }

    @Test
    void who_waits_longer_than_the_patience_is_refused_and_leaves_the_line() {
        ConcurrencyLimiter turnstile = new ConcurrencyLimiter(1, 1, 1, Duration.ofMillis(1));

        ProblemException refused = assertThrows(
                ProblemException.class,
                () -> turnstile.pass(ONE, () -> turnstile.pass(OTHER, () -> "the second at once")));
        assertEquals(503, refused.problem().status());
        assertEquals(0, turnstile.waiting());
    }

    @Test
    void a_place_is_free_again_after_an_answer_and_after_a_failure() {
        ConcurrencyLimiter turnstile = new ConcurrencyLimiter(1, 1, 0, LONG);

        assertEquals("answer", turnstile.pass(ONE, () -> "answer"));
        assertThrows(
                IllegalStateException.class,
                () -> turnstile.pass(ONE, () -> {
                    throw new IllegalStateException("a fault of the answer");
                }));
        assertEquals("answer", turnstile.pass(ONE, () -> "answer"));
    }

    @Test
    void one_in_line_passes_once_there_is_a_place_and_one_beyond_the_line_is_refused() {
        ConcurrencyLimiter turnstile = new ConcurrencyLimiter(1, 1, 1, LONG);

        CompletableFuture<String> second = turnstile.pass(ONE, () -> {
            CompletableFuture<String> inLine = inLine(turnstile, OTHER, () -> "the second");
            ProblemException third =
                    assertThrows(ProblemException.class, () -> turnstile.pass(THIRD, () -> "the third"));
            assertEquals(503, third.problem().status());
            assertFalse(inLine.isDone());
            return inLine;
        });

        assertEquals("the second", second.join());
    }

    /** Begins to wait in line, and comes back when it does. */
    private static <T> CompletableFuture<T> inLine(ConcurrencyLimiter turnstile, Client client, Supplier<T> work) {
        int before = turnstile.waiting();
        CompletableFuture<T> waiting =
                CompletableFuture.supplyAsync(() -> turnstile.pass(client, work), task -> new Thread(task).start());
        while (turnstile.waiting() == before) {
            Thread.onSpinWait();
        }
        return waiting;
    }

    @Test
    void one_client_takes_half_of_the_places_and_the_line_and_is_told_so_when_he_wants_more() {
        ConcurrencyLimiter turnstile = new ConcurrencyLimiter(1, 1, 5, LONG);
        Runnable leave = turnstile.take(ONE);
        CompletableFuture<String> second = inLine(turnstile, ONE, () -> "the second");
        CompletableFuture<String> third = inLine(turnstile, ONE, () -> "the third");

        ProblemException fourth = assertThrows(ProblemException.class, () -> turnstile.pass(ONE, () -> "the fourth"));

        assertEquals(3, turnstile.share());
        assertEquals(429, fourth.problem().status());
        assertTrue(
                fourth.problem().line().contains("3 answers being computed or in line"),
                fourth.problem().line());
        CompletableFuture<String> other = inLine(turnstile, OTHER, () -> "another's");
        leave.run();
        assertEquals("another's", other.join());
        assertEquals("the second", second.join());
        assertEquals("the third", third.join());
        assertEquals("the fourth", turnstile.pass(ONE, () -> "the fourth"));
    }

    @Test
    void a_place_that_falls_free_goes_to_the_client_with_the_fewest_and_then_to_who_came_first() {
        ConcurrencyLimiter turnstile = new ConcurrencyLimiter(2, 2, 10, LONG);
        Runnable first = turnstile.take(ONE);
        Runnable second = turnstile.take(ONE);
        List<String> order = Collections.synchronizedList(new ArrayList<>());
        CompletableFuture<Boolean> third = inLine(turnstile, ONE, () -> order.add("his third"));
        CompletableFuture<Boolean> fourth = inLine(turnstile, ONE, () -> order.add("his fourth"));
        CompletableFuture<Boolean> others = inLine(turnstile, OTHER, () -> order.add("another's first"));

        first.run();
        CompletableFuture.allOf(third, fourth, others).join();
        second.run();

        assertEquals(List.of("another's first", "his third", "his fourth"), order);
    }

    @Test
    void where_runs_are_long_one_client_leaves_places_free_for_others() {
        ConcurrencyLimiter turnstile = new ConcurrencyLimiter(2, 1, 1, Duration.ofMillis(1));
        Runnable leave = turnstile.take(ONE);

        ProblemException second = assertThrows(ProblemException.class, () -> turnstile.take(ONE));

        assertEquals(429, second.problem().status());
        assertTrue(
                second.problem().line().contains("you have one answer being computed"),
                second.problem().line());
        assertEquals("another's", turnstile.pass(OTHER, () -> "another's"));
        leave.run();
        turnstile.take(ONE).run();
        assertEquals(0, turnstile.waiting());
    }

    @Test
    void the_routes_that_draw_are_the_ones_that_are_counted() {
        Set<String> computing = new TreeSet<>();
        RunningScalepan.routes().stream().filter(Route::computes).forEach(route -> computing.add(route.path()));

        assertEquals(
                Set.of(
                        "/v1/brief",
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
    void a_busy_service_says_when_to_ask_again_and_still_shows_its_lists() {
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
    void what_was_answered_before_and_what_computes_nothing_is_answered_while_all_places_are_taken() {
        ConcurrencyLimiter places = new ConcurrencyLimiter(1, 1, 0, Duration.ZERO);
        try (WebServer server =
                new WebServer(RunningScalepan.library(), places, places, DeploymentSettings.NONE, List.of())) {
            server.start("127.0.0.1", 0);
            String here = "http://127.0.0.1:" + server.port();
            URI asked = URI.create(here + "/v1/comparison?products=mealworm&against=beef");
            Reply before = Reply.to(asked, Map.of());
            Runnable leave = places.take(OTHER);

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
