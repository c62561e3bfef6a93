package org.scalepan.web.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** Rows of many farms in which numbers are ranges. The records are invented. */
class UncertainRowsTest {
    private static final String PATH = "/v1/footprints?per=kg-live&indicators=feed";
    private static final String HEADER =
            "kind,name,product,harvest.kg_per_year,feed.1.ingredient,feed.1.kg,feed.1.burden,year\r\n";
    private static final String SHED = "insects,a shed,mealworm,200,wheat-bran,400..900,mass,\r\n";
    private static final String LOFT = "insects,a loft,mealworm,150..180..220,wheat-bran,700,mass,\r\n";
    private static final String KNOWN = "insects,a barn,mealworm,200,wheat-bran,600,mass,\r\n";

    private static Reply csv(String question, String rows) {
        return Reply.to(question, Map.of("Content-Type", "text/csv"), Optional.of(rows));
    }

    private static List<NamedCsvRecord> rows(Reply reply) {
        assertEquals(200, reply.status(), reply.body());
        return CsvReader.builder().ofNamedCsvRecord(reply.body()).stream().toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "&draws=1000"})
    void a_table_row_and_a_json_line_with_a_range_give_the_same_figure(String draws) throws Exception {
        NamedCsvRecord row = rows(csv(PATH + draws, HEADER + SHED)).get(0);
        String line = """
                {"kind": "insects", "name": "a shed", "product": "mealworm", "harvest": {"kg_per_year": 200},
                 "feed": [{"ingredient": "wheat-bran", "kg": [400, 900], "burden": "mass"}]}""".replace("\n", "");
        JsonNode answer = new JsonMapper()
                .readTree(Reply.to(PATH + draws, Map.of("Content-Type", "application/x-ndjson"), Optional.of(line))
                        .body());

        assertEquals(JsonAt.number(answer, "/footprints/0/value"), Double.parseDouble(row.getField("feed")));
        assertEquals(JsonAt.number(answer, "/footprints/0/low"), Double.parseDouble(row.getField("feed_low")));
        assertEquals(3, Double.parseDouble(row.getField("feed")), 0.01, "kg feed per kg live");
        assertTrue(Double.parseDouble(row.getField("feed_low")) < 2.2);
    }

    /** What is drawn for a record depends on the name of the farm and not on the row that it stands in. */
    @Test
    void the_order_of_rows_does_not_matter() {
        String one = csv(PATH + "&draws=1000", HEADER + SHED + KNOWN + LOFT).body();
        String other = csv(PATH + "&draws=1000", HEADER + LOFT + SHED + KNOWN).body();

        for (String name : List.of("a shed", "a loft", "a barn")) {
            assertEquals(figures(one, name), figures(other, name), name);
        }
    }

    private static List<String> figures(String body, String name) {
        return CsvReader.builder().ofNamedCsvRecord(body).stream()
                .filter(row -> row.getField("name").equals(name))
                .findFirst()
                .map(row -> List.of(row.getField("feed"), row.getField("feed_low"), row.getField("feed_high")))
                .orElseThrow();
    }

    @Test
    void ranges_are_read_with_the_decimal_sign_of_the_table() {
        String semicolons = (HEADER + SHED).replace(',', ';').replace("400..900", "400,5..899,5");

        NamedCsvRecord row = CsvReader.builder()
                .fieldSeparator(';')
                .ofNamedCsvRecord(csv(PATH + "&delim=;&decimal=,", semicolons).body())
                .stream()
                .findFirst()
                .orElseThrow();
        assertEquals(
                Math.sqrt(400.5 * 899.5) / 200,
                Double.parseDouble(row.getField("feed").replace(',', '.')),
                1e-4,
                "kg feed per kg live");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "feed.1.kg | 900..400 | kg must rise from low to high",
                "feed.1.kg | 400...900 | feed.1.kg must be a number such as 12.5, or a range such as 400..600 or 400..500..600",
                "feed.1.kg | 1..2..3..4 | feed.1.kg must be a number such as 12.5, or a range such as 400..600",
                "feed.1.kg | 400.. | feed.1.kg must be a number such as 12.5, or a range such as",
                "feed.1.kg | some..more | feed.1.kg must be a number such as 12.5, or a range such as",
                "feed.1.kg | -5..5 | kg must be a number from 0 to 1000000000000, or a range of such",
                "year | 2020..2022 | year must be a number such as 12.5",
            })
    void a_wrong_range_is_told_with_its_row_and_column(String column, String cell, String message) {
        String row = column.equals("year") ? SHED.replace("mass,", "mass," + cell) : SHED.replace("400..900", cell);
        NamedCsvRecord answer = rows(csv(PATH, HEADER + KNOWN + row)).get(1);

        assertEquals("wrong", answer.getField("status"), answer.toString());
        assertTrue(answer.getFields().stream().anyMatch(text -> text.contains(column)), answer.toString());
        assertTrue(answer.getFields().stream().anyMatch(text -> text.contains(message)), answer.toString());
    }
}
