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
        try (Spool spool = Spool.of(new ByteArrayInputStream(ROWS), ROWS.length, new SpoolRoom(1_000_000));
                InputStream read = spool.read()) {
            assertArrayEquals(ROWS, read.readAllBytes());
        }
    }

    @Test
    void one_byte_more_than_may_be_is_refused() {
        SpoolRoom room = new SpoolRoom(1_000_000);
        Refused refused =
                assertThrows(Refused.class, () -> Spool.of(new ByteArrayInputStream(ROWS), ROWS.length - 1, room));

        assertEquals(413, refused.problem().status());
        assertEquals(0, room.taken());
    }

    @Test
    void the_room_is_shared_and_free_again_when_the_rows_are_read_or_thrown_away() throws IOException {
        SpoolRoom room = new SpoolRoom(ROWS.length + 1);
        try (Spool thrownAway = Spool.of(new ByteArrayInputStream(ROWS), ROWS.length, room)) {
            Refused refused = assertThrows(
                    Refused.class, () -> Spool.of(new ByteArrayInputStream(new byte[2]), ROWS.length, room));

            assertEquals(503, refused.problem().status());
            assertEquals(ROWS.length, room.taken());
        }
        assertEquals(0, room.taken());

        InputStream rows;
        try (Spool spool = Spool.of(new ByteArrayInputStream(ROWS), ROWS.length, room)) {
            rows = spool.read();
        }
        assertEquals(ROWS.length, room.taken(), "they still lie there while they are read");
        rows.close();
        rows.close();
        assertEquals(0, room.taken());
    }
}
