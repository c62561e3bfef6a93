package org.scalepan.ask.programme;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Product;
import org.scalepan.production.Scope;

/** What a product is used as. Food and feed are separate questions: feed for hens does not displace human food. */
public enum Use {
    FOOD("food"),
    FEED("feed");

    private final String id;

    Use(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    /** Alternative products that might be displaced, plants among them, where a question names none. */
    public List<String> usualAlternatives() {
        return this == FOOD ? List.of("chicken", "egg", "pork", "beef", "tofu") : List.of("soybean-meal", "fishmeal");
    }

    /** Why a product cannot be supplied for this use: its group decides whether it is food or feed. */
    public Optional<String> obstacleToSupply(Product product) {
        if (this == FEED && !product.isInsect()) {
            return Optional.of(product.id() + " is no insect: as feed, insects stand for fishmeal or soybean meal");
        }
        return this == FOOD ? feedIsNoFood(product) : Optional.empty();
    }

    /** Why a product cannot be what this use displaces. */
    public Optional<String> obstacleToDisplacement(Product product) {
        if (this == FEED && !product.isFeed()) {
            return Optional.of(
                    product.id() + " is no feed of this library: as feed, fishmeal or soybean-meal is displaced");
        }
        return this == FOOD ? feedIsNoFood(product) : Optional.empty();
    }

    private static Optional<String> feedIsNoFood(Product product) {
        return product.isFeed()
                ? Optional.of(product.id() + " is feed and no food: ask with as: feed")
                : Optional.empty();
    }

    /**
     * The boundary of an indicator in a question about this use. Feed is counted at the animal whatever is asked; meals end at the
     * processing gate; records end at a gate.
     *
     * @param asked the boundary that the question names, if it does
     * @param recorded whether a side is computed from records
     */
    public Boundary boundary(Indicator indicator, Optional<Boundary> asked, boolean recorded) {
        Boundary usual = indicator.defaultBoundary();
        if (indicator.isFeed()) {
            return usual;
        }
        Boundary unasked = this == FEED ? Boundary.PROCESSING_GATE : usual;
        return asked.orElse(recorded ? Scope.boundaryOfRecords(unasked) : unasked);
    }
}
