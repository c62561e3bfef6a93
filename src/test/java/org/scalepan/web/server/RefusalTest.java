package org.scalepan.web.server;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.http.Method;
import java.util.stream.Stream;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.LocalConnector;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** Every refusal is application/problem+json (RFC 9457), wherever in the server it occurs. */
class RefusalTest {
    @ParameterizedTest
    @ValueSource(strings = {"/no/such/address", "/v1", "/v2/products", "/docs/..%3Bx", "/site.js", "/docs/docs.html"})
    void an_unknown_path_is_a_problem_404(String path) {
        RunningScalepan.given()
                .get(path)
                .then()
                .statusCode(404)
                .contentType("application/problem+json")
                .body("type", equalTo("/problems/not-found"))
                .body("title", notNullValue())
                .body("status", equalTo(404));
    }

    @Test
    void the_requested_path_is_not_echoed() {
        assertFalse(
                RunningScalepan.given().get("/no-such-%3Cscript%3E").asString().contains("no-such"));
    }

    @ParameterizedTest
    @EnumSource(
            value = Method.class,
            names = {"POST", "PUT", "DELETE", "PATCH", "TRACE"})
    void another_method_is_a_problem_405_with_the_methods_allowed(Method method) {
        RunningScalepan.given()
                .request(method, "/v1/products")
                .then()
                .statusCode(405)
                .contentType("application/problem+json")
                .header("Allow", equalTo("GET, HEAD, OPTIONS"))
                .body("type", equalTo("/problems/wrong-method"))
                .body("status", equalTo(405));
    }

    static Stream<Arguments> malformed() {
        return Stream.of(
                Arguments.of(400, "GET /../../etc/passwd HTTP/1.1", "Host: localhost"),
                Arguments.of(400, "GET /docs/%2e%2e/%2e%2e/etc/passwd HTTP/1.1", "Host: localhost"),
                Arguments.of(400, "GET /v1/products/%2Fetc%2Fpasswd HTTP/1.1", "Host: localhost"),
                Arguments.of(400, "GET //v1/products HTTP/1.1", "Host: localhost"),
                Arguments.of(400, "GET /v1/products HTTP/1.1", "Host: bad host"),
                Arguments.of(400, "GET /v1/products HTTP/1.1", "Host: <script>"),
                Arguments.of(400, "GET /v1/products HTTP/1.1", "Accept: */*"),
                Arguments.of(505, "GET /v1/products", "Host: localhost"),
                Arguments.of(400, "NONSENSE", "Host: localhost"),
                Arguments.of(505, "GET /v1/products HTTP/3.7", "Host: localhost"),
                Arguments.of(414, "GET /v1/products?nocache=" + "x".repeat(20_000) + " HTTP/1.1", "Host: localhost"),
                Arguments.of(431, "GET /v1/products HTTP/1.1", "Host: localhost\r\nX-Long: " + "x".repeat(20_000)));
    }

    @ParameterizedTest
    @MethodSource("malformed")
    void a_request_that_reaches_no_route_is_a_problem_too(int status, String line, String header) throws Exception {
        RawExchange reply = RawExchange.send(line, header, "Connection: close");
        JsonNode problem = new ObjectMapper().readTree(reply.body());

        assertEquals(status, reply.status());
        assertEquals("application/problem+json", reply.header("Content-Type").orElse("none"));
        assertEquals(status, JsonAt.integer(problem, "/status"));
        assertTrue(JsonAt.text(problem, "/type").startsWith("/problems/"), reply.body());
        String kind = status == 414 || status == 431 ? "/problems/beyond-limits" : "/problems/malformed-request";
        assertEquals(kind, JsonAt.text(problem, "/type"), "the fault is the client's");
        assertFalse(reply.body().contains("etc"), "what was asked is not repeated");
    }

    @Test
    void a_problem_has_its_status_and_a_relative_type() {
        JsonNode problem = Reply.to("/v1/sources/no-such-source").json();

        assertEquals(404, JsonAt.integer(problem, "/status"));
        assertTrue(JsonAt.text(problem, "/type").matches("/problems/[a-z-]+"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.example", "evil.example:99", "[::1]", "127.0.0.1:1"})
    void no_answer_echoes_the_host_header(String host) {
        for (String path : new String[] {
            "/",
            "/v1/results?source=dreyer-2021",
            "/v1/value/ghg/mealworm",
            "/no/such/address",
            "/docs",
            "/openapi.yaml"
        }) {
            RawExchange reply = RawExchange.send(
                    "GET " + path + " HTTP/1.1",
                    "Host: " + host,
                    "X-Forwarded-Host: evil.example",
                    "Connection: close");

            assertFalse((reply.head() + reply.body()).contains(host), path);
            assertFalse((reply.head() + reply.body()).contains("evil.example"), path);
        }
    }

    @Test
    void a_link_in_an_answer_is_relative() {
        RunningScalepan.given()
                .get("/v1/results?source=dreyer-2021")
                .then()
                .body("permalink", not(equalTo(null)))
                .body("permalink.startsWith('/v1/results?')", equalTo(true));
    }

    /** The server's own response while it stops, when requests reach no route. */
    @Test
    void a_stopping_service_answers_503_with_retry_after() throws Exception {
        Server server = new Server();
        server.setErrorHandler(new ServerErrors());
        LocalConnector connector = new LocalConnector(server);
        server.addConnector(connector);
        server.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) {
                Response.writeError(request, response, callback, 503);
                return true;
            }
        });
        server.start();
        try {
            String reply = connector.getResponse("GET / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");

            assertTrue(reply.startsWith("HTTP/1.1 503 "), reply);
            assertTrue(reply.contains("Retry-After: 1\r\n"), reply);
            assertTrue(reply.contains("the service is stopping"), reply);
            assertFalse(reply.contains("broke"), reply);
        } finally {
            server.stop();
        }
    }
}
