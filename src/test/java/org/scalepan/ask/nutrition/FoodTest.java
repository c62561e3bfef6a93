package org.scalepan.ask.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.nutrition.FoodQuestions.LIBRARY;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Product;
import org.scalepan.factors.table.Row;
import org.scalepan.footprint.ProteinBasis;

/** Contents of foods on every basis. */
class FoodTest {
    private static final double RELATIVE = 1e-9;

    /** Finke (2002), as quoted in Hand-Rearing Birds, table 41.1: mealworm 18.7 g protein, 13.4 g fat, 206 kcal per 100 g. */
    @ParameterizedTest
    @CsvSource({"protein, 18.7", "fat, 13.4", "energy, 206", "energy-kj, 861.904", "iron, 2.06", "vitamin-b12, 0.47"})
    void a_hundred_grams_of_fresh_mealworm_hold_what_was_printed(String figure, double expected) {
        NutritionFacts facts = FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "mealworm"));

        assertEquals(expected, FoodQuestions.found(facts, figure).value(), expected * RELATIVE);
    }

    /** Arithmetic on the same rows: dry matter 38.1 g per 100 g. */
    @Test
    void by_dry_matter_a_fresh_food_is_as_rich_as_without_its_water() {
        NutritionFacts facts = FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_DRY_MATTER, "mealworm"));

        Content.HeldContent protein = FoodQuestions.found(facts, "protein");
        assertEquals(18.7 / 0.381, protein.value(), 1e-9);
        assertTrue(protein.caveats().contains(Caveat.BY_DRY_MATTER));
        assertTrue(protein.rows().contains("finke-2002.mealworm.fresh.dry-matter"));
    }

    @Test
    void from_as_eaten_to_dry_matter_and_back_nothing_is_lost() {
        int compared = 0;
        for (Product product : LIBRARY.products().values()) {
            for (String form : LIBRARY.ids("forms")) {
                ProductForm item = new ProductForm(product, form);
                Food food = new Food(LIBRARY, item, Grade.MEMORY);
                List<Double> dry = dryMatter(item);
                for (Nutrient nutrient : Nutrient.values()) {
                    if (!dry.isEmpty()
                            && food.on(nutrient, Basis.HUNDRED_GRAMS_EDIBLE, ProteinBasis.CRUDE)
                                    instanceof Content.HeldContent wet
                            && food.on(nutrient, Basis.HUNDRED_GRAMS_DRY_MATTER, ProteinBasis.CRUDE)
                                    instanceof Content.HeldContent without
                            && (wet.caveats().contains(Caveat.BY_DRY_MATTER)
                                    || without.caveats().contains(Caveat.BY_DRY_MATTER))) {
                        assertEquals(wet.value(), without.value() * dry.get(0), wet.value() * RELATIVE, item.written());
                        compared++;
                    }
                }
            }
        }
        assertTrue(compared > 100, compared + " compared");
    }

    private static List<Double> dryMatter(ProductForm item) {
        return LIBRARY.composition().stream()
                .filter(row -> row.product().equals(item.product().id())
                        && row.form().equals(item.form())
                        && row.quantity().equals("dry-matter")
                        && row.use() == CompositionRow.RowUse.DEFAULT)
                // A range alone is read as its ends.
                .flatMapToDouble(row -> row.printed().value().stream())
                .boxed()
                .toList();
    }

    @Test
    void ten_grams_of_protein_and_a_hundred_kilocalories_are_as_much_food_as_they_say() {
        int compared = 0;
        for (Product product : LIBRARY.products().values()) {
            Food food = new Food(LIBRARY, new ProductForm(product, product.defaultForm()), Grade.MEMORY);
            for (Nutrient nutrient : Nutrient.values()) {
                compared += compared(food, nutrient, Basis.TEN_GRAMS_PROTEIN, Nutrient.PROTEIN, 10);
                compared += compared(food, nutrient, Basis.HUNDRED_KILOCALORIES, Nutrient.ENERGY, 100);
            }
        }
        assertTrue(compared > 100, compared + " compared");
    }

    /** A nutrient on a basis, times what 100 g hold of the basis, is what 100 g hold of the nutrient. */
    private static int compared(Food food, Nutrient nutrient, Basis basis, Nutrient by, double amount) {
        if (food.on(nutrient, basis, ProteinBasis.CRUDE) instanceof Content.HeldContent on
                && food.on(by, Basis.HUNDRED_GRAMS_EDIBLE, ProteinBasis.CRUDE) instanceof Content.HeldContent base
                && food.on(nutrient, Basis.HUNDRED_GRAMS_EDIBLE, ProteinBasis.CRUDE)
                        instanceof Content.HeldContent whole) {
            assertEquals(whole.value(), on.value() * base.value() / amount, Math.max(1, whole.value()) * RELATIVE);
            return 1;
        }
        return 0;
    }

    @Test
    void a_range_holds_its_value_and_the_basis_itself_has_none() {
        for (Basis basis : Basis.values()) {
            for (Product product : LIBRARY.products().values()) {
                NutritionFacts facts = FoodQuestions.facts(FoodQuestions.question(basis, product.id()));
                facts.figures()
                        .forEach(figure -> figure.content().then(found -> {
                            found.range().low().ifPresent(low -> assertTrue(low <= found.value() * (1 + RELATIVE)));
                            found.range().high().ifPresent(high -> assertTrue(high >= found.value() * (1 - RELATIVE)));
                            return found;
                        }));
            }
        }
        Content.HeldContent protein = FoodQuestions.found(
                FoodQuestions.facts(FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, "chicken")), "protein");
        assertEquals(10, protein.value(), RELATIVE);
        assertEquals(Content.ContentRange.NONE, protein.range());
    }

    /** Boulos et al. (2020), abstract: nitrogen factor 5.41 of the mealworm; arithmetic 18.7 × 5.41 / 6.25. */
    @Test
    void corrected_protein_uses_the_nitrogen_factor_of_the_species() {
        NutritionFacts facts = FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "mealworm"));

        assertEquals(16.18672, FoodQuestions.found(facts, "protein-corrected").value(), 1e-5);
    }

    @Test
    void per_ten_grams_of_corrected_protein_it_takes_more_food_than_per_ten_of_crude() {
        NutritionFacts crude = FoodQuestions.facts(FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, "mealworm"));
        NutritionFacts corrected = FoodQuestions.facts(
                FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, ProteinBasis.CORRECTED, Grade.MEMORY, "mealworm"));

        assertEquals(10, FoodQuestions.found(corrected, "protein-corrected").value(), 1e-9);
        assertEquals(
                FoodQuestions.found(crude, "iron").value() * 6.25 / 5.41,
                FoodQuestions.found(corrected, "iron").value(),
                1e-9);
    }

    /** Arithmetic on factors of FAO (1954) and Merrill and Watt (1973): 10 g of nitrogen in milk, wheat flour, soya and meat. */
    @ParameterizedTest
    @CsvSource({
        "fao-1954.milk-and-cheese, 63.8",
        "fao-1954.wheat-flours, 57.0",
        "fao-1954.soya-items-54-62, 57.1",
        "merrill-watt-1973.meat, 62.5"
    })
    void ten_grams_of_nitrogen_are_as_much_protein_as_the_commodity_factor_says(String row, double protein) {
        double factor = LIBRARY.table("nitrogen_factors").rows().stream()
                .filter(found -> found.text("id").equals(row))
                .map((Row found) -> found.number("value").orElseThrow())
                .findFirst()
                .orElseThrow();

        assertEquals(protein, 10 * factor, 0.05);
    }

    /** The food table prints milk with 3.15 g per 100 g by the factor 6.38 of milk: corrected protein is what was printed. */
    @Test
    void protein_printed_by_a_commodity_factor_comes_back_as_corrected_protein() {
        NutritionFacts milk = FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "milk"));

        assertEquals(3.15, FoodQuestions.found(milk, "protein-corrected").value(), 1e-9);
        assertEquals(3.15 * 6.25 / 6.38, FoodQuestions.found(milk, "protein").value(), 1e-9);
        assertTrue(FoodQuestions.found(milk, "protein").caveats().contains(Caveat.CRUDE_RESTATED));
    }

    /** General factors of Regulation (EU) No 1169/2011: 4 kcal per gram protein, 9 per gram fat; meal of defatted larvae 58.5 g and 6 g per 100 g. */
    @Test
    void unmeasured_energy_is_computed_and_is_a_lower_bound_without_carbohydrate() {
        NutritionFacts meal = FoodQuestions.facts(
                FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "black-soldier-fly:defatted-meal"));

        Content.HeldContent energy = FoodQuestions.found(meal, "energy");
        assertEquals(4 * 58.5 + 9 * 6, energy.value(), 1e-9);
        assertTrue(energy.caveats().containsAll(List.of(Caveat.ENERGY_COMPUTED, Caveat.WITHOUT_CARBOHYDRATE)));
        assertEquals(Grade.FULLTEXT, energy.lowest());
    }

    /** Bellezza Oddon et al. (2022) and Pieterse and Pretorius (2014) print gross energy, 29.6 and 20.1 MJ per kg: no food energy. */
    @ParameterizedTest
    @ValueSource(strings = {"black-soldier-fly:dried", "housefly:meal"})
    void gross_energy_is_not_reported_as_food_energy(String food) {
        NutritionFacts facts = FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_DRY_MATTER, food));

        assertTrue(FoodQuestions.found(facts, "energy").caveats().contains(Caveat.ENERGY_COMPUTED));
    }

    /** Barragan-Fonseca et al. (2017) print 37 to 63 g per 100 g dry matter; Bellezza Oddon et al. (2022) from 23.11. */
    @Test
    void a_range_alone_is_read_at_its_geometric_mean_and_the_range_covers_all_rows_used_or_shown() {
        Content.HeldContent protein = FoodQuestions.found(
                FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_DRY_MATTER, "black-soldier-fly:dried")),
                "protein");

        assertEquals(100 * Math.sqrt(0.37 * 0.63), protein.value(), 1e-9);
        assertTrue(protein.caveats().contains(Caveat.RANGE_ONLY));
        assertTrue(protein.range().low().orElseThrow() <= 23.11);
        assertTrue(protein.range().high().orElseThrow() >= 63);
        assertTrue(protein.studies() >= 4);
    }

    /** Okaraonye and Ikewuchi (2008) print 31.61 g per 100 g fresh, four times what everyone else found. */
    @Test
    void an_outlier_is_never_eligible() {
        Content.HeldContent protein = FoodQuestions.found(
                FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "palm-weevil")), "protein");

        assertTrue(protein.rows().stream().noneMatch(row -> row.startsWith("okaraonye-2008")));
        assertTrue(protein.range().high().orElseThrow() < 10);
    }

    @Test
    void a_row_that_is_shown_only_is_named_and_not_used() {
        String reason = FoodQuestions.missing(
                FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "palm-weevil:dried")), "iron");

        assertTrue(reason.contains("no row of it is in use") && reason.contains("omotoso-2007"), reason);
    }

    @Test
    void a_content_of_another_form_is_named_and_not_used() {
        String reason = FoodQuestions.missing(
                FoodQuestions.facts(FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, "mealworm:meal")), "fat");

        assertEquals(
                "not published for yellow mealworm (meal) in this library; published for mealworm and mealworm:dried",
                reason);
    }

    @Test
    void without_a_dry_matter_nothing_leads_from_dry_matter_to_the_food_as_eaten() {
        String reason = FoodQuestions.missing(
                FoodQuestions.facts(FoodQuestions.question(Basis.HUNDRED_GRAMS_EDIBLE, "mealworm:dried")), "protein");

        assertTrue(reason.startsWith("published per kilogram of dry matter only"), reason);
    }

    @Test
    void rows_below_the_lowest_grade_are_not_used() {
        NutritionFacts all = FoodQuestions.facts(FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, "mealworm"));
        NutritionFacts seen = FoodQuestions.facts(
                FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, ProteinBasis.CRUDE, Grade.SECONDARY, "mealworm"));

        assertEquals(Grade.MEMORY, FoodQuestions.found(all, "iron").lowest());
        assertTrue(FoodQuestions.missing(seen, "iron").contains("with grade secondary or better"));
        assertEquals(Grade.SECONDARY, FoodQuestions.found(seen, "fat").lowest());
    }

    @Test
    void every_published_content_is_in_a_unit_that_can_be_converted() {
        List<String> reported = new ArrayList<>();
        for (CompositionRow row : LIBRARY.composition()) {
            for (Nutrient nutrient : Nutrient.values()) {
                if (nutrient.id().equals(row.quantity())) {
                    assertTrue(nutrient.perKilogram(row) > 0, row.id());
                    reported.add(row.id());
                }
            }
        }
        assertTrue(reported.size() > 200, reported.size() + " rows");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -0.1})
    void an_invalid_content_is_refused(double value) {
        Content.HeldContent sound = FoodQuestions.found(
                FoodQuestions.facts(FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, "beef")), "iron");
        assertThrows(IllegalArgumentException.class, () -> sound.times(value));
    }
}
