package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.scalepan.web.Reply;

/** The picture in README is drawn by the service; only its date and library digest may be older. */
class GuidePictureTest {
    private static final Path PICTURE = Path.of("src/site/resources/comparison.svg");
    private static final String QUESTION =
            "/v1/brief?products=mealworm,chicken,egg,pork&against=beef&indicator=ghg&per=kg-protein&format=svg";

    @Test
    void the_picture_is_what_the_service_draws() {
        String drawn = Reply.to(QUESTION).body();
        if (!undated(drawn).equals(undated(Documents.read(PICTURE)))) {
            Documents.rewrite(PICTURE, drawn);
        }

        assertTrue(drawn.startsWith("<svg "), drawn);
        assertEquals(undated(drawn), undated(Documents.read(PICTURE)));
        assertTrue(Documents.read(Documents.README).contains(PICTURE.toString()), "README shows it");
    }

    private static String undated(String picture) {
        return picture.replaceAll("library \\S+ \\([0-9a-f]{16}\\), accessed \\d{4}-\\d\\d-\\d\\d", "library");
    }
}
