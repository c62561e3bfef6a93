package org.scalepan.web.server;

import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;

/** A service on a free port that has no place to compute anything. */
public final class BusyScalepan implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final WebServer server;

    /** One whose places are all taken by others. */
    public BusyScalepan() {
        this(() -> new ConcurrencyLimiter(0, 0, 0, Duration.ZERO));
    }

    private BusyScalepan(Supplier<ConcurrencyLimiter> places) {
        server = new WebServer(
                        RunningScalepan.library(), places.get(), places.get(), DeploymentSettings.NONE, List.of())
                .start(HOST, 0);
    }

    /** One where whoever asks from this machine has his share already. */
    static BusyScalepan withOneClient() {
        return new BusyScalepan(() -> {
            ConcurrencyLimiter places = new ConcurrencyLimiter(2, 1, 0, Duration.ZERO);
            places.take(Client.at(HOST));
            return places;
        });
    }

    public URI uri(String question) {
        return URI.create("http://" + HOST + ":" + server.port() + question);
    }

    @Override
    public void close() {
        server.close();
    }
}
