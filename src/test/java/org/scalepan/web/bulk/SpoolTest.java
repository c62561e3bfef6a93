package org.scalepan.web.bulk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;
import org.scalepan.web.http.ByteQuota;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.ProblemException;

/** Rows on their way in. */
class SpoolTest {
    private static final byte[] ROWS = new byte[200_000];
    private static final Client ONE = Client.at("192.0.2.1");
    private static final Client OTHER = Client.at("192.0.2.2");
    private static final Client THIRD = Client.at("192.0.2.3");

    private static ByteQuota room(long most) {
        return new ByteQuota(most, "rows");
    }

    @Test
    void what_is_laid_down_is_read_as_it_was() throws IOException {
        ROWS[199_999] = 7;
        try (Spool spool = Spool.of(new ByteArrayInputStream(ROWS), ROWS.length, 1, room(1_000_000), ONE);
                InputStream read = spool.read()) {
            assertArrayEquals(ROWS, read.readAllBytes());
        }
    }

    @Test
    void one_byte_more_than_may_be_is_refused() {
        ByteQuota room = room(1_000_000);
        ProblemException refused = assertThrows(
                ProblemException.class, () -> Spool.of(new ByteArrayInputStream(ROWS), ROWS.length - 1, 1, room, ONE));

        assertEquals(413, refused.problem().status());
        assertEquals(0, room.taken());
    }

    @Test
    void one_line_more_than_may_be_is_refused_with_how_many_may_be() {
        ByteQuota room = room(1_000_000);
        byte[] lines = "a\nb\nc\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        ProblemException refused = assertThrows(
                ProblemException.class, () -> Spool.of(new ByteArrayInputStream(lines), lines.length, 2, room, ONE));

        assertEquals(413, refused.problem().status());
        assertEquals(
                "a body may have at most 2 lines; send it in parts",
                refused.problem().detail());
        assertEquals(0, room.taken());
    }

    @Test
    void one_client_fills_half_of_the_room_and_no_more() {
        ByteQuota room = room(4_000_000);
        room.take(ONE, 2_000_000);
        ProblemException refused = assertThrows(ProblemException.class, () -> room.take(ONE, 1));

        assertEquals(429, refused.problem().status());
        assertEquals(
                "busy: your rows fill the 1 MB that one client may have waiting at once; ask again in a second",
                refused.problem().detail());
        room.take(OTHER, 2_000_000);
        room.giveBack(ONE, 2_000_000);
        room.take(ONE, 1);
        room.giveBack(ONE, 1);
        room.giveBack(OTHER, 2_000_000);
        assertEquals(0, room.taken());
    }

    @Test
    void the_room_is_shared_and_free_again_when_the_rows_are_read_or_thrown_away() throws IOException {
        ByteQuota room = room(2 * ROWS.length + 1);
        try (Spool thrownAway = Spool.of(new ByteArrayInputStream(ROWS), ROWS.length, 1, room, ONE)) {
            room.take(OTHER, ROWS.length);
            ProblemException refused = assertThrows(
                    ProblemException.class,
                    () -> Spool.of(new ByteArrayInputStream(new byte[2]), ROWS.length, 1, room, THIRD));

            assertEquals(503, refused.problem().status());
            room.giveBack(OTHER, ROWS.length);
            assertEquals(ROWS.length, room.taken());
        }
        assertEquals(0, room.taken());

        InputStream rows;
        try (Spool spool = Spool.of(new ByteArrayInputStream(ROWS), ROWS.length, 1, room, ONE)) {
            rows = spool.read();
        }
        assertEquals(ROWS.length, room.taken(), "they still lie there while they are read");
        rows.close();
        rows.close();
        assertEquals(0, room.taken());
    }
}
