package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** Addresses, routes, parameters, files and links in README and the guides exist. */
class GuideAddressesTest {
    private static final Pattern ADDRESS = Pattern.compile(Documents.SERVICE + "(/[^\\s'\"`)>]*)");
    private static final Pattern CONSOLE = Pattern.compile("```console\n.*?```", Pattern.DOTALL);
    private static final Pattern ROWS = Pattern.compile(
            "curl -s -H 'Content-Type: text/csv' --data-binary @farms.csv '" + Documents.SERVICE + "([^']+)'");
    private static final Pattern FIRST_CELL = Pattern.compile("(?m)^\\| (`[^|]+) \\|");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final Pattern LINK = Pattern.compile("]\\(([^)]+)\\)");

    /** Without what other tests check: commands with their output, and questions with records. */
    private static String withoutAsked(Path document) {
        String plain = CONSOLE.matcher(Documents.read(document)).replaceAll("");
        return ROWS.matcher(plain)
                .replaceAll("")
                .replaceAll("(?s)curl -s \\S+ -H 'Content-Type: application/json' -d", "");
    }

    @Test
    void every_address_of_the_service_answers() {
        int asked = 0;
        for (Path document : Documents.all()) {
            Matcher address = ADDRESS.matcher(withoutAsked(document));
            while (address.find()) {
                // A program appends its query after the question mark; text with an ellipsis is no address.
                if (address.group(1).endsWith("?") || address.group(1).matches(".*[…{].*")) {
                    continue;
                }
                asked++;
                Reply reply = Reply.to(address.group(1));
                assertEquals(200, reply.status(), () -> document + ": " + address.group(1) + " " + reply.body());
            }
        }
        assertTrue(asked > 15, asked + " addresses");
    }

    @Test
    void rows_of_the_template_are_answered_as_the_tour_sends_them() {
        Matcher rows = ROWS.matcher(Documents.read(Documents.guide("tour")));
        assertTrue(rows.find(), "the tour sends rows");
        byte[] template = Reply.to("/v1/footprints/template.csv").body().getBytes(StandardCharsets.UTF_8);
        Reply reply = Reply.to(
                rows.group(1),
                java.util.Map.of("Content-Type", "text/csv"),
                java.util.Optional.of(new String(template, StandardCharsets.UTF_8)));

        assertEquals(200, reply.status());
        assertTrue(reply.body().lines().count() > 2, reply.body());
    }

    @Test
    void every_route_of_the_tables_is_served() {
        Set<String> served = RunningScalepan.routes().stream()
                .map(route -> route.method() + " " + route.path())
                .collect(Collectors.toCollection(TreeSet::new));
        List<String> unknown = new ArrayList<>();
        int found = 0;
        for (Path document : List.of(Documents.README, Documents.guide("questions"), Documents.guide("operating"))) {
            for (String code : firstCells(Documents.read(document))) {
                String route = code.replaceFirst("\\?.*", "");
                String named = route.startsWith("/") ? "GET " + route : route;
                if (!named.matches("(GET|POST) /.*")) {
                    continue;
                }
                found++;
                if (!served.contains(named)) {
                    unknown.add(document + ": " + code);
                }
            }
        }
        assertEquals(List.of(), unknown);
        assertTrue(found > 40, found + " routes");
    }

    @Test
    void every_parameter_of_the_table_is_known_to_a_route() {
        Set<String> known = RunningScalepan.routes().stream()
                .flatMap(route -> route.parameters().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        String questions = Documents.read(Documents.guide("questions"));
        String table = questions.substring(questions.indexOf("| parameter |"), questions.indexOf("| question |"));
        List<String> named = firstCells(table);

        assertTrue(named.size() > 20, named::toString);
        assertEquals(
                List.of(), named.stream().filter(name -> !known.contains(name)).toList());
    }

    private static List<String> firstCells(String text) {
        List<String> codes = new ArrayList<>();
        FIRST_CELL
                .matcher(text)
                .results()
                .forEach(cell -> CODE.matcher(cell.group(1)).results().forEach(code -> codes.add(code.group(1))));
        return codes;
    }

    /** Links between files; {@link GuidePagesTest} follows them between served pages. */
    @Test
    void every_link_of_a_document_leads_somewhere_on_disk() {
        List<String> astray = new ArrayList<>();
        for (Path document : Documents.all()) {
            Matcher link = LINK.matcher(Documents.read(document));
            while (link.find()) {
                String target = link.group(1);
                if (target.startsWith("http")) {
                    continue;
                }
                Path file = document.resolveSibling(target.replaceFirst("#.*", ""));
                if (!Files.exists(file)) {
                    astray.add(document + ": " + target);
                }
            }
        }
        assertEquals(List.of(), astray);
    }

    @Test
    void the_program_in_python_prints_the_table_that_the_service_gives(@TempDir Path folder) throws Exception {
        RealClients.skipUnless(RealClients.runs("python3", "--version"), "python3 is not installed");
        Matcher program = Pattern.compile("```python\n(.*?)```", Pattern.DOTALL)
                .matcher(Documents.read(Documents.guide("clients")));
        assertTrue(program.find(), "the guide has a program");
        Path file = folder.resolve("ask.py");
        Files.writeString(
                file,
                program.group(1)
                        .replace(Documents.SERVICE, RunningScalepan.uri("").toString()));

        String printed = printed("python3", file.toString());

        String table = Reply.to("/v1/table?products=mealworm,chicken,beef&indicators=ghg&stats=median,low,high,studies")
                .body()
                .lines()
                .skip(1)
                .map(row -> row.split(","))
                .map(cells -> String.join(" ", cells[0], cells[6], cells[7], cells[8], cells[9]))
                .collect(Collectors.joining("\n"));
        assertEquals(table, printed.strip());
    }

    private static String printed(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "the program ends");
        return printed;
    }
}
