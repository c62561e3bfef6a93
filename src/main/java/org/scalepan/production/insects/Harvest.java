package org.scalepan.production.insects;

/** The harvest of a year, in the way the grower counts it. */
public sealed interface Harvest {

    /** kg live a year. */
    double kilograms();

    /** Weighed. */
    record Weighed(double kilograms) implements Harvest {
        public Weighed {
            positive("kilograms", kilograms);
        }
    }

    /** Counted by containers. */
    record ByContainer(double containers, double kilogramsPerContainer, double cyclesPerYear) implements Harvest {
        public ByContainer {
            positive("containers", containers);
            positive("kilograms per container", kilogramsPerContainer);
            positive("cycles per year", cyclesPerYear);
        }

        @Override
        public double kilograms() {
            return containers * kilogramsPerContainer * cyclesPerYear;
        }
    }

    /** Counted by larvae. */
    record ByNumber(double larvae, double larvaePerKilogram) implements Harvest {
        public ByNumber {
            positive("larvae", larvae);
            positive("larvae per kilogram", larvaePerKilogram);
        }

        @Override
        public double kilograms() {
            return larvae / larvaePerKilogram;
        }
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value);
        }
    }
}
