package org.scalepan.ask.nutrition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.AminoAcidPattern;
import org.scalepan.factors.Grade;
import org.scalepan.footprint.ProteinBasis;

/**
 * A question about foods.
 *
 * @param protein which protein the ten grams of a basis and a price are of
 * @param prices money per kilogram as eaten, by food, each above zero
 * @param currency ISO 4217 code of the prices; nothing is converted
 */
public record NutritionQuestion(
        List<ProductForm> foods,
        Basis basis,
        AminoAcidPattern pattern,
        ProteinBasis protein,
        Grade grade,
        Map<ProductForm, Double> prices,
        Optional<String> currency) {
    public NutritionQuestion {
        foods = List.copyOf(foods);
        prices = Map.copyOf(prices);
        prices.values().forEach(price -> {
            if (!(price > 0 && Double.isFinite(price))) {
                throw new IllegalArgumentException("a price must be above zero and finite, not " + price);
            }
        });
    }

    /** Foods that still have all their water. */
    public List<ProductForm> fresh() {
        return foods.stream().filter(food -> food.form().equals(Frame.FRESH)).toList();
    }

    /** Foods that are dried or ground, dry seeds among them. */
    public List<ProductForm> dried() {
        return foods.stream().filter(food -> !food.form().equals(Frame.FRESH)).toList();
    }

    /** True when fresh foods stand beside dried ones. */
    public boolean mixesFreshAndDried() {
        return !fresh().isEmpty() && !dried().isEmpty();
    }

    /** True when water content alone would decide the comparison: fresh beside dried, weighed with their water. */
    public boolean isDecidedByWater() {
        return mixesFreshAndDried() && !basis.isFairAcrossForms();
    }
}
