package org.scalepan.exchange.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LongLinesTest {
    private static List<String> lines(String text, int longest) throws IOException {
        LongLines lines = new LongLines(new StringReader(text), longest);
        List<String> all = new ArrayList<>();
        for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
            all.add(line.get());
        }
        return all;
    }

    @Test
    void lines_come_without_line_ends_and_the_last_needs_none() throws IOException {
        assertEquals(List.of("one", "", "three\r", "four"), lines("one\n\nthree\r\nfour", 100));
        assertEquals(List.of("one"), lines("one\n", 100));
        assertEquals(List.of(), lines("", 100));
    }

    @Test
    void a_line_that_is_too_long_is_truncated_after_the_limit_and_the_next_is_whole() throws IOException {
        String text = "x".repeat(30_000) + "\nnext\n" + "y".repeat(20_000);

        assertEquals(List.of("x".repeat(11), "next", "y".repeat(11)), lines(text, 10));
        assertEquals(List.of("x".repeat(30_000), "next", "y".repeat(20_000)), lines(text, 40_000));
    }
}
