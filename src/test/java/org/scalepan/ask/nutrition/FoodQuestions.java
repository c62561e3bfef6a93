package org.scalepan.ask.nutrition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.Libraries;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.ProteinBasis;

/** Questions about foods against the bundled library, per 10 g of crude protein, every grade, unless stated otherwise. */
final class FoodQuestions {
    static final Library LIBRARY = Libraries.bundled();

    private FoodQuestions() {}

    /** A product in its usual form, or as {@code product:form}. */
    static ProductForm food(String written) {
        String[] parts = written.split(":", 2);
        Product product = LIBRARY.products().get(parts[0]);
        return new ProductForm(product, parts.length == 2 ? parts[1] : product.defaultForm());
    }

    static NutritionQuestion question(Basis basis, String... foods) {
        return question(basis, ProteinBasis.CRUDE, Grade.MEMORY, foods);
    }

    static NutritionQuestion question(Basis basis, ProteinBasis protein, Grade grade, String... foods) {
        return new NutritionQuestion(
                Stream.of(foods).map(FoodQuestions::food).toList(),
                basis,
                LIBRARY.defaultAminoAcidPattern(),
                protein,
                grade,
                Map.of(),
                Optional.empty());
    }

    static NutritionQuestion priced(ProteinBasis protein, String food, double price) {
        return new NutritionQuestion(
                List.of(food(food)),
                Basis.HUNDRED_GRAMS_EDIBLE,
                LIBRARY.defaultAminoAcidPattern(),
                protein,
                Grade.MEMORY,
                Map.of(food(food), price),
                Optional.of("EUR"));
    }

    static NutritionFacts facts(NutritionQuestion question) {
        return NutritionTable.of(LIBRARY, question).foods().get(0);
    }

    static Content content(NutritionFacts facts, String figure) {
        return facts.figures().stream()
                .filter(found -> found.id().equals(figure))
                .findFirst()
                .orElseThrow()
                .content();
    }

    /** A figure that is there. */
    static Content.HeldContent found(NutritionFacts facts, String figure) {
        return (Content.HeldContent) content(facts, figure);
    }

    static String missing(NutritionFacts facts, String figure) {
        return ((Content.MissingContent) content(facts, figure)).reason();
    }
}
