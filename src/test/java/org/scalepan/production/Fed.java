package org.scalepan.production;

import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.production.FarmRecords.Burden;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.OwnFactors;

/** Feed records for tests. */
public record Fed(FeedUse use) {

    public static Fed of(String ingredient, double kilograms) {
        return new Fed(new FeedUse(
                ingredient,
                kilograms,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OwnFactors.NONE));
    }

    public Fed moisture(double share) {
        return with(OptionalDouble.of(share), use.burden(), use.displaces(), use.displacedPerKilogram(), use.own());
    }

    public Fed burden(Burden burden) {
        return with(use.moisture(), Optional.of(burden), use.displaces(), use.displacedPerKilogram(), use.own());
    }

    public Fed displacing(String ingredient, double kilogramPerKilogram) {
        return with(
                use.moisture(),
                Optional.of(Burden.DISPLACED),
                Optional.of(ingredient),
                OptionalDouble.of(kilogramPerKilogram),
                use.own());
    }

    /** The grower's own greenhouse gases and land per kg as fed. */
    public Fed own(double ghg, double land) {
        OwnFactors own = new OwnFactors(
                OptionalDouble.of(ghg), OptionalDouble.of(land), OptionalDouble.empty(), OptionalDouble.empty());
        return with(use.moisture(), use.burden(), use.displaces(), use.displacedPerKilogram(), own);
    }

    /** With the grower's own MJ per kg and nothing else of the grower's. */
    public Fed energy(double perKilogram) {
        OwnFactors own = new OwnFactors(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(perKilogram), OptionalDouble.empty());
        return with(use.moisture(), use.burden(), use.displaces(), use.displacedPerKilogram(), own);
    }

    private Fed with(
            OptionalDouble moisture,
            Optional<Burden> burden,
            Optional<String> displaces,
            OptionalDouble perKilogram,
            OwnFactors own) {
        return new Fed(new FeedUse(use.ingredient(), use.kilograms(), moisture, burden, displaces, perKilogram, own));
    }
}
