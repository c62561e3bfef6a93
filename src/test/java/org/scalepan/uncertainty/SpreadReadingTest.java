package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SpreadReadingTest {
    private static final double DEFAULT_GSD = 1.5;

    @Test
    void a_mean_with_an_sd_is_the_lognormal_with_that_mean_and_sd() {
        Distribution read = read(Printed.of(SpreadKind.SD).value(14).high(17));

        assertEquals(Lognormal.ofMeanAndSd(14, 3), read);
        assertEquals(14, read.mean(), 1e-12);
    }

    @Test
    void an_sd_may_be_printed_on_the_lower_side_alone() {
        assertEquals(
                Lognormal.ofMeanAndSd(14, 3),
                read(Printed.of(SpreadKind.SD).value(14).low(11)));
    }

    @Test
    void a_standard_error_is_read_like_an_sd_on_the_mean() {
        assertEquals(
                Lognormal.ofMeanAndSd(14, 0.5),
                read(Printed.of(SpreadKind.SE).value(14).high(14.5)));
    }

    @Test
    void an_sd_printed_with_a_median_leaves_the_median() {
        Distribution read = read(Printed.of(SpreadKind.SD).median(14).high(17));

        assertEquals(14, read.median(), 1e-12);
        assertEquals(Lognormal.ofMedianAndSd(14, 3), read);
    }

    @Test
    void a_credit_with_an_sd_is_normal() {
        assertEquals(
                new Normal(-2, 0.5), read(Printed.of(SpreadKind.SD).value(-2).high(-1.5)));
        assertEquals(new Normal(0, 0.5), read(Printed.of(SpreadKind.SE).value(0).high(0.5)));
    }

    @Test
    void no_deviation_at_all_is_a_constant() {
        assertEquals(new Constant(14), read(Printed.of(SpreadKind.SD).value(14).high(14)));
    }

    /** GM = √(low·high), GSD = (high/low)^(1/3.92): identity of ±1.96 standard deviations on the logarithm. */
    @Test
    void confidence_limits_are_the_lognormal_between_them() {
        Lognormal read = assertInstanceOf(
                Lognormal.class, read(Printed.of(SpreadKind.CI95).low(5).high(20)));

        assertEquals(10, read.median(), 1e-12);
        assertEquals(Math.pow(4, 1 / 3.92), read.gsd(), 1e-12);
        assertEquals(5, read.quantile(0.025), 1e-3);
        assertEquals(20, read.quantile(0.975), 1e-3);
    }

    @Test
    void confidence_limits_that_reach_zero_or_below_are_normal_around_the_value_or_the_middle() {
        assertEquals(
                new Normal(1.2, 4 / 3.92),
                read(Printed.of(SpreadKind.CI95).value(1.2).low(-1).high(3)));
        assertEquals(
                new Normal(1, 4 / 3.92),
                read(Printed.of(SpreadKind.CI95).low(-1).high(3)));
        assertEquals(
                new Normal(1.5, 3 / 3.92),
                read(Printed.of(SpreadKind.CI95).low(0).high(3)));
    }

    @ParameterizedTest
    @CsvSource({"P5_P95, 0.05", "P10_P90, 0.1"})
    void two_percentiles_fix_the_lognormal_whatever_mean_is_printed_with_them(SpreadKind kind, double lower) {
        Distribution read = read(Printed.of(kind).value(49.89).low(20.25).high(105.2));

        assertInstanceOf(Lognormal.class, read);
        assertEquals(20.25, read.quantile(lower), 1e-9);
        assertEquals(105.2, read.quantile(1 - lower), 1e-9);
    }

    /** Poore and Nemecek 2018, Data S2: beef from beef herds per 100 g protein. */
    @Test
    void two_percentiles_with_a_median_are_a_curve_through_all_three() {
        Distribution read =
                read(Printed.of(SpreadKind.P10_P90).median(30.27).low(20.25).high(105.2));

        assertInstanceOf(PercentileCurve.class, read);
        assertEquals(20.25, read.quantile(0.1), 1e-9);
        assertEquals(30.27, read.median(), 1e-9);
        assertEquals(105.2, read.quantile(0.9), 1e-9);
    }

    @Test
    void percentiles_of_credits_are_normal_through_the_outermost() {
        Distribution alone = read(Printed.of(SpreadKind.P5_P95).low(-3).high(1));
        assertEquals(-1, alone.mean(), 1e-12);
        assertEquals(-3, alone.quantile(0.05), 1e-12);
        assertEquals(1, alone.quantile(0.95), 1e-12);

        Distribution withMedian =
                read(Printed.of(SpreadKind.P5_P95).median(-0.5).low(-3).high(1));
        assertInstanceOf(Normal.class, withMedian);
        assertEquals(-0.5, withMedian.median(), 0.0);
    }

    @Test
    void three_percentiles_are_a_curve_and_two_a_lognormal() {
        Printed three = Printed.of(SpreadKind.PERCENTILES)
                .percentile(0.25, 2)
                .percentile(0.5, 3)
                .percentile(0.75, 7);
        assertInstanceOf(PercentileCurve.class, read(three));
        assertEquals(7, read(three).quantile(0.75), 1e-9);

        Printed two = Printed.of(SpreadKind.PERCENTILES).percentile(0.25, 2).percentile(0.75, 7);
        assertInstanceOf(Lognormal.class, read(two));
        assertEquals(2, read(two).quantile(0.25), 1e-9);

        assertEquals(3, read(two.median(3)).median(), 1e-9, "a median beside them is one more percentile");
    }

    @Test
    void a_range_with_a_central_value_is_triangular() {
        assertEquals(
                new Triangular(1, 2, 5),
                read(Printed.of(SpreadKind.RANGE).value(2).low(1).high(5)));
    }

    @Test
    void a_range_alone_is_log_uniform_or_uniform_where_it_reaches_zero() {
        assertEquals(
                new LogUniform(1, 5), read(Printed.of(SpreadKind.RANGE).low(1).high(5)));
        assertEquals(new Uniform(0, 5), read(Printed.of(SpreadKind.RANGE).low(0).high(5)));
        assertEquals(
                new Uniform(-1, 5), read(Printed.of(SpreadKind.RANGE).low(-1).high(5)));
    }

    @ParameterizedTest
    @EnumSource(names = {"CI95", "P5_P95", "P10_P90", "RANGE"})
    void limits_that_coincide_are_a_constant(SpreadKind kind) {
        assertEquals(new Constant(4), read(Printed.of(kind).low(4).high(4)));
    }

    @Test
    void a_number_alone_gets_the_default_spread() {
        assertEquals(
                Lognormal.ofMedianAndGsd(8, DEFAULT_GSD),
                read(Printed.of(SpreadKind.NONE).value(8)));
        assertEquals(new Constant(0), read(Printed.of(SpreadKind.NONE).value(0)));
    }

    /** Coefficient of variation of a lognormal: √(exp(ln²g) − 1). */
    @Test
    void a_credit_alone_gets_the_same_relative_spread_as_a_normal() {
        Normal read =
                assertInstanceOf(Normal.class, read(Printed.of(SpreadKind.NONE).value(-8)));

        assertEquals(-8, read.mean(), 0.0);
        assertEquals(8 * Math.sqrt(Math.exp(Math.pow(Math.log(1.5), 2)) - 1), read.sd(), 1e-12);
    }

    @Test
    void what_is_missing_is_named() {
        refused("spread sd needs value and high", Printed.of(SpreadKind.SD).high(3));
        refused("spread se needs value and high", Printed.of(SpreadKind.SE).value(3));
        refused(
                "spread ci95 needs low and high",
                Printed.of(SpreadKind.CI95).value(3).low(1));
        refused(
                "spread p5-p95 needs low and high",
                Printed.of(SpreadKind.P5_P95).high(1));
        refused("spread p10-p90 needs low and high", Printed.of(SpreadKind.P10_P90));
        refused(
                "spread percentiles needs at least two percentiles",
                Printed.of(SpreadKind.PERCENTILES).percentile(0.5, 2));
        refused("spread range needs low and high", Printed.of(SpreadKind.RANGE).value(3));
        refused("spread none needs value", Printed.of(SpreadKind.NONE));
    }

    @Test
    void what_contradicts_itself_is_refused() {
        refused(
                "spread sd must be zero or more and finite, not -1.0",
                Printed.of(SpreadKind.SD).value(4).high(3));
        refused(
                "spread range: value 9.0 lies outside 1.0 to 5.0",
                Printed.of(SpreadKind.RANGE).value(9).low(1).high(5));
        refused(
                "spread ci95: value 0.5 lies outside 1.0 to 5.0",
                Printed.of(SpreadKind.CI95).value(0.5).low(1).high(5));
        refused(
                "spread p10-p90: percentile values must not fall, but 5.0 follows 9.0",
                Printed.of(SpreadKind.P10_P90).median(9).low(1).high(5));
        refused(
                "spread percentiles: percentile values must not fall, but 1.0 follows 2.0",
                Printed.of(SpreadKind.PERCENTILES).percentile(0.1, 2).percentile(0.9, 1));
    }

    @Test
    void a_default_spread_below_one_is_refused_even_where_it_is_not_needed() {
        assertThrows(
                IllegalArgumentException.class,
                () -> SpreadReading.read(
                        Printed.of(SpreadKind.RANGE).low(1).high(5).spread(), 0.9));
    }

    @Test
    void a_printed_number_must_be_a_number_and_its_limits_in_order() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Printed.of(SpreadKind.NONE).value(Double.NaN).spread());
        assertThrows(
                IllegalArgumentException.class,
                () -> Printed.of(SpreadKind.RANGE).low(Double.NaN).spread());
        assertThrows(
                IllegalArgumentException.class,
                () -> Printed.of(SpreadKind.RANGE)
                        .high(Double.POSITIVE_INFINITY)
                        .spread());
        assertThrows(
                IllegalArgumentException.class,
                () -> Printed.of(SpreadKind.PERCENTILES).percentile(5, 2).spread());
        assertThrows(
                IllegalArgumentException.class,
                () -> Printed.of(SpreadKind.PERCENTILES)
                        .percentile(0.5, Double.NaN)
                        .spread());
        assertEquals(
                "low 3.0 must not be above high 2.0",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Printed.of(SpreadKind.RANGE)
                                        .low(3)
                                        .high(2)
                                        .spread())
                        .getMessage());
    }

    @Test
    void a_printed_number_keeps_its_own_copy_of_the_percentiles() {
        SortedMap<Double, Double> points = new TreeMap<>();
        points.put(0.5, 2.0);
        PublishedSpread spread = Printed.of(SpreadKind.PERCENTILES).spreadWith(points);
        points.put(0.9, 4.0);

        assertEquals(1, spread.percentiles().size());
        assertThrows(
                UnsupportedOperationException.class, () -> spread.percentiles().put(0.1, 1.0));
    }

    @ParameterizedTest
    @EnumSource(SpreadKind.class)
    void every_kind_is_found_by_its_word(SpreadKind kind) {
        assertEquals(Optional.of(kind), SpreadKind.of(kind.id()));
    }

    @Test
    void an_unknown_word_is_no_kind() {
        assertEquals(Optional.empty(), SpreadKind.of("SD"));
        assertEquals(Optional.empty(), SpreadKind.of("variance"));
    }

    private static Distribution read(Printed printed) {
        return SpreadReading.read(printed.spread(), DEFAULT_GSD);
    }

    private static void refused(String message, Printed printed) {
        assertEquals(
                message,
                assertThrows(IllegalArgumentException.class, () -> read(printed))
                        .getMessage());
    }

    /** Two inputs of a derivation say nothing of its method: ln GSD² = (ln(0.45/0.41))²/12 + (ln 1.219)². */
    @Test
    void a_range_of_inputs_is_widened_by_the_spread_of_a_number_alone() {
        Distribution read = SpreadReading.read(
                Printed.of(SpreadKind.INPUT_RANGE).low(0.41).high(0.45).spread(), 1.219);
        assertEquals(Math.sqrt(0.41 * 0.45), read.median(), 1e-12);
        assertEquals(Math.sqrt(0.0931 * 0.0931 / 12 + 0.1980 * 0.1980), read.lnSd(), 1e-4);
    }
}
