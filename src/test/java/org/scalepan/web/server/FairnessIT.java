package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;
import org.scalepan.web.http.Limits;

/** A client with many requests delays only its own: others, and cheap requests, are answered meanwhile. */
class FairnessIT {
    private static final String HOST = "127.0.0.1";
    private static final String FARM =
            "{\"kind\":\"insects\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":1}}\n";

    /** Sends from another address of this machine, which is another client. */
    private static RawExchange askFrom(String address, int port, String question) throws IOException {
        try (Socket socket = new Socket()) {
            socket.bind(new InetSocketAddress(InetAddress.getByName(address), 0));
            socket.connect(new InetSocketAddress(InetAddress.getByName(HOST), port));
            socket.setSoTimeout(60_000);
            String request = "GET " + question + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return RawExchange.answer(socket).orElseThrow();
        }
    }

    @Test
    void while_one_client_floods_others_are_answered_and_the_flood_gets_429() throws IOException {
        ConcurrencyLimiter limiter = new ConcurrencyLimiter(2, 2, 8, Duration.ofMinutes(1));
        String heavy = "/v1/comparison?products=mealworm,house-cricket,chicken,pork&against=beef&draws=100000&seed=";
        try (WebServer server = new WebServer(
                RunningScalepan.library(), limiter, ConcurrencyLimiter.ofRuns(), DeploymentSettings.NONE, List.of())) {
            int port = server.start(HOST, 0).port();
            AtomicInteger floodDone = new AtomicInteger();
            List<CompletableFuture<Reply>> flood = new ArrayList<>();
            for (int i = 1; i <= 12; i++) {
                URI question = URI.create("http://" + HOST + ":" + port + heavy + i);
                flood.add(CompletableFuture.supplyAsync(
                        () -> {
                            Reply reply = Reply.to(question, Map.of());
                            floodDone.addAndGet(reply.status() == 200 ? 1 : 0);
                            return reply;
                        },
                        task -> new Thread(task).start()));
            }
            while (limiter.waiting() < limiter.clientLimit() - 2) {
                Thread.onSpinWait();
            }

            assertEquals(200, askFrom("127.0.0.2", port, "/v1/products").status());
            RawExchange other = askFrom("127.0.0.2", port, "/v1/value/ghg/mealworm?draws=1000");
            assertEquals(200, other.status(), other.body());
            // Of the five allowed, two are computed before the other client's request, and one more with it.
            assertTrue(floodDone.get() <= 3, () -> floodDone + " heavy answers were computed first");

            Map<Integer, Integer> statuses = new TreeMap<>();
            for (CompletableFuture<Reply> asked : flood) {
                Reply reply = asked.join();
                statuses.merge(reply.status(), 1, Integer::sum);
                if (reply.status() == 429) {
                    assertEquals("1", reply.header("Retry-After").orElse("none"));
                    assertEquals("/problems/too-many", JsonAt.text(reply.json(), "/type"));
                    assertTrue(reply.body().contains("you have 5 answers being computed or in line"), reply::body);
                }
            }
            assertEquals(Map.of(200, 5, 429, 7), statuses);
        }
    }

    @Test
    void a_bulk_run_blocks_a_second_one_of_the_same_client_but_not_of_another() throws IOException {
        ConcurrencyLimiter runs = new ConcurrencyLimiter(2, 1, 0, Duration.ZERO);
        try (WebServer server = new WebServer(
                RunningScalepan.library(), ConcurrencyLimiter.ofAnswers(), runs, DeploymentSettings.NONE, List.of())) {
            URI rows = URI.create("http://" + HOST + ":" + server.start(HOST, 0).port() + "/v1/footprints");
            Runnable done = runs.acquire(Client.at(HOST));

            Reply second = Reply.to(rows, Map.of("Content-Type", Answer.NDJSON), Optional.of(FARM));

            assertEquals(429, second.status());
            assertEquals("1", second.header("Retry-After").orElse("none"));
            runs.acquire(Client.at("127.0.0.2")).run();
            done.run();
            assertEquals(
                    200,
                    Reply.to(rows, Map.of("Content-Type", Answer.NDJSON), Optional.of(FARM))
                            .status());
        }
    }

    @Test
    void behind_a_trusted_proxy_the_last_address_of_its_header_is_the_client_and_otherwise_the_header_is_ignored() {
        for (boolean trusted : List.of(true, false)) {
            ConcurrencyLimiter limiter = new ConcurrencyLimiter(2, 2, 0, Duration.ZERO);
            DeploymentSettings deployment = trusted
                    ? new DeploymentSettings(Optional.of("X-Forwarded-For"), List.of())
                    : DeploymentSettings.NONE;
            try (WebServer server = new WebServer(RunningScalepan.library(), limiter, limiter, deployment, List.of())) {
                URI question = URI.create(
                        "http://" + HOST + ":" + server.start(HOST, 0).port() + "/v1/value/ghg/mealworm?draws=1000");
                Runnable done = limiter.acquire(Client.at(trusted ? "192.0.2.7" : HOST));

                // The client forged the first; the proxy appended the last.
                Map<String, String> ofOne = Map.of("X-Forwarded-For", "198.51.100.9, 192.0.2.7:4711");
                Map<String, String> ofOther = Map.of("X-Forwarded-For", "192.0.2.7, 192.0.2.8");
                assertEquals(429, Reply.to(question, ofOne).status());
                assertEquals(trusted ? 200 : 429, Reply.to(question, ofOther).status());
                done.run();
                assertEquals(200, Reply.to(question, ofOne).status());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "192.0.2.1, 192.0.2.1",
        "192.0.2.1:5000, 192.0.2.1",
        "2001:db8:1:2:3:4:5:6, 2001:db8:1:2:0:0:0:0",
        "2001:db8:1:2::99, 2001:db8:1:2:0:0:0:0",
        "[2001:db8:1:2::99]:443, 2001:db8:1:2:0:0:0:0",
        "::ffff:192.0.2.1, ::ffff:192.0.2.1",
        "unknown, unknown",
        "::no-address::, ::no-address::"
    })
    void a_client_is_an_ipv4_address_without_port_or_an_ipv6_64_network(String peer, String client) {
        assertEquals(client, Client.at(peer).address());
    }

    @Test
    void one_client_opens_half_of_the_connections_and_another_still_gets_through() throws IOException {
        List<Socket> open = new ArrayList<>();
        try (WebServer server = new WebServer(RunningScalepan.library())) {
            int port = server.start(HOST, 0).port();
            for (int i = 0; i < Limits.CONNECTIONS; i++) {
                open.add(new Socket(HOST, port));
            }

            assertEquals(200, askFrom("127.0.0.2", port, "/health/live").status());
            int alive = 0;
            for (Socket socket : open) {
                socket.setSoTimeout(5);
                alive += hungUp(socket) ? 0 : 1;
            }
            assertEquals(Limits.CONNECTIONS_OF_CLIENT, alive);

            open.get(0).close();
            RawExchange again = askAgain(port);
            assertEquals(200, again.status());
        } finally {
            for (Socket socket : open) {
                socket.close();
            }
        }
    }

    private static boolean hungUp(Socket socket) throws IOException {
        try {
            return socket.getInputStream().read() < 0;
        } catch (java.net.SocketTimeoutException stillOpen) {
            return false;
        } catch (java.net.SocketException reset) {
            return true;
        }
    }

    /** The service notices a closed connection a moment later. */
    private static RawExchange askAgain(int port) {
        for (int attempt = 0; ; attempt++) {
            try {
                return askFrom(HOST, port, "/health/live");
            } catch (IOException | java.util.NoSuchElementException e) {
                if (attempt == 50) {
                    throw new AssertionError("no connection was freed", e);
                }
            }
        }
    }
}
