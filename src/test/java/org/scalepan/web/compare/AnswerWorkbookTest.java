package org.scalepan.web.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.sheet.ExcelFile;
import org.scalepan.web.RunningScalepan;

/** Every question whose answer people work on in a spreadsheet answers as a workbook. */
class AnswerWorkbookTest {
    private static Map<String, String> parts(HttpRequest.Builder request) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer =
                HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
        assertEquals(200, answer.statusCode(), () -> new String(answer.body(), StandardCharsets.UTF_8));
        assertEquals(
                ExcelFile.MEDIA_TYPE,
                answer.headers().firstValue("Content-Type").orElse(""));
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(answer.body()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }

    private static List<String> sheets(Map<String, String> parts) {
        return Pattern.compile("<sheet name=\"([^\"]*)\"")
                .matcher(parts.getOrDefault("xl/workbook.xml", ""))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /v1/comparison?products=mealworm,house-cricket&against=beef | Results Chart In_words Studies
            /v1/table?products=mealworm,beef&indicators=ghg,land        | Table Chart
            /v1/claim?product=mealworm&reference=beef&times_less=5      | Verdict Bases Out_of_one_paper Why_sources_differ In_circulation
            /v1/claim?text=crickets+have+twice+the+iron+of+beef         | Verdict Contents In_circulation
            /v1/nutrition?products=mealworm,beef                        | Contents Amino_acids Protein_quality Not_measured
            /v1/brief?products=mealworm&against=beef                    | Brief Results Chart In_words Studies
            """)
    void given_a_question_then_its_workbook_has_its_sheets_and_those_of_every_answer(String question, String own)
            throws Exception {
        Map<String, String> parts = parts(HttpRequest.newBuilder(RunningScalepan.uri(question + "&format=xlsx")));

        assertEquals(
                own.replace(' ', ',').replace('_', ' ') + ",Warnings,Cautions,References,Question",
                String.join(",", sheets(parts)));
        assertTrue(
                parts.values().stream().noneMatch(part -> part.contains("<dimension ref=\"A1\"/>")),
                "every sheet has at least its head");
    }

    @Test
    void given_a_programme_then_its_workbook_has_what_is_avoided_as_numbers() throws Exception {
        Map<String, String> parts = parts(HttpRequest.newBuilder(RunningScalepan.uri("/v1/substitution?format=xlsx"))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString("""
                        {"as": "feed", "animal": "poultry", "product": "mealworm:meal", "feed_kg_per_year": 20000,
                         "inclusion_percent": 5, "baseline": [{"product": "fishmeal"}], "displacement_rate": 1, "draws": 1000}""")));

        assertEquals(
                List.of("Programme", "Avoided"), sheets(parts).subList(0, 2), () -> String.join(",", sheets(parts)));
        assertTrue(
                Pattern.compile("<c r=\"F2\" s=\"\\d+\"><v>-?[0-9.]+</v>")
                        .matcher(parts.getOrDefault("xl/worksheets/sheet2.xml", ""))
                        .find(),
                "the median of what is avoided is a number");
    }
}
