package org.scalepan.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.Asked;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;

/** A programme in the making: a thousand kilograms a year as sold, on equal protein, at a rate of 1, as food, unless it is told otherwise. */
final class Brought {
    private final Library library;
    private final Asked asked;
    private final Side product;
    private final List<Baseline.Part> parts = new ArrayList<>();
    private final List<Side> alternatives = new ArrayList<>();
    private Programme programme = Programme.of(1_000, FunctionalUnit.KG_PRODUCT);
    private Use use = Use.FOOD;
    private Optional<FedAnimal> animal = Optional.empty();
    private double rate = 1;
    private EqualBasis basis = EqualBasis.PROTEIN;
    private Optional<Prices> prices = Optional.empty();

    private Brought(Library library, Asked asked, Side product) {
        this.library = library;
        this.asked = asked;
        this.product = product;
    }

    static Brought of(Library library, Asked asked, String product) {
        return new Brought(library, asked, new Side.Published(asked.item(product)));
    }

    static Brought of(Library library, Asked asked, Side product) {
        return new Brought(library, asked, product);
    }

    Brought kilograms(double kilograms, FunctionalUnit unit) {
        programme = Programme.of(kilograms, unit);
        return this;
    }

    Brought insteadOf(String other) {
        return insteadOf(other, 1);
    }

    Brought insteadOf(String other, double share) {
        return priced(other, share, OptionalDouble.empty(), OptionalDouble.empty());
    }

    Brought priced(String other, double share, OptionalDouble price, OptionalDouble imported) {
        Side side = new Side.Published(asked.item(other));
        parts.add(new Baseline.Part(side, share, FunctionalUnit.KG_PRODUCT, price, imported));
        return this;
    }

    Brought or(String alternative) {
        alternatives.add(new Side.Published(asked.item(alternative)));
        return this;
    }

    Brought rate(double displacement) {
        rate = displacement;
        return this;
    }

    Brought on(EqualBasis other) {
        basis = other;
        return this;
    }

    Brought asFeedOf(FedAnimal fed) {
        use = Use.FEED;
        animal = Optional.of(fed);
        return this;
    }

    Brought costing(double cost) {
        prices = Optional.of(new Prices("KES", OptionalDouble.empty(), OptionalDouble.of(cost)));
        return this;
    }

    SubstitutionQuestion question() {
        return new SubstitutionQuestion(
                use,
                animal,
                product,
                programme,
                new Baseline(parts),
                rate,
                basis,
                List.of(asked.per(basis.counted()).ruler()),
                alternatives,
                prices,
                Compared.SAMPLING);
    }

    Substitution answer() {
        return Substitution.of(library, question());
    }

    YearlyChange.Figures figures() {
        return answer().changes().get(0).figures().orElseThrow();
    }
}
