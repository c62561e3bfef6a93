package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
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
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The jar that the build has made: complete, and nothing in it that is not used. */
class JarIT {
    private static Path built(String classifier) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("target"))) {
            return files.filter(file -> file.toString().endsWith("-" + classifier + ".jar"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void it_has_the_licences_of_all_that_is_in_it_and_its_bill_of_materials() throws IOException {
        for (String classifier : List.of("all", "core")) {
            try (JarFile jar = new JarFile(built(classifier).toFile())) {
                String libraries = new String(
                        jar.getInputStream(jar.getEntry("META-INF/licences/LIBRARIES.txt"))
                                .readAllBytes(),
                        StandardCharsets.UTF_8);

                assertTrue(libraries.contains("(MIT License) FastCSV"), libraries);
                assertFalse(libraries.contains("(Unknown license)"), libraries);
                assertTrue(
                        jar.stream().anyMatch(entry -> entry.getName().matches("META-INF/licences/fastcsv.*/LICENSE")));
                assertTrue(jar.stream().anyMatch(entry -> entry.getName().matches("META-INF/sbom/.*-bom[.]json")));
                String own = new String(
                        jar.getInputStream(jar.getEntry("META-INF/LICENSE")).readAllBytes(), StandardCharsets.UTF_8);
                assertEquals(Files.readString(Path.of("LICENSE")), own);
            }
        }
    }

    @Test
    void what_the_service_never_uses_is_not_in_it() throws IOException {
        try (JarFile jar = new JarFile(built("all").toFile())) {
            List<String> unused = jar.stream()
                    .map(entry -> entry.getName())
                    .filter(
                            name -> name.matches(
                                    "org/eclipse/jetty/.*(websocket|plus|annotations|webapp)/.*|org/objectweb/.*|jakarta/(transaction|enterprise|interceptor)/.*"))
                    .toList();

            assertEquals(List.of(), unused);
        }
    }

    @Test
    void it_answers_without_any_other_file() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx96m",
                        "-jar",
                        built("all").toString(),
                        "--port",
                        "0")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String listens = out.readLine();
            assertNotNull(listens);
            String here = listens.replaceAll(".*(http://[0-9.:]+).*", "$1");
            for (String question :
                    List.of("/", "/docs", "/v1/value/ghg/mealworm", "/guide/operating", "/openapi.yaml")) {
                HttpResponse<String> answer = HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(here + question))
                                        .build(),
                                HttpResponse.BodyHandlers.ofString());
                assertEquals(200, answer.statusCode(), question);
            }
        } finally {
            process.destroy();
        }
    }
}
