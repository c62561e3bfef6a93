package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.uncertainty.Lognormal;
import org.scalepan.uncertainty.Summary;

/** Uncertainty of a footprint: first-order propagation (IPCC 2006, volume 1, chapter 3) and Monte Carlo, and where they must agree. */
class PropagationTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static Factor factor(String id, double median, double gsd) {
        return new Factor(id, Lognormal.ofMedianAndGsd(median, gsd));
    }

    private static SystemFootprint of(ActivityTerm... terms) {
        InventoryBuilder builder = new InventoryBuilder();
        for (ActivityTerm term : terms) {
            builder.flow(Stage.ENERGY, "line", Flux.CO2, term);
        }
        Output output = new Output(LIBRARY.products().get("mealworm"), "fresh", FunctionalUnit.KG_LIVE, 2, 0.5, "mass");
        return Tally.of(LIBRARY, builder.inventory("by hand", output)).system();
    }

    /** Equation 3.1: squared relative uncertainties of a product add up, whether a factor multiplies or divides. */
    @Test
    void in_a_product_squared_relative_uncertainties_add_up() {
        SystemFootprint system =
                of(ActivityTerm.of(10).times(factor("a", 2, 1.05)).over(factor("b", 4, 1.10)));

        assertEquals(10 * 2 / 4.0 * 0.5 / 2, system.firstOrder().value(), 1e-12);
        assertEquals(
                Math.hypot(Math.log(1.05), Math.log(1.10)), system.firstOrder().lnSd(), 1e-9);
    }

    /** Equation 3.2: for two equal lines of independent factors the relative uncertainty is smaller by the root of two. */
    @Test
    void in_a_sum_independent_relative_uncertainties_decrease() {
        SystemFootprint system = of(
                ActivityTerm.of(3).times(factor("a", 1, 1.08)),
                ActivityTerm.of(3).times(factor("b", 1, 1.08)));

        assertEquals(Math.log(1.08) / Math.sqrt(2), system.firstOrder().lnSd(), 1e-9);
    }

    /** The guidelines: inputs that are one and the same are fully correlated, so that the relative uncertainty does not decrease. */
    @Test
    void one_factor_in_two_lines_keeps_its_full_uncertainty() {
        Factor grid = factor("grid", 1, 1.08);
        SystemFootprint system =
                of(ActivityTerm.of(3).times(grid), ActivityTerm.of(5).times(grid));

        assertEquals(Math.log(1.08), system.firstOrder().lnSd(), 1e-9);
    }

    @Test
    void a_factor_that_divides_what_it_multiplied_leaves_no_uncertainty() {
        Factor density = factor("density", 0.8, 1.2);

        assertEquals(
                0,
                of(ActivityTerm.of(1).times(density).over(density)).firstOrder().lnSd(),
                1e-12);
    }

    static Stream<SystemFootprint> smallSpreads() {
        SplittableRandom random = new SplittableRandom(20);
        return Stream.generate(() -> randomSystem(random)).limit(8);
    }

    /** Several lines with shared factors, each with a spread of 2 to 12 %. */
    private static SystemFootprint randomSystem(SplittableRandom random) {
        List<Factor> factors = Stream.of("a", "b", "c", "d", "e")
                .map(id -> factor(id, 0.1 + 5 * random.nextDouble(), 1.02 + 0.10 * random.nextDouble()))
                .toList();
        ActivityTerm[] terms = new ActivityTerm[5];
        for (int i = 0; i < terms.length; i++) {
            ActivityTerm term = ActivityTerm.of(1 + 9 * random.nextDouble()).times(factors.get(random.nextInt(5)));
            Factor other = factors.get(random.nextInt(5));
            terms[i] = random.nextBoolean() ? term.times(other) : term.over(other);
        }
        return of(terms);
    }

    @ParameterizedTest
    @MethodSource("smallSpreads")
    void where_spreads_are_small_both_ways_agree_within_two_percent(SystemFootprint system) {
        Summary drawn = system.footprint(new CommonRandomNumbers(1, 100_000)).summary(0.9);
        FirstOrder first = system.firstOrder();

        assertEquals(drawn.median(), first.value(), 0.02 * drawn.median());
        assertEquals(drawn.low(), first.low(0.9), 0.02 * drawn.low());
        assertEquals(drawn.high(), first.high(0.9), 0.02 * drawn.high());
        double width = Math.log(drawn.high() / drawn.low());
        assertEquals(width, Math.log(first.high(0.9) / first.low(0.9)), 0.02 * width, "width of the interval");
    }

    @Test
    void a_whole_farm_with_the_spreads_of_the_library_agrees_roughly() {
        Inventory inventory = InsectRecordsFixture.of(LIBRARY, "mealworm", 1000)
                .in("kenya")
                .feed("wheat-bran", 2500)
                .feed("carrot", 1000)
                .energy("grid-electricity", 3000)
                .energy("diesel", 100)
                .inventory();
        SystemFootprint system =
                Tally.of(LIBRARY, inventory).per(FunctionalUnit.KG_PROTEIN).system();
        Summary drawn = system.footprint(new CommonRandomNumbers(1, 20_000)).summary(0.9);

        assertEquals(drawn.median(), system.firstOrder().value(), 0.05 * drawn.median());
        assertEquals(drawn.low(), system.firstOrder().low(0.9), 0.05 * drawn.low());
        assertEquals(drawn.high(), system.firstOrder().high(0.9), 0.05 * drawn.high());
    }

    @Test
    void the_interval_contains_the_value_and_widens_with_coverage() {
        FirstOrder first = of(ActivityTerm.of(1).times(factor("a", 1, 1.3))).firstOrder();

        assertTrue(first.low(0.95) < first.low(0.5) && first.low(0.5) < first.value());
        assertTrue(first.value() < first.high(0.5) && first.high(0.5) < first.high(0.95));
        // 95 % of a lognormal lie within GSD^1.96 either way.
        assertEquals(0.5 / 2 * Math.pow(1.3, 1.959964), first.high(0.95), 1e-6);
    }

    @Test
    void the_interval_of_a_credit_beyond_the_burden_is_in_order() {
        FirstOrder first = of(
                        ActivityTerm.of(-4).times(factor("a", 1, 1.3)),
                        ActivityTerm.of(1).times(factor("b", 1, 1.2)))
                .firstOrder();

        assertTrue(first.value() < 0);
        assertTrue(first.low(0.9) < first.value() && first.value() < first.high(0.9), first::toString);
    }

    private static SystemFootprint carried(FunctionalUnit from, FunctionalUnit to, ActivityTerm term) {
        InventoryBuilder builder = new InventoryBuilder();
        builder.flow(Stage.ENERGY, "line", Flux.CO2, term);
        Output output = new Output(LIBRARY.products().get("mealworm"), "fresh", from, 1, 1, "none");
        return Tally.of(LIBRARY, builder.inventory("by hand", output)).per(to).system();
    }

    /** The protein of mealworms, as the chain of units reads it (18.7 %, Finke 2002, without a printed spread). */
    private static Factor protein() {
        ChainStep.PublishedStep step = (ChainStep.PublishedStep)
                carried(FunctionalUnit.KG_EDIBLE, FunctionalUnit.KG_PROTEIN, ActivityTerm.of(1))
                        .chain()
                        .get(0);
        return new Factor(step.row().id(), step.factor().reading());
    }

    @Test
    void what_is_certain_per_kilogram_is_as_uncertain_per_kilogram_of_protein_as_the_protein_is() {
        FirstOrder edible = carried(FunctionalUnit.KG_EDIBLE, FunctionalUnit.KG_EDIBLE, ActivityTerm.of(1))
                .firstOrder();
        FirstOrder protein = carried(FunctionalUnit.KG_EDIBLE, FunctionalUnit.KG_PROTEIN, ActivityTerm.of(1))
                .firstOrder();

        assertEquals(0, edible.lnSd(), 0.0);
        assertTrue(protein().lnSd() > 0.01);
        assertEquals(protein().lnSd(), protein.lnSd(), 1e-12);
    }

    /** Guidelines: inputs that are one and the same are correlated; here they cancel, whichever way the chain is walked. */
    @Test
    void a_factor_in_both_farm_and_chain_cancels_out() {
        SystemFootprint down = carried(
                FunctionalUnit.KG_EDIBLE,
                FunctionalUnit.KG_PROTEIN,
                ActivityTerm.of(3).times(protein()));
        SystemFootprint up = carried(
                FunctionalUnit.KG_PROTEIN,
                FunctionalUnit.KG_EDIBLE,
                ActivityTerm.of(3).over(protein()));

        assertEquals(0, down.firstOrder().lnSd(), 1e-12);
        assertEquals(3, down.firstOrder().value(), 1e-6);
        assertEquals(0, up.firstOrder().lnSd(), 1e-12);
        assertEquals(3, up.firstOrder().value(), 1e-6);
    }
}
