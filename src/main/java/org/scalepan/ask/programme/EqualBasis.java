package org.scalepan.ask.programme;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.words.Message;

/**
 * On what a product and the food or feed that it displaces are made equal. Equal protein is the usual choice; equal mass says that a
 * kilogram on the plate replaces a kilogram.
 */
public enum EqualBasis {
    PROTEIN("kg-protein", FunctionalUnit.KG_PROTEIN),
    QUALITY_PROTEIN("kg-quality-protein", FunctionalUnit.KG_QUALITY_PROTEIN),
    EDIBLE("kg-edible", FunctionalUnit.KG_EDIBLE),
    DRY_MATTER("kg-dry-matter", FunctionalUnit.KG_DRY_MATTER),
    /** What limits growth in many diets; for feed alone. */
    DIGESTIBLE_LYSINE("kg-digestible-lysine", FunctionalUnit.KG_PRODUCT);

    private final String id;
    private final FunctionalUnit counted;

    EqualBasis(String id, FunctionalUnit counted) {
        this.id = id;
        this.counted = counted;
    }

    public String id() {
        return id;
    }

    /** The basis as a reader says it. */
    public Message message() {
        return Message.of("per." + id);
    }

    /** The basis as a reader of English says it. */
    public String words() {
        return message().english();
    }

    /** The functional unit in which footprints are taken from the literature: the basis itself, or the product that holds it. */
    public FunctionalUnit counted() {
        return counted;
    }

    public static Optional<EqualBasis> of(String id) {
        return Stream.of(values()).filter(basis -> basis.id.equals(id)).findFirst();
    }

    /** The bases of a use. Edible mass says nothing of feed; amino acids are known of feed alone. */
    public static List<EqualBasis> of(Use use) {
        return use == Use.FOOD
                ? List.of(PROTEIN, QUALITY_PROTEIN, EDIBLE, DRY_MATTER)
                : List.of(PROTEIN, DRY_MATTER, DIGESTIBLE_LYSINE);
    }
}
