package org.scalepan.web.server;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;

/** Counts answers by route and status, for {@code GET /metrics} in the Prometheus text format. No request data is kept. */
final class Metrics {
    private final Map<String, LongAdder> answers = new ConcurrentHashMap<>();
    private final Map<String, LongAdder> nanos = new ConcurrentHashMap<>();

    void count(String route, int status, long nanoseconds) {
        answers.computeIfAbsent("route=\"" + route + "\",status=\"" + status + "\"", key -> new LongAdder())
                .increment();
        nanos.computeIfAbsent("route=\"" + route + "\"", key -> new LongAdder()).add(nanoseconds);
    }

    String text() {
        StringBuilder out = new StringBuilder();
        out.append("# HELP scalepan_answers_total Answers given.\n# TYPE scalepan_answers_total counter\n");
        new TreeMap<>(answers)
                .forEach((labels, count) -> out.append("scalepan_answers_total{")
                        .append(labels)
                        .append("} ")
                        .append(count.sum())
                        .append('\n'));
        out.append("# HELP scalepan_answer_seconds_total Time spent on answers.\n")
                .append("# TYPE scalepan_answer_seconds_total counter\n");
        new TreeMap<>(nanos)
                .forEach((labels, sum) -> out.append("scalepan_answer_seconds_total{")
                        .append(labels)
                        .append("} ")
                        .append(sum.sum() / 1e9)
                        .append('\n'));
        Runtime runtime = Runtime.getRuntime();
        out.append("# HELP scalepan_heap_used_bytes Heap in use.\n# TYPE scalepan_heap_used_bytes gauge\n")
                .append("scalepan_heap_used_bytes ")
                .append(runtime.totalMemory() - runtime.freeMemory())
                .append('\n');
        return out.toString();
    }
}
