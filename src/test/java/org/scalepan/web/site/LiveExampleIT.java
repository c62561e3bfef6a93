package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/**
 * The examples in a real LibreOffice: open the file, read, change the name of a product, read again. Every number must equal that of the
 * JSON answer, whatever the decimal sign of the spreadsheet.
 */
class LiveExampleIT {
    private static final double SEVEN_DIGITS = 1e-6;
    private static final String FIGURES = "Figures";

    @TempDir
    Path folder;

    private Path example(String name) throws IOException {
        Path file = folder.resolve(name);
        try (InputStream in = RunningScalepan.uri("/examples/" + name).toURL().openStream()) {
            Files.copy(in, file);
        }
        return file;
    }

    private static JsonNode compared(String product) {
        return Reply.to("/v1/comparison?products=" + product + "&against=beef").json();
    }

    private static void assertRowShows(Office.Seen seen, int row, String product) {
        JsonNode answer = compared(product);
        JsonNode item = answer.path("items").path(0);
        JsonNode footprint = item.path("footprint");
        JsonNode ratio = item.path("times_less");
        assertClose(footprint.path("median"), seen, "B" + row);
        assertClose(footprint.path("low"), seen, "C" + row);
        assertClose(footprint.path("high"), seen, "D" + row);
        assertEquals(JsonAt.text(footprint, "/unit"), seen.text(FIGURES, "E" + row));
        assertClose(item.path("studies"), seen, "F" + row);
        if (product.equals("beef")) {
            // The reference has no ratio to itself.
            assertEquals("", seen.text(FIGURES, "G" + row));
        } else {
            assertClose(ratio.path("median"), seen, "G" + row);
            assertClose(ratio.path("low"), seen, "H" + row);
            assertClose(ratio.path("high"), seen, "I" + row);
        }
        // The cell also has the figure with land-use change, where that is another.
        String said = seen.text(FIGURES, "J" + row);
        assertTrue(said.startsWith(JsonAt.text(item, "/sentence")), said);
        String labels = seen.text(FIGURES, "K" + row);
        String references = seen.text(FIGURES, "L" + row);
        item.path("evidence")
                .forEach(study -> study.path("findings")
                        .forEach(finding -> answer.path("references").forEach(reference -> {
                            if (reference.path("id").equals(finding.path("source"))) {
                                assertTrue(labels.contains(JsonAt.text(reference, "/label")), labels);
                                assertTrue(references.contains(JsonAt.text(reference, "/text")), references);
                            }
                        })));
    }

    private static void assertClose(JsonNode expected, Office.Seen seen, String cell) {
        assertTrue(expected.isNumber(), () -> "the JSON answer has no number for " + cell);
        assertEquals(
                JsonAt.number(expected, ""),
                seen.number(FIGURES, cell),
                Math.abs(JsonAt.number(expected, "")) * SEVEN_DIGITS,
                cell);
    }

    @ParameterizedTest
    @CsvSource({
        "scalepan.ods, en-US",
        "scalepan.ods, de-DE",
        "scalepan.ods, fr-FR",
        "scalepan.xlsx, en-US",
        "scalepan.xlsx, de-DE"
    })
    void a_changed_name_in_the_example_changes_number_interval_and_citation(String file, String locale)
            throws Exception {
        Office office = new Office(folder, locale).open(example(file));
        if (file.endsWith(".xlsx")) {
            office.again();
        }
        List<Office.Seen> seen = office.formula("N1", "=VALUE(\"1,5\")")
                .read()
                .text(FIGURES, "A11", "pork")
                .text(FIGURES, "A12", "chiken")
                // As the spreadsheet's autocorrection writes it.
                .text(FIGURES, "A17", "Milk")
                .read()
                .text(FIGURES, "B4", "land")
                .text(FIGURES, "B5", "kg-edible")
                .read()
                .run();
        Office.Seen before = seen.get(0);
        Office.Seen after = seen.get(1);

        boolean decimalComma = !locale.equals("en-US");
        if (decimalComma) {
            assertEquals(1.5, before.number(FIGURES, "N1"), "LibreOffice does not run with decimal commas");
        }
        assertRowShows(before, 11, "mealworm");
        assertRowShows(before, 12, "chicken");
        assertRowShows(before, 14, "beef");
        assertEquals("#unknown product \"mealwurm\": did you mean mealworm?", before.text(FIGURES, "J15"));
        assertEquals("", before.text(FIGURES, "B15"));
        assertEquals(
                "#no evidence: no published ghg result of silkworm pupa is in this library; evidence=modelled gives a modelled"
                        + " figure: /v1/value/ghg/silkworm-pupae?stat=text&on_error=200&per=kg-protein&evidence=modelled&bounds=yes",
                before.text(FIGURES, "J16"));
        assertEquals("", before.text(FIGURES, "J17"), "an empty line asks nothing");

        assertRowShows(after, 11, "pork");
        for (String column : List.of("B", "C", "D", "K", "J", "L")) {
            assertNotEquals(before.text(FIGURES, column + 11), after.text(FIGURES, column + 11), column);
        }
        assertEquals("#unknown product \"chiken\": did you mean chicken?", after.text(FIGURES, "J12"));
        for (String column : List.of("B", "C", "D", "E", "F", "G", "K", "L")) {
            assertEquals("", after.text(FIGURES, column + 12), "a wrong name leaves no number behind in " + column);
        }
        assertRowShows(after, 17, "milk");

        assertEquals("m2*yr per kg edible product", seen.get(2).text(FIGURES, "E14"));
        assertEquals(
                Reply.to("/v1/value/land/beef?per=kg-edible").body(),
                java.math.BigDecimal.valueOf(seen.get(2).number(FIGURES, "B14")).toPlainString());
        if (!decimalComma) {
            // The probe above is itself an error where the decimal sign is a point.
            assertEquals(1, before.errors().size(), before.errors().toString());
        } else {
            seen.forEach(one -> assertEquals(List.of(), one.errors()));
        }
    }

    @ParameterizedTest
    @CsvSource({"scalepan.ods, en-US", "scalepan.xlsx, de-DE"})
    void the_table_that_one_cell_fetches_is_the_table_of_the_json_answer(String file, String locale) throws Exception {
        Office office = new Office(folder, locale).open(example(file));
        if (file.endsWith(".xlsx")) {
            office.again();
        }
        List<Office.Seen> seen =
                office.read().text("Table", "B3", "mealworm,tofuu").read().run();

        JsonNode rows = Reply.to("/v1/table?products=mealworm,chicken,pork,beef&indicators=ghg,land&format=json")
                .json()
                .path("rows");
        assertEquals(8, rows.size());
        int row = 10;
        for (JsonNode expected : rows) {
            assertEquals(JsonAt.text(expected, "/product"), seen.get(0).text("Table", "B" + row));
            assertEquals(JsonAt.text(expected, "/indicator"), seen.get(0).text("Table", "C" + row));
            assertEquals(JsonAt.text(expected, "/unit"), seen.get(0).text("Table", "D" + row));
            for (var cell : Map.of("G", "median", "H", "low", "I", "high", "J", "studies")
                    .entrySet()) {
                double value = JsonAt.number(expected, "/" + cell.getValue());
                assertEquals(value, seen.get(0).number("Table", cell.getKey() + row), value * SEVEN_DIGITS);
            }
            row++;
        }
        assertEquals("", seen.get(0).text("Table", "B" + row), "the lines below the table are empty");
        assertEquals("", seen.get(0).text("Table", "G" + row));
        assertTrue(
                seen.get(1).text("Table", "B7").startsWith("#unknown product \"tofuu\": did you mean tofu"),
                seen.get(1).text("Table", "B7"));
        assertEquals("", seen.get(1).text("Table", "G10"));
    }

    @Test
    void formulas_that_the_page_gives_work_when_pasted_into_a_blank_sheet_with_decimal_commas() throws Exception {
        String page = RunningScalepan.uri("/examples#product=pork&indicator=land&against=mealworm")
                .toString();
        Map<String, String> given = Browser.codes(page, ";");
        Office office = new Office(folder, "de-DE").blank();
        List<String> cells =
                List.of("number", "low", "high", "ratio", "field", "words", "unit", "sources", "references");
        for (String cell : cells) {
            office.formula("A" + (cells.indexOf(cell) + 1), given.get(cell));
        }
        Office.Seen seen = office.read().run().get(0);
        String sheet = seen.names().findFirst().orElseThrow();

        JsonNode answer = Reply.to("/v1/comparison?products=pork&indicator=land&against=mealworm")
                .json();
        JsonNode item = answer.path("items").path(0);
        for (String stat : List.of("median", "low", "high")) {
            double expected = JsonAt.number(item, "/footprint/" + stat);
            String cell = "A" + (List.of("median", "low", "high").indexOf(stat) + 1);
            assertEquals(expected, seen.number(sheet, cell), expected * SEVEN_DIGITS, stat);
        }
        double ratio = JsonAt.number(item, "/times_less/median");
        assertEquals(ratio, seen.number(sheet, "A4"), ratio * SEVEN_DIGITS);
        assertEquals(
                seen.number(sheet, "A1"), seen.number(sheet, "A5"), "a field of the table is the number of the cell");
        assertEquals(JsonAt.text(item, "/sentence"), seen.text(sheet, "A6"));
        assertEquals(JsonAt.text(item, "/footprint/unit"), seen.text(sheet, "A7"));
        assertEquals(Reply.to("/v1/value/land/pork?stat=sources").body(), seen.text(sheet, "A8"));
        assertEquals(Reply.to("/v1/value/land/pork?stat=references").body(), seen.text(sheet, "A9"));
        assertEquals(List.of(), seen.errors());
    }

    @Test
    void without_scripts_the_page_gives_the_formulas_of_its_first_question() {
        for (String separator : List.of(",", ";")) {
            Map<String, String> written = Browser.codes(Reply.to("/examples"), separator);
            Map<String, String> drawn =
                    Browser.codes(RunningScalepan.uri("/examples").toString(), separator);
            drawn.replaceAll(
                    (name, formula) -> formula.replace(RunningScalepan.uri("").toString(), "http://127.0.0.1:8080"));
            assertEquals(drawn, written);
        }
    }

    @Test
    void a_refusal_without_the_wish_for_a_hint_is_an_error_of_the_spreadsheet_and_never_a_number() throws Exception {
        String service = RunningScalepan.uri("").toString();
        Office.Seen seen = new Office(folder, "en-US")
                .blank()
                .formula("A1", "=NUMBERVALUE(WEBSERVICE(\"" + service + "/v1/value/ghg/mealwurm\");\".\";\",\")")
                .formula("A2", "=WEBSERVICE(\"" + service + "/v1/value/ghg/mealwurm?on_error=200\")")
                .read()
                .run()
                .get(0);

        assertEquals(1, seen.errors().size(), seen.errors().toString());
        assertEquals(
                "#unknown product \"mealwurm\": did you mean mealworm?",
                seen.text(seen.names().findFirst().orElseThrow(), "A2"));
    }
}
