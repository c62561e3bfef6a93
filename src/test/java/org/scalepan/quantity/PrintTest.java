package org.scalepan.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintTest {
    /** 49.89: mean of beef from beef herds, kg CO2e per 100 g protein, Poore and Nemecek 2018, Data S2. */
    @ParameterizedTest
    @CsvSource({"49.89, 50", "0.00312, 0.0031", "1234, 1200", "-0.456, -0.46", "3, 3.0"})
    void a_footprint_is_printed_to_two_figures(double footprint, String expected) {
        assertEquals(expected, Print.footprint(footprint));
    }

    @ParameterizedTest
    @CsvSource({"1.02, 1.0", "9.54, 9.5", "9.96, 10", "14.3, 14", "123.4, 120", "0.034, 0.034"})
    void a_ratio_has_two_figures_below_ten_and_at_most_two_above(double ratio, String expected) {
        assertEquals(expected, Print.ratio(ratio));
    }

    @Test
    void a_ratio_over_nothing_is_not_printed() {
        assertThrows(IllegalArgumentException.class, () -> Print.ratio(1 / 0.0));
    }
}
