package org.scalepan.web.server;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.DoubleSupplier;

/**
 * Counts requests by route, status and kind of refusal, and their time, for {@code GET /metrics}. No request data is kept: a label is a
 * route as the service defines it, never an address as it was asked.
 */
final class Metrics {
    /** The route of requests that reach none. */
    static final String NO_ROUTE = "none";
    /** Upper ends of the classes of time, in seconds; a cell takes milliseconds, many draws take seconds. */
    private static final double[] SECONDS = {0.001, 0.005, 0.01, 0.05, 0.1, 0.5, 1, 2.5, 5, 10, 60};

    private final Map<Answered, LongAdder> answered = new ConcurrentHashMap<>();
    private final Map<String, Times> times = new ConcurrentHashMap<>();
    private final Map<String, LongAdder> closed = new ConcurrentHashMap<>();
    private final List<Gauge> gauges = new ArrayList<>();
    private final List<PrometheusText.Label> build = new ArrayList<>();

    /** @param refusal the kind of problem, as in {@code no-evidence}; empty where there is none */
    private record Answered(String route, int status, String refusal) implements Comparable<Answered> {
        @Override
        public int compareTo(Answered other) {
            return key().compareTo(other.key());
        }

        private String key() {
            return route + ' ' + status + ' ' + refusal;
        }
    }

    private record Gauge(String name, String help, DoubleSupplier value) {}

    /** How many requests took how long. */
    private static final class Times {
        private final LongAdder[] classes = new LongAdder[SECONDS.length + 1];
        private final LongAdder nanoseconds = new LongAdder();

        Times() {
            java.util.Arrays.setAll(classes, i -> new LongAdder());
        }

        void add(long nanos) {
            int at = 0;
            while (at < SECONDS.length && nanos > SECONDS[at] * 1e9) {
                at++;
            }
            classes[at].increment();
            nanoseconds.add(nanos);
        }
    }

    /** A request without refusal. */
    void count(String route, int status, long nanoseconds) {
        count(route, status, "", nanoseconds);
    }

    void count(String route, int status, String refusal, long nanoseconds) {
        answered.computeIfAbsent(new Answered(route, status, refusal), key -> new LongAdder())
                .increment();
        times.computeIfAbsent(route, key -> new Times()).add(nanoseconds);
    }

    /** A connection that the service closed. */
    void closed(String reason) {
        closed.computeIfAbsent(reason, key -> new LongAdder()).increment();
    }

    /** Adds what is measured when it is asked for; before the service listens. */
    Metrics gauge(String name, String help, DoubleSupplier value) {
        gauges.add(new Gauge(name, help, value));
        return this;
    }

    /** Adds a fact about this build. */
    Metrics build(String name, String value) {
        build.add(new PrometheusText.Label(name, value));
        return this;
    }

    String text() {
        PrometheusText text = new PrometheusText();
        text.family("scalepan_build_info", "gauge", "Versions of program, Java and library; always 1.");
        text.sample("scalepan_build_info", build, 1L);
        text.family("scalepan_requests_total", "counter", "Requests answered, by route, status and kind of refusal.");
        new TreeMap<>(answered)
                .forEach((key, count) -> text.sample(
                        "scalepan_requests_total",
                        List.of(
                                new PrometheusText.Label("route", key.route()),
                                new PrometheusText.Label("status", Integer.toString(key.status())),
                                new PrometheusText.Label("refusal", key.refusal())),
                        count.sum()));
        text.family("scalepan_request_duration_seconds", "histogram", "Time from the head of a request to its answer.");
        new TreeMap<>(times).forEach((route, of) -> times(text, route, of));
        text.family("scalepan_connections_closed_total", "counter", "Connections that the service closed, by reason.");
        new TreeMap<>(closed)
                .forEach((reason, count) -> text.sample(
                        "scalepan_connections_closed_total",
                        List.of(new PrometheusText.Label("reason", reason)),
                        count.sum()));
        for (Gauge gauge : gauges) {
            text.family(gauge.name(), "gauge", gauge.help());
            text.sample(gauge.name(), List.of(), gauge.value().getAsDouble());
        }
        return text.toString();
    }

    private static void times(PrometheusText text, String route, Times of) {
        String name = "scalepan_request_duration_seconds";
        PrometheusText.Label label = new PrometheusText.Label("route", route);
        long count = 0;
        for (int i = 0; i < of.classes.length; i++) {
            count += of.classes[i].sum();
            String most = i < SECONDS.length ? PrometheusText.number(SECONDS[i]) : "+Inf";
            text.sample(name + "_bucket", List.of(label, new PrometheusText.Label("le", most)), count);
        }
        text.sample(name + "_sum", List.of(label), of.nanoseconds.sum() / 1e9);
        text.sample(name + "_count", List.of(label), count);
    }
}
