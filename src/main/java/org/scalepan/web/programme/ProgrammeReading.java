package org.scalepan.web.programme;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.ask.programme.Programme;
import org.scalepan.ask.programme.Substitution;
import org.scalepan.ask.programme.Use;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.input.Input;

/** Reads the yearly quantity of a programme and its beneficiaries. */
final class ProgrammeReading {
    private static final double LEAST = 1e-6;
    private static final double MOST = 1e12;
    private static final double MOST_YEARS = 100;

    private final Input body;
    private final Use use;

    ProgrammeReading(Input body, Use use) {
        this.body = body;
        this.use = use;
    }

    /** The programme; may be empty after an error, which is recorded in the body. */
    Optional<Programme> programme() {
        Optional<OptionalDouble> kilograms = use == Use.FEED ? kilogramsOfFeed() : kilogramsOfFood();
        if (kilograms.isEmpty()) {
            return Optional.empty();
        }
        FunctionalUnit unit = unit(body);
        if (use == Use.FEED && body.has("inclusion_percent") && unit != FunctionalUnit.KG_PRODUCT) {
            body.fault("unit", "unit must be kg-product with inclusion_percent: a diet is mixed of feed as it comes");
        }
        body.resolve("unit", unit.id());
        OptionalDouble years = body.number("years", 1, MOST_YEARS);
        OptionalDouble households = body.number("households", 1, MOST);
        OptionalDouble women = body.number("women", 0, MOST);
        OptionalDouble men = body.number("men", 0, MOST);
        OptionalDouble beneficiaries = beneficiaries(women, men);
        OptionalDouble meals = meals(kilograms.get());
        return kilograms.get().isPresent()
                ? Optional.of(new Programme(
                        kilograms.get().getAsDouble(), unit, years, households, beneficiaries, women, men, meals))
                : Optional.empty();
    }

    /** The unit of quantities; kilogram as sold by default. */
    static FunctionalUnit unit(Input from) {
        List<String> units =
                Substitution.units().stream().map(FunctionalUnit::id).toList();
        return from.oneOf("unit", units).flatMap(FunctionalUnit::of).orElse(FunctionalUnit.KG_PRODUCT);
    }

    private Optional<OptionalDouble> kilogramsOfFood() {
        if (!body.has("kg_per_year")) {
            body.fault("kg_per_year", "kg_per_year is missing: how much of the product a year brings");
        }
        return Optional.of(body.number("kg_per_year", LEAST, MOST));
    }

    /** By mass, or by the share of a diet; empty unless exactly one of the two is given. */
    private Optional<OptionalDouble> kilogramsOfFeed() {
        boolean byMass = body.has("kg_per_year");
        OptionalDouble kilograms = body.number("kg_per_year", LEAST, MOST);
        boolean byDiet = body.has("inclusion_percent");
        OptionalDouble feed = body.number("feed_kg_per_year", LEAST, MOST);
        OptionalDouble percent = body.number("inclusion_percent", LEAST, 100);
        if (byMass == byDiet || byDiet != feed.isPresent()) {
            body.fault(
                    byMass ? "inclusion_percent" : "kg_per_year",
                    "give either kg_per_year of the insect meal, or inclusion_percent of the diet with"
                            + " feed_kg_per_year, the kg of the whole diet fed in a year");
            return Optional.empty();
        }
        return Optional.of(
                byDiet && percent.isPresent()
                        ? OptionalDouble.of(Programme.inDiet(feed.getAsDouble(), percent.getAsDouble()))
                        : kilograms);
    }

    private OptionalDouble beneficiaries(OptionalDouble women, OptionalDouble men) {
        OptionalDouble all = body.number("beneficiaries", 1, MOST);
        Programme.obstacleInBeneficiaries(all, women, men).ifPresent(body::fault);
        return Programme.beneficiaries(all, women, men);
    }

    private OptionalDouble meals(OptionalDouble kilograms) {
        OptionalDouble meals = body.number("meals_per_year", 1, MOST);
        OptionalDouble grams = body.number("grams_per_meal", LEAST, MOST);
        if (meals.isPresent() && grams.isPresent()) {
            body.fault("grams_per_meal", "give either meals_per_year or grams_per_meal, not both");
        }
        return grams.isEmpty() || kilograms.isEmpty()
                ? meals
                : OptionalDouble.of(Programme.meals(kilograms.getAsDouble(), grams.getAsDouble()));
    }
}
