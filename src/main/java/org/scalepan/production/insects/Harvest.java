package org.scalepan.production.insects;

import org.scalepan.quantity.Amount;

/** The harvest of a year, in the way the grower counts it. */
public sealed interface Harvest {

    /** kg live a year. */
    Amount kilograms();

    /** Weighed. */
    record Weighed(Amount kilograms) implements Harvest {
        public Weighed {
            positive("kilograms", kilograms);
        }

        public Weighed(double kilograms) {
            this(Amount.of(kilograms));
        }
    }

    /** Counted by containers. */
    record ByContainer(Amount containers, Amount kilogramsPerContainer, Amount cyclesPerYear) implements Harvest {
        public ByContainer {
            positive("containers", containers);
            positive("kilograms per container", kilogramsPerContainer);
            positive("cycles per year", cyclesPerYear);
        }

        public ByContainer(double containers, double kilogramsPerContainer, double cyclesPerYear) {
            this(Amount.of(containers), Amount.of(kilogramsPerContainer), Amount.of(cyclesPerYear));
        }

        @Override
        public Amount kilograms() {
            return containers.times(kilogramsPerContainer).times(cyclesPerYear);
        }
    }

    /** Counted by larvae. */
    record ByNumber(Amount larvae, Amount larvaePerKilogram) implements Harvest {
        public ByNumber {
            positive("larvae", larvae);
            positive("larvae per kilogram", larvaePerKilogram);
        }

        public ByNumber(double larvae, double larvaePerKilogram) {
            this(Amount.of(larvae), Amount.of(larvaePerKilogram));
        }

        @Override
        public Amount kilograms() {
            return larvae.over(larvaePerKilogram);
        }
    }

    private static void positive(String what, Amount value) {
        if (!value.isAbove(0) || !value.isBelow(Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value);
        }
    }
}
