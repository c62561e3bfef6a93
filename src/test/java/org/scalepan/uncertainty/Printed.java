package org.scalepan.uncertainty;

import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/** Published numbers with their spreads, for tests. */
record Printed(
        SpreadKind kind,
        OptionalDouble value,
        boolean valueIsMedian,
        OptionalDouble low,
        OptionalDouble high,
        SortedMap<Double, Double> percentiles) {

    static Printed of(SpreadKind kind) {
        return new Printed(
                kind, OptionalDouble.empty(), false, OptionalDouble.empty(), OptionalDouble.empty(), new TreeMap<>());
    }

    Printed value(double mean) {
        return new Printed(kind, OptionalDouble.of(mean), false, low, high, percentiles);
    }

    Printed median(double median) {
        return new Printed(kind, OptionalDouble.of(median), true, low, high, percentiles);
    }

    Printed low(double limit) {
        return new Printed(kind, value, valueIsMedian, OptionalDouble.of(limit), high, percentiles);
    }

    Printed high(double limit) {
        return new Printed(kind, value, valueIsMedian, low, OptionalDouble.of(limit), percentiles);
    }

    Printed percentile(double probability, double point) {
        SortedMap<Double, Double> more = new TreeMap<>(percentiles);
        more.put(probability, point);
        return new Printed(kind, value, valueIsMedian, low, high, more);
    }

    PublishedSpread spread() {
        return spreadWith(percentiles);
    }

    PublishedSpread spreadWith(SortedMap<Double, Double> points) {
        return new PublishedSpread(kind, value, valueIsMedian, low, high, points);
    }
}
