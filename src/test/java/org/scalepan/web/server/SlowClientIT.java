package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.ServerConnector;
import org.junit.jupiter.api.Test;
import org.scalepan.web.Refusal;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;

/** Clients that send or read too slowly are disconnected, and no other client waits for them. */
class SlowClientIT {
    private static final String HOST = "127.0.0.1";

    private static Socket open(int port, String request) throws IOException {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(4_096);
        socket.connect(new InetSocketAddress(InetAddress.getByName(HOST), port));
        socket.setSoTimeout(20_000);
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private static String post(String path, String mediaType, int length) {
        return "POST " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: " + mediaType
                + "\r\nContent-Length: " + length + "\r\n\r\n";
    }

    @Test
    void a_body_that_trickles_is_refused_and_others_are_answered_meanwhile() throws Exception {
        try (WebServer server = new WebServer(RunningScalepan.library()).start(HOST, 0)) {
            use(server);
            List<Socket> dawdlers = new ArrayList<>();
            for (RecordsEndpoint endpoint : RecordsEndpoint.all()) {
                dawdlers.add(open(server.port(), post(endpoint.path(), endpoint.mediaType(), 100_000)));
            }
            URI live = URI.create("http://" + HOST + ":" + server.port() + "/v1/value/ghg/mealworm");
            for (int tick = 0; tick < 16; tick++) {
                for (Socket dawdler : dawdlers) {
                    try {
                        dawdler.getOutputStream().write(' ');
                    } catch (SocketException hungUp) {
                        // At normal speed.
                    }
                }
                assertEquals(200, Reply.to(live, Map.of()).status());
                Thread.sleep(250);
            }
            for (Socket dawdler : dawdlers) {
                long start = System.nanoTime();
                Optional<RawExchange> reply = RawExchange.answer(dawdler);
                assertTrue(Duration.ofNanos(System.nanoTime() - start).toSeconds() < 5, "still waited for");
                reply.ifPresent(refusal -> {
                    Refusal.check("a body that trickles", refusal);
                    assertEquals(408, refusal.status());
                    assertTrue(refusal.body().contains("200 bytes a second"), refusal::body);
                });
                dawdler.close();
            }
        }
    }

    /** Bytes that others have sent must not count for those who come after. */
    private static void use(WebServer server) {
        URI bulk = URI.create("http://" + HOST + ":" + server.port() + "/v1/footprints?indicators=ghg");
        String farm = "{\"kind\":\"insects\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":100}}\n";
        Reply reply = Reply.to(bulk, Map.of("Content-Type", Answer.NDJSON), Optional.of(farm.repeat(80_000)));
        assertEquals(200, reply.status());
    }

    @Test
    void slow_heads_from_three_addresses_leave_probes_and_another_client_answering() throws Exception {
        List<Socket> slow = new ArrayList<>();
        try (WebServer server = new WebServer(RunningScalepan.library()).start(HOST, 0)) {
            use(server);
            int closed = 0;
            for (int round = 0; round < 14; round++) {
                // Places that fall free are taken again at once.
                while (slow.size() < 210) {
                    slow.add(slowHead("127.0.0." + (2 + slow.size() % 3), server.port()));
                }
                for (String question : List.of("/health/live", "/health/ready", "/v1/value/ghg/mealworm")) {
                    long start = System.nanoTime();

                    // On a new connection each, which has to find a place.
                    assertEquals(200, asked(server.port(), question).status());
                    long took = Duration.ofNanos(System.nanoTime() - start).toMillis();
                    assertTrue(took < 2_000, question + " took " + took + " ms");
                }
                Thread.sleep(1_000);
                for (Socket socket : List.copyOf(slow)) {
                    try {
                        socket.getOutputStream().write("X: 1\r\n".getBytes(StandardCharsets.US_ASCII));
                    } catch (SocketException hungUp) {
                        closed++;
                        slow.remove(socket);
                        socket.close();
                    }
                }
            }
            assertTrue(closed > 200, "only " + closed + " slow heads were cut off");
            assertTrue(
                    asked(server.port(), "/metrics")
                            .body()
                            .contains("scalepan_connections_closed_total{reason=\"slow-head\"} "),
                    "the operator sees why");
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    private static RawExchange asked(int port, String question) throws IOException {
        String request = "GET " + question + " HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n";
        try (Socket socket = open(port, request)) {
            return RawExchange.answer(socket).orElseThrow();
        }
    }

    private static Socket slowHead(String from, int port) throws IOException {
        Socket socket = new Socket();
        socket.bind(new InetSocketAddress(InetAddress.getByName(from), 0));
        socket.connect(new InetSocketAddress(InetAddress.getByName(HOST), port));
        socket.getOutputStream().write("GET / HTTP/1.1\r\nHost: a\r\n".getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    /** Two seconds instead of half a minute, to keep the test short. */
    private static void soonIdle(WebServer server) {
        for (Connector connector : server.jetty().getConnectors()) {
            ((ServerConnector) connector).setIdleTimeout(2_000);
            connector
                    .getConnectionFactory(HttpConnectionFactory.class)
                    .getHttpConfiguration()
                    .setIdleTimeout(2_000);
        }
    }

    @Test
    void a_client_that_reads_no_response_is_disconnected() throws Exception {
        try (WebServer server = new WebServer(RunningScalepan.library()).start(HOST, 0)) {
            soonIdle(server);
            String question = "GET /v1/library.zip HTTP/1.1\r\nHost: localhost\r\n\r\n";
            // More than the buffers between the two hold.
            try (Socket dawdler = open(server.port(), question.repeat(30))) {
                assertTrue(dawdler.getInputStream().read() > 0, "the answer has begun");
                long end = System.nanoTime() + Duration.ofSeconds(30).toNanos();
                while (connected(server) > 0 && System.nanoTime() < end) {
                    Thread.sleep(50);
                }

                assertEquals(0, connected(server), "connections that are still held");
            }
        }
    }

    private static int connected(WebServer server) {
        int connected = 0;
        for (Connector connector : server.jetty().getConnectors()) {
            connected += connector.getConnectedEndPoints().size();
        }
        return connected;
    }

    @Test
    void a_client_that_does_not_read_its_rows_loses_its_permit() throws Exception {
        ConcurrencyLimiter rows = new ConcurrencyLimiter(1, 1, 0, Duration.ZERO);
        try (WebServer server = new WebServer(
                        RunningScalepan.library(),
                        ConcurrencyLimiter.ofAnswers(),
                        rows,
                        DeploymentSettings.NONE,
                        List.of())
                .start(HOST, 0)) {
            soonIdle(server);
            String farm = "{\"kind\":\"insects\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":100}}\n";
            String farms = farm.repeat(20_000);
            String path = "/v1/footprints?indicators=ghg";
            try (Socket dawdler = open(server.port(), post(path, Answer.NDJSON, farms.length()) + farms)) {
                URI bulk = URI.create("http://" + HOST + ":" + server.port() + path);
                Map<String, String> type = Map.of("Content-Type", Answer.NDJSON);
                Reply other;
                int tick = 0;
                do {
                    dawdler.getInputStream().read();
                    Thread.sleep(250);
                    other = Reply.to(bulk, type, Optional.of(farm));
                    tick++;
                } while (other.status() == 429 && tick < 80);
                assertEquals(200, other.status());
            }
        }
    }
}
