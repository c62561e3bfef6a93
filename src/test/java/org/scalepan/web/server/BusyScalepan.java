package org.scalepan.web.server;

import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;

/** A service on a free port without a free permit. */
public final class BusyScalepan implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final WebServer server;

    /** A service whose permits are all held by other clients. */
    public BusyScalepan() {
        this(() -> new ConcurrencyLimiter(0, 0, 0, Duration.ZERO));
    }

    private BusyScalepan(Supplier<ConcurrencyLimiter> limiter) {
        server = new WebServer(
                        RunningScalepan.library(), limiter.get(), limiter.get(), DeploymentSettings.NONE, List.of())
                .start(HOST, 0);
    }

    /** A service where this machine, as one client, has reached its limit. */
    static BusyScalepan withOneClient() {
        return new BusyScalepan(() -> {
            ConcurrencyLimiter limiter = new ConcurrencyLimiter(2, 1, 0, Duration.ZERO);
            limiter.acquire(Client.at(HOST));
            return limiter;
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
