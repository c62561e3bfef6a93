package org.scalepan.web.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Limits;

/** One byte that is not UTF-8, as an older spreadsheet writes it, is told in its own row, and all others are answered. */
class WrongBytesTest {
    private static final String PATH = "/v1/footprints?indicators=ghg";
    private static final String HEADER =
            "kind,name,region,product,harvest.kg_per_year,feed.1.ingredient,feed.1.kg,feed.1.burden\n";
    private static final String SHED = "insects,shed,portugal,mealworm,180,wheat-bran,400,mass\n";
    /** A name in Windows-1252. */
    private static final String WRONG = "insects,Caf\u00e9,portugal,mealworm,180,wheat-bran,400,mass\n";

    private static final String LINE =
            "{\"kind\":\"insects\",\"name\":\"shed\",\"product\":\"mealworm\",\"harvest\":{\"kg_per_year\":180}}\n";

    private static Reply sent(String type, String windows1252) {
        return Reply.to(PATH, type, windows1252.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static List<NamedCsvRecord> rows(String windows1252) {
        Reply reply = sent("text/csv", windows1252);
        assertEquals(200, reply.status(), reply.body());
        return CsvReader.builder().ofNamedCsvRecord(reply.body()).stream().toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 150, 200, 5_000})
    void a_wrong_byte_in_a_table_is_told_in_its_row_and_column(int before) {
        List<NamedCsvRecord> rows = rows(HEADER + SHED.repeat(before) + WRONG + SHED.repeat(3));

        assertEquals(before + 4, rows.size());
        for (NamedCsvRecord row : rows) {
            boolean wrong = row.getField("row").equals(Integer.toString(before + 1));
            assertEquals(wrong ? "wrong" : "ok", row.getField("status"), row::toString);
        }
        assertEquals("name", rows.get(before).getField("column"));
        assertEquals(
                "byte 0xE9 after 3 characters is not UTF-8; save the file as UTF-8",
                rows.get(before).getField("message"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 500})
    void a_wrong_byte_in_json_lines_is_told_in_its_line(int before) throws Exception {
        String wrong = LINE.replace("shed", "Caf\u00e9");
        Reply reply = sent(Answer.NDJSON, LINE.repeat(before) + wrong + LINE.repeat(3));

        assertEquals(200, reply.status(), reply.body());
        List<String> lines = reply.body().lines().toList();
        assertEquals(before + 4, lines.size());
        for (int i = 0; i < lines.size(); i++) {
            JsonNode line = new JsonMapper().readTree(lines.get(i));
            assertEquals(i + 1, JsonAt.integer(line, "/row"));
            assertEquals(i == before, JsonAt.text(line, "/status").equals("wrong"), lines.get(i));
        }
        assertTrue(lines.get(before).contains("byte 0xE9 after 29 characters is not UTF-8"), lines.get(before));
    }

    @Test
    void a_wrong_byte_in_the_header_is_told_with_its_place() {
        Reply reply = sent("text/csv", HEADER.replace("region", "r\u00e9gion") + SHED);

        assertEquals(400, reply.status());
        assertTrue(
                reply.body()
                        .contains("the header, column 3: byte 0xE9 after 1 characters is not UTF-8;"
                                + " save the file as UTF-8"),
                reply.body());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\u00ff", "\u00c3", "\u00c0\u00af", "\u00ed\u00a0\u0080", "\u00f0\u009f\u0090", "\u0080\u0081"})
    void whatever_is_not_utf_8_stays_in_its_row(String bytes) {
        List<NamedCsvRecord> rows =
                rows(HEADER + SHED + SHED.replace("shed", bytes) + SHED + SHED.replace("shed", "a" + bytes));

        assertEquals(
                List.of("ok", "wrong", "ok", "wrong"),
                rows.stream().map(row -> row.getField("status")).toList());
    }

    @Test
    void letters_of_every_length_in_utf_8_are_read_wherever_the_blocks_of_the_reader_end() {
        String name =
                new String("e\u00e9\u20ac\ud83d\udc1b".getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
        List<NamedCsvRecord> rows =
                rows(HEADER + SHED.replace("shed", name.repeat(20)).repeat(1_000));

        assertEquals(
                1_000,
                rows.stream()
                        .filter(row -> row.getField("name").equals("e\u00e9\u20ac\ud83d\udc1b".repeat(20)))
                        .count());
    }

    @Test
    void a_cell_of_the_longest_length_is_read_and_a_longer_one_is_an_error_of_its_row() {
        String longest = " ".repeat(Limits.CELL_CHARACTERS - 4) + "shed";
        List<NamedCsvRecord> rows =
                rows(HEADER + SHED + SHED.replace("shed", longest) + SHED.replace("shed", " " + longest) + SHED);

        assertEquals(
                List.of("ok", "ok", "wrong", "ok"),
                rows.stream().map(row -> row.getField("status")).toList());
        assertEquals("this cell has more than 100000 characters", rows.get(2).getField("message"));
    }
}
