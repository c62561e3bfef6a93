package org.scalepan.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.Asked;
import org.scalepan.ask.programme.Baseline;
import org.scalepan.ask.programme.EqualBasis;
import org.scalepan.ask.programme.FedAnimal;
import org.scalepan.ask.programme.Prices;
import org.scalepan.ask.programme.Programme;
import org.scalepan.ask.programme.Substitution;
import org.scalepan.ask.programme.SubstitutionQuestion;
import org.scalepan.ask.programme.Use;
import org.scalepan.ask.programme.YearlyChange;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;

/** A programme in the making: a thousand kilograms a year as sold, on equal protein, at a rate of 1, as food, unless it is told otherwise. */
public final class Brought {
    private final Library library;
    private final Asked asked;
    private final Side product;
    private final List<Baseline.BaselinePart> parts = new ArrayList<>();
    private final List<Side> alternatives = new ArrayList<>();
    private Programme programme = Programme.of(1_000, FunctionalUnit.KG_PRODUCT);
    private Use use = Use.FOOD;
    private Optional<FedAnimal> animal = Optional.empty();
    private double rate = 1;
    private EqualBasis equalBasis = EqualBasis.PROTEIN;
    private Optional<Prices> prices = Optional.empty();

    private Brought(Library library, Asked asked, Side product) {
        this.library = library;
        this.asked = asked;
        this.product = product;
    }

    public static Brought of(Library library, Asked asked, String product) {
        return new Brought(library, asked, new Side.PublishedSide(asked.item(product)));
    }

    public static Brought of(Library library, Asked asked, Side product) {
        return new Brought(library, asked, product);
    }

    public Brought kilograms(double kilograms, FunctionalUnit unit) {
        programme = Programme.of(kilograms, unit);
        return this;
    }

    public Brought insteadOf(String other) {
        return insteadOf(other, 1);
    }

    public Brought insteadOf(String other, double share) {
        return priced(other, share, OptionalDouble.empty(), OptionalDouble.empty());
    }

    public Brought priced(String other, double share, OptionalDouble price, OptionalDouble imported) {
        Side side = new Side.PublishedSide(asked.item(other));
        parts.add(new Baseline.BaselinePart(side, share, FunctionalUnit.KG_PRODUCT, price, imported));
        return this;
    }

    public Brought or(String alternative) {
        alternatives.add(new Side.PublishedSide(asked.item(alternative)));
        return this;
    }

    public Brought rate(double displacement) {
        rate = displacement;
        return this;
    }

    public Brought on(EqualBasis other) {
        equalBasis = other;
        return this;
    }

    public Brought asFeedOf(FedAnimal fed) {
        use = Use.FEED;
        animal = Optional.of(fed);
        return this;
    }

    public Brought costing(double cost) {
        prices = Optional.of(new Prices("KES", OptionalDouble.empty(), OptionalDouble.of(cost)));
        return this;
    }

    public SubstitutionQuestion question() {
        return new SubstitutionQuestion(
                use,
                animal,
                product,
                programme,
                new Baseline(parts),
                rate,
                equalBasis,
                List.of(asked.per(equalBasis.counted()).basis()),
                alternatives,
                prices,
                Compared.SAMPLING);
    }

    public Substitution answer() {
        return Substitution.of(library, question());
    }

    public YearlyChange.Figures figures() {
        return answer().changes().get(0).figures().orElseThrow();
    }
}
