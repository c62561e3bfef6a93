package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.footprint.FunctionalUnit.HUNDRED_G_PROTEIN;
import static org.scalepan.footprint.FunctionalUnit.KG_CARCASS;
import static org.scalepan.footprint.FunctionalUnit.KG_DRY_MATTER;
import static org.scalepan.footprint.FunctionalUnit.KG_EDIBLE;
import static org.scalepan.footprint.FunctionalUnit.KG_LIVE;
import static org.scalepan.footprint.FunctionalUnit.KG_PRODUCT;
import static org.scalepan.footprint.FunctionalUnit.KG_PROTEIN;
import static org.scalepan.footprint.FunctionalUnit.KG_QUALITY_PROTEIN;
import static org.scalepan.footprint.FunctionalUnit.LITRE;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;

/** The functional-unit chain: from the live animal to quality-corrected protein. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class UnitChainTest {
    /** Read for this class alone: a library caches its chains, and those of other tests would be returned. */
    private final Library library = Libraries.readAgain();

    /** A source that states no factor of its own. */
    private static final String NO_SOURCE = "some-study";

    /** A fraction without a spread is read as a lognormal cut off at 1, whose median is off in the seventh figure. */
    private static final double CUT_OFF = 1e-6;

    private UnitChain chain(String product, String form, String source) {
        return chain(product, form, source, ProteinBasis.CRUDE, true, Grade.MEMORY);
    }

    private UnitChain chain(
            String product, String form, String source, ProteinBasis protein, boolean capped, Grade lowest) {
        return UnitChain.of(library, library.products().get(product), form, source, protein, capped, lowest);
    }

    private static double times(UnitChain chain, FunctionalUnit from, FunctionalUnit to) {
        ChainPath path = chain.path(from, to);
        return assertInstanceOf(ChainPath.FoundPath.class, path, path::toString).steps().stream()
                .mapToDouble(ChainStep::multiplier)
                .reduce(1, (a, b) -> a * b);
    }

    private static String missing(UnitChain chain, FunctionalUnit from, FunctionalUnit to) {
        return assertInstanceOf(ChainPath.MissingConversion.class, chain.path(from, to))
                .text();
    }

    /**
     * Van Huis et al. 2013 (FAO Forestry Paper 171) print feed per kg live weight, the edible part and feed per kg edible; the
     * third follows from the first two to the rounding of print.
     */
    @ParameterizedTest
    @CsvSource({
        // kg feed per kg live, edible fraction, kg feed per kg edible
        "house-cricket, 1.7, 0.80,  2.1",
        "chicken,       2.5, 0.55,  4.5",
        "pork,          5,   0.55,  9.1",
        "beef,         10,   0.40, 25"
    })
    void feed_per_kilogram_edible_follows_from_feed_per_kilogram_live(
            String product, double perLive, double edible, double perEdible) {
        double ours = perLive * times(chain(product, "fresh", "van-huis-2013"), KG_LIVE, KG_EDIBLE);
        assertEquals(perLive / edible, ours, 1e-9, "kg feed per kg edible, by hand");
        assertEquals(perEdible, ours, 0.05, "kg feed per kg edible, as printed");
    }

    /** Thevenot et al. 2018: mealworm meal of 65 % protein at 3.8 kg CO2e per kg; by hand 3.8 / 0.65 = 5.846. */
    @Test
    void a_result_per_kilogram_of_meal_becomes_one_per_kilogram_of_its_protein() {
        double perProtein = 3.8 * times(chain("mealworm", "meal", "thevenot-2018"), KG_PRODUCT, KG_PROTEIN);
        assertEquals(5.846, perProtein, 0.001, "kg CO2e per kg protein");
    }

    @Test
    void meal_is_eaten_as_it_is_sold() {
        assertEquals(1, times(chain("mealworm", "meal", NO_SOURCE), KG_PRODUCT, KG_EDIBLE), "kg edible per kg meal");
    }

    @Test
    void a_hundred_grams_of_protein_are_a_tenth_of_a_kilogram_whatever_the_product() {
        assertEquals(0.1, times(chain("field-cricket", "fresh", NO_SOURCE), KG_PROTEIN, HUNDRED_G_PROTEIN));
        assertEquals(10, times(chain("fishmeal", "meal", NO_SOURCE), HUNDRED_G_PROTEIN, KG_PROTEIN));
    }

    /** Boulos et al. 2020: 5.33 for migratory locust, 5.41 for mealworm, 5.25 for house cricket; crude is 6.25. */
    @ParameterizedTest
    @CsvSource({"migratory-locust, 5.33, 1.17", "mealworm, 5.41, 1.16", "house-cricket, 5.25, 1.19"})
    void corrected_protein_raises_an_impact_by_crude_over_own_nitrogen_factor(
            String product, double factor, double printed) {
        UnitChain corrected = chain(product, "fresh", NO_SOURCE, ProteinBasis.CORRECTED, true, Grade.MEMORY);
        double raised = times(corrected, KG_PROTEIN, KG_PROTEIN);
        assertEquals(6.25 / factor, raised, 1e-9);
        assertEquals(printed, raised, 0.005);
    }

    @Test
    void corrected_protein_counts_along_the_whole_chain_and_leaves_other_units_alone() {
        UnitChain crude = chain("mealworm", "fresh", NO_SOURCE);
        UnitChain corrected = chain("mealworm", "fresh", NO_SOURCE, ProteinBasis.CORRECTED, true, Grade.MEMORY);
        for (FunctionalUnit unit : List.of(KG_PROTEIN, HUNDRED_G_PROTEIN, KG_QUALITY_PROTEIN)) {
            assertEquals(
                    times(crude, KG_LIVE, unit) * 6.25 / 5.41, times(corrected, KG_LIVE, unit), 1e-9, unit.words());
        }
        assertEquals(times(crude, KG_LIVE, KG_DRY_MATTER), times(corrected, KG_LIVE, KG_DRY_MATTER));
    }

    @Test
    void corrected_protein_lowers_the_impact_of_palm_weevil() {
        // Mba et al. 2018: 6.08 to 7.42, above 6.25 in the middle, so that corrected protein lowers the impact.
        UnitChain corrected = chain("palm-weevil", "fresh", NO_SOURCE, ProteinBasis.CORRECTED, true, Grade.MEMORY);
        assertEquals(6.25 / Math.sqrt(6.08 * 7.42), times(corrected, KG_PROTEIN, KG_PROTEIN), 1e-9);
    }

    @Test
    void corrected_protein_without_a_published_factor_is_refused() {
        UnitChain corrected = chain("tilapia", "fresh", NO_SOURCE, ProteinBasis.CORRECTED, true, Grade.MEMORY);
        assertEquals(
                "no way from kg live weight to kg protein for tilapia (fresh): no nitrogen-to-protein factor is published"
                        + " for it in this library",
                missing(corrected, KG_LIVE, KG_PROTEIN));
    }

    /** DIAAS: mealworm 0.89 (Hammer et al. 2023), raw ground beef 1.21 (Bailey et al. 2020). */
    @ParameterizedTest
    @CsvSource({"mealworm, true, 0.89", "mealworm, false, 0.89", "beef, true, 1.00", "beef, false, 1.21"})
    void quality_protein_counts_the_score_at_most_as_1_unless_asked_otherwise(
            String product, boolean capped, double counted) {
        UnitChain chain = chain(product, "fresh", NO_SOURCE, ProteinBasis.CRUDE, capped, Grade.MEMORY);
        assertEquals(1 / counted, times(chain, KG_PROTEIN, KG_QUALITY_PROTEIN), 1e-9);
    }

    @Test
    void a_capped_score_is_capped_in_every_draw() {
        ChainPath.FoundPath path =
                (ChainPath.FoundPath) chain("beef", "fresh", NO_SOURCE).path(KG_PROTEIN, KG_QUALITY_PROTEIN);
        double[] values = ones(2_000);
        path.steps().forEach(step -> step.apply(values, new CommonRandomNumbers(1, values.length)));
        assertEquals(1, Arrays.stream(values).min().getAsDouble(), 1e-12, "a score above 1 must not lower the impact");
    }

    /** The national composition table prints milk protein with 6.38: 3.15 g are 3.15 x 6.25 / 6.38 = 3.086 g N x 6.25. */
    @Test
    void milk_protein_printed_with_its_own_factor_becomes_crude() {
        assertEquals(1 / 0.0308582, times(chain("milk", "fresh", NO_SOURCE), KG_EDIBLE, KG_PROTEIN), 1e-3);
        UnitChain corrected = chain("milk", "fresh", NO_SOURCE, ProteinBasis.CORRECTED, true, Grade.MEMORY);
        assertEquals(1 / 0.0315, times(corrected, KG_EDIBLE, KG_PROTEIN), 1e-3, "corrected, it is as printed");
    }

    @Test
    void a_litre_of_milk_weighs_more_than_a_kilogram() {
        // 1.03 kg per litre, common practice, no source.
        assertEquals(1 / 1.03, times(chain("milk", "fresh", NO_SOURCE), LITRE, KG_PRODUCT), 1e-9);
    }

    /** Poore & Nemecek 2018, Data S2: 199.4 g protein per kg of beef from beef herds, used for that study's own results. */
    @Test
    void a_study_is_converted_with_its_own_protein_content_which_adds_no_uncertainty() {
        UnitChain own = chain("beef-beef-herd", "fresh", "poore-nemecek-2018");
        assertEquals(1 / 0.1994, times(own, KG_EDIBLE, KG_PROTEIN), 1e-9);
        double[] values = ones(1_000);
        ((ChainPath.FoundPath) own.path(KG_EDIBLE, KG_PROTEIN))
                .steps()
                .forEach(step -> step.apply(values, new CommonRandomNumbers(1, values.length)));
        assertEquals(values[0], values[999], "no spread");
    }

    @Test
    void another_study_of_the_same_herd_uses_the_content_of_beef() {
        UnitChain other = chain("beef-beef-herd", "fresh", NO_SOURCE);
        assertEquals(1 / 0.1732, times(other, KG_EDIBLE, KG_PROTEIN), CUT_OFF);
        ChainStep.PublishedStep step =
                (ChainStep.PublishedStep) ((ChainPath.FoundPath) other.path(KG_EDIBLE, KG_PROTEIN))
                        .steps()
                        .get(0);
        assertEquals("beef", step.row().product());
        double[] values = ones(1_000);
        step.apply(values, new CommonRandomNumbers(1, values.length));
        assertTrue(Arrays.stream(values).distinct().count() > 900, "a default factor is uncertain");
    }

    @Test
    void a_factor_of_the_narrower_product_is_never_used_for_the_broader() {
        Product beef = library.products().get("beef");
        assertTrue(library.withNarrower(beef).size() > 1);
        for (ChainStep step : ((ChainPath.FoundPath)
                        chain("beef", "fresh", "poore-nemecek-2018").path(KG_LIVE, KG_PROTEIN))
                .steps()) {
            assertEquals("beef", ((ChainStep.PublishedStep) step).row().product());
        }
    }

    @Test
    void no_factor_of_another_species_is_ever_used() {
        for (Product product : library.products().values()) {
            Set<String> own = new TreeSet<>(Set.of(product.id()));
            product.broader().ifPresent(own::add);
            for (CompositionRow row : rowsUsed(product)) {
                assertTrue(own.contains(row.product()), () -> product.id() + " converted with " + row.id());
                assertTrue(
                        row.use() == CompositionRow.RowUse.DEFAULT,
                        () -> product.id() + " converted with " + row.id() + ", which is not a default");
            }
        }
    }

    private List<CompositionRow> rowsUsed(Product product) {
        UnitChain chain = chain(product.id(), product.defaultForm(), NO_SOURCE);
        return Arrays.stream(FunctionalUnit.values())
                .flatMap(from -> Arrays.stream(FunctionalUnit.values()).map(to -> chain.path(from, to)))
                .filter(ChainPath.FoundPath.class::isInstance)
                .flatMap(path -> ((ChainPath.FoundPath) path).steps().stream())
                .filter(ChainStep.PublishedStep.class::isInstance)
                .map(step -> ((ChainStep.PublishedStep) step).row())
                .distinct()
                .collect(Collectors.toList());
    }

    @Test
    void a_factor_below_the_grade_asked_for_does_not_serve_and_the_refusal_says_so() {
        // That larvae of the housefly are eaten whole is from memory.
        UnitChain memory = chain("housefly", "fresh", NO_SOURCE);
        assertEquals(1, times(memory, KG_LIVE, KG_EDIBLE), CUT_OFF);
        UnitChain seen = chain("housefly", "fresh", NO_SOURCE, ProteinBasis.CRUDE, true, Grade.SECONDARY);
        assertEquals(
                "no way from kg live weight to kg edible product for housefly (fresh): this library has no edible fraction"
                        + " (edible-fraction per kg-live) for it of check grade secondary or better",
                missing(seen, KG_LIVE, KG_EDIBLE));
    }

    @Test
    void locust_has_no_edible_fraction_and_one_is_not_guessed() {
        assertEquals(
                "no way from kg live weight to kg edible product for migratory-locust (fresh): this library has no edible"
                        + " fraction (edible-fraction per kg-live) for it",
                missing(chain("migratory-locust", "fresh", NO_SOURCE), KG_LIVE, KG_EDIBLE));
    }

    @Test
    void two_missing_factors_are_both_named() {
        assertEquals(
                "no way from kg live weight to kg protein for migratory-locust (fresh): this library has no edible fraction"
                        + " (edible-fraction per kg-live) and no protein content (protein per kg-edible) for it",
                missing(chain("migratory-locust", "fresh", NO_SOURCE), KG_LIVE, KG_PROTEIN));
    }

    /** A hundred grams of protein are no further away than a kilogram of it: the definition between them is not missing. */
    @Test
    void what_is_true_by_definition_is_never_missing() {
        assertEquals(
                "no way from kg live weight to 100 g protein for migratory-locust (fresh): this library has no edible fraction"
                        + " (edible-fraction per kg-live) and no protein content (protein per kg-edible) for it",
                missing(chain("migratory-locust", "fresh", NO_SOURCE), KG_LIVE, HUNDRED_G_PROTEIN));
    }

    @ParameterizedTest
    @CsvSource({"house-cricket", "mealworm", "black-soldier-fly", "palm-weevil"})
    void insects_have_no_carcass(String insect) {
        assertEquals(
                "no way from kg live weight to kg carcass weight for " + insect
                        + " (fresh): insects have no carcass weight; ask per kg-live, kg-edible or kg-protein",
                missing(chain(insect, "fresh", NO_SOURCE), KG_LIVE, KG_CARCASS));
    }

    @Test
    void tilapia_without_a_protein_quality_is_refused_per_kilogram_of_quality_protein() {
        assertEquals(
                "no way from kg live weight to kg protein adjusted for quality for tilapia (fresh): this library has no"
                        + " digestible indispensable amino acid score (DIAAS) (diaas per kg-protein) for it",
                missing(chain("tilapia", "fresh", NO_SOURCE), KG_LIVE, KG_QUALITY_PROTEIN));
    }

    @Test
    void a_live_animal_has_no_conversion_to_litres() {
        assertInstanceOf(
                ChainPath.MissingConversion.class,
                chain("beef", "fresh", NO_SOURCE).path(KG_LIVE, LITRE));
    }

    @Test
    void the_same_unit_needs_no_step() {
        assertEquals(
                List.of(),
                ((ChainPath.FoundPath) chain("beef", "fresh", NO_SOURCE).path(KG_EDIBLE, KG_EDIBLE)).steps());
    }

    /** Carcass weight of an insect is refused in either direction, whatever else is known of it. */
    @Test
    void nothing_is_counted_from_the_carcass_of_an_insect() {
        assertEquals(
                "no way from kg carcass weight to kg protein for mealworm (fresh): insects have no carcass weight; ask per"
                        + " kg-live, kg-edible or kg-protein",
                missing(chain("mealworm", "fresh", NO_SOURCE), KG_CARCASS, KG_PROTEIN));
    }

    /** An exact step is the same factor in every draw: ten times 100 g are a kilogram. */
    @Test
    void a_step_by_definition_adds_no_uncertainty() {
        double[] values = {1, 2, 0.5};
        ChainPath.FoundPath path =
                (ChainPath.FoundPath) chain("beef", "fresh", NO_SOURCE).path(HUNDRED_G_PROTEIN, KG_PROTEIN);
        path.steps().forEach(step -> step.apply(values, new CommonRandomNumbers(1, values.length)));

        assertArrayEquals(new double[] {10, 20, 5}, values, 1e-12);
        assertEquals(
                "1 kg is 10 times 100 g",
                assertInstanceOf(ChainStep.Exact.class, path.steps().get(0)).why());
    }

    @Test
    void meal_is_sold_as_it_is_eaten_and_says_so() {
        ChainStep.Exact step = assertInstanceOf(
                ChainStep.Exact.class,
                ((ChainPath.FoundPath) chain("mealworm", "meal", NO_SOURCE).path(KG_EDIBLE, KG_PRODUCT))
                        .steps()
                        .get(0));

        assertTrue(step.why().endsWith("(meal) is sold by the kg edible product"), step::why);
    }

    /** Draws of a factor lie about its central value: half of them below, half above, whatever is put on top of it. */
    @Test
    void draws_of_milk_protein_are_centred_after_rescaling_to_crude_protein() {
        UnitChain milk = chain("milk", "fresh", NO_SOURCE);
        double[] values = ones(20_001);
        ((ChainPath.FoundPath) milk.path(KG_EDIBLE, KG_PROTEIN))
                .steps()
                .forEach(step -> step.apply(values, new CommonRandomNumbers(1, values.length)));
        Arrays.sort(values);

        assertEquals(1 / 0.0308582, values[10_000], 0.01 / 0.0308582, "3.15 g at N x 6.38 are 3.086 g at N x 6.25");
    }

    @Test
    void a_spread_that_no_study_printed_is_reported_as_assumed() {
        ChainStep.PublishedStep assumed = (ChainStep.PublishedStep)
                ((ChainPath.FoundPath) chain("beef", "fresh", NO_SOURCE).path(KG_EDIBLE, KG_PROTEIN))
                        .steps()
                        .get(0);
        // 58 to 62 % dressed.
        ChainStep.PublishedStep printed = (ChainStep.PublishedStep)
                ((ChainPath.FoundPath) chain("beef", "fresh", NO_SOURCE).path(KG_LIVE, KG_CARCASS))
                        .steps()
                        .get(0);
        ChainStep.PublishedStep own = (ChainStep.PublishedStep) ((ChainPath.FoundPath)
                        chain("beef-beef-herd", "fresh", "poore-nemecek-2018").path(KG_EDIBLE, KG_PROTEIN))
                .steps()
                .get(0);

        assertTrue(assumed.factor().spreadIsAssumed());
        assertFalse(printed.factor().spreadIsAssumed());
        assertFalse(own.factor().spreadIsAssumed(), "a study's own factor has no spread to assume");
    }

    private static double[] ones(int n) {
        double[] values = new double[n];
        Arrays.fill(values, 1);
        return values;
    }
}
