package org.scalepan.ask.nutrition;

import org.scalepan.factors.CompositionRow;

/** A nutrient of a food, with the unit in which it is reported. */
public enum Nutrient {
    /** Crude protein, nitrogen × 6.25. */
    PROTEIN("protein", "g"),
    FAT("fat", "g"),
    /** Used for computing energy only; too seldom published to be reported on its own. */
    CARBOHYDRATE("carbohydrate", "g"),
    /** Food energy, which is not the gross energy of burning. */
    ENERGY("energy", "kcal"),
    IRON("iron", "mg"),
    ZINC("zinc", "mg"),
    CALCIUM("calcium", "mg"),
    VITAMIN_B12("vitamin-b12", "ug");

    /** Kilojoules in a kilocalorie: the thermochemical calorie, exact by definition (ISO 80000-5:2019). */
    public static final double KILOJOULES = 4.184;

    private static final double MICROGRAMS = 1_000;

    private final String id;
    private final String unit;

    Nutrient(String id, String unit) {
        this.id = id;
        this.unit = unit;
    }

    /** The quantity of the composition table. */
    public String id() {
        return id;
    }

    /** The unit in which the nutrient is reported. */
    public String unit() {
        return unit;
    }

    /** What a printed 1 of a row is per kilogram of food, in the unit of this nutrient. The library refuses rows in any other unit. */
    double perKilogram(CompositionRow row) {
        return switch (row.unit()) {
            case "fraction" -> 1_000;
            case "kcal/100 g" -> 10;
            case "MJ/kg" -> 1_000 / KILOJOULES;
            case "mg/100 g" -> unit.equals("ug") ? 10 * MICROGRAMS : 10;
            case "ug/100 g" -> unit.equals("ug") ? 10 : 10 / MICROGRAMS;
            default -> throw new IllegalArgumentException(row.id() + ": " + id + " in " + row.unit());
        };
    }
}
