package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.slf4j.Logger;
import org.slf4j.event.Level;

/** Log lines as JSON: one object a line, whatever the message holds, with the levels of the plain log. */
class JsonLoggerTest {
    private final ByteArrayOutputStream written = new ByteArrayOutputStream();
    private final Logger log = new JsonLogger(
            "a.B",
            Level.WARN.toInt(),
            new PrintStream(written, true, StandardCharsets.UTF_8),
            Clock.fixed(Instant.parse("2026-11-29T08:15:30.123456Z"), ZoneOffset.UTC));

    @Test
    void an_event_is_one_line_with_time_level_logger_message_and_trace() throws Exception {
        log.warn("rows of {}\nbroken \"off\"", "/v1/footprints", new IllegalStateException("why"));

        String text = written.toString(StandardCharsets.UTF_8);
        assertEquals(1, text.lines().count(), text);
        JsonNode line = new JsonMapper().readTree(text);
        assertEquals("2026-11-29T08:15:30.123Z", JsonAt.text(line, "/time"));
        assertEquals("WARN", JsonAt.text(line, "/level"));
        assertEquals("a.B", JsonAt.text(line, "/logger"));
        assertEquals("rows of /v1/footprints\nbroken \"off\"", JsonAt.text(line, "/message"));
        assertTrue(JsonAt.text(line, "/trace").startsWith("java.lang.IllegalStateException: why"));
    }

    @Test
    void what_is_below_the_level_is_not_written() {
        log.info("listens");

        assertEquals("", written.toString(StandardCharsets.UTF_8));
    }

    @Test
    void levels_are_those_of_the_plain_log() {
        var loggers = new JsonLogProvider().getLoggerFactory();

        assertTrue(loggers.getLogger("org.scalepan.web.server.Pipeline").isWarnEnabled());
        assertFalse(loggers.getLogger("org.scalepan.web.server.Pipeline").isInfoEnabled());
        assertFalse(loggers.getLogger("org.eclipse.jetty.http.HttpParser").isWarnEnabled());
        assertFalse(loggers.getLogger("org.eclipse.jetty.util.HostPort").isWarnEnabled());
        assertFalse(loggers.getLogger("io.javalin.Javalin").isErrorEnabled());
    }
}
