package org.scalepan.web.nutrition;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.ask.nutrition.NutritionQuestion;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.factors.AminoAcidPattern;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.input.Excerpt;
import org.scalepan.input.Input;
import org.scalepan.web.http.Limits;

/** Reads a question about foods. */
final class NutritionReading {
    static final List<String> PARAMETERS = List.of(
            "products", "basis", "pattern", "protein", "grade", "mixed_forms", "price_per_kg", "prices", "currency");

    private static final double DEAREST = 1_000_000;
    private static final double CHEAPEST = 0.000_001;
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
    private static final Pattern PRICE = Pattern.compile("\\d{1,9}(\\.\\d{1,9})?");
    private static final String NO_PRICE = "-";
    private static final List<String> YES_NO = List.of("no", "yes");

    private final Library library;
    private final Input parameters;

    NutritionReading(Library library, Input parameters) {
        this.library = library;
        this.parameters = parameters;
    }

    /** The question; errors are collected in the parameters. */
    NutritionQuestion question() {
        List<ProductForm> foods = new ProductReading(library, parameters).some("products", Limits.PRODUCTS);
        Basis basis = parameters.oneOf(
                "basis", Basis.ids(), Basis::of, Basis.TEN_GRAMS_PROTEIN, Basis.TEN_GRAMS_PROTEIN.id());
        AminoAcidPattern usual = library.defaultAminoAcidPattern();
        AminoAcidPattern pattern = parameters.oneOf(
                "pattern",
                library.aminoAcidPatterns().keySet(),
                id -> Optional.ofNullable(library.aminoAcidPatterns().get(id)),
                usual,
                usual.id());
        ProteinBasis protein = parameters.oneOf(
                "protein",
                Stream.of(ProteinBasis.values()).map(ProteinBasis::id).toList(),
                ProteinBasis::of,
                ProteinBasis.CRUDE,
                ProteinBasis.CRUDE.id());
        Grade grade = parameters.oneOf("grade", library.ids("grades"), Grade::of, Grade.USUAL, Grade.USUAL.id());
        boolean mixed = parameters.oneOf("mixed_forms", YES_NO, "no").equals("yes");
        Map<ProductForm, Double> prices = prices(foods);
        Optional<String> currency = currency(!prices.isEmpty());
        NutritionQuestion question = new NutritionQuestion(foods, basis, pattern, protein, grade, prices, currency);
        if (question.isDecidedByWater() && !mixed) {
            refuseWater(question);
        }
        return question;
    }

    private void refuseWater(NutritionQuestion question) {
        parameters.fault(
                "products",
                "100 g of a fresh food (" + written(question.fresh())
                        + ") holds far more water than 100 g of a dried or ground"
                        + " one (" + written(question.dried()) + "), so that drying alone would decide; ask for"
                        + " basis=100g-dry-matter, 10g-protein or 100kcal, for one form, or with mixed_forms=yes");
    }

    private static String written(List<ProductForm> foods) {
        return String.join(", ", foods.stream().map(ProductForm::written).toList());
    }

    private Map<ProductForm, Double> prices(List<ProductForm> foods) {
        List<String> several = parameters
                .raw("prices")
                .map(text -> Stream.of(text.split(",", -1)).map(String::strip).toList())
                .orElse(List.of());
        int most = Limits.PRODUCTS;
        if (several.size() > most) {
            parameters.tooMuch("prices", "prices has " + several.size() + " entries; at most " + most + " are allowed");
            return Map.of();
        }
        if (parameters.raw("price_per_kg").isEmpty()) {
            return several.isEmpty() ? Map.of() : listed(foods, several);
        }
        if (!several.isEmpty()) {
            parameters.fault("prices", "give price_per_kg for one product or prices for several, not both");
        }
        double price = parameters.number("price_per_kg", CHEAPEST, DEAREST, 1);
        if (foods.size() > 1) {
            parameters.fault("price_per_kg", "price_per_kg is for one product; give prices, one for each");
        }
        return foods.size() == 1 ? Map.of(foods.get(0), price) : Map.of();
    }

    /** Prices in the order of the products; a hyphen for no price. */
    private Map<ProductForm, Double> listed(List<ProductForm> foods, List<String> written) {
        if (written.size() != foods.size()) {
            parameters.fault(
                    "prices",
                    "prices has " + written.size() + " entries for " + foods.size()
                            + " products; give one for each, in their order, and - where there is none");
            return Map.of();
        }
        Map<ProductForm, Double> prices = new LinkedHashMap<>();
        for (int i = 0; i < written.size(); i++) {
            if (!written.get(i).equals(NO_PRICE)) {
                ProductForm food = foods.get(i);
                price(written.get(i)).ifPresent(price -> prices.put(food, price));
            }
        }
        parameters.resolve("prices", written);
        return prices;
    }

    private Optional<Double> price(String text) {
        double price = PRICE.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (price >= CHEAPEST && price <= DEAREST) {
            return Optional.of(price);
        }
        parameters.fault(
                "prices",
                "price \"" + Excerpt.of(text) + "\" must be a number from " + Input.plain(CHEAPEST) + " to "
                        + Input.plain(DEAREST) + ", or - for none");
        return Optional.empty();
    }

    private Optional<String> currency(boolean priced) {
        Optional<String> currency = parameters.raw("currency");
        if (currency.isEmpty() && priced) {
            parameters.fault("currency", "currency is missing: name that of the price, such as currency=EUR");
        }
        currency.ifPresent(code -> {
            if (!CURRENCY.matcher(code).matches()) {
                parameters.fault(
                        "currency", "currency must be a code of three capital letters, such as EUR (ISO 4217)");
            } else if (!priced && parameters.raw("prices").isEmpty()) {
                parameters.fault("currency", "a currency without a price; give price_per_kg or prices");
            }
            parameters.resolve("currency", code);
        });
        return currency;
    }
}
