package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Logarithms of many numbers are those of StrictMath, bit for bit. */
class LogarithmsTest {
    private static void assertSame(double... values) {
        double[] logarithms = values.clone();
        Logarithms.replace(logarithms);
        for (int i = 0; i < values.length; i++) {
            assertEquals(
                    Double.doubleToLongBits(StrictMath.log(values[i])),
                    Double.doubleToLongBits(logarithms[i]),
                    "logarithm of " + values[i]);
        }
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0,
                -0.0,
                -1,
                1,
                2,
                0.5,
                4096,
                Double.NaN,
                Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY,
                Double.MIN_VALUE,
                Double.MIN_NORMAL,
                Double.MAX_VALUE,
                1 + 0x1p-52,
                1 - 0x1p-53,
                1 + 0x1p-21,
                1 + 0x1p-20,
                1.4142135623730951,
                0.7071067811865476
            })
    void of_what_is_special(double value) {
        assertSame(value, Math.nextUp(value), Math.nextDown(value));
    }

    @Test
    void of_numbers_of_every_size() {
        Random random = new Random(4);
        for (int i = 0; i < 300_000; i++) {
            assertSame(
                    Double.longBitsToDouble(random.nextLong()),
                    0.5 + random.nextDouble(),
                    StrictMath.exp(2 * random.nextGaussian()));
        }
    }
}
