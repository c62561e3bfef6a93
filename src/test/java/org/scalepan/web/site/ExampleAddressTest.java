package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.input.Input;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.DeploymentSettings;
import org.scalepan.web.http.RequestBody;
import org.scalepan.web.route.Request;
import org.scalepan.web.server.WebServer;

/** An example calls the host it came from; a Host header that is not a plain host never reaches a cell. */
class ExampleAddressTest {
    private static Answer ods(String host) {
        return ods("http", host);
    }

    private static Answer ods(String scheme, String host) {
        Request request = new Request(
                "/examples/scalepan.ods",
                Map.of("file", "scalepan.ods"),
                Input.query(Map.of()),
                "",
                RequestBody.NOTHING,
                scheme,
                host,
                Client.at("127.0.0.1"));
        return new ExampleRoutes()
                .routes().stream()
                        .filter(route -> route.path().endsWith("{file}"))
                        .findFirst()
                        .orElseThrow()
                        .handling()
                        .answer(request);
    }

    /** The file is stored, not compressed, so its text can be read directly. */
    private static boolean asks(Answer ods, String address) {
        return new String(ods.body(), java.nio.charset.StandardCharsets.UTF_8)
                .contains("<text:p>" + address + "</text:p>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1:9000", "localhost", "figures.example.org", "[::1]:8080"})
    void an_example_calls_the_host_that_it_came_from(String host) {
        assertTrue(asks(ods(host), "http://" + host));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a b", "x\"&A1", "x/path", "user@host", "=1+1", "host:port", "-", "x<y", "host:123456"})
    void anything_but_a_plain_host_is_ignored(String host) {
        assertTrue(asks(ods(host), "http://127.0.0.1:8080"));
    }

    @Test
    void the_running_service_uses_the_host_header() {
        Reply reply = Reply.to("/examples/scalepan.ods");

        assertEquals(200, reply.status());
        assertTrue(reply.body().contains("<text:p>http://127.0.0.1:" + RunningScalepan.port() + "</text:p>"));
    }

    @Test
    void by_https_it_calls_by_https() {
        assertTrue(asks(ods("https", "figures.example.org"), "https://figures.example.org"));
    }

    @Test
    void the_scheme_of_a_proxy_counts_only_where_a_proxy_is_trusted() {
        for (boolean trusted : List.of(true, false)) {
            DeploymentSettings deployment = trusted
                    ? new DeploymentSettings(Optional.of("X-Forwarded-For"), List.of())
                    : DeploymentSettings.NONE;
            try (WebServer server = new WebServer(RunningScalepan.library(), deployment).start("127.0.0.1", 0)) {
                URI file = URI.create("http://127.0.0.1:" + server.port() + "/examples/scalepan.ods");
                Reply reply = Reply.to(file, Map.of("X-Forwarded-Proto", "https"));

                String scheme = trusted ? "https" : "http";
                assertTrue(reply.body().contains("<text:p>" + scheme + "://127.0.0.1:" + server.port()), scheme);
            }
        }
    }

    @Test
    void a_shared_cache_whose_key_has_no_host_keeps_no_workbook() {
        for (String file : List.of("/examples/scalepan.ods", "/examples/scalepan.xlsx")) {
            assertEquals(
                    "private, max-age=3600",
                    Reply.to(file).header("Cache-Control").orElse(""));
        }
    }

    @Test
    void the_same_host_gets_the_same_bytes() {
        assertArrayEquals(ods("localhost").body(), ods("localhost").body());
    }
}
