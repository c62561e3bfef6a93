package org.scalepan.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LeastReductionTest {
    @ParameterizedTest(name = "at least {0} times less is at least {1} % less")
    @CsvSource({"5, 80", "10, 90", "3, 66", "1.1, 9", "3.8, 73", "13, 92", "100, 99", "6500, 99.984", "150, 99.33"})
    void is_what_is_saved_at_least(double times, String percent) {
        assertEquals(percent, LeastReduction.figure(times).printed());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.1, 1.9, 3, 4.3, 7, 9.6, 97, 101, 999, 3333333})
    void never_says_more_than_the_ratio_and_never_all(double times) {
        double said = LeastReduction.percent(times).doubleValue();

        assertTrue(said <= 100 - 100 / times + 1e-12, said + " % of " + times + " times less");
        assertTrue(said < 100, "something is left: " + said);
    }

    @Test
    void is_not_said_of_what_is_no_reduction() {
        assertThrows(IllegalArgumentException.class, () -> LeastReduction.percent(1));
    }
}
