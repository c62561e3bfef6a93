package org.scalepan.uncertainty;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One printed number with its spread, as published and before any reading of it.
 *
 * @param kind how the spread is stated
 * @param value the printed central value, finite
 * @param valueIsMedian whether the central value is a median; otherwise it is a mean, or for a range whatever was printed
 * @param low the lower limit of that kind (for sd and se the value less one), finite
 * @param high the upper limit of that kind (for sd and se the value plus one), finite, not below low
 * @param percentiles printed percentiles by probability (0.05 for the 5th), values finite
 */
public record PublishedSpread(
        SpreadKind kind,
        OptionalDouble value,
        boolean valueIsMedian,
        OptionalDouble low,
        OptionalDouble high,
        SortedMap<Double, Double> percentiles) {

    public PublishedSpread {
        value.ifPresent(v -> Require.finite("value", v));
        low.ifPresent(v -> Require.finite("low", v));
        high.ifPresent(v -> Require.finite("high", v));
        if (low.isPresent() && high.isPresent() && low.getAsDouble() > high.getAsDouble()) {
            throw new IllegalArgumentException(
                    "low " + low.getAsDouble() + " must not be above high " + high.getAsDouble());
        }
        TreeMap<Double, Double> copy = new TreeMap<>();
        for (Map.Entry<Double, Double> point : percentiles.entrySet()) {
            copy.put(Require.innerProbability(point.getKey()), Require.finite("percentile value", point.getValue()));
        }
        percentiles = Collections.unmodifiableSortedMap(copy);
    }
}
