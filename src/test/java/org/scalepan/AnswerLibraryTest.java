package org.scalepan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.web.RunningScalepan;

/** The library used in another program gives the answers of the service. The farms are invented. */
class AnswerLibraryTest {
    private static final AnswerLibrary LIBRARY = AnswerLibrary.bundled();
    private static final String FARM =
            "{\"kind\":\"insects\",\"name\":\"a\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":180},"
                    + "\"feed\":[{\"ingredient\":\"wheat-bran\",\"kg\":400,\"burden\":\"mass\"}]}";
    private static final String HERD = "{\"kind\":\"herd\",\"animals\":\"other-cattle\",\"heads\":9,"
            + "\"yield\":{\"live_kg\":900},\"climate\":\"tropical-wet\"}";

    private static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(text, e);
        }
    }

    private static String posted(String type, String address, String body) {
        return RunningScalepan.given()
                .contentType(type)
                .body(body.getBytes(StandardCharsets.UTF_8))
                .post(address)
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    @Test
    void a_line_of_json_is_answered_with_the_bytes_of_the_service_but_for_its_name() {
        List<String> lines = List.of(FARM, HERD, "{}", "{broken", "{\"kind\":\"insects\",\"product\":\"mealwurm\"}");
        List<String> service = posted(
                        "application/x-ndjson",
                        "/v1/footprints?per=kg-protein&indicators=ghg,land&detail=yes",
                        String.join("\n", lines))
                .lines()
                .toList();
        RowQuestion question = LIBRARY.rows(Map.of("per", "kg-protein", "indicators", "ghg,land", "detail", "yes"));

        for (int i = 0; i < lines.size(); i++) {
            String ours = question.answer("r" + (i + 1), lines.get(i)).json();
            assertEquals(service.get(i), ours.replace("{\"id\":\"r" + (i + 1) + "\"", "{\"row\":" + (i + 1)));
        }
    }

    @Test
    void a_row_of_a_table_is_the_line_of_the_service_with_its_id_in_place_of_the_number() {
        String template =
                RunningScalepan.given().get("/v1/footprints/template.csv").asString() + "insects,too short\r\n";
        List<String> sent = template.lines().toList();
        List<String> service =
                posted("text/csv", "/v1/footprints", template).lines().toList();
        RowQuestion question = LIBRARY.rows(Map.of());
        RowTable table = question.tableOfLines("id," + sent.get(0), "id");

        assertEquals(service.get(0), question.csvHeader("row"));
        for (int i = 1; i < sent.size(); i++) {
            RowAnswer answer = table.answerLine("r" + i + "," + sent.get(i)).orElseThrow();
            assertEquals("r" + service.get(i), answer.csvLine());
            assertEquals("r" + i, answer.id());
            List<String> cells = rows(service.get(i)).get(0);
            assertEquals(cells.subList(1, cells.size()), answer.cells());
        }
        assertTrue(table.answerLine("").isEmpty());
    }

    @Test
    void the_id_of_a_row_may_stand_among_its_records_and_may_be_its_name() {
        RowQuestion question = LIBRARY.rows(Map.of("indicators", "ghg"));
        String named = FARM.replace("{\"kind\"", "{\"id\":17,\"kind\"");

        assertEquals(
                question.answer("17", FARM).json(),
                question.answerLine("id", named).json());
        assertEquals(
                question.answer("a", FARM).json(),
                question.answerLine("name", FARM).json());
        assertEquals(
                question.answer("", "{broken").json(),
                question.answerLine("id", "{broken").json());
        RowTable table = question.tableOfLines("kind,name,product,harvest.kg_per_year", "name");
        RowAnswer answer = table.answerLine("insects,a,mealworm,180").orElseThrow();
        assertEquals("a", answer.id());
        assertTrue(answer.csvLine().startsWith("a,a,mealworm,"), answer.csvLine());
        RefusedInput without = assertThrows(RefusedInput.class, () -> question.tableOfLines("kind,name", "id"));
        assertEquals(List.of("no column is called id, which is to hold the id of the row"), without.errors());
    }

    private static List<List<String>> rows(String csv) {
        List<List<String>> rows = new ArrayList<>();
        CsvReader.builder().ofCsvRecord(csv).forEach((CsvRecord record) -> rows.add(record.getFields()));
        return rows;
    }

    @Test
    void figures_are_the_numbers_of_the_line_and_a_refused_row_has_errors_instead() {
        RowAnswer good = LIBRARY.rows(Map.of("indicators", "ghg")).answer("17", FARM);
        JsonNode line = json(good.json());
        RowFigure figure = good.figures().get(0);

        assertEquals("17", good.id());
        assertEquals("ok", good.status());
        assertEquals(
                JsonAt.number(line, "/footprints/0/value"),
                figure.value().getAsDouble(),
                1e-6 * figure.value().getAsDouble());
        assertTrue(figure.low().getAsDouble() < figure.high().getAsDouble());
        assertEquals(List.of(), good.errors());

        RowAnswer bad = LIBRARY.rows(Map.of()).answer("18", "{\"kind\": \"insect\"}");
        assertEquals("wrong", bad.status());
        assertEquals(List.of(), bad.figures());
        assertEquals("/kind", bad.errors().get(0).field());
        assertTrue(
                bad.errors().get(0).message().contains("did you mean insects?"),
                bad.errors().toString());
    }

    @Test
    void a_question_or_a_column_that_cannot_be_understood_is_refused_at_once() {
        RefusedInput parameter = assertThrows(RefusedInput.class, () -> LIBRARY.rows(Map.of("indicator", "ghg")));
        assertEquals(List.of("unknown parameter \"indicator\": did you mean indicators?"), parameter.errors());
        RefusedInput unit = assertThrows(RefusedInput.class, () -> LIBRARY.rows(Map.of("per", "kg-protien")));
        assertEquals(1, unit.errors().size(), unit.errors().toString());
        RowQuestion question = LIBRARY.rows(Map.of());
        RefusedInput column =
                assertThrows(RefusedInput.class, () -> question.table(List.of("kind", "kinds", "id"), "id"));
        assertTrue(
                column.errors().get(0).contains("unknown column \"kinds\""),
                column.errors().toString());
    }

    @Test
    void a_comparison_has_the_figures_of_the_service() {
        JsonNode service = json(RunningScalepan.given()
                .get("/v1/comparison?products=mealworm,chicken&against=beef&per=kg-protein")
                .asString());
        List<ComparedFigure> figures =
                LIBRARY.compare(Map.of("products", "mealworm,chicken", "against", "beef", "per", "kg-protein"));

        assertEquals(
                List.of("beef", "mealworm", "chicken"),
                figures.stream().map(ComparedFigure::product).toList());
        ComparedFigure mealworm = figures.get(1);
        double median = JsonAt.number(service, "/items/0/footprint/median");
        assertEquals(median, mealworm.median().getAsDouble(), 1e-6 * median);
        double ratio = JsonAt.number(service, "/items/0/times_less/median");
        assertEquals(ratio, mealworm.timesLess().getAsDouble(), 1e-6 * ratio);
        assertTrue(figures.get(0).timesLess().isEmpty());
    }

    @Test
    void rows_of_ones_own_from_a_folder_and_from_a_zip_file_give_the_same_digest(@TempDir Path folder)
            throws IOException {
        Path own = Files.createDirectory(folder.resolve("own"));
        String bundled = read("results.csv");
        Files.writeString(
                own.resolve("results.csv"),
                bundled.lines()
                        .limit(2)
                        .reduce("", (all, line) -> all + line + "\n")
                        .replaceFirst("\n([^,]+),", "\nmy-own-row,"));
        Path zip = folder.resolve("own.zip");
        try (OutputStream out = Files.newOutputStream(zip);
                ZipOutputStream files = new ZipOutputStream(out)) {
            files.putNextEntry(new ZipEntry("results.csv"));
            files.write(Files.readAllBytes(own.resolve("results.csv")));
        }

        AnswerLibrary ofFolder = AnswerLibrary.with(own);
        assertTrue(ofFolder.version().endsWith("+own"));
        assertNotEquals(LIBRARY.digest(), ofFolder.digest());
        assertEquals(ofFolder.digest(), AnswerLibrary.with(zip).digest());

        Files.writeString(own.resolve("results.csv"), "id\nx\n");
        RefusedInput broken = assertThrows(RefusedInput.class, () -> AnswerLibrary.with(own));
        assertFalse(broken.errors().isEmpty());
    }

    private static String read(String table) throws IOException {
        return Files.readString(Path.of("factors", table));
    }
}
