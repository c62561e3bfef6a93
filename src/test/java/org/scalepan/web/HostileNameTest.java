package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.http.Answer;

/** A name, whatever somebody typed or pasted, never changes the structure of a document. The farm is invented. */
class HostileNameTest {
    /** A name with a line break, as Alt and Enter make it, a heading, a table, controls, separators and non-characters. */
    private static final String NAME =
            "a\\nb\\n\\n# X\\r\\n| y | z |\\u2028- item\\u0000\\u001b[1m\\u0085\\ufffe\\uffff\\ufdd0"
                    + "\\ud83f\\udfff<b>&lt;</b>";

    private static String farm(String name) {
        return "{\"kind\":\"insects\",\"name\":\"" + name
                + "\",\"product\":\"superworm\",\"harvest\":{\"kg_per_year\":240},"
                + "\"feed\":[{\"ingredient\":\"wheat-bran\",\"kg\":650,\"burden\":\"mass\"}]}";
    }

    private static Reply brief(String name, String format) {
        return Reply.to(
                "/v1/brief?format=" + format,
                Map.of(),
                Optional.of("{\"draws\":1000,\"against\":\"beef\",\"system\":" + farm(name) + "}"));
    }

    private static void parsed(String xml) throws Exception {
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
    }

    /** The lines of a document without what stands in them: their number and how each begins. */
    private static List<String> structure(Reply reply) {
        return reply.body()
                .lines()
                .map(line -> line.replaceAll("^([#>|*_ -]*).*", "$1"))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"md", "html", "svg"})
    void a_document_has_the_same_lines_as_with_a_plain_name(String format) {
        Reply plain = brief("a shed", format);
        Reply hostile = brief(NAME, format);

        assertEquals(200, hostile.status(), hostile.body());
        assertEquals(structure(plain), structure(hostile));
        assertTrue(
                hostile.body()
                        .codePoints()
                        .noneMatch(c -> c != '\n' && Character.isISOControl(c) || (c & 0xFFFE) == 0xFFFE),
                "control or non-characters");
    }

    @Test
    void a_picture_is_xml() throws Exception {
        parsed(brief(NAME, "svg").body());
    }

    @Test
    void json_gives_back_one_line() {
        Reply reply = Reply.to("/v1/footprint", Map.of(), Optional.of("{\"system\":" + farm("a\\nb\\ufffec") + "}"));

        assertEquals("a b c", JsonAt.text(reply.json(), "/system/name"));
    }

    @Test
    void a_workbook_is_xml_in_every_part() throws Exception {
        for (Map.Entry<String, String> part : workbook().entrySet()) {
            parsed(part.getValue());
        }
    }

    private static Map<String, String> workbook() throws IOException, InterruptedException {
        URI uri = RunningScalepan.uri("/v1/footprint?format=xlsx");
        HttpResponse<byte[]> reply = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(uri)
                                .header("Content-Type", Answer.JSON)
                                .POST(HttpRequest.BodyPublishers.ofString("{\"system\":" + farm(NAME) + "}"))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertEquals(200, reply.statusCode());
        Map<String, String> parts = new java.util.TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(reply.body()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        assertFalse(parts.isEmpty());
        return parts;
    }

    @Test
    void rows_in_bulk_are_one_line_each_also_those_that_are_wrong() {
        String rows = "kind,name,product,harvest.kg_per_year\n" + "insects,\"a\nb;=1+1\",mealworm,180\n"
                + "insects,\"c\r\nd\",no-such-insect,180\n";
        Reply reply = Reply.to("/v1/footprints?indicators=ghg", Map.of("Content-Type", "text/csv"), Optional.of(rows));

        assertEquals(3, reply.body().lines().count(), reply.body());
        List<NamedCsvRecord> read =
                CsvReader.builder().ofNamedCsvRecord(reply.body()).stream().toList();
        assertEquals("a b;'=1+1", read.get(0).getField("name"));
        assertEquals("c  d", read.get(1).getField("name"));
    }
}
