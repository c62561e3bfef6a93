package org.scalepan.web.render;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.exchange.text.Csv;
import org.scalepan.factors.PublishedResult;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.server.RawExchange;

/** CSV (RFC 4180) in the requested style, safe to open in a spreadsheet. */
class CsvTest {
    private static final String TABLE = "/v1/table?products=mealworm,beef";

    private static String csv(String question) {
        Response reply = RunningScalepan.given().get(question);
        assertEquals(200, reply.statusCode(), question);
        return new String(reply.asByteArray(), StandardCharsets.UTF_8);
    }

    private static List<CsvRecord> records(String csv, char separator) {
        return CsvReader.builder().fieldSeparator(separator).ofCsvRecord(csv).stream()
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                TABLE,
                "/v1/results?format=csv",
                "/v1/products?format=csv",
                "/v1/claims?format=csv",
                "/v1/composition?format=csv",
                "/v1/comparison?products=mealworm,turkey&against=beef&format=csv"
            })
    void every_line_ends_in_cr_lf_and_has_as_many_cells_as_the_header(String question) {
        String csv = csv(question);
        List<CsvRecord> records = records(csv, ',');

        assertTrue(csv.endsWith("\r\n"));
        assertFalse(csv.replace("\r\n", "").contains("\r"), "a CR without LF");
        assertTrue(records.size() > 1);
        records.forEach(record ->
                assertEquals(records.get(0).getFieldCount(), record.getFieldCount(), () -> record.toString()));
    }

    @Test
    void the_media_type_says_that_there_is_a_header() {
        RunningScalepan.given()
                .get(TABLE)
                .then()
                // RFC 4180, section 3: the parameters charset and header of text/csv.
                .contentType(containsString("charset=utf-8"))
                .contentType(containsString("header=present"));
    }

    @Test
    void a_cell_with_a_separator_or_a_quote_is_quoted() {
        List<CsvRecord> claims = records(csv("/v1/claims?format=csv"), ',');
        Map<String, String> printed = new HashMap<>();
        claims.forEach(record -> printed.put(record.getField(0), record.getField(1)));

        assertEquals(
                RunningScalepan.library().table("claims").rows().stream()
                        .map(row -> row.text("claim"))
                        .toList(),
                RunningScalepan.library().table("claims").rows().stream()
                        .map(row -> printed.get(row.text("id")))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({"';', ';'", "tab, '\t'", "'|', '|'", "%3B, ';'", "%7C, '|'"})
    void another_separator_may_be_requested(String asked, char separator) {
        String plain = csv(TABLE);
        String other = RawExchange.send(
                        "GET " + TABLE + "&delim=" + asked.replace("|", "%7C") + " HTTP/1.1",
                        "Host: localhost",
                        "Connection: close")
                .body();

        assertEquals(
                records(plain, ',').stream().map(CsvRecord::getFields).toList(),
                records(other, separator).stream().map(CsvRecord::getFields).toList());
    }

    @Test
    void a_decimal_comma_is_used_in_numbers_only() {
        List<String> dots = records(csv(TABLE), ',').get(1).getFields();
        List<String> commas =
                records(csv(TABLE + "&delim=;&decimal=,"), ';').get(1).getFields();

        assertEquals(
                dots.stream()
                        .map(cell -> cell.matches("\\d+\\.\\d+") ? cell.replace('.', ',') : cell)
                        .toList(),
                commas);
        assertTrue(commas.stream().anyMatch(cell -> cell.matches("\\d+,\\d+")), commas.toString());
    }

    @Test
    void a_decimal_comma_beside_a_separating_comma_is_refused() {
        RunningScalepan.given()
                .get(TABLE + "&decimal=,")
                .then()
                .statusCode(400)
                .body("errors[0].parameter", equalTo("decimal"))
                .body("errors[0].message", containsString("delim=;"));
    }

    @Test
    void a_byte_order_mark_is_written_only_on_request() {
        assertEquals('\uFEFF', csv(TABLE + "&bom=1").charAt(0));
        assertEquals(csv(TABLE), csv(TABLE + "&bom=1").substring(1));
        assertEquals(csv(TABLE), csv(TABLE + "&bom=0"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"delim=:", "delim=,,", "decimal=x", "bom=yes", "bom=2"})
    void another_style_is_refused(String style) {
        RunningScalepan.given().get(TABLE + "&" + style).then().statusCode(400);
    }

    /** The list of leading characters is that of OWASP, "CSV injection": =, +, -, @, tab, carriage return. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx", " =1+1", "  @x"})
    void a_text_that_a_spreadsheet_would_run_is_prefixed_with_an_apostrophe(String text) {
        assertEquals("'" + text, cell(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "beef", "a=b", "1-2", "kg CO2e", " beef", "mealworm, dried", "say \"so\""})
    void any_other_text_is_written_unchanged(String text) {
        assertEquals(text, cell(text));
    }

    private static String cell(String text) {
        Csv csv = new Csv(new Csv.CsvStyle(',', '.', false), List.of("text", "more"));
        csv.line().text(text).text("x").end();
        return records(csv.text(), ',').get(1).getField(0);
    }

    @Test
    void a_negative_number_is_a_number_and_not_a_formula() {
        Csv csv = new Csv(new Csv.CsvStyle(',', '.', false), List.of("value"));
        csv.line().number(-0.25).end();

        assertEquals("value\r\n-0.25\r\n", csv.text());
    }

    @Test
    void a_published_number_keeps_every_digit_and_a_computed_one_has_seven() {
        Csv csv = new Csv(new Csv.CsvStyle(',', '.', false), List.of("published", "computed"));
        csv.line().published(1234.56789012).number(1234.56789012).end();

        assertEquals("published,computed\r\n1234.56789012,1234.568\r\n", csv.text());
    }

    @Test
    void no_number_is_written_with_an_exponent() {
        Csv csv = new Csv(new Csv.CsvStyle(',', '.', false), List.of("a", "b"));
        csv.line().published(1.5e-9).number(2e12).end();

        assertEquals("a,b\r\n0.0000000015,2000000000000\r\n", csv.text());
    }

    @Test
    void the_published_rows_in_csv_are_those_in_the_library() {
        List<CsvRecord> records = records(csv("/v1/results?format=csv"), ',');
        int value = records.get(0).getFields().indexOf("value");

        assertEquals(
                RunningScalepan.library().results().stream()
                        .map(CsvTest::idAndValue)
                        .toList(),
                records.stream()
                        .skip(1)
                        .map(record -> record.getField(0) + " "
                                + (record.getField(value).isEmpty()
                                        ? "none"
                                        : Double.toString(Double.parseDouble(record.getField(value)))))
                        .toList());
    }

    private static String idAndValue(PublishedResult result) {
        return result.id() + " "
                + result.printed().value().stream()
                        .mapToObj(Double::toString)
                        .findFirst()
                        .orElse("none");
    }
}
