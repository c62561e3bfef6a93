package org.scalepan.ask.nutrition;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.words.Message;

/** The amount of food on which foods are compared. */
public enum Basis {
    /** With its water: fair between foods of one form only, since drying alone makes a food look three times richer. */
    HUNDRED_GRAMS_EDIBLE("100g-edible"),
    HUNDRED_GRAMS_DRY_MATTER("100g-dry-matter"),
    TEN_GRAMS_PROTEIN("10g-protein"),
    HUNDRED_KILOCALORIES("100kcal");

    private final String id;

    Basis(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    public Message message() {
        return Message.of("food-basis." + id);
    }

    /** In English. */
    public String words() {
        return message().english();
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
