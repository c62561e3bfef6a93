package org.scalepan.ask.compare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.Compared.SAMPLING;
import static org.scalepan.ask.Compared.compare;
import static org.scalepan.ask.Compared.versus;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.InventedResults;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sampling;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.LandUseChange;
import org.scalepan.literature.PairedEvidence;
import org.scalepan.literature.PairedStudy;
import org.scalepan.uncertainty.Summary;

/** Products beside a reference on one basis. */
class ComparisonTest {
    private static final Library LIBRARY = Libraries.bundled();

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"mealworm, beef, ghg", "mealworm, milk, land", "chicken, pork, energy", "pulses, egg, ghg"})
    void the_ratio_of_a_to_b_is_the_inverse_of_b_to_a(String a, String b, String indicator) {
        Asked asked = Asked.of(LIBRARY).indicator(indicator);
        Ratio forth = versus(LIBRARY, asked, SAMPLING, a, b);
        Ratio back = versus(LIBRARY, asked, SAMPLING, b, a);
        assertEquals(1, forth.timesLess().median() * back.timesLess().median(), 1e-12);
        assertEquals(1, forth.timesLess().low() * back.timesLess().high(), 1e-3, "ends are interpolated");
        assertEquals(
                1,
                forth.less().orElseThrow().value() + back.less().orElseThrow().value(),
                1e-12);
        assertEquals(forth.timesLess().median(), back.share().median(), 1e-12);
    }

    @Test
    void draw_by_draw_the_two_ratios_multiply_to_one() {
        Asked asked = Asked.of(LIBRARY);
        Comparison one = compare(LIBRARY, asked, SAMPLING, "mealworm", "beef");
        var mealworm = one.items().get(0).estimate().footprint().orElseThrow();
        var beef = one.reference().footprint().orElseThrow();
        double[] forth = beef.dividedBy(mealworm);
        double[] back = mealworm.dividedBy(beef);
        double[] products = new double[forth.length];
        double[] ones = new double[forth.length];
        for (int i = 0; i < forth.length; i++) {
            products[i] = forth[i] * back[i];
            ones[i] = 1;
        }
        assertArrayEquals(ones, products, 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"beef", "mealworm", "milk", "shrimp"})
    void two_estimates_of_one_product_share_every_draw_so_that_their_ratio_is_exactly_1(String product) {
        Comparison comparison = compare(LIBRARY, Asked.of(LIBRARY), SAMPLING, product, product);
        assertTrue(comparison.items().get(0).versus().isEmpty(), "a ratio to itself says nothing and is not given");

        Ratio self = Ratio.between(
                        comparison.reference(), comparison.items().get(0).estimate(), 0.9)
                .orElseThrow();
        assertEquals(1, self.timesLess().low());
        assertEquals(1, self.timesLess().median());
        assertEquals(1, self.timesLess().high());
        assertEquals(1, self.timesLess().mean());
        assertEquals(0.5, self.less().orElseThrow().value());
    }

    @Test
    void the_same_question_gives_the_same_numbers_to_the_last_bit() {
        Ratio first = versus(LIBRARY, Asked.of(LIBRARY), SAMPLING, "mealworm", "beef");
        Ratio second = versus(Libraries.readAgain(), Asked.of(LIBRARY), SAMPLING, "mealworm", "beef");
        assertEquals(first, second);
    }

    @Test
    void another_seed_gives_other_numbers_within_the_monte_carlo_error() {
        Summary one =
                versus(LIBRARY, Asked.of(LIBRARY), SAMPLING, "mealworm", "beef").timesLess();
        for (long seed = 2; seed <= 6; seed++) {
            Summary other = versus(LIBRARY, Asked.of(LIBRARY), new Sampling(0.9, 10_001, seed), "mealworm", "beef")
                    .timesLess();
            assertNotEquals(one.median(), other.median());
            double error = Math.hypot(one.medianStandardError(), other.medianStandardError());
            assertEquals(one.median(), other.median(), 3.5 * error, "seed " + seed);
            assertTrue(error < 0.02 * one.median(), "the error itself is small: " + error);
        }
    }

    /**
     * Two invented lognormals: 95 % intervals 1 to 4 and 4 to 9, so medians 2 and 6, ln-sd ln(4)/3.92 = 0.35365 and ln(2.25)/3.92
     * = 0.20687. The ratio is lognormal: median 3, ln-sd 0.40971, p5 3·exp(−1.64485·0.40971) = 1.5291, p95 5.8856, mean
     * 3·exp(0.40971²/2) = 3.2627; P(ratio > 1) = Φ(ln 3 / 0.40971) = Φ(2.6814) = 0.99633.
     */
    @Test
    void the_ratio_of_two_lognormals_meets_its_closed_form() {
        Library library = new InventedResults(folder)
                .ci95("cockroach", "oonincx-2010", 1, 4)
                .ci95("sun-beetle", "dreyer-2021", 4, 9)
                .library();
        Asked live = Asked.of(library).per(FunctionalUnit.KG_LIVE).of(IntervalOf.MEAN);
        Ratio versus = versus(library, live, new Sampling(0.9, 100_001, 1), "cockroach", "sun-beetle");
        assertEquals(3, versus.timesLess().median(), 0.02);
        assertEquals(1.5291, versus.timesLess().low(), 0.02);
        assertEquals(5.8856, versus.timesLess().high(), 0.08);
        assertEquals(3.2627, versus.timesLess().mean(), 0.02);
        assertEquals(0.99633, versus.less().orElseThrow().value(), 0.001);
    }

    @Test
    void a_median_that_is_read_from_a_distribution_has_no_monte_carlo_error_but_that_of_what_is_given() {
        // Drawn, it would have one of m·s·√(π/2)/√n = 3 x 0.40971 x 1.25331 / 316.2 = 0.00487.
        Library library = new InventedResults(folder)
                .ci95("cockroach", "oonincx-2010", 1, 4)
                .ci95("sun-beetle", "dreyer-2021", 4, 9)
                .library();
        Asked live = Asked.of(library).per(FunctionalUnit.KG_LIVE);
        Summary ratio = versus(library, live, new Sampling(0.9, 100_001, 1), "cockroach", "sun-beetle")
                .timesLess();
        assertEquals(0, ratio.medianStandardError(), 1e-6);
    }

    /** Property: twice every published number is twice the footprint, in every draw. */
    @ParameterizedTest
    @CsvSource({"mealworm, kg-protein", "beef, kg-edible", "milk, kg-protein"})
    void doubling_every_result_of_a_product_doubles_its_footprint(String product, String per) {
        OwnFolder own = new OwnFolder(folder);
        for (Row row : LIBRARY.table("results").rows()) {
            boolean narrower = LIBRARY.withNarrower(LIBRARY.products().get(product)).stream()
                    .anyMatch(one -> one.id().equals(row.text("product")));
            if (narrower && row.text("indicator").equals("ghg")) {
                own.rowLike("results", row.text("id"), doubled(row));
            }
        }
        Asked asked = Asked.of(LIBRARY).per(FunctionalUnit.of(per).orElseThrow());
        double[] once = draws(LIBRARY, asked, product);
        double[] twice = draws(own.library(), asked, product);
        for (int i = 0; i < once.length; i++) {
            assertEquals(2, twice[i] / once[i], 1e-9, "draw " + i);
        }
    }

    private static double[] draws(Library library, Asked asked, String product) {
        return Estimating.estimate(library, asked.item(product), asked.basis(), SAMPLING)
                .footprint()
                .orElseThrow()
                .draws();
    }

    private static Map<String, String> doubled(Row row) {
        Map<String, String> cells = new HashMap<>();
        for (String column : List.of("value", "low", "high", "p5", "p10", "p50", "p90", "p95")) {
            row.number(column).ifPresent(number -> cells.put(column, Double.toString(2 * number)));
        }
        return cells;
    }

    /**
     * Oonincx & de Boer 2012 compare mealworms with the range of livestock studies of de Vries & de Boer 2010: beef has 5.52 to
     * 12.51 times the greenhouse gases per kg protein at the farm gate.
     */
    @Test
    void mealworm_against_beef_lies_in_the_published_band_pooled_and_paired() {
        Comparison comparison = compare(LIBRARY, Asked.of(LIBRARY), SAMPLING, "mealworm", "beef");
        double pooled =
                comparison.items().get(0).versus().orElseThrow().timesLess().median();
        assertTrue(pooled > 5.5 && pooled < 12.5, "times less, pooled: " + pooled);
        List<PairedStudy> paired = comparison.items().get(0).paired().ratios();
        assertEquals(1, paired.size());
        assertEquals("oonincx-deboer-2012", paired.get(0).study());
        assertEquals(PairedStudy.Origin.PRINTED, paired.get(0).origin());
        // A range without a centre is read log-uniform, so its centre is √(5.52 x 12.51) = 8.310.
        assertEquals(8.310, paired.get(0).central(), 0.001, "times less, paired");
    }

    /** Invented results without uncertainty, of two studies that assessed both. */
    @Test
    void paired_studies_without_any_uncertainty_are_shown_and_not_pooled(@TempDir Path folder) {
        InventedResults invented = new InventedResults(folder);
        for (String study : List.of("oonincx-2010", "dreyer-2021")) {
            invented.certain("cockroach", study, 2).certain("sun-beetle", study, 8);
        }
        Library library = invented.library();
        PairedEvidence paired = compare(
                        library, Asked.of(library).per(FunctionalUnit.KG_LIVE), SAMPLING, "cockroach", "sun-beetle")
                .items()
                .get(0)
                .paired();
        assertEquals(2, paired.ratios().size());
        assertTrue(paired.pooled().isEmpty());
    }

    @Test
    void one_paired_study_is_not_pooled_with_itself() {
        assertTrue(compare(LIBRARY, Asked.of(LIBRARY), SAMPLING, "mealworm", "beef")
                .items()
                .get(0)
                .paired()
                .pooled()
                .isEmpty());
    }

    @Test
    void studies_that_assessed_both_products_are_paired_though_no_ratio_is_printed() {
        // Leip et al. 2010 count land-use change, so they stand beside others only where it is asked for.
        List<PairedStudy> ratios = compare(
                        LIBRARY, Asked.of(LIBRARY).luc(LandUseChange.INCLUDE), SAMPLING, "chicken", "pork")
                .items()
                .get(0)
                .paired()
                .ratios();
        List<String> studies = ratios.stream().map(PairedStudy::study).sorted().toList();
        // de Vries & de Boer 2010 give ranges over other people's studies: that is not one method, so it makes no pair.
        assertEquals(List.of("arrieta-2019", "leip-jrc-2010", "poore-nemecek-2018"), studies);
        // Leip et al. 2010, kg CO2e per kg carcass: pork 7.5, poultry 4.9. Pork 0.73 bone-free with 0.1618 protein;
        // chicken 0.68 with 0.186: (7.5/0.73/0.1618) / (4.9/0.68/0.186) = 1.639.
        double leip = ratios.stream()
                .filter(ratio -> ratio.study().equals("leip-jrc-2010"))
                .findFirst()
                .orElseThrow()
                .central();
        assertEquals(1.639, leip, 0.01, "pork over chicken");
    }

    @Test
    void where_one_side_has_no_evidence_there_is_no_ratio_but_there_may_be_a_paired_one() {
        // The ratio of mealworm to beef is printed at the farm gate; of palm weevil nothing is.
        Comparison.ComparedProduct weevil = compare(LIBRARY, Asked.of(LIBRARY), SAMPLING, "palm-weevil", "beef")
                .items()
                .get(0);
        assertTrue(weevil.versus().isEmpty());
        assertTrue(weevil.paired().ratios().isEmpty());
        assertEquals(0, weevil.estimate().studies());
        Asked meal = Asked.of(LIBRARY).at("processing-gate").grade(Grade.SECONDARY);
        Comparison.ComparedProduct fishmeal = compare(
                        LIBRARY, meal, SAMPLING, "black-soldier-fly:meal", "fishmeal-blue-whiting")
                .items()
                .get(0);
        assertTrue(fishmeal.versus().isEmpty());
        assertEquals(1, fishmeal.paired().ratios().size());
        assertTrue(fishmeal.paired().ratios().get(0).central() < 1, "here the insect meal is the worse one");
    }

    @Test
    void where_there_is_no_evidence_what_is_published_elsewhere_is_told() {
        Asked retail = Asked.of(LIBRARY).at("retail");
        PublishedEstimate mealworm = Estimating.estimate(LIBRARY, retail.item("mealworm"), retail.basis(), SAMPLING);
        assertTrue(mealworm.footprint().isEmpty());
        assertTrue(mealworm.elsewhere().stream()
                .anyMatch(item -> item.result().id().equals("oonincx-deboer-2012.mealworm.ghg.kg-protein")
                        && item.reason().startsWith("its boundary is farm-gate")));
        assertTrue(mealworm.elsewhere().stream()
                .anyMatch(item -> item.reason().equals("it is about another indicator, land")));
    }

    /** Oonincx et al. 2010 print 1.57 with a standard deviation of 1.80 g CO2e per kg gain for the gases of house crickets. */
    @Test
    void a_result_whose_own_interval_includes_zero_gives_no_ratio() {
        Comparison.ComparedProduct cricket = compare(
                        LIBRARY,
                        Asked.of(LIBRARY).at("animal").per(FunctionalUnit.KG_LIVE),
                        SAMPLING,
                        "house-cricket",
                        "pork")
                .items()
                .get(0);
        assertTrue(cricket.estimate().footprint().isPresent());
        assertTrue(cricket.versus().isEmpty());
        assertEquals(
                NoRatio.INTERVAL_INCLUDES_ZERO, cricket.estimate().noRatio().orElseThrow());
    }

    /** Of goat milk at retail only assessments with land-use change are held. */
    @Test
    void a_ratio_with_a_bound_is_a_bound_and_has_no_share_of_draws() {
        Comparison comparison = compare(LIBRARY, Asked.of(LIBRARY).at("retail"), SAMPLING, "goat-milk", "beef");
        Ratio ratio = comparison.items().get(0).versus().orElseThrow();
        assertEquals(Bound.AT_LEAST, ratio.bound(), "beef over what goat milk causes at most");
        assertTrue(ratio.less().isEmpty());
        Comparison with = comparison.underOtherLandUse().orElseThrow();
        assertEquals(Bound.EXACT, with.items().get(0).versus().orElseThrow().bound());
    }

    @Test
    void land_has_no_second_state_of_land_use_change() {
        assertTrue(compare(LIBRARY, Asked.of(LIBRARY).indicator("land"), SAMPLING, "egg", "beef")
                .underOtherLandUse()
                .isEmpty());
    }
}
