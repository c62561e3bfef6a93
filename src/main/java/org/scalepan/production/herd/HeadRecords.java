package org.scalepan.production.herd;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is recorded of one head of cattle or buffalo, with the units and ranges of {@link EnergyNeed.Animal}; what is left open is
 * filled by a named default.
 *
 * @param weight live weight in kg
 * @param matureWeight live weight of the mature animal in kg
 * @param gain gain in kg a day
 * @param milk milk in kg a day
 * @param fat fat in the milk, percent
 * @param pregnant share of the animals that are pregnant
 * @param workHours hours of work a day
 * @param digestibility digestible energy in percent of gross energy
 * @param activity stall, pasture-fed or large-areas
 * @param kind lactating, not-lactating, intact-males or castrates, for maintenance and growth
 */
public record HeadRecords(
        double weight,
        OptionalDouble matureWeight,
        OptionalDouble gain,
        OptionalDouble milk,
        OptionalDouble fat,
        OptionalDouble pregnant,
        OptionalDouble workHours,
        double digestibility,
        Optional<String> activity,
        Optional<String> kind) {
    /** Percent; common practice, no source. */
    private static final double USUAL_FAT = 4;

    private static final String STALL = "stall";

    /** A head of which everything is recorded. */
    public static HeadRecords of(EnergyNeed.Animal animal, String activity, String kind) {
        return new HeadRecords(
                animal.weight(),
                OptionalDouble.of(animal.matureWeight()),
                OptionalDouble.of(animal.gain()),
                OptionalDouble.of(animal.milk()),
                OptionalDouble.of(animal.fat()),
                OptionalDouble.of(animal.pregnant()),
                OptionalDouble.of(animal.workHours()),
                animal.digestibility(),
                Optional.of(activity),
                Optional.of(kind));
    }

    /** The same head with other milk, kg a day. */
    public HeadRecords milking(double other) {
        return new HeadRecords(
                weight,
                matureWeight,
                gain,
                OptionalDouble.of(other),
                fat,
                pregnant,
                workHours,
                digestibility,
                activity,
                kind);
    }

    /** The animal that energy is computed for, defaults filled in. */
    public EnergyNeed.Animal animal() {
        return new EnergyNeed.Animal(
                weight,
                matureWeight.orElse(weight),
                gain.orElse(0),
                milk.orElse(0),
                fat.orElse(USUAL_FAT),
                pregnant.orElse(0),
                workHours.orElse(0),
                digestibility);
    }

    /** How it moves, for activity. */
    String moving() {
        return activity.orElse(STALL);
    }

    /** What it is, for maintenance and growth. */
    String animalKind() {
        return kind.orElse(milk.orElse(0) > 0 ? "lactating" : "not-lactating");
    }

    /** The defaults that enter the energy need, by field, in words. */
    Map<String, String> defaults() {
        Map<String, String> filled = new LinkedHashMap<>();
        boolean grows = gain.orElse(0) > 0;
        boolean milked = milk.orElse(0) > 0;
        put(filled, "mature_weight_kg", grows && matureWeight.isEmpty(), "weight_kg: a grown animal");
        put(filled, "gain_kg_per_day", gain.isEmpty(), "0: the animal does not grow");
        put(filled, "milk_kg_per_day", milk.isEmpty(), "0: the animal gives no milk");
        put(filled, "milk_fat_percent", milked && fat.isEmpty(), "4 % (common practice, no source)");
        put(filled, "pregnant_share", pregnant.isEmpty(), "0: no animal is pregnant");
        put(filled, "work_hours_per_day", workHours.isEmpty(), "0: the animal does no work");
        put(filled, "activity", activity.isEmpty(), STALL);
        put(filled, "kind", kind.isEmpty(), animalKind() + ", by milk_kg_per_day");
        return filled;
    }

    private static void put(Map<String, String> filled, String field, boolean open, String with) {
        if (open) {
            filled.put(field, with);
        }
    }
}
