package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A body that comes too slowly is refused, whatever other requests have sent and however fast it began. */
class MinimumSendRateIT {
    private static final Duration SILENCE = Duration.ofMillis(600);

    private HandledServer server;

    /** Reads the whole body; 200 with its length, or 408. */
    private static Handler reading() {
        return new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) {
                try {
                    String length = Integer.toString(
                            Content.Source.asByteBuffer(request).remaining());
                    Content.Sink.write(response, true, length, callback);
                } catch (IOException e) {
                    Response.writeError(request, response, callback, HttpStatus.REQUEST_TIMEOUT_408);
                }
                return true;
            }
        };
    }

    @BeforeEach
    void start() throws IOException {
        MinimumSendRate pace = new MinimumSendRate(1_000, SILENCE, SILENCE);
        pace.setHandler(reading());
        server = new HandledServer(pace, 100, Duration.ofSeconds(10));
        // A server that has run for a while: others have sent far more than they had to.
        assertEquals(200, send(5_000_000, 5_000_000, 0));
    }

    @AfterEach
    void stop() throws Exception {
        server.close();
    }

    /** Sends a body: some bytes at once, then one every 100 milliseconds, for at most so many ticks. */
    private int send(int length, int atOnce, int ticks) throws IOException {
        String head = "POST / HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Length: " + length + "\r\n\r\n";
        try (Socket socket = server.open(head + " ".repeat(atOnce))) {
            for (int tick = 0; tick < ticks; tick++) {
                try {
                    Thread.sleep(100);
                    socket.getOutputStream().write(' ');
                } catch (java.net.SocketException hungUp) {
                    break;
                } catch (InterruptedException e) {
                    throw new AssertionError(e);
                }
            }
            byte[] heard = socket.getInputStream().readAllBytes();
            return Integer.parseInt(new String(heard, StandardCharsets.US_ASCII).split(" ")[1]);
        }
    }

    @Test
    void a_body_that_trickles_is_refused_on_a_server_that_has_taken_megabytes() throws IOException {
        long start = System.nanoTime();

        assertEquals(408, send(5_000, 0, 20));
        assertTrue(Duration.ofNanos(System.nanoTime() - start).toMillis() < 3_000, "waited too long");
    }

    @Test
    void a_fast_beginning_does_not_pay_for_trickling_afterwards() throws IOException {
        assertEquals(408, send(1_000_100, 1_000_000, 20));
    }

    @Test
    void a_pause_within_the_time_is_no_fault() throws IOException {
        assertEquals(200, send(1_004, 1_000, 4));
    }
}
