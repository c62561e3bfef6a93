package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.JsonAt;
import org.scalepan.sheet.ExcelFile;
import org.scalepan.web.RecordsSent;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** Workbooks of answers, opened by a real LibreOffice and saved as CSV by it: every figure must equal that of the JSON answer. */
class LiveWorkbookIT {
    @TempDir
    Path folder;

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private Path workbook(HttpRequest request) throws IOException, InterruptedException {
        HttpResponse<InputStream> response = CLIENT.send(request, HttpResponse.BodyHandlers.ofInputStream());
        assertEquals(200, response.statusCode());
        assertEquals(
                ExcelFile.MEDIA_TYPE,
                response.headers().firstValue("Content-Type").orElse(""));
        assertTrue(response.headers()
                .firstValue("Content-Disposition")
                .orElse("")
                .matches("attachment; filename=\"scalepan-[a-z-]+\\.xlsx\""));
        Path file = folder.resolve("answer.xlsx");
        try (InputStream in = response.body()) {
            Files.copy(in, file);
        }
        return file;
    }

    private List<NamedCsvRecord> csv(String sheet) throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(csvFile(sheet))) {
            return reader.stream().toList();
        }
    }

    /** LibreOffice appends the name of the sheet to that of the file. */
    private Path csvFile(String sheet) {
        return folder.resolve("answer-" + sheet + ".csv");
    }

    private Office converting(Path workbook, String locale, List<String> sheets) {
        Office office = new Office(folder, locale).open(workbook).read();
        sheets.forEach(sheet -> office.csv(sheet, folder.resolve("answer.csv")));
        return office;
    }

    @Test
    void the_workbook_of_a_comparison_has_the_figures_of_the_json_answer() throws Exception {
        String question = "/v1/comparison?products=mealworm,house-cricket,chicken&against=beef&indicator=ghg";
        URI address = RunningScalepan.uri(question + "&format=xlsx");
        Office.Seen seen = converting(
                        workbook(HttpRequest.newBuilder(address).build()),
                        "en-US",
                        List.of("Results", "In words", "Studies", "References", "Cautions", "Warnings", "Question"))
                .run()
                .get(0);
        JsonNode answer = Reply.to(question).json();

        assertEquals(List.of(), seen.errors());
        List<NamedCsvRecord> results = csv("Results");
        assertEquals(4, results.size());
        JsonNode mealworm = answer.path("items").path(0);
        NamedCsvRecord row = results.get(1);
        assertEquals("mealworm", row.getField("Product"));
        assertEquals(
                JsonAt.number(mealworm, "/footprint/median"),
                Double.parseDouble(row.getField("Median (kg CO2e per kg protein)")));
        assertEquals(
                JsonAt.number(mealworm, "/footprint/low"),
                Double.parseDouble(row.getField("Low (kg CO2e per kg protein)")));
        assertEquals(
                JsonAt.number(mealworm, "/times_less/median"),
                Double.parseDouble(row.getField("Times less than the reference (median)")));
        assertEquals(JsonAt.text(mealworm, "/footprint/unit"), row.getField("Unit"));
        assertEquals(JsonAt.text(mealworm, "/sentence"), csv("In words").get(1).getField("The figure in words"));
        assertEquals("kg-protein", row.getField("Per"), "as in the CSV, of published products too");
        assertEquals("farm-gate", row.getField("Up to"));
        assertEquals("ar6-100", row.getField("Warming set"));
        assertEquals(JsonAt.text(mealworm, "/lowest_grade"), row.getField("Lowest grade"));
        assertEquals(String.join("; ", texts(mealworm.path("sources"))), row.getField("Sources"));
        assertEquals(
                JsonAt.number(mealworm, "/footprint/median"), seen.number("Results", "C3"), "a number is a number");
        assertEquals("no-evidence", results.get(2).getField("Status"));
        assertEquals("", results.get(2).getField("Median (kg CO2e per kg protein)"));

        int findings =
                answer.findValues("findings").stream().mapToInt(JsonNode::size).sum();
        assertEquals(findings, csv("Studies").size());
        JsonNode finding = mealworm.path("evidence").path(0).path("findings").path(0);
        NamedCsvRecord study = csv("Studies").stream()
                .filter(record -> record.getField("Result").equals(JsonAt.text(finding, "/result")))
                .findFirst()
                .orElseThrow();
        assertEquals(JsonAt.number(finding, "/published/value"), Double.parseDouble(study.getField("Printed value")));
        assertEquals(JsonAt.text(finding, "/locator"), study.getField("Place in the source"));

        assertEquals(
                texts(answer.path("references"), "text"),
                csv("References").stream()
                        .map(record -> record.getField("Reference"))
                        .toList());
        assertEquals(
                texts(answer.path("cautions"), "text"),
                csv("Cautions").stream()
                        .map(record -> record.getField("Caution"))
                        .toList());
        assertEquals(
                texts(answer.path("warnings"), "text"),
                csv("Warnings").stream()
                        .map(record -> record.getField("Warning"))
                        .toList());
        assertTrue(csv("Question").stream()
                .anyMatch(record -> record.getField("Name").equals("permalink")
                        && record.getField("Value").startsWith("/v1/comparison?format=xlsx&")));
        assertTrue(csv("Question").stream()
                .anyMatch(record -> record.getField("Name").equals("library_digest")
                        && record.getField("Value").equals(RunningScalepan.digest())));
    }

    @Test
    void the_workbook_of_a_farm_never_runs_a_name_that_looks_like_a_formula() throws Exception {
        ObjectNode records = RecordsSent.all().get(1).deepCopy();
        ((ObjectNode) records.path("system")).put("name", "=1+1");
        HttpRequest request = HttpRequest.newBuilder(RunningScalepan.uri("/v1/footprint"))
                .header("Content-Type", "application/json")
                .header("Accept", ExcelFile.MEDIA_TYPE)
                .POST(HttpRequest.BodyPublishers.ofString(records.toString()))
                .build();
        List<String> sheets = List.of("Results", "Parts", "Gaps", "Remarks", "References", "Question");
        Office.Seen seen = converting(workbook(request), "de-DE", sheets).run().get(0);
        JsonNode answer = Reply.to("/v1/footprint", records).json();

        assertEquals(List.of(), seen.errors());
        JsonNode first = answer.path("footprints").path(0);
        NamedCsvRecord row = csv("Results").get(0);
        assertEquals("'=1+1", row.getField("System"));
        assertEquals("ok", row.getField("Status"));
        assertEquals(JsonAt.text(first, "/indicator"), row.getField("Indicator"));
        assertEquals(JsonAt.number(first, "/footprint/median"), seen.number("Results", "C2"));
        int parts = 0;
        for (JsonNode footprint : answer.path("footprints")) {
            parts += footprint.path("by_stage").size()
                    + footprint.path("by_gas").size()
                    + footprint.path("lines").size();
        }
        assertEquals(parts, csv("Parts").size());
        assertEquals(answer.path("gaps").size(), csv("Gaps").size());
        assertEquals(answer.path("references").size(), csv("References").size());
    }

    private static List<String> texts(JsonNode array) {
        return java.util.stream.StreamSupport.stream(array.spliterator(), false)
                .map(text -> JsonAt.text(text, ""))
                .toList();
    }

    private static List<String> texts(JsonNode array, String field) {
        return java.util.stream.StreamSupport.stream(array.spliterator(), false)
                .map(node -> JsonAt.text(node, "/" + field))
                .toList();
    }
}
