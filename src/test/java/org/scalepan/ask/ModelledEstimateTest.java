package org.scalepan.ask;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.words.Message;

/** What a reference farm comes to, and what is said of it. */
class ModelledEstimateTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final Sampling SAMPLING = new Sampling(0.9, 2000, 1);

    private static Asked modelled() {
        return Asked.of(LIBRARY).grade(Grade.SECONDARY).modelled();
    }

    private static Estimate estimate(String product, Asked asked) {
        return Estimating.asked(LIBRARY, asked.item(product), asked.basis(), SAMPLING);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ghg", "land", "feed"})
    void every_insect_has_a_figure_per_kilogram_live_or_a_reason(String indicator) {
        Asked asked = modelled()
                .indicator(indicator)
                .per(FunctionalUnit.KG_LIVE)
                .at(indicator.equals("feed") ? "animal" : "farm-gate");

        assertAll(LIBRARY.products().values().stream()
                .filter(product -> product.group().equals("insect"))
                .map(product -> () -> {
                    Estimate found = estimate(product.id(), asked);
                    assertTrue(
                            found.summary().isPresent() || found.missing().isPresent(),
                            () -> product.id() + " has neither a figure nor a reason");
                }));
    }

    /** Of these no publication held here gives the protein of the fresh animal, or its water; farmed crickets are no species. */
    @Test
    void every_insect_whose_protein_is_known_has_a_figure_per_kilogram_of_protein() {
        Asked asked = modelled().per(FunctionalUnit.KG_PROTEIN).grade(Grade.MEMORY);

        assertEquals(
                List.of("field-cricket", "two-spotted-cricket", "farmed-crickets", "migratory-locust", "sun-beetle"),
                LIBRARY.products().values().stream()
                        .filter(product -> product.group().equals("insect"))
                        .map(Product::id)
                        .filter(product -> estimate(product, asked).summary().isEmpty())
                        .toList());
    }

    /** Rows of different publications meet in the dry matter: 8.4 kg of fresh pupae hold 1 kg of protein. */
    @Test
    void protein_of_dry_matter_and_the_dry_matter_of_the_fresh_animal_give_protein_of_the_fresh_animal() {
        double perLive = feed(FunctionalUnit.KG_LIVE);
        double perProtein = feed(FunctionalUnit.KG_PROTEIN);

        assertEquals(1 / (0.25 * 0.4787), perProtein / perLive, 0.1, "kg live per kg protein");
    }

    /** Kilograms of feed of silkworm pupae. */
    private static double feed(FunctionalUnit per) {
        Asked asked = modelled().indicator("feed").at("animal").per(per).grade(Grade.MEMORY);
        return estimate("silkworm-pupae", asked).summary().orElseThrow().median();
    }

    @Test
    void every_sentence_says_that_it_is_modelled_and_no_study() {
        Asked asked = modelled();
        Sentences sentences = new Sentences(asked.basis(), 0.9);
        Estimate mealworm = estimate("mealworm", asked);
        Estimate chicken = estimate("chicken", asked);

        assertTrue(sentences.estimate(mealworm).contains("modelled from published practice, not a study"));
        String versus = sentences.versus(
                mealworm, chicken, Ratio.between(mealworm, chicken, 0.9).orElseThrow());
        assertTrue(versus.contains("both modelled from published practice, not a study"), versus);
        assertFalse(versus.contains("studies of"), versus);
    }

    @Test
    void a_farm_without_heating_counted_is_a_lower_bound_and_its_ratio_an_upper_one() {
        Estimate heated = estimate("mealworm", modelled());
        Estimate chicken = estimate("chicken", modelled());

        assertEquals(Bound.AT_LEAST, heated.bound());
        assertEquals(
                List.of("energy"),
                heated.uncounted().stream().map(Message::english).toList());
        assertEquals(
                Bound.AT_MOST, Ratio.between(heated, chicken, 0.9).orElseThrow().bound());
    }

    @Test
    void studies_are_not_pooled_with_it() {
        Asked published = Asked.of(LIBRARY).grade(Grade.SECONDARY);
        PublishedEstimate chicken =
                Estimating.estimate(LIBRARY, published.item("chicken"), published.basis(), SAMPLING);

        assertEquals(0, estimate("chicken", modelled()).studies());
        assertTrue(
                chicken.sources(LIBRARY).stream().noneMatch("broiler-diet-2025"::equals),
                "a diet is no study of a footprint");
    }

    @Test
    void a_product_without_a_reference_farm_has_a_reason() {
        assertEquals(
                "no reference farm of atlantic salmon is in this library",
                estimate("salmon", modelled()).missing().orElseThrow().toLowerCase(java.util.Locale.ROOT));
    }

    @Test
    void a_form_that_no_farm_sells_is_not_modelled() {
        Estimate meal = estimate("mealworm:meal", modelled());

        assertTrue(meal.summary().isEmpty());
        assertTrue(
                meal.missing().orElseThrow().contains("model no other form"),
                meal.missing().toString());
    }

    /** The wheat, the grid and the gas of two farms are drawn once: what both use is not uncertain between them. */
    @Test
    void the_same_farm_on_both_sides_gives_exactly_one() {
        Asked asked = modelled();
        Estimate one = Estimating.asked(LIBRARY, asked.item("chicken"), asked.basis(), SAMPLING, SAMPLING.random());
        Estimate same = ModelledEstimate.of(LIBRARY, asked.item("chicken"), asked.basis(), SAMPLING, SAMPLING.random());

        Ratio ratio = Ratio.between(one, same, 0.9).orElseThrow();
        assertEquals(1, ratio.timesLess().low());
        assertEquals(1, ratio.timesLess().high());
    }

    @Test
    void the_grade_is_that_of_the_worst_input_or_factor() {
        assertEquals(
                Grade.MEMORY,
                estimate("chicken", modelled()).lowestGrade(LIBRARY).orElseThrow());
    }
}
