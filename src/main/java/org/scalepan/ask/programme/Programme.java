package org.scalepan.ask.programme;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.input.Obstacle;

/**
 * What a programme supplies in a year, and to whom.
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

    private static final double GRAMS = 1_000;

    /** Kilograms of an ingredient in a diet of the given kilograms, at an inclusion rate in percent. */
    public static double inDiet(double kilogramsOfDiet, double percent) {
        return kilogramsOfDiet * percent / 100;
    }

    /** The number of meals. */
    public static double meals(double kilograms, double gramsPerMeal) {
        return kilograms * GRAMS / gramsPerMeal;
    }

    /** How many people are reached: as given, or the women and men together. */
    public static OptionalDouble beneficiaries(OptionalDouble all, OptionalDouble women, OptionalDouble men) {
        double bySex = women.orElse(0) + men.orElse(0);
        return all.isPresent() || bySex <= 0 ? all : OptionalDouble.of(bySex);
    }

    /** Why the numbers of people are contradictory or incomplete. */
    public static Optional<Obstacle> obstacleInBeneficiaries(
            OptionalDouble all, OptionalDouble women, OptionalDouble men) {
        if (all.isPresent() && women.orElse(0) + men.orElse(0) > all.getAsDouble()) {
            return Optional.of(new Obstacle("beneficiaries", "beneficiaries are fewer than women and men together"));
        }
        return all.isEmpty() && women.isPresent() != men.isPresent()
                ? Optional.of(new Obstacle(
                        "beneficiaries", "beneficiaries is missing: with women or men alone the total is unknown"))
                : Optional.empty();
    }

    /** A quantity a year and no more. */
    public static Programme of(double kilograms, FunctionalUnit unit) {
        OptionalDouble none = OptionalDouble.empty();
        return new Programme(kilograms, unit, none, none, none, none, none, none);
    }
}
