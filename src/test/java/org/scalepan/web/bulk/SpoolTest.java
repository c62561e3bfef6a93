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

/** Spooling of bodies with rows. */
class SpoolTest {
    private static final byte[] ROWS = new byte[200_000];
    private static final SpoolFolder FOLDER = SpoolFolder.ofSystem();
    private static final Client ONE = Client.at("192.0.2.1");
    private static final Client OTHER = Client.at("192.0.2.2");
    private static final Client THIRD = Client.at("192.0.2.3");

    private static ByteQuota quota(long most) {
        return new ByteQuota(most, "rows");
    }

    @Test
    void a_spooled_body_is_read_back_unchanged() throws IOException {
        ROWS[199_999] = 7;
        try (Spool spool = Spool.of(FOLDER, new ByteArrayInputStream(ROWS), ROWS.length, 1, quota(1_000_000), ONE);
                InputStream read = spool.read()) {
            assertArrayEquals(ROWS, read.readAllBytes());
        }
    }

    @Test
    void one_byte_beyond_the_limit_is_refused() {
        ByteQuota quota = quota(1_000_000);
        ProblemException refused = assertThrows(
                ProblemException.class,
                () -> Spool.of(FOLDER, new ByteArrayInputStream(ROWS), ROWS.length - 1, 1, quota, ONE));

        assertEquals(413, refused.problem().status());
        assertEquals(0, quota.reserved());
    }

    @Test
    void one_line_beyond_the_limit_is_refused_with_the_limit() {
        ByteQuota quota = quota(1_000_000);
        byte[] lines = "a\nb\nc\n".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        ProblemException refused = assertThrows(
                ProblemException.class,
                () -> Spool.of(FOLDER, new ByteArrayInputStream(lines), lines.length, 2, quota, ONE));

        assertEquals(413, refused.problem().status());
        assertEquals(
                "a body may have at most 2 lines; send it in parts",
                refused.problem().detail());
        assertEquals(0, quota.reserved());
    }

    @Test
    void one_client_reserves_at_most_half_of_the_quota() {
        ByteQuota quota = quota(4_000_000);
        quota.reserve(ONE, 2_000_000);
        ProblemException refused = assertThrows(ProblemException.class, () -> quota.reserve(ONE, 1));

        assertEquals(429, refused.problem().status());
        assertEquals(
                "busy: your rows fill the 1 MB that one client may have waiting at once; ask again in a second",
                refused.problem().detail());
        quota.reserve(OTHER, 2_000_000);
        quota.release(ONE, 2_000_000);
        quota.reserve(ONE, 1);
        quota.release(ONE, 1);
        quota.release(OTHER, 2_000_000);
        assertEquals(0, quota.reserved());
    }

    @Test
    void the_quota_is_shared_and_released_when_the_rows_are_read_or_discarded() throws IOException {
        ByteQuota quota = quota(2 * ROWS.length + 1);
        try (Spool thrownAway = Spool.of(FOLDER, new ByteArrayInputStream(ROWS), ROWS.length, 1, quota, ONE)) {
            quota.reserve(OTHER, ROWS.length);
            ProblemException refused = assertThrows(
                    ProblemException.class,
                    () -> Spool.of(FOLDER, new ByteArrayInputStream(new byte[2]), ROWS.length, 1, quota, THIRD));

            assertEquals(503, refused.problem().status());
            quota.release(OTHER, ROWS.length);
            assertEquals(ROWS.length, quota.reserved());
        }
        assertEquals(0, quota.reserved());

        InputStream rows;
        try (Spool spool = Spool.of(FOLDER, new ByteArrayInputStream(ROWS), ROWS.length, 1, quota, ONE)) {
            rows = spool.read();
        }
        assertEquals(ROWS.length, quota.reserved(), "they still lie there while they are read");
        rows.close();
        rows.close();
        assertEquals(0, quota.reserved());
    }
}
