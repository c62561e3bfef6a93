package org.scalepan.production.insects;

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
    record ByNumber(RecordedNumber larvae, RecordedNumber larvaePerKilogram) implements Harvest {
        public ByNumber {
            positive("larvae", larvae);
            positive("larvae per kilogram", larvaePerKilogram);
        }

        public ByNumber(double larvae, double larvaePerKilogram) {
            this(RecordedNumber.of(larvae), RecordedNumber.of(larvaePerKilogram));
        }

        @Override
        public ActivityTerm mass() {
            return larvae.term().over(larvaePerKilogram.term());
        }
    }

    private static void positive(String what, RecordedNumber value) {
        if (!(value.least() > 0 && value.most() < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value.least());
        }
    }
}
