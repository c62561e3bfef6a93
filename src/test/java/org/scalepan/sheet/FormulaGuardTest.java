package org.scalepan.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a spreadsheet runs as a formula, after the OWASP page on CSV injection: cells that begin with = + - @, a tab or a line end. */
class FormulaGuardTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "  =1", "=HYPERLINK(\"http://x\")"})
    void text_that_would_be_run_is_led_by_an_apostrophe(String text) {
        assertEquals("'" + text, FormulaGuard.guarded(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "beef", "Larvae = young", "#unknown product", "'=1", "1-2", "\u00e9"})
    void other_text_stays_as_it_is(String text) {
        assertEquals(text, FormulaGuard.guarded(text));
    }
}
