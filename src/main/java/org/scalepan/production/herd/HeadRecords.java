package org.scalepan.production.herd;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.scalepan.quantity.Amount;

/**
 * What is recorded of one head of cattle or buffalo, with the units and ranges of {@link EnergyNeed.Animal}.
 *
 * @param weight live weight in kg
 * @param matureWeight live weight of the mature animal in kg
 * @param gain gain in kg a day
 * @param milk milk in kg a day
 * @param fat fat in the milk, percent
 * @param pregnant share of the animals that are pregnant
 * @param workHours hours of work a day
 * @param digestibility digestible energy in percent of gross energy
 */
public record HeadRecords(
        Amount weight,
        Amount matureWeight,
        Amount gain,
        Amount milk,
        Amount fat,
        Amount pregnant,
        Amount workHours,
        Amount digestibility) {

    /** An animal whose numbers are known. */
    public static HeadRecords of(EnergyNeed.Animal animal) {
        return new HeadRecords(
                Amount.of(animal.weight()),
                Amount.of(animal.matureWeight()),
                Amount.of(animal.gain()),
                Amount.of(animal.milk()),
                Amount.of(animal.fat()),
                Amount.of(animal.pregnant()),
                Amount.of(animal.workHours()),
                Amount.of(animal.digestibility()));
    }

    /** The same head with other milk, kg a day. */
    public HeadRecords milking(Amount other) {
        return new HeadRecords(weight, matureWeight, gain, other, fat, pregnant, workHours, digestibility);
    }

    /** Part of the energy that the head needs. */
    Amount need(EnergyNeed.Coefficients coefficients, ToDoubleFunction<EnergyNeed> part) {
        return Amount.by(
                head -> part.applyAsDouble(EnergyNeed.of(animal(head), coefficients)),
                List.of(weight, matureWeight, gain, milk, fat, pregnant, workHours, digestibility));
    }

    private static EnergyNeed.Animal animal(double[] head) {
        return new EnergyNeed.Animal(head[0], head[1], head[2], head[3], head[4], head[5], head[6], head[7]);
    }
}
