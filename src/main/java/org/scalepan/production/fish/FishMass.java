package org.scalepan.production.fish;

import org.scalepan.production.ActivityTerm;
import org.scalepan.production.RecordedNumber;

/** Live fish of a year, harvested or put in, in the way the farm counts them. */
public sealed interface FishMass {
    /** kg live a year. */
    ActivityTerm mass();

    /** kg live a year, centrally. */
    default double kilograms() {
        return mass().central();
    }

    /** Weighed. */
    record WeighedFish(RecordedNumber weight) implements FishMass {
        @Override
        public ActivityTerm mass() {
            return weight.term();
        }
    }

    /**
     * Counted.
     *
     * @param gramsEach live weight of one, on average
     */
    record CountedFish(RecordedNumber fish, RecordedNumber gramsEach) implements FishMass {
        private static final double GRAMS_PER_KILOGRAM = 1000;

        @Override
        public ActivityTerm mass() {
            return fish.term().times(gramsEach.term()).over(GRAMS_PER_KILOGRAM);
        }
    }
}
