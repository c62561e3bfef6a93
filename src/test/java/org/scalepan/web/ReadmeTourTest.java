package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.scalepan.factors.LibraryLoad;
import org.scalepan.factors.LibraryLoader;

/**
 * The tour in README.md shows real output. Each {@code console} block is a list of curl commands with what they print; this test
 * asks the same questions of a running service. After a change of data, run it once with {@code -Dscalepan.rewrite=true} and
 * read the difference before committing it.
 */
class ReadmeTourTest {
    private static final Path README = Path.of("README.md");
    private static final Pattern BLOCK = Pattern.compile("```console\n(.*?)```", Pattern.DOTALL);
    private static final Pattern COMMAND = Pattern.compile("\\$ curl -s 'http://127\\.0\\.0\\.1:8080([^']*)'");

    @Test
    void every_command_of_the_tour_prints_what_the_readme_shows() throws Exception {
        String readme = Files.readString(README);
        String asServed;
        try (WebServer server = service()) {
            asServed = BLOCK.matcher(readme)
                    .replaceAll(
                            block -> Matcher.quoteReplacement("```console\n" + run(block.group(1), server) + "```"));
        }
        if (Boolean.getBoolean("scalepan.rewrite")) {
            Files.writeString(README, asServed);
        }
        assertTrue(COMMAND.matcher(readme).find(), "the tour has commands");
        assertEquals(asServed, readme);
    }

    private static WebServer service() {
        LibraryLoad.Loaded loaded = (LibraryLoad.Loaded) LibraryLoader.bundled();
        return new WebServer(loaded.library()).start("127.0.0.1", 0);
    }

    private static String run(String block, WebServer server) {
        List<String> lines = new ArrayList<>();
        block.lines().filter(line -> line.startsWith("$ ")).forEach(line -> {
            Matcher command = COMMAND.matcher(line);
            assertTrue(command.matches(), "not a plain curl command: " + line);
            lines.add(line);
            get(server, command.group(1)).strip().lines().forEach(lines::add);
        });
        return String.join("\n", lines) + "\n";
    }

    private static String get(WebServer server, String path) {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .build();
        try {
            return HttpClient.newHttpClient()
                    .send(request, HttpResponse.BodyHandlers.ofString())
                    .body();
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(path, e);
        }
    }
}
