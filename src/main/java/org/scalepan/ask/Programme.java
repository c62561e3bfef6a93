package org.scalepan.ask;

import java.util.OptionalDouble;
import org.scalepan.footprint.FunctionalUnit;

/**
 * What a programme brings in a year, and to whom.
 *
 * @param kilograms of product a year, above zero
 * @param unit the kilogram they are counted in
 * @param years how long it runs
 */
public record Programme(
        double kilograms,
        FunctionalUnit unit,
        OptionalDouble years,
        OptionalDouble households,
        OptionalDouble beneficiaries,
        OptionalDouble women,
        OptionalDouble men,
        OptionalDouble meals) {
    public Programme {
        if (!(kilograms > 0) || !Double.isFinite(kilograms)) {
            throw new IllegalArgumentException("a programme brings more than nothing a year, not " + kilograms + " kg");
        }
    }

    /** A quantity a year and no more. */
    public static Programme of(double kilograms, FunctionalUnit unit) {
        OptionalDouble none = OptionalDouble.empty();
        return new Programme(kilograms, unit, none, none, none, none, none, none);
    }
}
