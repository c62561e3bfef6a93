package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Answer;

/** The service as a process: it leaves no traces, and on SIGTERM stops without dropping a response. */
class OwnProcessIT {
    private static final String SECRET = "farm-of-somebody-else";
    private static final String FARM = "{\"kind\":\"insects\",\"name\":\"" + SECRET
            + "\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":1}}\n";

    /** Some seconds of work, less than the shutdown timeout. */
    private static final int ROWS = 4_000;

    @TempDir
    private Path folder;

    private Path empty(String name) throws IOException {
        return Files.createDirectory(folder.resolve(name));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    @Test
    void request_data_is_neither_stored_nor_logged_and_running_answers_complete_on_sigterm() throws Exception {
        Path work = empty("work");
        Path home = empty("home");
        Path temporary = empty("temporary");
        Path log = folder.resolve("log");
        assertTrue(work.toFile().setWritable(false));
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx96m",
                        "-Duser.home=" + home,
                        "-Djava.io.tmpdir=" + temporary,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.scalepan.Scalepan",
                        "--port",
                        "0")
                .directory(work.toFile())
                .redirectError(log.toFile())
                .start();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String listens = out.readLine();
            String here = listens.replaceAll(".*(http://[0-9.:]+).*", "$1");

            sendWhatIsNobodysBusiness(here);
            // Returns with the first rows, while the last are computed a second later.
            HttpResponse<Stream<String>> underWay = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(many(here))
                                    .header("Content-Type", Answer.NDJSON)
                                    .POST(HttpRequest.BodyPublishers.ofString(FARM.repeat(ROWS)))
                                    .build(),
                            HttpResponse.BodyHandlers.ofLines());
            // Not process.destroy(), which also closes the output of the process.
            process.toHandle().destroy();

            assertEquals(200, underWay.statusCode());
            try (Stream<String> rows = underWay.body()) {
                assertEquals(ROWS, rows.count());
            }
            assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it has gone");
            assertEquals(List.of(), out.lines().toList(), "after its first line it says nothing");
        } finally {
            process.destroyForcibly();
            assertTrue(work.toFile().setWritable(true));
        }
        assertFalse(Files.readString(log).contains(SECRET), () -> "the log tells of what was sent");
        assertEquals(List.of(), files(work), "where it was started");
        assertEquals(List.of(), files(home));
        assertEquals(List.of(), files(temporary), "what lay there until it was computed");
    }

    private static Reply rows(String here, String rows) {
        return Reply.to(many(here), Map.of("Content-Type", Answer.NDJSON), Optional.of(rows));
    }

    private static URI many(String here) {
        return URI.create(here + "/v1/footprints?indicators=ghg&draws=1000");
    }

    /** Valid and invalid requests, by GET and POST. */
    private static void sendWhatIsNobodysBusiness(String here) {
        assertEquals(200, rows(here, FARM).status());
        assertEquals(200, rows(here, "{\"" + SECRET).status());
        URI footprint = URI.create(here + "/v1/footprint");
        for (String body :
                List.of("{\"system\":" + FARM + "}", "{\"system\":{\"" + SECRET + "\":1}}", "{\"" + SECRET, SECRET)) {
            Reply.to(footprint, Map.of(), Optional.of(body));
        }
        for (String question : List.of("/v1/claim?text=", "/v1/products/", "/v1/comparison?products=", "/")) {
            Reply.to(URI.create(here + question + SECRET), Map.of());
        }
    }

    @Test
    void while_draining_it_is_live_but_not_ready_and_closes_connections() throws Exception {
        try (WebServer server = new WebServer(RunningScalepan.library()).start("127.0.0.1", 0)) {
            String here = "http://127.0.0.1:" + server.port();
            assertEquals(
                    200, Reply.to(URI.create(here + "/health/ready"), Map.of()).status());
            Thread leaving = new Thread(() -> {
                try {
                    server.leave();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            });
            leaving.start();
            Reply ready = Reply.to(URI.create(here + "/health/ready"), Map.of());
            for (int i = 0; i < 50 && ready.status() == 200; i++) {
                Thread.sleep(10);
                ready = Reply.to(URI.create(here + "/health/ready"), Map.of());
            }

            assertEquals(503, ready.status());
            assertEquals("/problems/not-ready", JsonAt.text(ready.json(), "/type"));
            Reply live = Reply.to(URI.create(here + "/health/live"), Map.of());
            assertEquals(200, live.status());
            assertEquals("close", live.header("Connection").orElse("none"));
            assertEquals(
                    200,
                    Reply.to(URI.create(here + "/v1/value/ghg/mealworm"), Map.of())
                            .status());
            leaving.join();
        }
    }
}
