package org.scalepan.production.herd;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.RecordedNumber;
import org.scalepan.words.Message;

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
        RecordedNumber weight,
        Optional<RecordedNumber> matureWeight,
        Optional<RecordedNumber> gain,
        Optional<RecordedNumber> milk,
        Optional<RecordedNumber> fat,
        Optional<RecordedNumber> pregnant,
        Optional<RecordedNumber> workHours,
        RecordedNumber digestibility,
        Optional<String> activity,
        Optional<String> kind) {
    /** Percent; common practice, no source. */
    private static final double USUAL_FAT = 4;

    /** How many numbers {@link #terms} has. */
    static final int TERMS = 8;

    private static final String STALL = "stall";

    /** A head of which everything is recorded. */
    public static HeadRecords of(EnergyNeed.Animal animal, String activity, String kind) {
        return new HeadRecords(
                RecordedNumber.of(animal.weight()),
                RecordedNumber.known(animal.matureWeight()),
                RecordedNumber.known(animal.gain()),
                RecordedNumber.known(animal.milk()),
                RecordedNumber.known(animal.fat()),
                RecordedNumber.known(animal.pregnant()),
                RecordedNumber.known(animal.workHours()),
                RecordedNumber.of(animal.digestibility()),
                Optional.of(activity),
                Optional.of(kind));
    }

    /** The same head with other milk, kg a day. */
    public HeadRecords milking(double other) {
        return new HeadRecords(
                weight,
                matureWeight,
                gain,
                RecordedNumber.known(other),
                fat,
                pregnant,
                workHours,
                digestibility,
                activity,
                kind);
    }

    /** The animal that energy is computed for, with every record in the middle and defaults filled in. */
    public EnergyNeed.Animal animal() {
        return animal(terms().stream().mapToDouble(ActivityTerm::central).toArray());
    }

    /** The numbers of the animal that energy is computed for, defaults filled in. */
    List<ActivityTerm> terms() {
        return List.of(
                weight.term(),
                matureWeight.orElse(weight).term(),
                term(gain, 0),
                term(milk, 0),
                term(fat, USUAL_FAT),
                term(pregnant, 0),
                term(workHours, 0),
                digestibility.term());
    }

    private static ActivityTerm term(Optional<RecordedNumber> number, double otherwise) {
        return number.orElse(RecordedNumber.of(otherwise)).term();
    }

    /**
     * The animal of such numbers.
     *
     * @param numbers in the order of {@link #terms}
     */
    static EnergyNeed.Animal animal(double[] numbers) {
        return new EnergyNeed.Animal(
                numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5], numbers[6], numbers[7]);
    }

    private double milkInTheMiddle() {
        return RecordedNumber.centralOr(milk, 0);
    }

    /** How it moves, for activity. */
    String moving() {
        return activity.orElse(STALL);
    }

    /** What it is, for maintenance and growth. */
    String animalKind() {
        return kind.orElse(milkInTheMiddle() > 0 ? "lactating" : "not-lactating");
    }

    /** The defaults that enter the energy need, by field, in words. */
    Map<String, Message> defaults() {
        Map<String, Message> filled = new LinkedHashMap<>();
        boolean grows = RecordedNumber.centralOr(gain, 0) > 0;
        boolean milked = milkInTheMiddle() > 0;
        put(filled, "mature_weight_kg", grows && matureWeight.isEmpty(), Message.of("gap.grown"));
        put(filled, "gain_kg_per_day", gain.isEmpty(), Message.of("gap.not-growing"));
        put(filled, "milk_kg_per_day", milk.isEmpty(), Message.of("gap.no-milk"));
        put(filled, "milk_fat_percent", milked && fat.isEmpty(), Message.of("gap.milk-fat"));
        put(filled, "pregnant_share", pregnant.isEmpty(), Message.of("gap.not-pregnant"));
        put(filled, "work_hours_per_day", workHours.isEmpty(), Message.of("gap.no-work"));
        put(filled, "activity", activity.isEmpty(), Message.verbatim(STALL));
        put(filled, "kind", kind.isEmpty(), Message.of("gap.kind-by-milk", "kind", animalKind()));
        return filled;
    }

    private static void put(Map<String, Message> filled, String field, boolean open, Message with) {
        if (open) {
            filled.put(field, with);
        }
    }
}
