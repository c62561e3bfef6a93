package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;

/** Who computes is counted, and who only reads is not kept waiting by those who compute. */
class TurnstileTest {
    private static final Duration LONG = Duration.ofMinutes(1);

    @Test
    void without_a_place_or_a_line_the_next_is_refused_at_once() {
        Turnstile turnstile = new Turnstile(1, 0, LONG);

        Refused refused =
                assertThrows(Refused.class, () -> turnstile.pass(() -> turnstile.pass(() -> "the second at once")));

        assertEquals(503, refused.problem().status());
        assertTrue(
                refused.problem().line().startsWith("#busy: "),
                refused.problem().line());
    }

    @Test
    void who_waits_longer_than_the_patience_is_refused_and_leaves_the_line() {
        Turnstile turnstile = new Turnstile(1, 1, Duration.ofMillis(1));

        assertThrows(Refused.class, () -> turnstile.pass(() -> turnstile.pass(() -> "the second at once")));
        assertEquals(0, turnstile.waiting());
    }

    @Test
    void a_place_is_free_again_after_an_answer_and_after_a_failure() {
        Turnstile turnstile = new Turnstile(1, 0, LONG);

        assertEquals("answer", turnstile.pass(() -> "answer"));
        assertThrows(
                IllegalStateException.class,
                () -> turnstile.pass(() -> {
                    throw new IllegalStateException("a fault of the answer");
                }));
        assertEquals("answer", turnstile.pass(() -> "answer"));
    }

    @Test
    void one_in_line_passes_once_there_is_a_place_and_one_beyond_the_line_is_refused() {
        Turnstile turnstile = new Turnstile(1, 1, LONG);

        CompletableFuture<String> second = turnstile.pass(() -> {
            CompletableFuture<String> inLine = CompletableFuture.supplyAsync(
                    () -> turnstile.pass(() -> "the second"), task -> new Thread(task).start());
            while (turnstile.waiting() == 0) {
                Thread.onSpinWait();
            }
            assertThrows(Refused.class, () -> turnstile.pass(() -> "the third"));
            assertFalse(inLine.isDone());
            return inLine;
        });

        assertEquals("the second", second.join());
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
            assertEquals("/problems/busy", comparison.json().path("type").asText());

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
}
