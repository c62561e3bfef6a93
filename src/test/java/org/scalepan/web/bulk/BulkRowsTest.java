package org.scalepan.web.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.http.Limits;

/** Bulk requests. The records are invented. */
class BulkRowsTest {
    private static final String PATH = "/v1/footprints?per=kg-protein";
    private static final String HEADER =
            "kind,name,product,harvest.kg_per_year,feed.1.ingredient,feed.1.kg,feed.1.burden\r\n";
    private static final String SHED = "insects,a shed,mealworm,180,wheat-bran,400,mass\r\n";
    private static final String SHED_AS_JSON = """
            {"kind": "insects", "name": "a shed", "product": "mealworm", "harvest": {"kg_per_year": 180},
             "feed": [{"ingredient": "wheat-bran", "kg": 400, "burden": "mass"}]}""".replace("\n", "");

    private static Reply csv(String question, String rows) {
        return Reply.to(question, Map.of("Content-Type", "text/csv"), Optional.of(rows));
    }

    private static List<NamedCsvRecord> rows(Reply reply) {
        assertEquals(200, reply.status(), reply.body());
        return CsvReader.builder().ofNamedCsvRecord(reply.body()).stream().toList();
    }

    private static List<JsonNode> lines(String question, String sent) throws Exception {
        Reply reply = Reply.to(question, Map.of("Content-Type", "application/x-ndjson"), Optional.of(sent));
        assertEquals(200, reply.status(), reply.body());
        List<JsonNode> lines = new ArrayList<>();
        for (String line : reply.body().split("\n")) {
            lines.add(new JsonMapper().readTree(line));
        }
        return lines;
    }

    @Test
    void a_table_row_a_json_line_and_a_single_request_give_a_farm_the_same_figure() throws Exception {
        NamedCsvRecord row = rows(csv(PATH + "&indicators=ghg", HEADER + SHED)).get(0);
        JsonNode line = lines(PATH + "&indicators=ghg", SHED_AS_JSON).get(0);
        Reply alone = Reply.to(
                "/v1/footprint",
                new JsonMapper()
                        .readTree("{\"per\": \"kg-protein\", \"indicators\": [\"ghg\"], \"system\": " + SHED_AS_JSON
                                + "}"));
        JsonNode single = alone.json().path("footprints").path(0).path("first_order");

        assertEquals(
                JsonAt.number(single, "/value"), Double.parseDouble(row.getField("ghg")), "kg CO2e per kg protein");
        assertEquals(JsonAt.number(single, "/low"), Double.parseDouble(row.getField("ghg_low")));
        assertEquals(JsonAt.number(single, "/high"), Double.parseDouble(row.getField("ghg_high")));
        assertEquals(single, figures(line));
    }

    private static JsonNode figures(JsonNode line) {
        var figures = new JsonMapper().createObjectNode();
        JsonNode footprint = line.path("footprints").path(0);
        for (String name : List.of("value", "low", "high")) {
            figures.set(name, footprint.path(name));
        }
        return figures;
    }

    @Test
    void results_come_in_the_order_sent_and_an_invalid_row_is_reported_in_its_place() {
        StringBuilder sent = new StringBuilder(HEADER);
        IntStream.rangeClosed(1, 60)
                .forEach(i -> sent.append(
                        i == 31
                                ? "insects,farm 31,mealworm,-5,wheat-brn,400,mass\r\n"
                                : SHED.replace("a shed", "farm " + i)));

        List<NamedCsvRecord> rows = rows(csv(PATH, sent.toString()));

        assertEquals(60, rows.size());
        for (int i = 1; i <= 60; i++) {
            NamedCsvRecord row = rows.get(i - 1);
            assertEquals(Integer.toString(i), row.getField("row"));
            assertEquals("farm " + i, row.getField("name"));
            assertEquals(i == 31 ? "wrong" : "ok", row.getField("status").replace("partly", "ok"));
        }
        NamedCsvRecord wrong = rows.get(30);
        assertEquals("harvest.kg_per_year; feed.1.ingredient", wrong.getField("column"));
        assertTrue(wrong.getField("message").contains("did you mean wheat-bran"), wrong.getField("message"));
        assertEquals("", wrong.getField("ghg"));
    }

    @Test
    void an_empty_entry_is_skipped_and_an_error_still_names_its_column() {
        String header =
                "kind,product,harvest.kg_per_year,feed.1.ingredient,feed.1.kg,feed.4.ingredient,feed.4.kg,feed.4.burden\n";
        List<NamedCsvRecord> rows = rows(csv(
                PATH,
                header + "insects,mealworm,180,,,wheat-bran,400,mass\ninsects,mealworm,180,,,wheat-bran,-1,mass\n"));

        assertFalse(rows.get(0).getField("ghg").isEmpty());
        assertEquals("feed.4.kg", rows.get(1).getField("column"));
    }

    @Test
    void the_template_can_be_sent_back_as_it_is() {
        List<NamedCsvRecord> rows =
                rows(csv(PATH, Reply.to("/v1/footprints/template.csv").body()));

        assertEquals(5, rows.size());
        rows.forEach(row -> {
            assertTrue(row.getField("name").startsWith("invented"), row.getField("name"));
            assertFalse(row.getField("ghg").isEmpty(), row.getField("message"));
        });
    }

    @Test
    void an_unknown_column_is_refused_before_any_row_with_the_nearest_name() {
        Reply reply = csv(PATH, "kind,harvest.kg_per_yaer\ninsects,3\n");

        assertEquals(400, reply.status());
        assertEquals("harvest.kg_per_year", JsonAt.text(reply.json(), "/errors/0/did_you_mean/0"), reply.body());
    }

    @Test
    void a_repeated_column_is_refused() {
        assertEquals(400, csv(PATH, "kind,kind\ninsects,herd\n").status());
    }

    @Test
    void a_row_with_too_many_or_too_few_cells_is_reported_and_later_rows_are_computed() {
        List<NamedCsvRecord> rows = rows(csv(PATH, HEADER + "insects,short\r\n" + SHED));

        assertEquals("wrong", rows.get(0).getField("status"));
        assertTrue(
                rows.get(0).getField("message").contains("2 cells"), rows.get(0).getField("message"));
        assertFalse(rows.get(1).getField("ghg").isEmpty());
    }

    @Test
    void an_unclosed_quote_ends_the_run_with_a_row_that_reports_it() {
        List<NamedCsvRecord> rows = rows(csv(PATH, HEADER + SHED + "insects,\"open,mealworm,180\r\n" + SHED));

        assertEquals("wrong", rows.get(rows.size() - 1).getField("status"));
    }

    @Test
    void given_an_unreadable_row_then_all_rows_before_it_are_answered_and_none_after() {
        String unclosed = "insects,\"" + "x".repeat(Limits.CELL_CHARACTERS + 1) + "\r\n";

        List<NamedCsvRecord> rows = rows(csv(PATH, HEADER + SHED.repeat(700) + unclosed + SHED.repeat(10)));

        assertEquals(701, rows.size());
        assertEquals("wrong", rows.get(700).getField("status"));
        assertEquals("701", rows.get(700).getField("row"));
        assertFalse(rows.get(699).getField("ghg").isEmpty());
    }

    @Test
    void empty_lines_are_skipped_and_blanks_around_a_cell_are_ignored() {
        List<NamedCsvRecord> rows =
                rows(csv(PATH, "\r\n" + HEADER + "\r\n\r\n" + SHED.replace(",", " , ") + "\r\n" + SHED + "\r\n\r\n"));

        assertEquals(2, rows.size());
        assertEquals("1", rows.get(0).getField("row"));
        assertEquals(rows.get(1).getField("ghg"), rows.get(0).getField("ghg"), "kg CO2e per kg protein");
    }

    @Test
    void a_row_of_more_cells_than_any_table_has_ends_the_run() {
        List<NamedCsvRecord> rows = rows(csv(PATH, HEADER + SHED + ",".repeat(20_000) + "\r\n" + SHED));

        assertEquals(2, rows.size());
        assertEquals("wrong", rows.get(1).getField("status"));
    }

    @Test
    void decimal_commas_are_read_and_written_on_request() {
        String sent = HEADER.replace(',', ';') + SHED.replace(',', ';').replace("180", "180,5");
        Reply reply = csv(PATH + "&delim=%3B&decimal=,", sent);

        assertEquals(200, reply.status(), reply.body());
        assertTrue(reply.body().lines().skip(1).findFirst().orElseThrow().matches(".*;\\d+,\\d+;.*"), reply.body());
        assertTrue(
                csv(PATH + "&delim=%3B&decimal=,", sent.replace("180,5", "180.5"))
                        .body()
                        .contains("wrong"),
                "a dot is no decimal sign there");
    }

    @Test
    void a_malformed_json_line_is_reported_in_its_place() throws Exception {
        List<JsonNode> lines = lines(PATH, SHED_AS_JSON + "\n{\"kind\": \n\n" + SHED_AS_JSON + "\n");

        assertEquals(3, lines.size());
        assertEquals("wrong", JsonAt.text(lines.get(1), "/status"));
        assertEquals(2, JsonAt.integer(lines.get(1), "/row"));
        assertTrue(lines.get(2).path("footprints").isArray());
    }

    @Test
    void with_draws_the_interval_is_near_that_of_propagation_and_the_same_each_time() {
        String question = PATH + "&indicators=ghg&draws=10000";
        Reply first = csv(question, HEADER + SHED);
        NamedCsvRecord drawn = rows(first).get(0);
        NamedCsvRecord propagated =
                rows(csv(PATH + "&indicators=ghg", HEADER + SHED)).get(0);

        assertEquals(first.body(), csv(question, HEADER + SHED).body());
        for (String column : List.of("ghg_low", "ghg_high")) {
            double one = Double.parseDouble(drawn.getField(column));
            double other = Double.parseDouble(propagated.getField(column));
            assertEquals(1, one / other, 0.03, column + " in kg CO2e per kg protein");
        }
    }

    @Test
    void more_than_a_few_draws_for_each_row_are_refused() {
        assertEquals(422, csv(PATH + "&draws=10001", HEADER + SHED).status());
    }

    @Test
    void a_name_that_a_spreadsheet_would_run_is_prefixed_with_an_apostrophe() {
        String name =
                rows(csv(PATH, HEADER + SHED.replace("a shed", "=1+1"))).get(0).getField("name");

        assertEquals("'=1+1", name);
    }

    @Test
    void another_media_type_is_refused_with_those_that_are_right() {
        Reply reply = Reply.to(PATH, Map.of("Content-Type", "text/html"), Optional.of(HEADER + SHED));

        assertEquals(415, reply.status());
        assertTrue(reply.body().contains("text/csv"), reply.body());
    }
}
