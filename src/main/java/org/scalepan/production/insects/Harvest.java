package org.scalepan.production.insects;

import java.util.Optional;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.RecordedNumber;

/** The harvest of a year, in the way the grower counts it. */
public sealed interface Harvest {

    /** kg live a year. */
    ActivityTerm mass();

    /** kg live a year, centrally. */
    default double kilograms() {
        return mass().central();
    }

    /** Weighed. */
    record Weighed(RecordedNumber weight) implements Harvest {
        public Weighed {
            positive("kilograms", weight);
        }

        public Weighed(double kilograms) {
            this(RecordedNumber.of(kilograms));
        }

        @Override
        public ActivityTerm mass() {
            return weight.term();
        }
    }

    /** Counted by containers. */
    record ByContainer(RecordedNumber containers, RecordedNumber kilogramsPerContainer, RecordedNumber cyclesPerYear)
            implements Harvest {
        public ByContainer {
            positive("containers", containers);
            positive("kilograms per container", kilogramsPerContainer);
            positive("cycles per year", cyclesPerYear);
        }

        public ByContainer(double containers, double kilogramsPerContainer, double cyclesPerYear) {
            this(
                    RecordedNumber.of(containers),
                    RecordedNumber.of(kilogramsPerContainer),
                    RecordedNumber.of(cyclesPerYear));
        }

        @Override
        public ActivityTerm mass() {
            return containers.term().times(kilogramsPerContainer.term()).times(cyclesPerYear.term());
        }
    }

    /** Counted by larvae. */
    record ByNumber(RecordedNumber larvae, LarvaMass each) implements Harvest {
        public ByNumber {
            positive("larvae", larvae);
        }

        public ByNumber(double larvae, double larvaePerKilogram) {
            this(RecordedNumber.of(larvae), LarvaMass.perKilogram(RecordedNumber.of(larvaePerKilogram)));
        }

        @Override
        public ActivityTerm mass() {
            return each.of(larvae.term());
        }
    }

    /**
     * Expected of the adults stocked: planned, not weighed.
     *
     * @param pairs stocked for a cycle, in all
     * @param eggsPerPair laid in the time that they stay
     * @param hatch share of the eggs that hatch, above 0 up to 1
     * @param survival share of the hatched that live to the harvest, above 0 up to 1
     * @param batchesLost share of the batches that are lost as a whole, 0 to below 1; none when absent
     * @param each what one weighs at harvest
     * @param cyclesPerYear how often pairs are stocked in a year
     */
    record ByPairs(
            RecordedNumber pairs,
            RecordedNumber eggsPerPair,
            RecordedNumber hatch,
            RecordedNumber survival,
            Optional<RecordedNumber> batchesLost,
            LarvaMass each,
            RecordedNumber cyclesPerYear)
            implements Harvest {
        public ByPairs {
            positive("pairs", pairs);
            positive("eggs per pair", eggsPerPair);
            positive("hatch", hatch);
            positive("survival", survival);
            positive("cycles per year", cyclesPerYear);
        }

        @Override
        public ActivityTerm mass() {
            ActivityTerm grown = pairs.term()
                    .times(eggsPerPair.term())
                    .times(hatch.term())
                    .times(survival.term())
                    .times(cyclesPerYear.term());
            return each.of(batchesLost
                    .map(lost -> grown.times(lost.term().complement()))
                    .orElse(grown));
        }
    }

    /** Refuses a number that is not above zero. */
    static void positive(String what, RecordedNumber value) {
        if (!(value.least() > 0 && value.most() < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value.least());
        }
    }
}
