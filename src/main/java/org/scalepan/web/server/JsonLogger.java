package org.scalepan.web.server;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Marker;
import org.slf4j.event.Level;
import org.slf4j.helpers.LegacyAbstractLogger;
import org.slf4j.helpers.MessageFormatter;

/** Writes each event as one JSON object on a line, as collectors of logs read it. */
final class JsonLogger extends LegacyAbstractLogger {
    private static final long serialVersionUID = 1L;
    private static final JsonMapper JSON = new JsonMapper();

    private final transient PrintStream out;
    private final transient Clock clock;
    private final int least;

    /** @param least the lowest level that is written, as {@link Level#toInt} has it */
    JsonLogger(String name, int least, PrintStream out, Clock clock) {
        this.name = name;
        this.least = least;
        this.out = out;
        this.clock = clock;
    }

    @Override
    protected void handleNormalizedLoggingCall(
            Level level,
            @Nullable Marker marker,
            @Nullable String message,
            Object @Nullable [] arguments,
            @Nullable Throwable thrown) {
        ObjectNode line = JSON.createObjectNode();
        line.put("time", Instant.now(clock).truncatedTo(ChronoUnit.MILLIS).toString());
        line.put("level", level.name());
        line.put("logger", name);
        line.put("message", MessageFormatter.basicArrayFormat(message, arguments));
        if (thrown != null) {
            StringWriter trace = new StringWriter();
            thrown.printStackTrace(new PrintWriter(trace));
            line.put("trace", trace.toString());
        }
        try {
            out.println(JSON.writeValueAsString(line));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }

    @Override
    protected @Nullable String getFullyQualifiedCallerName() {
        return null;
    }

    private boolean writes(Level level) {
        return level.toInt() >= least;
    }

    @Override
    public boolean isTraceEnabled() {
        return writes(Level.TRACE);
    }

    @Override
    public boolean isDebugEnabled() {
        return writes(Level.DEBUG);
    }

    @Override
    public boolean isInfoEnabled() {
        return writes(Level.INFO);
    }

    @Override
    public boolean isWarnEnabled() {
        return writes(Level.WARN);
    }

    @Override
    public boolean isErrorEnabled() {
        return writes(Level.ERROR);
    }
}
