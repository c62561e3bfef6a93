package org.scalepan.production;

import java.util.Optional;
import org.scalepan.production.FarmRecords.Burden;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.OwnFactors;

/** Feed records for tests. */
public record Fed(FeedUse use) {

    public static Fed of(String ingredient, double kilograms) {
        return new Fed(new FeedUse(
                ingredient,
                RecordedNumber.of(kilograms),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OwnFactors.NONE));
    }

    public Fed moisture(double share) {
        return with(RecordedNumber.known(share), use.burden(), use.displaces(), use.displacedPerKilogram(), use.own());
    }

    public Fed burden(Burden burden) {
        return with(use.moisture(), Optional.of(burden), use.displaces(), use.displacedPerKilogram(), use.own());
    }

    public Fed displacing(String ingredient, double kilogramPerKilogram) {
        return with(
                use.moisture(),
                Optional.of(Burden.DISPLACED),
                Optional.of(ingredient),
                RecordedNumber.known(kilogramPerKilogram),
                use.own());
    }

    /** The grower's own greenhouse gases and land per kg as fed. */
    public Fed own(double ghg, double land) {
        OwnFactors own = new OwnFactors(
                RecordedNumber.known(ghg), RecordedNumber.known(land), Optional.empty(), Optional.empty());
        return with(use.moisture(), use.burden(), use.displaces(), use.displacedPerKilogram(), own);
    }

    /** With the grower's own MJ per kg and nothing else of the grower's. */
    public Fed energy(double perKilogram) {
        OwnFactors own =
                new OwnFactors(Optional.empty(), Optional.empty(), RecordedNumber.known(perKilogram), Optional.empty());
        return with(use.moisture(), use.burden(), use.displaces(), use.displacedPerKilogram(), own);
    }

    private Fed with(
            Optional<RecordedNumber> moisture,
            Optional<Burden> burden,
            Optional<String> displaces,
            Optional<RecordedNumber> perKilogram,
            OwnFactors own) {
        return new Fed(new FeedUse(use.ingredient(), use.kilograms(), moisture, burden, displaces, perKilogram, own));
    }
}
