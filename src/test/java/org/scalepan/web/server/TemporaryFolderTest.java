package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.bulk.SpoolFolder;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;

/** A service whose temporary folder is gone says so, and still answers everything but rows. */
class TemporaryFolderTest {
    private static final String FARM =
            "{\"kind\":\"insects\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":1}}";

    @TempDir
    private Path folder;

    private WebServer service(Path spools) {
        return new WebServer(
                        RunningScalepan.library(),
                        ConcurrencyLimiter.ofAnswers(),
                        ConcurrencyLimiter.ofRuns(),
                        DeploymentSettings.NONE,
                        List.of(),
                        new SpoolFolder(spools))
                .start("127.0.0.1", 0);
    }

    @Test
    void without_a_folder_readiness_and_rows_are_503_and_single_farms_are_answered() {
        PrintStream before = System.err;
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        try (WebServer server = service(folder.resolve("nowhere"))) {
            System.setErr(new PrintStream(log, true, StandardCharsets.UTF_8));
            String here = "http://127.0.0.1:" + server.port();

            Reply ready = Reply.to(URI.create(here + "/health/ready"), Map.of());
            assertEquals(503, ready.status());
            assertTrue(ready.body().contains("the temporary folder is missing or not writable"), ready.body());
            assertEquals(
                    200, Reply.to(URI.create(here + "/health/live"), Map.of()).status());
            for (int i = 0; i < 3; i++) {
                Reply rows = Reply.to(
                        URI.create(here + "/v1/footprints"), Map.of("Content-Type", Answer.NDJSON), Optional.of(FARM));
                assertEquals(503, rows.status());
                assertEquals("/problems/no-place", JsonAt.text(rows.json(), "/type"));
                assertEquals("1", rows.header("Retry-After").orElse(""));
            }
            Reply single =
                    Reply.to(URI.create(here + "/v1/footprint"), Map.of(), Optional.of("{\"system\":" + FARM + "}"));
            assertEquals(200, single.status());
        } finally {
            System.setErr(before);
        }
        assertFalse(log.toString(StandardCharsets.UTF_8).contains("\tat "), "no trace for each request");
    }

    @Test
    void with_a_folder_readiness_says_that_rows_find_a_place() {
        try (WebServer server = service(folder)) {
            Reply ready = Reply.to(URI.create("http://127.0.0.1:" + server.port() + "/health/ready"), Map.of());

            assertEquals(200, ready.status());
            assertEquals("ok", JsonAt.text(ready.json(), "/rows"));
        }
    }
}
