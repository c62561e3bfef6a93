package org.scalepan.ask.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.nutrition.FoodQuestions.LIBRARY;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.ask.Warning;
import org.scalepan.footprint.ProteinBasis;

/** Foods compared: which comparisons are valid, their warnings, and the price of protein. */
class NutritionTableTest {
    private static NutritionTable table(Basis basis, String... foods) {
        return NutritionTable.of(LIBRARY, FoodQuestions.question(basis, foods));
    }

    private static List<String> codes(NutritionTable table) {
        return table.warnings().stream().map(Warning::code).toList();
    }

    @Test
    void weighed_with_its_water_fresh_mealworm_cannot_be_compared_with_dry_beans() {
        assertTrue(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "mealworm", "beans")
                .isDecidedByWater());
        assertFalse(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "mealworm", "beef")
                .isDecidedByWater());
        assertFalse(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "lentil", "beans")
                .isDecidedByWater());
    }

    @ParameterizedTest
    @EnumSource(
            value = Basis.class,
            names = {"HUNDRED_GRAMS_DRY_MATTER", "TEN_GRAMS_PROTEIN", "HUNDRED_KILOCALORIES"})
    void without_water_it_can_and_the_forms_are_reported(Basis basis) {
        assertFalse(FoodQuestions.question(basis, "mealworm", "beans").isDecidedByWater());
        assertTrue(codes(table(basis, "mealworm", "beans")).contains("form-mix"));
    }

    @Test
    void when_compared_as_eaten_the_effect_of_water_is_reported() {
        assertTrue(codes(table(Basis.HUNDRED_GRAMS_EDIBLE, "mealworm", "beans")).contains("fresh-beside-dried"));
    }

    @Test
    void crude_protein_has_a_warning_for_insects_only() {
        Warning warning = table(Basis.TEN_GRAMS_PROTEIN, "mealworm", "beef").warnings().stream()
                .filter(found -> found.code().equals("crude-protein"))
                .findFirst()
                .orElseThrow();

        assertEquals(List.of("mealworm"), warning.about());
        assertFalse(codes(NutritionTable.of(
                        LIBRARY,
                        FoodQuestions.question(
                                Basis.TEN_GRAMS_PROTEIN,
                                ProteinBasis.CORRECTED,
                                org.scalepan.factors.Grade.MEMORY,
                                "mealworm")))
                .contains("crude-protein"));
    }

    @Test
    void an_incomplete_profile_gives_an_upper_bound() {
        assertTrue(codes(table(Basis.TEN_GRAMS_PROTEIN, "black-soldier-fly:defatted-meal"))
                .contains("incomplete-profile"));
    }

    /** Arithmetic: 12 per kilogram over 0.187 kg crude protein, and over 0.187 × 5.41 / 6.25 kg corrected. */
    @Test
    void a_kilogram_of_protein_costs_the_price_of_the_food_over_the_protein_in_it() {
        Content crude = FoodQuestions.facts(FoodQuestions.priced(ProteinBasis.CRUDE, "mealworm", 12))
                .price()
                .orElseThrow()
                .content();
        Content corrected = FoodQuestions.facts(FoodQuestions.priced(ProteinBasis.CORRECTED, "mealworm", 12))
                .price()
                .orElseThrow()
                .content();

        assertEquals(12 / 0.187, ((Content.HeldContent) crude).value(), 1e-9);
        assertEquals(12 / (0.187 * 5.41 / 6.25), ((Content.HeldContent) corrected).value(), 1e-9);
    }

    @Test
    void the_less_protein_there_may_be_the_dearer_it_may_be() {
        Content.HeldContent price =
                (Content.HeldContent) FoodQuestions.facts(FoodQuestions.priced(ProteinBasis.CRUDE, "chicken", 6))
                        .price()
                        .orElseThrow()
                        .content();
        Content.HeldContent protein = FoodQuestions.found(
                FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "chicken")), "protein");

        assertEquals(
                6 / (protein.range().low().orElseThrow() / 100),
                price.range().high().orElseThrow(),
                1e-9);
        assertEquals(
                6 / (protein.range().high().orElseThrow() / 100),
                price.range().low().orElseThrow(),
                1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void an_invalid_price_is_refused(double price) {
        assertThrows(IllegalArgumentException.class, () -> FoodQuestions.priced(ProteinBasis.CRUDE, "mealworm", price));
    }

    @Test
    void every_source_of_a_figure_is_among_the_references() {
        NutritionTable table = table(Basis.TEN_GRAMS_PROTEIN, "mealworm", "beef", "beans");
        List<String> cited =
                table.references().stream().map(reference -> reference.id()).toList();

        table.foods()
                .forEach(facts -> facts.figures()
                        .forEach(figure -> figure.content().then(found -> {
                            assertTrue(cited.containsAll(found.sources()), figure.id());
                            return found;
                        })));
        assertTrue(cited.containsAll(List.of("fao-2013", "usda-sr26-2013")));
    }
}
