package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.Refusal;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.route.Route;

/** Hostile request targets and headers. */
class HostileAddressTest {
    private static final String SCRIPT = "<script>alert(7)</script>";

    /** Path traversal, one for each decoding that has misled servers. */
    private static final List<String> ESCAPES = List.of(
            "../../../../etc/passwd",
            "..%2f..%2f..%2fetc%2fpasswd",
            "%2e%2e/%2e%2e/etc/passwd",
            "%2e%2e%2f%2e%2e%2fetc%2fpasswd",
            "%252e%252e%252fetc%252fpasswd",
            "..%5c..%5cwindows%5cwin.ini",
            "..\\..\\windows\\win.ini",
            "..;/..;/etc/passwd",
            "..%3b/etc/passwd",
            "%c0%ae%c0%ae/etc/passwd",
            "%c0%af%c0%afetc/passwd",
            "%e0%80%ae%e0%80%ae/etc/passwd",
            "..%u2215etc%u2215passwd",
            "%ff%fe",
            "%00",
            "reader.js%00.html",
            "scalepan.xlsx%00",
            "%2fetc%2fpasswd",
            "//etc/passwd",
            "./reader.js/../../../etc/passwd",
            "file:///etc/passwd",
            "....//....//etc/passwd",
            ".env",
            ".git/config",
            "WEB-INF/web.xml",
            "META-INF/MANIFEST.MF",
            "org/scalepan/Scalepan.class",
            "CON",
            "scalepan.ods::$DATA",
            "{file}",
            "*",
            "%0d%0aX-Injected:%20yes",
            "%3Cscript%3Ealert(7)%3C%2Fscript%3E");

    /** The folder of every served path, so that new routes are covered automatically. */
    static Set<String> folders() {
        Set<String> folders = new LinkedHashSet<>(List.of("/"));
        RunningScalepan.routes().forEach(route -> {
            String fixed = route.path().replaceAll("\\{.*", "");
            folders.add(fixed.endsWith("/") ? fixed : fixed + "/");
        });
        return folders;
    }

    @ParameterizedTest
    @MethodSource("folders")
    void no_file_outside_the_served_ones_can_be_reached(String folder) {
        for (String escape : ESCAPES) {
            RawExchange reply =
                    RawExchange.send("GET " + folder + escape + " HTTP/1.1", "Host: localhost", "Connection: close");

            Refusal.check("GET " + folder + escape, reply);
            assertFalse(reply.body().contains("root:"), folder + escape);
        }
    }

    static List<Route> routes() {
        return RunningScalepan.routes();
    }

    @ParameterizedTest
    @MethodSource("routes")
    void text_of_a_request_target_is_never_returned_as_html(Route route) {
        String encoded = "%3Cscript%3Ealert(7)%3C/script%3E".replace("/", "%2F");
        String path = route.path().replaceAll("\\{\\w+}", "%3Cimg%20src=x%3E");
        List<String> questions = new ArrayList<>(List.of(path + "?" + encoded + "=1", path + "?library=" + encoded));
        route.parameters().forEach(name -> questions.add(path + "?" + name + "=" + encoded));

        for (String question : questions) {
            RawExchange reply = RawExchange.send(
                    (route.method() == Route.HttpMethod.POST ? "POST " : "GET ") + question + " HTTP/1.1",
                    "Host: localhost",
                    "Accept: text/html",
                    "Referer: " + SCRIPT,
                    "User-Agent: " + SCRIPT,
                    "Content-Length: 0",
                    "Connection: close");

            Refusal.checkSilent(question, reply);
            boolean page = reply.header("Content-Type").orElse("").startsWith("text/html");
            assertFalse(page && reply.body().contains("alert(7)"), question);
            assertFalse(reply.head().contains("script>"), () -> question + " writes into headers " + reply.head());
        }
    }

    @ParameterizedTest
    @MethodSource("routes")
    void a_line_end_in_a_value_injects_no_header(Route route) {
        String path = route.path().replaceAll("\\{\\w+}", "x%0d%0aX-Injected:yes");
        RawExchange reply = RawExchange.send(
                (route.method() == Route.HttpMethod.POST ? "POST " : "GET ")
                        + path
                        + "?nocache=1%0d%0aX-Injected:%20yes&x%0aX-Injected:yes=1 HTTP/1.1",
                "Host: localhost",
                "If-None-Match: \"x\" X-Injected: yes",
                "Content-Length: 0",
                "Connection: close");

        Refusal.checkSilent(route.path(), reply);
    }

    @Test
    void an_absurd_accept_header_is_handled() {
        List<String> wishes = List.of(
                "*/*;q=NaN",
                "*/*;q=-1",
                "*/*;q=1e308",
                "text/html;q=" + "9".repeat(5_000),
                ",".repeat(7_000),
                "a/b,".repeat(1_700) + "*/*",
                ";;;;;=;=;q;q=;",
                "application/json;" + "v=\"\\\"".repeat(1_000),
                " ".repeat(7_000) + "x",
                "\u00e9/\u00fc",
                "application/json; q=\"1",
                "*/json, */*/*, /, //");
        for (String address : List.of("/v1/comparison?products=mealworm&against=beef", "/v1/products", "/v1/table")) {
            for (String wish : wishes) {
                long start = System.nanoTime();
                RawExchange reply = RawExchange.send(
                        "GET " + address + " HTTP/1.1", "Host: localhost", "Accept: " + wish, "Connection: close");

                Refusal.checkSilent(address + " as " + wish, reply);
                assertTrue(List.of(200, 400, 406).contains(reply.status()), () -> wish + ": " + reply.head());
                assertTrue(System.nanoTime() - start < 5_000_000_000L, () -> "a long wait for " + wish);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/comparison", "/v1/claim", "/v1/nutrition", "/v1/value/ghg/mealworm", "/v1/table"})
    void a_query_of_many_or_long_or_odd_parts_is_refused(String path) {
        List<String> queries = List.of(
                "a&".repeat(5_000),
                "x=1&".repeat(65),
                "=".repeat(3_000),
                "products=" + "mealworm,".repeat(1_500),
                "products=" + ",".repeat(4_000) + "&against=&text=" + "9".repeat(3_000),
                "products=mealworm%00&against=beef",
                "text=%EF%BF%BF%E2%80%AE%F0%9F%A6%97%00&product=%00",
                "draws=1e999&coverage=NaN&seed=Infinity",
                "draws=0x10&coverage=1d&seed=-0",
                "draws=" + "9".repeat(1_000) + "&coverage=0." + "0".repeat(1_000) + "1",
                "times_less=1e400&percent_less=-1&product=mealworm&reference=beef",
                "per=__proto__&region=constructor&gwp=../x");
        for (String query : queries) {
            RawExchange reply =
                    RawExchange.send("GET " + path + "?" + query + " HTTP/1.1", "Host: localhost", "Connection: close");

            Refusal.check(path + "?" + query, reply);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET / HTTP/1.1\r\nHost: localhost\r\nX-A: b\r\n c\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: localhost\r\nX-A : b\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: localhost\r\nX-A: \u0000\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: localhost\r\n: empty\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n",
                "GET / HTTP/1.1\nHost: localhost\n\n",
                "GET http://evil.example/ HTTP/1.1\r\nHost: localhost\r\n\r\n",
                "CONNECT evil.example:443 HTTP/1.1\r\nHost: evil.example:443\r\n\r\n",
                "GE\u0001T / HTTP/1.1\r\nHost: localhost\r\n\r\n",
                "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
                "\u0016\u0003\u0001\u0002\u0000\u0001\u0000",
                "TRACE / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nX-Secret: 7\r\n\r\n"
            })
    void a_malformed_request_gets_a_problem_or_a_closed_connection(String request) {
        RawExchange.bytes(request.getBytes(StandardCharsets.ISO_8859_1)).ifPresent(reply -> {
            Refusal.check(request, reply);
            assertFalse(reply.body().contains("X-Secret"), request);
        });
        assertEquals(200, Reply.to("/health/live").status());
    }
}
