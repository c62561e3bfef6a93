package org.scalepan.ask.nutrition;

/** What a reader must know about how a single figure came about. */
public enum Caveat {
    RANGE_ONLY("range-only"),
    BY_DRY_MATTER("by-dry-matter"),
    CRUDE_RESTATED("crude-restated"),
    ENERGY_COMPUTED("energy-computed"),
    WITHOUT_CARBOHYDRATE("energy-without-carbohydrate");

    private final String code;

    Caveat(String code) {
        this.code = code;
    }

    /** The code of its warning. */
    public String code() {
        return code;
    }
}
