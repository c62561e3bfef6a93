package org.scalepan.ask.claim;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The words by which sentences speak of what foods contain. */
final class ContentWords {
    static final String PROTEIN = "protein";
    static final String AMINO_ACIDS = "amino-acids";
    static final String COMPLETE = "complete-protein";
    static final String QUALITY = "protein-quality";

    /** Names of contents, as a question writes them. */
    static final Map<String, String> CONTENTS = contents();

    /** Words that say more, before a content. */
    static final Set<String> MORE = Set.of(
            "more", "higher", "greater", "richer", "rich", "high", "much", "many", "twice", "double", "triple", "times",
            "fold", "percent", "plus");

    static final Set<String> LESS = Set.of("less", "fewer", "lower", "poorer", "low", "leaner", "half");

    /** Words that say that a protein is as good. */
    static final Set<String> AS_GOOD = Set.of("good", "quality", "equals", "equal", "better", "valuable", "digestible");

    /** Words between what compares and the content. */
    static final Set<String> BETWEEN = Set.of(
            "the",
            "amount",
            "amounts",
            "content",
            "level",
            "levels",
            "of",
            "in",
            "dietary",
            "as",
            "a",
            "an",
            "total",
            "essential",
            "source",
            "sources",
            "de",
            "en",
            "du",
            "la",
            "le");

    /** Words that add nothing to a claim of contents. */
    static final Set<String> FILLERS = Set.of(
            ("contain contains containing contained hold holds source sources amount amounts content contents level levels dietary good great"
                            + " excellent better provide provides offer offers packed full also even high higher highly rich richer raw per gram"
                            + " grams same weight for nutritional natural naturally every each its much many far way significantly substantially"
                            + " considerably lot times fold called known complete so their own like just")
                    .split(" "));

    /** Forms of a food, as questions write them. */
    static final Map<String, String> FORMS = Map.of(
            "dried", "dried",
            "dry", "dried",
            "powder", "meal",
            "powders", "meal",
            "flour", "meal",
            "flours", "meal",
            "meal", "meal",
            "raw", "fresh",
            "fresh", "fresh");

    /** Amounts of food. */
    static final Map<String, String> BASES = bases();

    private ContentWords() {}

    private static Map<String, String> contents() {
        Map<String, String> found = new LinkedHashMap<>();
        for (String name : new String[] {
            "essential amino acids",
            "essential amino acid",
            "indispensable amino acids",
            "indispensable amino acid",
            "amino acids",
            "amino acid"
        }) {
            found.put(name, AMINO_ACIDS);
        }
        found.put("complete protein", COMPLETE);
        found.put("complete proteins", COMPLETE);
        found.put("whole protein", COMPLETE);
        found.put("protein", PROTEIN);
        found.put("proteins", PROTEIN);
        found.put("iron", "iron");
        found.put("zinc", "zinc");
        found.put("calcium", "calcium");
        found.put("vitamin b12", "vitamin-b12");
        found.put("vitamin b 12", "vitamin-b12");
        found.put("b12", "vitamin-b12");
        found.put("cobalamin", "vitamin-b12");
        found.put("unsaturated fat", "unsaturated-fat");
        found.put("unsaturated fats", "unsaturated-fat");
        found.put("unsaturated fatty acids", "unsaturated-fat");
        found.put("polyunsaturated fat", "unsaturated-fat");
        found.put("polyunsaturated fats", "unsaturated-fat");
        found.put("polyunsaturated fatty acids", "unsaturated-fat");
        found.put("omega 3", "unsaturated-fat");
        found.put("healthy fats", "unsaturated-fat");
        found.put("fat", "fat");
        found.put("fats", "fat");
        found.put("calories", "energy");
        found.put("kilocalories", "energy");
        found.put("food energy", "energy");
        return found;
    }

    private static Map<String, String> bases() {
        Map<String, String> found = new LinkedHashMap<>();
        for (String dry : new String[] {
            "per 100 g dry matter",
            "per 100 g of dry matter",
            "on a dry basis",
            "on a dry matter basis",
            "on dry matter",
            "by dry weight",
            "dry weight",
            "on a dry weight basis",
            "per 100 g dry weight"
        }) {
            found.put(dry, "100g-dry-matter");
        }
        for (String fresh : new String[] {
            "per 100 g",
            "per 100 grams",
            "per 100 g fresh",
            "gram for gram",
            "weight for weight",
            "pound for pound",
            "per gram",
            "per kg",
            "per kilogram",
            "per kilo",
            "by weight",
            "per serving"
        }) {
            found.put(fresh, "100g-edible");
        }
        for (String energy : new String[] {"per 100 kcal", "per calorie", "calorie for calorie"}) {
            found.put(energy, "100kcal");
        }
        for (String protein : new String[] {"per gram of protein", "per 10 g protein", "per 10 g of protein"}) {
            found.put(protein, "10g-protein");
        }
        return found;
    }
}
