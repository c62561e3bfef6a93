package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.input.Input;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.RequestBody;
import org.scalepan.web.route.Request;

/** An example calls the host it came from; a Host header that is not a plain host never reaches a cell. */
class ExampleAddressTest {
    private static Answer ods(String host) {
        Request request = new Request(
                "/examples/scalepan.ods",
                Map.of("file", "scalepan.ods"),
                Input.query(Map.of()),
                "",
                RequestBody.NOTHING,
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
    void the_same_host_gets_the_same_bytes() {
        assertArrayEquals(ods("localhost").body(), ods("localhost").body());
    }
}
