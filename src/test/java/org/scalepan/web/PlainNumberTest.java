package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against the exact arithmetic that prints all other numbers of the service. */
class PlainNumberTest {
    private static String written(double value) {
        byte[] bytes = new byte[PlainNumber.LONGEST];
        int end = PlainNumber.write(value, '.', bytes, 0);
        return end < 0 ? "" : new String(bytes, 0, end, StandardCharsets.US_ASCII);
    }

    private static void assertPrintsLikeExactArithmetic(double value) {
        String written = written(value);
        assertTrue(written.isEmpty() || written.equals(Numbers.plain(value)), () -> value + " gives " + written);
    }

    @Test
    void every_number_that_it_takes_is_printed_as_exact_arithmetic_prints_it() {
        Random random = new Random(20261125);
        int taken = 0;
        for (int i = 0; i < 200_000; i++) {
            double value = (random.nextBoolean() ? 1 : -1) * Math.pow(10, 26 * random.nextDouble() - 10);
            assertPrintsLikeExactArithmetic(value);
            taken += written(value).isEmpty() ? 0 : 1;
        }
        assertTrue(taken > 0.7 * 200_000, taken + " of 200 000 over 26 powers of ten, of which it takes 19");
    }

    @Test
    void round_numbers_their_neighbours_and_halves_are_no_exception() {
        for (int exponent = -9; exponent <= 14; exponent++) {
            for (double lead : new double[] {1, 2.5, 9.999999, 9.9999995, 9.99999949, 1.0000005, 3.1234565, 5}) {
                double value = lead * Math.pow(10, exponent);
                assertPrintsLikeExactArithmetic(value);
                assertPrintsLikeExactArithmetic(Math.nextUp(value));
                assertPrintsLikeExactArithmetic(-Math.nextDown(value));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 10, 100, 1e6, 1e7, 123456789, 0.1, 0.001, 7.25, 1234567, 0.0012345678, 99999990})
    void usual_numbers_are_taken(double value) {
        assertEquals(Numbers.plain(value), written(value));
    }

    @Test
    void zero_is_zero_whatever_its_sign() {
        assertEquals("0", written(0.0));
        assertEquals(Numbers.plain(-0.0), written(-0.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 1e13, 12345675e-1, Double.NaN, Double.POSITIVE_INFINITY})
    void what_one_multiplication_cannot_decide_is_left_to_others(double value) {
        assertEquals("", written(value));
    }
}
