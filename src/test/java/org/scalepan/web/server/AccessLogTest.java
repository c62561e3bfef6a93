package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** The log of requests: off unless asked for, in the Common Log Format, without bodies, and without queries unless asked for. */
class AccessLogTest {
    /** https://httpd.apache.org/docs/2.4/logs.html#common : host, identity, user, time, request line, status, bytes. */
    private static final Pattern COMMON = Pattern.compile(
            "[0-9a-f.:\\[\\]]+ - - \\[\\d{2}/[A-Z][a-z]{2}/\\d{4}:\\d{2}:\\d{2}:\\d{2} [+-]\\d{4}\\] \"[A-Z]+ (?:[^ \"\\\\]|\\\\.)+ HTTP/1\\.[01]\" \\d{3} \\d+");

    @TempDir
    private Path folder;

    private List<String> lines(boolean queries, List<String> questions) throws IOException {
        Path file = folder.resolve("access.log");
        try (WebServer server = new WebServer(RunningScalepan.library())
                .logging(new AccessLog(Optional.of(file), queries), System.out)
                .start("127.0.0.1", 0)) {
            String here = "http://127.0.0.1:" + server.port();
            for (String question : questions) {
                Reply.to(URI.create(here + question), Map.of());
            }
            Reply.to(URI.create(here + "/v1/footprint"), Map.of(), Optional.of("{\"name\":\"farm of somebody\"}"));
            raw(server.port(), "GET /v1/a\"b HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n");
        }
        return Files.readAllLines(file, StandardCharsets.UTF_8);
    }

    private static void raw(int port, String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            socket.getInputStream().transferTo(OutputStream.nullOutputStream());
        }
    }

    @Test
    void each_request_is_a_line_in_the_common_format_without_body_and_query() throws IOException {
        List<String> lines =
                lines(false, List.of("/v1/value/ghg/mealworm?per=kg-live", "/nope", "/v1/value/ghg/nothing"));

        assertTrue(lines.size() >= 4, lines::toString);
        lines.forEach(line -> assertTrue(COMMON.matcher(line).matches(), line));
        int bytes = Reply.to("/v1/value/ghg/mealworm?per=kg-live").body().length();
        assertOne(lines, "\"GET /v1/value/ghg/mealworm HTTP/1.1\" 200 " + bytes);
        assertOne(lines, "\"GET /nope HTTP/1.1\" 404 ");
        assertOne(lines, "\"POST /v1/footprint HTTP/1.1\" 400 ");
        assertFalse(lines.toString().contains("kg-live"));
        assertFalse(lines.toString().contains("somebody"));
    }

    /** A line is written when its request is over, so that lines may change places. */
    private static void assertOne(List<String> lines, String part) {
        assertEquals(1, lines.stream().filter(line -> line.contains(part)).count(), () -> part + " in " + lines);
    }

    @Test
    void queries_are_written_where_they_are_asked_for() throws IOException {
        List<String> lines = lines(true, List.of("/v1/value/ghg/mealworm?per=kg-live"));

        assertOne(lines, "\"GET /v1/value/ghg/mealworm?per=kg-live HTTP/1.1\" 200 ");
    }

    @Test
    void it_is_off_by_default_and_a_place_that_cannot_be_written_to_is_refused() {
        Settings.SettingsReading.Ready plain =
                assertInstanceOf(Settings.SettingsReading.Ready.class, Settings.read(List.of(), Map.of()));
        assertTrue(plain.settings().accessLog().isEmpty());

        Settings.SettingsReading.Ready asked = assertInstanceOf(
                Settings.SettingsReading.Ready.class, Settings.read(List.of("--access-log", "-"), Map.of()));
        assertEquals(
                Optional.of(new AccessLog(Optional.empty(), false)),
                asked.settings().accessLog());

        String nowhere = folder.resolve("no/such/folder/log").toString();
        Settings.SettingsReading.InvalidSettings wrong = assertInstanceOf(
                Settings.SettingsReading.InvalidSettings.class,
                Settings.read(List.of("--access-log", nowhere), Map.of()));
        assertTrue(wrong.faults().get(0).contains("cannot be written to"));
    }
}
