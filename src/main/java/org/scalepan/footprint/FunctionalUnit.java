package org.scalepan.footprint;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The functional unit of an impact. The chain runs from the live animal to quality-corrected protein. */
public enum FunctionalUnit {
    KG_LIVE("kg-live", "kg live weight"),
    KG_CARCASS("kg-carcass", "kg carcass weight"),
    KG_PRODUCT("kg-product", "kg product as sold"),
    KG_EDIBLE("kg-edible", "kg edible product"),
    KG_DRY_MATTER("kg-dry-matter", "kg dry matter"),
    KG_PROTEIN("kg-protein", "kg protein"),
    HUNDRED_G_PROTEIN("100g-protein", "100 g protein"),
    KG_QUALITY_PROTEIN("kg-quality-protein", "kg protein adjusted for quality"),
    /** Only ever a published unit (milk at retail); no question may ask for it. */
    LITRE("litre", "litre");

    private final String id;
    private final String words;

    FunctionalUnit(String id, String words) {
        this.id = id;
        this.words = words;
    }

    public String id() {
        return id;
    }

    /** The unit as a reader says it. */
    public String words() {
        return words;
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
