package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/** Rows on their way in. */
class SpoolTest {
    private static final byte[] ROWS = new byte[200_000];

    @Test
    void what_is_laid_down_is_read_as_it_was() throws IOException {
        ROWS[199_999] = 7;
        try (Spool spool = Spool.of(new ByteArrayInputStream(ROWS), ROWS.length);
                InputStream read = spool.read()) {
            assertArrayEquals(ROWS, read.readAllBytes());
        }
    }

    @Test
    void one_byte_more_than_may_be_is_refused() {
        Refused refused = assertThrows(Refused.class, () -> Spool.of(new ByteArrayInputStream(ROWS), ROWS.length - 1));

        assertEquals(413, refused.problem().status());
    }
}
