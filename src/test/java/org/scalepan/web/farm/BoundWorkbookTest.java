package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.scalepan.web.RunningScalepan;

/** A number in a workbook travels without its sentence: whether it is a bound has a column of its own. The farm is invented. */
class BoundWorkbookTest {
    private static final String QUESTION = """
            {"system": {"kind": "insects", "name": "bucket shed", "product": "mealworm", "harvest": {"kg_per_year": 160}},
             "indicators": ["ghg"], "draws": 1000, "compare": {"products": ["beef"]}}""";

    @Test
    void given_a_farm_without_feed_then_the_workbook_says_at_least_of_it_and_at_most_of_its_ratio()
            throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(RunningScalepan.uri("/v1/footprint?format=xlsx"))
                                .header("Content-Type", "application/json")
                                .POST(HttpRequest.BodyPublishers.ofString(QUESTION))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertEquals(200, answer.statusCode());

        String cells = content(answer.body());
        assertTrue(cells.contains(">Times less: bound<"), cells);
        assertTrue(cells.contains(">at-least<"), cells);
        assertTrue(cells.contains(">at-most<"), cells);
    }

    private static String content(byte[] file) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals("xl/sharedStrings.xml")) {
                    return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
                }
            }
        }
        throw new AssertionError("no shared strings");
    }
}
