package org.scalepan.ask.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictTest {
    /** The limits are those of Mastrandrea et al. 2010, table 1: 90, 66, 33 and 10 %. */
    @ParameterizedTest
    @CsvSource({
        "1, holds",
        "0.90, holds",
        "0.899, leans-to-hold",
        "0.66, leans-to-hold",
        "0.659, open",
        "0.331, open",
        "0.33, leans-against",
        "0.101, leans-against",
        "0.10, fails",
        "0, fails"
    })
    void a_probability_has_one_verdict(double probability, String verdict) {
        assertEquals(verdict, Verdict.of(probability).id());
    }

    @Test
    void an_invalid_probability_has_no_verdict() {
        assertThrows(IllegalArgumentException.class, () -> Verdict.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Verdict.of(1.01));
    }

    @ParameterizedTest
    @CsvSource({
        "HOLDS, FAILS, HOLDS",
        "FAILS, HOLDS, HOLDS_ONLY_FOR",
        "NO_EVIDENCE, HOLDS, HOLDS_ONLY_FOR",
        "FAILS, OPEN, FAILS",
        "NO_EVIDENCE, FAILS, FAILS",
        "NO_EVIDENCE, LEANS_AGAINST, OPEN",
        "LEANS_TO_HOLD, FAILS, OPEN",
        "NO_EVIDENCE, NO_EVIDENCE, NOT_TRACEABLE"
    })
    void the_asked_cell_decides_and_the_others_qualify(Verdict asked, Verdict other, Overall overall) {
        assertEquals(overall, Overall.of(asked, List.of(asked, other)));
    }

    @ParameterizedTest
    @CsvSource({
        "HOLDS, HOLDS, HOLDS",
        "HOLDS, NOT_TRACEABLE, HOLDS",
        "HOLDS, FAILS, HOLDS_ONLY_FOR",
        "FAILS, FAILS, FAILS",
        "FAILS, OPEN, OPEN",
        "NOT_TRACEABLE, NOT_TRACEABLE, NOT_TRACEABLE"
    })
    void a_claim_about_several_products_must_hold_for_each(Overall one, Overall other, Overall all) {
        assertEquals(all, Overall.ofAll(List.of(one, other)));
    }
}
