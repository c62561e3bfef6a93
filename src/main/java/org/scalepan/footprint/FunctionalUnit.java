package org.scalepan.footprint;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.words.Message;

/** The functional unit of an impact. The chain runs from the live animal to quality-corrected protein. */
public enum FunctionalUnit {
    KG_LIVE("kg-live"),
    KG_CARCASS("kg-carcass"),
    KG_PRODUCT("kg-product"),
    KG_EDIBLE("kg-edible"),
    KG_DRY_MATTER("kg-dry-matter"),
    KG_PROTEIN("kg-protein"),
    HUNDRED_G_PROTEIN("100g-protein"),
    KG_QUALITY_PROTEIN("kg-quality-protein"),
    /** Only ever a published unit (milk at retail); no question may ask for it. */
    LITRE("litre");

    private final String id;

    FunctionalUnit(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    /** The unit as a reader says it. */
    public Message message() {
        return Message.of("per." + id);
    }

    /** The unit as a reader of English says it. */
    public String words() {
        return message().english();
    }

    /** True for the units that count protein, to which a nitrogen factor applies. */
    public boolean countsProtein() {
        return this == KG_PROTEIN || this == HUNDRED_G_PROTEIN || this == KG_QUALITY_PROTEIN;
    }

    public static Optional<FunctionalUnit> of(String id) {
        return Stream.of(values()).filter(unit -> unit.id.equals(id)).findFirst();
    }

    /** The units that a question may ask for. */
    public static List<String> askable() {
        return Stream.of(values())
                .filter(unit -> unit != LITRE)
                .map(FunctionalUnit::id)
                .toList();
    }
}
