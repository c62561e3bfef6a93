package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.DeploymentSettings;

/** Scripts of other origins can read responses only if they are allowed (CORS). */
class CrossOriginTest {
    private static final String OURS = "https://figures.example.org";

    /** Over a socket, because HTTP clients do not send a custom Origin. */
    private static RawExchange from(int port, String origin, String line, String... more) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            String head = line + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nOrigin: " + origin + "\r\n";
            String rest = more.length == 0 ? "" : String.join("\r\n", more) + "\r\n";
            socket.getOutputStream().write((head + rest + "\r\n").getBytes(StandardCharsets.US_ASCII));
            return RawExchange.answer(socket).orElseThrow();
        }
    }

    private static WebServer started(String... origins) {
        return new WebServer(RunningScalepan.library(), new DeploymentSettings(Optional.empty(), List.of(origins)))
                .start("127.0.0.1", 0);
    }

    @Test
    void by_default_no_other_origin_may_read_a_response_or_post_records() throws IOException {
        int port = RunningScalepan.port();
        RawExchange answer = from(port, OURS, "GET /v1/value/ghg/mealworm");
        RawExchange asked = from(
                port,
                OURS,
                "OPTIONS /v1/footprint",
                "Access-Control-Request-Method: POST",
                "Access-Control-Request-Headers: content-type");

        assertEquals(200, answer.status());
        for (RawExchange reply : List.of(answer, asked)) {
            assertTrue(reply.header("Access-Control-Allow-Origin").isEmpty(), reply::head);
        }
    }

    @Test
    void an_allowed_origin_may_read_responses_and_post_records_and_others_may_not() throws IOException {
        try (WebServer server = started("https://other.example", OURS)) {
            RawExchange answer = from(server.port(), OURS, "GET /v1/value/ghg/mealworm");
            assertEquals(200, answer.status());
            assertEquals(OURS, answer.header("Access-Control-Allow-Origin").orElse("none"));
            assertTrue(answer.header("Access-Control-Allow-Credentials").isEmpty(), answer::head);
            assertTrue(
                    answer.header("Access-Control-Expose-Headers")
                            .orElse("none")
                            .contains("Content-Location"),
                    answer::head);
            // A cache must not reuse a response for another origin.
            assertTrue(answer.head().lines().anyMatch(line -> line.matches("(?i)vary:.*origin.*")), answer::head);

            RawExchange asked = from(
                    server.port(),
                    OURS,
                    "OPTIONS /v1/footprint",
                    "Access-Control-Request-Method: POST",
                    "Access-Control-Request-Headers: content-type");
            assertEquals(OURS, asked.header("Access-Control-Allow-Origin").orElse("none"));
            assertTrue(
                    asked.header("Access-Control-Allow-Methods").orElse("none").contains("POST"), asked::head);

            for (String stranger : List.of(
                    "https://evil.example",
                    "https://figuresXexample.org",
                    "https://figures.example.org.evil.example",
                    "http://figures.example.org",
                    "null")) {
                RawExchange refused = from(server.port(), stranger, "GET /v1/value/ghg/mealworm");
                assertEquals(200, refused.status(), "answered as anybody is; its browser keeps it from the page");
                assertTrue(refused.header("Access-Control-Allow-Origin").isEmpty(), refused::head);
            }
        }
    }

    @Test
    void all_origins_may_be_allowed() throws IOException {
        try (WebServer server = started("*")) {
            RawExchange answer = from(server.port(), OURS, "GET /v1/value/ghg/mealworm");
            String let = answer.header("Access-Control-Allow-Origin").orElse("none");
            assertTrue(let.equals("*") || let.equals(OURS), answer::head);
        }
    }

    @Test
    void origins_and_the_header_of_a_proxy_are_settings_of_command_line_or_environment() {
        Settings.SettingsReading.Ready settings = assertInstanceOf(
                Settings.SettingsReading.Ready.class,
                Settings.read(
                        List.of("--origins", OURS + ", http://localhost:3000", "--client-header=X-Real-IP"), Map.of()));
        Settings.SettingsReading.Ready found = assertInstanceOf(
                Settings.SettingsReading.Ready.class, Settings.read(List.of(), Map.of("SCALEPAN_ORIGINS", "*")));
        Settings.SettingsReading.Ready usual =
                assertInstanceOf(Settings.SettingsReading.Ready.class, Settings.read(List.of(), Map.of()));

        assertEquals(
                new DeploymentSettings(Optional.of("X-Real-IP"), List.of(OURS, "http://localhost:3000")),
                settings.settings().deployment());
        assertEquals(List.of("*"), found.settings().deployment().origins());
        assertEquals(DeploymentSettings.NONE, usual.settings().deployment());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--origins=figures.example.org",
                "--origins=https://figures.example.org/",
                "--origins=https://*.example.org",
                "--origins=null",
                "--client-header=X Real",
                "--client-header=X-Real:"
            })
    void an_invalid_origin_or_header_name_is_reported(String option) {
        assertInstanceOf(Settings.SettingsReading.InvalidSettings.class, Settings.read(List.of(option), Map.of()));
    }
}
