package org.scalepan.web;

import java.net.URI;
import java.time.Duration;
import java.util.List;

/** A service on a free port that has no place to compute anything, as one whose places are all taken. */
final class BusyScalepan implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final WebServer server =
            new WebServer(RunningScalepan.library(), none(), none(), Surroundings.NONE, List.of()).start(HOST, 0);

    private static Turnstile none() {
        return new Turnstile(0, 0, 0, Duration.ZERO);
    }

    URI uri(String question) {
        return URI.create("http://" + HOST + ":" + server.port() + question);
    }

    @Override
    public void close() {
        server.close();
    }
}
