package org.scalepan.web;

import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;

/** A service on a free port that has no place to compute anything. */
final class BusyScalepan implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final WebServer server;

    /** One whose places are all taken by others. */
    BusyScalepan() {
        this(() -> new Turnstile(0, 0, 0, Duration.ZERO));
    }

    private BusyScalepan(Supplier<Turnstile> places) {
        server = new WebServer(RunningScalepan.library(), places.get(), places.get(), Surroundings.NONE, List.of())
                .start(HOST, 0);
    }

    /** One where whoever asks from this machine has his share already. */
    static BusyScalepan withOneClient() {
        return new BusyScalepan(() -> {
            Turnstile places = new Turnstile(2, 1, 0, Duration.ZERO);
            places.take(Client.at(HOST));
            return places;
        });
    }

    URI uri(String question) {
        return URI.create("http://" + HOST + ":" + server.port() + question);
    }

    @Override
    public void close() {
        server.close();
    }
}
