package org.scalepan.production;

import java.util.Optional;
import org.scalepan.production.FarmRecords.Burden;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.OwnFactors;
import org.scalepan.quantity.Amount;

/** Feed as a test tells it. */
public record Fed(FeedUse use) {

    public static Fed of(String ingredient, double kilograms) {
        return new Fed(new FeedUse(
                ingredient,
                Amount.of(kilograms),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OwnFactors.NONE));
    }

    public Fed moisture(double share) {
        return with(
                Optional.of(Amount.of(share)), use.burden(), use.displaces(), use.displacedPerKilogram(), use.own());
    }

    public Fed burden(Burden burden) {
        return with(use.moisture(), Optional.of(burden), use.displaces(), use.displacedPerKilogram(), use.own());
    }

    public Fed displacing(String ingredient, double kilogramPerKilogram) {
        return with(
                use.moisture(),
                Optional.of(Burden.DISPLACED),
                Optional.of(ingredient),
                Optional.of(Amount.of(kilogramPerKilogram)),
                use.own());
    }

    /** The grower's own greenhouse gases and land per kg as fed. */
    public Fed own(double ghg, double land) {
        OwnFactors own = new OwnFactors(
                Optional.of(Amount.of(ghg)), Optional.of(Amount.of(land)), Optional.empty(), Optional.empty());
        return with(use.moisture(), use.burden(), use.displaces(), use.displacedPerKilogram(), own);
    }

    private Fed with(
            Optional<Amount> moisture,
            Optional<Burden> burden,
            Optional<String> displaces,
            Optional<Amount> perKilogram,
            OwnFactors own) {
        return new Fed(new FeedUse(use.ingredient(), use.kilograms(), moisture, burden, displaces, perKilogram, own));
    }
}
