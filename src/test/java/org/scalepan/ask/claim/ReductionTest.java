package org.scalepan.ask.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A ratio as a part that is saved. */
class ReductionTest {
    @ParameterizedTest
    @CsvSource({
        "1, 0",
        "1.1, 9",
        "2, 50",
        "3.8, 73",
        "5, 80",
        "10, 90",
        "13, 92",
        "100, 99.0",
        "200, 99.5",
        "1300, 99.92"
    })
    void five_times_less_is_eighty_per_cent_less(double times, String percent) {
        assertEquals(percent, Reduction.percent(times).toPlainString());
    }

    /** The sentence must not claim more than the ratio. */
    @ParameterizedTest
    @CsvSource({"1.01", "1.7", "3.3", "7.7", "42", "99.9", "101", "999", "123456"})
    void it_is_never_rounded_up(double times) {
        assertTrue(1 / (1 - Reduction.percent(times).doubleValue() / 100) <= times * (1 + 1e-9));
    }
}
