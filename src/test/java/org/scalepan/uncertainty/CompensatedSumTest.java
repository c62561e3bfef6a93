package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Compensated sums, compared with sums of exact decimals. */
class CompensatedSumTest {
    @Test
    void the_sum_is_the_exact_one_rounded_once_whatever_the_count() {
        SplittableRandom random = new SplittableRandom(3);
        for (int count : new int[] {0, 1, 2, 255, 256, 257, 1000, 10_000}) {
            double[] values =
                    random.doubles(count).map(u -> Math.exp(40 * u - 20)).toArray();

            double exact = Arrays.stream(values)
                    .mapToObj(BigDecimal::new)
                    .reduce(BigDecimal.ZERO, BigDecimal::add)
                    .doubleValue();

            assertEquals(exact, CompensatedSum.of(values), Math.ulp(exact), count + " values");
        }
    }

    @Test
    void what_cancels_leaves_the_rest() {
        double[] values = new double[600];
        values[0] = 1e16;
        values[256] = 1;
        values[512] = -1e16;

        assertEquals(1, CompensatedSum.of(values), 0);
    }

    @Test
    void squares_are_taken_from_the_centre() {
        double[] values = new double[1001];
        Arrays.setAll(values, i -> 1e6 + i);

        // The sum of squared deviations of 0 to 2m from m is m(m + 1)(2m + 1)/3.
        assertEquals(500.0 * 501 * 1001 / 3, CompensatedSum.ofSquares(values, 1e6 + 500), 0);
    }
}
