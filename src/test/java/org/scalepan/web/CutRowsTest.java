package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvParseException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Rows of a table cut into cells, by a thread of its own when there are many. */
class CutRowsTest {
    private static final int MANY = 20_000;

    private static String row(int number) {
        return number + ",\"invented: shed, no. " + number + "\",,  " + number % 7 + ".5 \r\n";
    }

    private static String table(int rows) {
        return IntStream.range(0, rows).mapToObj(CutRowsTest::row).collect(Collectors.joining());
    }

    private static long threadsAhead() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("rows-ahead"))
                .count();
    }

    /** What is read until the end. */
    private static int read(CutRows rows, Cells cells) throws IOException {
        int read = 0;
        while (rows.next(cells)) {
            read++;
        }
        return read;
    }

    @Test
    void given_many_rows_then_each_comes_in_its_order_with_its_cells_and_without_the_blanks_around_them()
            throws IOException {
        try (CutRows rows = new CutRows(new StringReader(table(MANY)), ',')) {
            Cells cells = new Cells();
            for (int i = 0; i < MANY; i++) {
                assertTrue(rows.next(cells));
                assertEquals(List.of("" + i, "invented: shed, no. " + i, "", i % 7 + ".5"), cells.all());
                assertEquals(3, cells.count());
            }
            assertFalse(rows.next(cells));
            assertFalse(rows.next(cells));
        }
    }

    @Test
    void given_empty_lines_then_they_are_no_rows() throws IOException {
        try (CutRows rows = new CutRows(new StringReader("\n\r\na,b\n\n,\n\n\n1,2\n\n"), ',')) {
            Cells cells = new Cells();
            assertTrue(rows.next(cells));
            assertEquals(List.of("a", "b"), cells.all());
            assertTrue(rows.next(cells));
            assertEquals(List.of("", ""), cells.all());
            assertTrue(rows.next(cells));
            assertEquals(List.of("1", "2"), cells.all());
            assertFalse(rows.next(cells));
        }
    }

    @Test
    void given_a_quote_that_is_never_closed_far_behind_then_all_rows_before_it_come_and_none_after()
            throws IOException {
        String unclosed = "1,\"" + "x".repeat(Limits.CELL_CHARACTERS + 1) + "\r\n";
        try (CutRows rows = new CutRows(new StringReader(table(MANY) + unclosed + table(10)), ',')) {
            Cells cells = new Cells();
            for (int i = 0; i < MANY; i++) {
                assertTrue(rows.next(cells));
            }
            assertThrows(CsvParseException.class, () -> rows.next(cells));
            assertThrows(CsvParseException.class, () -> rows.next(cells));
        }
    }

    @Test
    void given_bytes_far_behind_that_are_not_utf_8_then_rows_come_and_then_the_fault() throws IOException {
        byte[] bytes = (table(MANY) + "x").getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length - 1] = (byte) 0xff;
        try (CutRows rows = new CutRows(BulkRows.strict(new ByteArrayInputStream(bytes)), ',')) {
            List<String> read = new ArrayList<>();
            Cells cells = new Cells();
            assertThrows(UncheckedIOException.class, () -> {
                while (rows.next(cells)) {
                    read.add(cells.cell(0));
                }
            });
            assertTrue(read.size() > MANY / 2, read.size() + " rows came");
        }
    }

    @Test
    void given_a_table_that_ends_within_a_block_then_no_thread_is_started() throws IOException {
        long before = threadsAhead();
        try (CutRows rows = new CutRows(new StringReader(table(100)), ',')) {
            assertEquals(100, read(rows, new Cells()));
            assertEquals(before, threadsAhead());
        }
    }

    @Test
    void given_someone_who_leaves_half_way_then_the_thread_goes_with_him() throws IOException {
        long before = threadsAhead();
        try (CutRows rows = new CutRows(new StringReader(table(MANY)), ',')) {
            Cells cells = new Cells();
            for (int i = 0; i < MANY / 2; i++) {
                assertTrue(rows.next(cells));
            }
            assertTrue(threadsAhead() > before);
        }
        assertEquals(before, threadsAhead());
    }

    @Test
    void given_someone_who_takes_his_time_then_only_a_few_blocks_are_cut_ahead_of_him()
            throws IOException, InterruptedException {
        Endless endless = new Endless();
        try (CutRows rows = new CutRows(endless, ',')) {
            Cells cells = new Cells();
            for (int i = 0; i < 1000; i++) {
                assertTrue(rows.next(cells));
            }
            long before = -1;
            while (endless.given != before) {
                before = endless.given;
                Thread.sleep(100);
            }
            assertTrue(before < 100_000, before + " characters were taken for 1000 rows of 8");
        }
    }

    @Test
    void given_a_row_of_more_cells_than_any_table_has_then_it_is_refused() throws IOException {
        try (CutRows rows = new CutRows(new StringReader("a,b\r\n" + ",".repeat(20_000) + "\r\n"), ',')) {
            Cells cells = new Cells();
            assertTrue(rows.next(cells));
            assertThrows(CsvParseException.class, () -> rows.next(cells));
        }
    }

    /** Rows of eight characters without end. */
    private static final class Endless extends Reader {
        private volatile long given;

        @Override
        public int read(char[] room, int from, int length) {
            int count = length / 8 * 8;
            for (int i = 0; i < count; i++) {
                room[from + i] = "1,mill\r\n".charAt(i % 8);
            }
            given += count;
            return count;
        }

        @Override
        public void close() {}
    }
}
