package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.footprint.Bound.AT_LEAST;
import static org.scalepan.footprint.Bound.AT_MOST;
import static org.scalepan.footprint.Bound.EXACT;
import static org.scalepan.footprint.Bound.NONE;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundTest {
    @ParameterizedTest(name = "{0} and {1}: sum {2}, difference and ratio {3}")
    @CsvSource({
        "EXACT,    EXACT,    EXACT,    EXACT",
        "EXACT,    AT_LEAST, AT_LEAST, AT_MOST",
        "EXACT,    AT_MOST,  AT_MOST,  AT_LEAST",
        "EXACT,    NONE,     NONE,     NONE",
        "AT_LEAST, EXACT,    AT_LEAST, AT_LEAST",
        "AT_LEAST, AT_LEAST, AT_LEAST, NONE",
        "AT_LEAST, AT_MOST,  NONE,     AT_LEAST",
        "AT_LEAST, NONE,     NONE,     NONE",
        "AT_MOST,  EXACT,    AT_MOST,  AT_MOST",
        "AT_MOST,  AT_LEAST, NONE,     AT_MOST",
        "AT_MOST,  AT_MOST,  AT_MOST,  NONE",
        "AT_MOST,  NONE,     NONE,     NONE",
        "NONE,     EXACT,    NONE,     NONE",
        "NONE,     AT_LEAST, NONE,     NONE",
        "NONE,     AT_MOST,  NONE,     NONE",
        "NONE,     NONE,     NONE,     NONE"
    })
    void twoFiguresTogether(Bound one, Bound other, Bound sum, Bound difference) {
        assertEquals(sum, one.plus(other));
        assertEquals(difference, one.minus(other));
        assertEquals(difference, one.over(other));
    }

    @ParameterizedTest(name = "{0} times 2: {1}, times -2: {2}, times 0: EXACT")
    @CsvSource({"EXACT, EXACT, EXACT", "AT_LEAST, AT_LEAST, AT_MOST", "AT_MOST, AT_MOST, AT_LEAST", "NONE, NONE, NONE"})
    void aPositiveFactorKeepsAndACreditReverses(Bound one, Bound positive, Bound negative) {
        assertEquals(positive, one.times(2));
        assertEquals(negative, one.times(-2));
        assertEquals(EXACT, one.times(0));
    }

    @ParameterizedTest(name = "share in a total that is {0}: fully counted {1}, otherwise {2}")
    @CsvSource({"EXACT, EXACT, EXACT", "AT_LEAST, AT_MOST, NONE", "AT_MOST, NONE, NONE", "NONE, NONE, NONE"})
    void theShareOfAFullyCountedStageIsAtMost(Bound total, Bound complete, Bound incomplete) {
        assertEquals(complete, total.ofShare(true));
        assertEquals(incomplete, total.ofShare(false));
    }

    @Test
    void aBoundSupportsStatementsOfItsOwnDirectionOnly() {
        assertTrue(EXACT.supportsAtLeast() && EXACT.supportsAtMost());
        assertTrue(AT_LEAST.supportsAtLeast());
        assertFalse(AT_LEAST.supportsAtMost());
        assertTrue(AT_MOST.supportsAtMost());
        assertFalse(AT_MOST.supportsAtLeast());
        assertFalse(NONE.supportsAtLeast() || NONE.supportsAtMost());
    }
}
