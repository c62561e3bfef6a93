package org.scalepan.web.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.input.FieldError;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.Problem;

/** A refusal in a cell is one printable line, whatever the client sent. */
class CellLineTest {
    private static String line(String message) {
        return Problem.badQuery(List.of(FieldError.of("product", message))).line();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\n", "\r\n", "\t", "\u0000", "\u001B", "\u007F", "\u0085", "\u2028", "\u2029", "\u200E", "\u200F",
                "\u202A", "\u202E", "\u2066", "\u2069", "\u061C"
            })
    void line_breaks_and_direction_marks_become_a_blank(String character) {
        assertEquals("#before after", line("before" + character + "after"));
        assertEquals(
                "#before after",
                Problem.noEvidence("before" + character + "after").line());
    }

    @Test
    void letters_of_any_script_are_kept() {
        assertEquals("#unknown product \"コオロギ\"", line("unknown product \"コオロギ\""));
    }

    @Test
    void a_long_error_is_truncated_at_200_characters_without_splitting_a_character() {
        assertEquals(200, line("x".repeat(5_000)).length());
        // An emoji is two units long and must never be split.
        IntStream.range(0, 2).forEach(shift -> {
            String cut = line("x".repeat(shift) + "\uD83E\uDD97".repeat(500));
            assertTrue(cut.endsWith("\uDD97..."), cut);
        });
    }

    @Test
    void a_list_of_allowed_values_is_shown_up_to_600_characters() {
        List<String> statistics =
                IntStream.range(0, 20).mapToObj(i -> "statistic-" + i).toList();
        String whole = Problem.badQuery(List.of(FieldError.of("stat", "unknown stat \"x\"", statistics, List.of())))
                .line();
        assertTrue(whole.endsWith("statistic-19"), whole);

        List<String> long20 = statistics.stream().map(id -> id.repeat(5)).toList();
        assertEquals(
                600,
                Problem.badQuery(List.of(FieldError.of("stat", "unknown stat \"x\"", long20, List.of())))
                        .line()
                        .length());
    }

    @Test
    void a_cell_shows_no_line_end_of_the_request() {
        String cell = RunningScalepan.given()
                .get("/v1/value/ghg/mealworm?stat=a%0Ab%E2%80%A8c%E2%80%AEd")
                .asString();

        assertTrue(cell.startsWith("#unknown stat \"a b c d\""), cell);
        assertFalse(cell.contains("\n"), cell);
    }
}
