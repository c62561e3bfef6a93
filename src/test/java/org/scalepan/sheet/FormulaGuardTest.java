package org.scalepan.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a spreadsheet runs as a formula, after the OWASP page on CSV injection: cells that begin with = + - @, a tab or a line end. */
class FormulaGuardTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\r=1",
                "\n=1",
                "  =1",
                "=HYPERLINK(\"http://x\")",
                "\uff1d1+1",
                "\uff0b1",
                "\uff0d1",
                "\uff20SUM(A1)",
                "\u0000=1",
                "\u00a0=1",
                "\ufeff=1",
                "\u200b=1",
                "\u2060\u200f@x"
            })
    void text_that_would_be_run_is_led_by_an_apostrophe(String text) {
        assertEquals("'" + text, FormulaGuard.guarded(text));
    }

    /** German and French spreadsheets split a file at semicolons, others at tabs or bars. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "x;=1+1;y ~ x;'=1+1;y",
                "x; @SUM(A1) ~ x;' @SUM(A1)",
                "x|-cmd|z ~ x|'-cmd|z",
                "a,=1 ~ a,'=1",
                "a,\u200b\uff1d1 ~ a,'\u200b\uff1d1",
                "a;b;;+1 ~ a;b;;'+1"
            })
    void text_that_would_be_run_after_a_split_at_another_separator_is_guarded_there(String text, String guarded) {
        assertEquals(guarded, FormulaGuard.guarded(text));
    }

    @Test
    void a_leading_tab_is_guarded_as_a_start_and_as_a_separator() {
        assertEquals("'\t'=1", FormulaGuard.guarded("\t=1"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "beef",
                "from 3, -2 to 4",
                "a; b | c",
                "Larvae = young",
                "#unknown product",
                "'=1",
                "1-2",
                "\u00e9"
            })
    void other_text_stays_as_it_is(String text) {
        assertEquals(text, FormulaGuard.guarded(text));
    }
}
