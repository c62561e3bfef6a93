package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;
import org.scalepan.web.route.Route;

/** An incomplete response of rows must not look complete. */
class BrokenOffTest {
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void a_response_aborted_among_its_rows_does_not_look_complete(boolean ofOurs) {
        Route half = Route.post(
                "/v1/half",
                List.of(),
                request -> Answer.streamed(Answer.NDJSON, out -> {
                    out.write("{\"row\": 1}\n".repeat(10_000).getBytes(StandardCharsets.US_ASCII));
                    out.flush();
                    if (ofOurs) {
                        throw new IllegalStateException("invented");
                    }
                    throw new IOException("invented");
                }));
        try (WebServer server = new WebServer(
                RunningScalepan.library(),
                ConcurrencyLimiter.ofAnswers(),
                ConcurrencyLimiter.ofRuns(),
                DeploymentSettings.NONE,
                List.of(half))) {
            URI asked = URI.create(
                    "http://127.0.0.1:" + server.start("127.0.0.1", 0).port() + "/v1/half");
            HttpRequest request = HttpRequest.newBuilder(asked)
                    .POST(HttpRequest.BodyPublishers.noBody())
                    .build();

            assertThrows(
                    IOException.class,
                    () -> HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString()));
        }
    }
}
