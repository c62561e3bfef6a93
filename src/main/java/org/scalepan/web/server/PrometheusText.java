package org.scalepan.web.server;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes the text format of Prometheus, version 0.0.4 (<a
 * href="https://prometheus.io/docs/instrumenting/exposition_formats/">exposition formats</a>).
 */
final class PrometheusText {
    private final StringBuilder out = new StringBuilder();

    record Label(String name, String value) {
        private String written() {
            return name + "=\""
                    + value.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\"";
        }
    }

    /** Begins a metric; its samples follow. */
    void family(String name, String type, String help) {
        out.append("# HELP ").append(name).append(' ').append(help).append('\n');
        out.append("# TYPE ").append(name).append(' ').append(type).append('\n');
    }

    void sample(String name, List<Label> labels, long value) {
        sample(name, labels, Long.toString(value));
    }

    void sample(String name, List<Label> labels, double value) {
        sample(name, labels, number(value));
    }

    private void sample(String name, List<Label> labels, String value) {
        out.append(name);
        if (!labels.isEmpty()) {
            out.append(labels.stream().map(Label::written).collect(Collectors.joining(",", "{", "}")));
        }
        out.append(' ').append(value).append('\n');
    }

    /** In plain digits: 0.001, 5, 268435456. */
    static String number(double value) {
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
