package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class FractionReadingTest {
    private static final double DEFAULT_GSD = 1.2;

    @Test
    void a_fraction_with_an_sd_is_beta_by_the_method_of_moments() {
        assertEquals(
                BetaFraction.ofMeanAndSd(0.55, 0.60 - 0.55),
                read(Printed.of(SpreadKind.SD).value(0.55).high(0.60)));
        assertInstanceOf(
                BetaFraction.class, read(Printed.of(SpreadKind.SE).value(0.97).high(1.01)));
        assertEquals(
                new Constant(0.4), read(Printed.of(SpreadKind.SD).value(0.4).high(0.4)));
    }

    @Test
    void a_fraction_alone_is_lognormal_cut_off_at_one() {
        Distribution read = read(Printed.of(SpreadKind.NONE).value(0.8));

        assertEquals(new LognormalBelowOne(Lognormal.ofMedianAndGsd(0.8, 1.2)), read);
        assertEquals(1, read.quantile(1), 1e-9);
        assertTrue(read.median() < 0.8, "cutting off the top lowers the median");
    }

    /** Closed form: P(X ≤ x | X ≤ 1) = F(x)/F(1). */
    @Test
    void what_is_left_below_one_keeps_its_proportions() {
        Lognormal whole = Lognormal.ofMedianAndGsd(0.8, 1.2);
        double kept = StandardNormal.probabilityBelow(-whole.mu() / whole.sigma());

        assertEquals(whole.quantile(0.3 * kept), new LognormalBelowOne(whole).quantile(0.3), 1e-12);
    }

    @Test
    void exactly_all_and_exactly_nothing_are_certain() {
        assertEquals(new Constant(1), read(Printed.of(SpreadKind.NONE).value(1)));
        assertEquals(new Constant(0), read(Printed.of(SpreadKind.NONE).value(0)));
        assertEquals(
                new Constant(0.6),
                SpreadReading.readFraction(
                        Printed.of(SpreadKind.NONE).value(0.6).spread(), 1));
    }

    @Test
    void a_range_within_the_bounds_is_read_unchanged() {
        assertEquals(
                new Triangular(0.5, 0.55, 0.62),
                read(Printed.of(SpreadKind.RANGE).value(0.55).low(0.5).high(0.62)));
        assertEquals(
                new LogUniform(0.5, 0.62),
                read(Printed.of(SpreadKind.RANGE).low(0.5).high(0.62)));
    }

    @Test
    void no_draw_of_a_fraction_leaves_zero_and_one() {
        double[] draws = new double[20_000];
        double[] scores = Draws.scores("fraction", 1, draws.length);
        for (Printed printed : List.of(
                Printed.of(SpreadKind.SD).value(0.9).high(1.1),
                Printed.of(SpreadKind.CI95).low(0.7).high(1.05),
                Printed.of(SpreadKind.CI95).low(-0.1).high(0.5),
                Printed.of(SpreadKind.P5_P95).low(0.5).high(0.95),
                Printed.of(SpreadKind.P10_P90).median(0.9).low(0.5).high(0.95),
                Printed.of(SpreadKind.PERCENTILES)
                        .percentile(0.1, 0.5)
                        .percentile(0.5, 0.8)
                        .percentile(0.75, 0.99),
                Printed.of(SpreadKind.RANGE).low(0).high(1),
                Printed.of(SpreadKind.NONE).value(0.99))) {
            read(printed).fill(scores, draws);
            for (double draw : draws) {
                assertTrue(draw >= 0 && draw <= 1, printed + " drew " + draw);
            }
        }
    }

    @Test
    void capping_leaves_the_published_percentiles_where_they_are() {
        Distribution read = read(Printed.of(SpreadKind.P5_P95).low(0.5).high(0.95));

        assertInstanceOf(CappedFraction.class, read);
        assertEquals(0.5, read.quantile(0.05), 1e-12);
        assertEquals(0.95, read.quantile(0.95), 1e-12);
        assertEquals(1, read.quantile(0.999), 0.0);
    }

    @Test
    void a_number_that_is_no_fraction_is_refused() {
        refused(
                "a fraction must be within 0 and 1, but value is 1.2",
                Printed.of(SpreadKind.NONE).value(1.2));
        refused(
                "a fraction must be within 0 and 1, but high is 55.0",
                Printed.of(SpreadKind.RANGE).low(0.5).high(55));
        refused(
                "a fraction must be within 0 and 1, but low is -0.5",
                Printed.of(SpreadKind.P5_P95).low(-0.5).high(0.5));
        refused(
                "a fraction must be within 0 and 1, but percentile value is 2.0",
                Printed.of(SpreadKind.PERCENTILES).percentile(0.1, 0.5).percentile(0.9, 2));
        refused("spread sd needs value and high", Printed.of(SpreadKind.SD).value(0.5));
        refused("spread none needs value", Printed.of(SpreadKind.NONE));
    }

    private static Distribution read(Printed printed) {
        return SpreadReading.readFraction(printed.spread(), DEFAULT_GSD);
    }

    private static void refused(String message, Printed printed) {
        assertEquals(
                message,
                assertThrows(IllegalArgumentException.class, () -> read(printed))
                        .getMessage());
    }
}
