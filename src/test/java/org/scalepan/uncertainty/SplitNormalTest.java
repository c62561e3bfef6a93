package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A printed default between unequal limits, as the IPCC guidelines print emission factors. */
class SplitNormalTest {
    /** Direct N2O of grazing (IPCC 2019, table 11.1): 0.004, from 0 to 0.014; the probabilities are those of ±1.96 standard deviations. */
    @Test
    void the_printed_default_and_its_limits_come_back() {
        SplitNormal grazing = new SplitNormal(0, 0.004, 0.014);

        assertEquals(0.004, grazing.median(), 0.0);
        assertEquals(0, grazing.quantile(0.025), 1e-6);
        assertEquals(0.014, grazing.quantile(0.975), 1e-6);
        assertEquals(0, grazing.quantile(0.001), 0.0, "nothing falls below zero");
    }

    @Test
    void with_even_limits_it_is_the_normal() {
        SplitNormal even = new SplitNormal(9, 10, 11);
        Normal normal = new Normal(10, 1 / 1.96);

        for (double p = 0.01; p < 1; p += 0.07) {
            assertEquals(normal.quantile(p), even.quantile(p), 1e-9);
        }
        assertEquals(10, even.mean(), 1e-9);
    }

    /** The mean against a midpoint sum of the quantile function, which knows nothing of the closed form. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.004, 0.014",
        "0.01, 0.24, 0.73",
        "0, 0.011, 0.02",
        "0.002, 0.01, 0.018",
        "0, 0, 1",
        "1, 1, 3",
        "1, 3, 3"
    })
    void the_mean_is_the_area_under_the_quantiles(double low, double middle, double high) {
        SplitNormal split = new SplitNormal(low, middle, high);
        int slices = 400_000;
        double sum = 0;
        for (int i = 0; i < slices; i++) {
            sum += split.quantile((i + 0.5) / slices);
        }

        assertEquals(sum / slices, split.mean(), 2e-5 * high);
    }

    @ParameterizedTest
    @CsvSource({"-1, 0, 1", "2, 1, 3", "1, 4, 3", "1, 1, 1", "NaN, 1, 2", "0, NaN, 2", "0, 1, Infinity"})
    void limits_that_do_not_hold_the_default_are_refused(double low, double middle, double high) {
        assertThrows(IllegalArgumentException.class, () -> new SplitNormal(low, middle, high));
    }
}
