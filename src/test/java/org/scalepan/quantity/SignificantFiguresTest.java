package org.scalepan.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SignificantFiguresTest {
    @ParameterizedTest
    @CsvSource({
        "147.3, 2, 150",
        "0.00312, 2, 0.0031",
        "25.0, 2, 25",
        "1.02, 2, 1.0",
        "0, 2, 0",
        "-0.0, 2, 0",
        "9.96, 2, 10",
        "99.6, 2, 100",
        "0.0999, 2, 0.10",
        "0.5, 2, 0.50",
        "-147.3, 2, -150",
        "1.5e-9, 2, 0.0000000015",
        "1.25e12, 2, 1200000000000",
        "4, 1, 4",
        "123456789, 15, 123456789.000000"
    })
    void text_is_plain_decimal_with_exactly_the_figures_that_count(double value, int figures, String expected) {
        assertEquals(expected, SignificantFigures.text(value, figures));
    }

    /** Half-even: ISO 80000-1, annex B, rule A. */
    @ParameterizedTest
    @CsvSource({
        "0.125, 2, 0.12",
        "0.135, 2, 0.14",
        "2.5, 1, 2",
        "3.5, 1, 4",
        "1.25, 2, 1.2",
        "-2.5, 1, -2",
        "0.35, 1, 0.4"
    })
    void a_tie_in_the_decimal_as_written_goes_to_the_even_figure(double value, int figures, double expected) {
        assertEquals(expected, SignificantFigures.round(value, figures), 0.0);
    }

    @ParameterizedTest
    @CsvSource({
        "2.99, 2, 2.9",
        "2.3, 2, 2.3",
        "147.3, 2, 140",
        "-2.99, 2, -2.9",
        "0.0199, 2, 0.019",
        "10.4, 2, 10",
        "1.1, 2, 1.1"
    })
    void floor_cuts_towards_zero_but_leaves_a_decimal_that_already_fits(double value, int figures, double expected) {
        assertEquals(expected, SignificantFigures.floor(value, figures), 0.0);
    }

    @Test
    void floor_never_exceeds_the_value() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 5_000; i++) {
            double whole = Math.rint(random.nextDouble() * 1000) / 100;
            double value = random.nextBoolean() ? Math.nextDown(whole) : whole * (1 + random.nextDouble());
            double floor = SignificantFigures.floor(value, 2);
            assertTrue(floor <= Math.max(0, value), value + " floored to " + floor);
            assertTrue(value <= 0 || floor >= 0.9 * value, value + " floored to " + floor);
        }
        assertEquals(2.9, SignificantFigures.floor(Math.nextDown(3.0), 2), 0.0);
    }

    /** Property: the ceiling is the floor mirrored at zero. */
    @Test
    void ceiling_is_never_below_the_value() {
        SplittableRandom random = new SplittableRandom(13);
        for (int i = 0; i < 10_000; i++) {
            double value = Math.exp(random.nextDouble() * 20 - 10) * (random.nextBoolean() ? 1 : -1);
            double ceiling = SignificantFigures.ceiling(value, 2);
            assertTrue(Math.abs(ceiling) >= Math.abs(value), value + " to " + ceiling);
            assertTrue(Math.abs(ceiling) <= 1.1 * Math.abs(value), value + " to " + ceiling);
            assertEquals(ceiling, SignificantFigures.ceiling(ceiling, 2), 0.0);
        }
        assertEquals(3.1, SignificantFigures.ceiling(Math.nextUp(3.0), 2), 0.0);
        assertEquals(-2.4, SignificantFigures.ceiling(-2.31, 2), 0.0);
    }

    @Test
    void round_stays_within_half_a_unit_of_the_last_figure_and_rounding_twice_changes_nothing() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 5_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-8, 9));
            int figures = random.nextInt(1, 7);
            double rounded = SignificantFigures.round(value, figures);
            double unit = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - figures + 1);
            assertEquals(value, rounded, 0.5 * unit * (1 + 1e-9));
            assertEquals(rounded, SignificantFigures.round(rounded, figures), 0.0);
            assertEquals(rounded, Double.parseDouble(SignificantFigures.text(value, figures)), 0.0);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void zero_and_what_is_no_number_come_back_unchanged(double value) {
        assertEquals(value, SignificantFigures.round(value, 2));
        assertEquals(value, SignificantFigures.floor(value, 2));
    }

    @Test
    void text_does_not_follow_the_locale_of_the_machine() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("1.5", SignificantFigures.text(1.5, 2));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void text_of_nan_is_refused_and_so_are_figures_a_double_does_not_have() {
        assertEquals(
                "only a finite number can be printed, not NaN",
                assertThrows(IllegalArgumentException.class, () -> SignificantFigures.text(Double.NaN, 2))
                        .getMessage());
        assertEquals(
                "significant figures must be 1 to 15, not 0",
                assertThrows(IllegalArgumentException.class, () -> SignificantFigures.round(1, 0))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> SignificantFigures.floor(1, 16));
    }
}
