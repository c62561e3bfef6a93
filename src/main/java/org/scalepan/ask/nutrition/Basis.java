package org.scalepan.ask.nutrition;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The amount of food on which foods are compared. */
public enum Basis {
    /** With its water: fair between foods of one form only, since drying alone makes a food look three times richer. */
    HUNDRED_GRAMS_EDIBLE("100g-edible", "100 g as eaten"),
    HUNDRED_GRAMS_DRY_MATTER("100g-dry-matter", "100 g dry matter"),
    TEN_GRAMS_PROTEIN("10g-protein", "10 g protein"),
    HUNDRED_KILOCALORIES("100kcal", "100 kcal");

    private final String id;
    private final String words;

    Basis(String id, String words) {
        this.id = id;
        this.words = words;
    }

    public String id() {
        return id;
    }

    public String words() {
        return words;
    }

    /** True when water does not count, so that fresh and dried foods can be compared. */
    public boolean isFairAcrossForms() {
        return this != HUNDRED_GRAMS_EDIBLE;
    }

    public static Optional<Basis> of(String id) {
        return Stream.of(values()).filter(basis -> basis.id.equals(id)).findFirst();
    }

    public static List<String> ids() {
        return Stream.of(values()).map(Basis::id).toList();
    }
}
