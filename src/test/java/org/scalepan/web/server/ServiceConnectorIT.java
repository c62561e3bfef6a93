package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.Test;

/** The head of a request has a deadline, and a connection that waits for a request makes room for a new one. */
class ServiceConnectorIT {
    private static final String BEGUN = "GET / HTTP/1.1\r\nHost: a\r\n";
    private static final String WHOLE = BEGUN + "\r\n";
    private static final Duration SOON = Duration.ofMillis(300);

    private static ReservedPlaces answering() {
        ReservedPlaces places = new ReservedPlaces(100);
        places.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) {
                Content.Sink.write(response, true, "here", callback);
                return true;
            }
        });
        return places;
    }

    private static void readAnswer(Socket socket) throws IOException {
        StringBuilder heard = new StringBuilder();
        while (heard.indexOf("here") < 0) {
            heard.append((char) socket.getInputStream().read());
        }
    }

    @Test
    void a_head_that_comes_line_by_line_is_cut_off_after_its_deadline_also_on_a_connection_that_was_used()
            throws Exception {
        try (HandledServer server = new HandledServer(answering(), 100, Duration.ofSeconds(1));
                Socket fresh = server.open(BEGUN);
                Socket used = server.open(WHOLE)) {
            readAnswer(used);
            used.getOutputStream().write(BEGUN.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            for (Socket slow : List.of(fresh, used)) {
                boolean hungUp = false;
                for (int line = 0; line < 15 && !hungUp; line++) {
                    try {
                        slow.getOutputStream().write('X');
                        hungUp = HandledServer.hasHungUp(slow, Duration.ofMillis(200));
                    } catch (java.net.SocketException reset) {
                        hungUp = true;
                    }
                }

                assertTrue(hungUp, "the head may last as long as it likes");
            }
        }
    }

    @Test
    void a_connection_between_two_requests_has_no_deadline_of_a_head() throws Exception {
        try (HandledServer server = new HandledServer(answering(), 100, Duration.ofMillis(100));
                Socket kept = server.open(WHOLE)) {
            readAnswer(kept);

            assertFalse(HandledServer.hasHungUp(kept, Duration.ofMillis(1_500)));
        }
    }

    @Test
    void when_places_run_out_the_longest_waiting_of_the_client_with_the_most_makes_room() throws Exception {
        try (HandledServer server = new HandledServer(answering(), 6, Duration.ofSeconds(10));
                Socket other = server.open("127.0.0.2", BEGUN)) {
            List<Socket> many = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                many.add(server.open(BEGUN));
                Thread.sleep(30);
            }
            try (Socket late = server.open("127.0.0.3", WHOLE)) {
                readAnswer(late);

                assertTrue(HandledServer.hasHungUp(many.get(0), Duration.ofSeconds(5)), "the first of the many");
                assertFalse(HandledServer.hasHungUp(other, SOON), "the only one of another client");
                assertEquals(
                        4,
                        many.subList(1, 5).stream()
                                .filter(socket -> {
                                    try {
                                        return !HandledServer.hasHungUp(socket, SOON);
                                    } catch (IOException e) {
                                        throw new AssertionError(e);
                                    }
                                })
                                .count());
            }
            for (Socket socket : many) {
                socket.close();
            }
        }
    }
}
