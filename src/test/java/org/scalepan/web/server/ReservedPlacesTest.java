package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.Test;

/** With all requests of clients under way, probes are answered and others are refused. */
class ReservedPlacesTest {
    private final CountDownLatch end = new CountDownLatch(1);
    private final CountDownLatch begun = new CountDownLatch(2);

    private ReservedPlaces places() {
        ReservedPlaces places = new ReservedPlaces(2);
        places.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) throws Exception {
                if (Request.getPathInContext(request).equals("/slow")) {
                    begun.countDown();
                    end.await();
                }
                Content.Sink.write(response, true, "here", callback);
                return true;
            }
        });
        return places;
    }

    private static String get(String path) {
        return "GET " + path + " HTTP/1.1\r\nHost: a\r\n\r\n";
    }

    @Test
    void beyond_the_limit_only_probes_and_metrics_are_answered_and_their_connections_closed() throws Exception {
        ReservedPlaces places = places();
        try (HandledServer server = new HandledServer(places, 100, Duration.ofSeconds(10));
                Socket one = server.open(get("/slow"));
                Socket two = server.open(get("/slow"))) {
            begun.await();
            assertEquals(2, places.underWay());

            for (String path : new String[] {"/health/live", "/health/ready", "/metrics"}) {
                assertEquals(200, asked(server, path).status(), path);
            }
            RawExchange refused = asked(server, "/v1/products");
            assertEquals(503, refused.status());
            assertEquals("1", refused.header("Retry-After").orElse("none"));
            assertTrue(refused.body().contains("too many requests are under way"), refused::body);

            end.countDown();
            one.getInputStream().read();
            two.getInputStream().read();
            one.close();
            two.close();
            try (Socket after = server.open("GET /v1/products HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n")) {
                assertEquals(200, RawExchange.answer(after).orElseThrow().status());
            }
        }
    }

    /** The server closes the connection by itself; otherwise this would wait until it times out. */
    private static RawExchange asked(HandledServer server, String path) throws IOException {
        try (Socket socket = server.open(get(path))) {
            return RawExchange.answer(socket).orElseThrow();
        }
    }
}
