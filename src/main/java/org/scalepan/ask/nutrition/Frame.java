package org.scalepan.ask.nutrition;

import org.scalepan.factors.CompositionRow;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.words.Message;

/** What the kilogram is of, of which a content is printed: the food as it is eaten, with its water, or its dry matter. */
enum Frame {
    EDIBLE,
    DRY_MATTER;

    /** The form of food that still has all its water. */
    static final String FRESH = "fresh";

    Message message() {
        return Message.of(this == EDIBLE ? "frame.edible" : "frame.dry-matter");
    }

    Frame other() {
        return this == EDIBLE ? DRY_MATTER : EDIBLE;
    }

    /** True when a row is printed per kilogram of this. Dried and ground foods are eaten as they are sold. */
    boolean holds(CompositionRow row) {
        if (this == DRY_MATTER) {
            return row.per().equals(FunctionalUnit.KG_DRY_MATTER.id());
        }
        boolean asSold = !row.form().equals(FRESH) && row.per().equals(FunctionalUnit.KG_PRODUCT.id());
        return asSold || row.per().equals(FunctionalUnit.KG_EDIBLE.id());
    }
}
