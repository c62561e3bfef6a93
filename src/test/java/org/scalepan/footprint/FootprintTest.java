package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.factors.Boundary;
import org.scalepan.uncertainty.Summary;

/** A footprint is a distribution; two of one question are compared draw by draw. All figures are invented. */
class FootprintTest {
    private static Footprint of(double... draws) {
        return new Footprint(
                "ghg", "kg CO2e", FunctionalUnit.KG_PROTEIN, Boundary.FARM_GATE, Optional.of("ar6-100"), draws);
    }

    @Test
    void it_names_its_comparison_basis() {
        Footprint footprint = of(1);

        assertEquals("ghg", footprint.indicator());
        assertEquals("kg CO2e", footprint.unit());
        assertEquals(FunctionalUnit.KG_PROTEIN, footprint.per());
        assertEquals(Boundary.FARM_GATE, footprint.boundary());
        assertEquals(Optional.of("ar6-100"), footprint.warmingSet());
    }

    /** Draw by draw 4 of 10, 9 of 3 and 5 of 10: a good year of the one is a good year of the other. */
    @Test
    void it_is_divided_by_another_draw_by_draw_and_not_middle_by_middle() {
        assertArrayEquals(new double[] {0.4, 3, 0.5}, of(4, 9, 5).dividedBy(of(10, 3, 10)), 1e-12);
    }

    @Test
    void a_factor_on_both_sides_cancels_out() {
        Summary.OfRatio ratio = of(2, 20, 200).over(of(1, 10, 100)).bothWays(0.9);

        assertEquals(2, ratio.forth().low(), 1e-12);
        assertEquals(2, ratio.forth().high(), 1e-12);
        assertEquals(0.5, ratio.back().median(), 1e-12);
    }

    @Test
    void footprints_of_different_questions_are_not_divided() {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> of(1, 2, 3).dividedBy(of(1, 2)));

        assertEquals("footprints of different questions: 3 draws and 2", refusal.getMessage());
        assertThrows(
                IllegalArgumentException.class, () -> of(1, 2).over(of(1, 2, 3)).bothWays(0.9));
    }

    private static Footprint measured(String indicator, String unit, FunctionalUnit per) {
        return new Footprint(indicator, unit, per, Boundary.FARM_GATE, Optional.empty(), new double[] {1, 2, 3});
    }

    /** Kilograms of CO2e over square metres, or a figure per kilogram of protein over one per kilogram of product, are no valid ratios. */
    @Test
    void footprints_in_different_units_are_neither_divided_nor_compared() {
        Footprint ghg = of(1, 2, 3);
        List<Footprint> others = List.of(
                measured("land", "kg CO2e", FunctionalUnit.KG_PROTEIN),
                measured("ghg", "m2*yr", FunctionalUnit.KG_PROTEIN),
                measured("ghg", "kg CO2e", FunctionalUnit.KG_PRODUCT));

        for (Footprint other : others) {
            assertThrows(IllegalArgumentException.class, () -> ghg.dividedBy(other));
            assertThrows(IllegalArgumentException.class, () -> other.over(ghg));
        }
        assertEquals(
                "footprints of different questions: ghg in kg CO2e per kg-protein and land in kg CO2e per kg-protein",
                assertThrows(IllegalArgumentException.class, () -> ghg.dividedBy(others.get(0)))
                        .getMessage());
        assertEquals(
                0.5,
                measured("ghg", "kg CO2e", FunctionalUnit.KG_PROTEIN)
                        .over(ghg)
                        .more()
                        .value());
    }

    /** Below in two of four draws, equal in one, which counts half. */
    @Test
    void the_probability_of_being_less_counts_draws() {
        assertEquals(2.5 / 4, of(2, 3, 5, 6).over(of(1, 2, 5, 7)).more().value(), 1e-12);
    }

    @Test
    void median_and_interval_are_those_of_the_draws() {
        double[] draws = new double[1001];
        for (int i = 0; i < draws.length; i++) {
            draws[i] = i;
        }
        Summary summary = of(draws).summary(0.9);

        assertEquals(500, summary.median(), 1e-9);
        assertEquals(50, summary.low(), 1);
        assertEquals(950, summary.high(), 1);
    }

    /** A ratio needs figures above zero on both sides; a footprint with a credit may have others. */
    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN})
    void one_draw_that_is_not_above_zero_makes_it_unfit_for_ratios(double draw) {
        assertTrue(of(1, 2, 0.001).isPositive());
        assertFalse(of(1, draw, 2).isPositive());
    }

    @Test
    void draws_are_handed_out_as_a_copy() {
        Footprint footprint = of(1, 2);
        footprint.draws()[0] = 99;

        assertArrayEquals(new double[] {1, 2}, footprint.draws());
    }
}
