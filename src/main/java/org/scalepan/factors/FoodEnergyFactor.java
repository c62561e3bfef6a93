package org.scalepan.factors;

import org.scalepan.factors.table.Row;

/**
 * The energy of something that food consists of.
 *
 * @param set general, for every food, or specific to one
 * @param nutrient what the energy is of, such as protein or available-carbohydrate
 * @param value in {@code unit}
 * @param unit kcal/g or kJ/g
 */
public record FoodEnergyFactor(String id, String set, String nutrient, double value, String unit, Cited cited) {
    /** The set that serves where no energy is measured. */
    public static final String GENERAL = "general";

    static FoodEnergyFactor of(Row row) {
        return new FoodEnergyFactor(
                row.text("id"),
                row.text("set"),
                row.text("nutrient"),
                row.number("value").orElseThrow(),
                row.text("unit"),
                Cited.of(row));
    }
}
