package org.scalepan.production.insects;

import org.scalepan.production.ActivityTerm;
import org.scalepan.production.RecordedNumber;

/**
 * What one animal weighs at harvest, as the grower counts or weighs it.
 *
 * @param number animals to the kg live, or the mean mass of one in g
 * @param inGrams whether it is the mass in g
 */
public record LarvaMass(RecordedNumber number, boolean inGrams) {
    private static final double GRAMS_PER_KILOGRAM = 1000;

    public LarvaMass {
        Harvest.positive(inGrams ? "grams per larva" : "larvae per kilogram", number);
    }

    /** So many to the kg. */
    public static LarvaMass perKilogram(RecordedNumber number) {
        return new LarvaMass(number, false);
    }

    /** So many g each. */
    public static LarvaMass grams(RecordedNumber mean) {
        return new LarvaMass(mean, true);
    }

    /** kg live of so many animals. */
    ActivityTerm of(ActivityTerm animals) {
        return inGrams ? animals.times(number.term()).over(GRAMS_PER_KILOGRAM) : animals.over(number.term());
    }

    /** Animals to the kg live, centrally. */
    double toTheKilogram() {
        return inGrams ? GRAMS_PER_KILOGRAM / number.central() : number.central();
    }
}
