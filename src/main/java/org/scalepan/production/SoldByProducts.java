package org.scalepan.production;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.input.Obstacle;
import org.scalepan.production.FarmRecords.Burden;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.OwnFactors;

/**
 * The ingredients that come along with something else and are bought and sold as feed: bran, meals, molasses, brewers' grains, straw.
 * How much of the burden of the whole they carry is a choice of method that can turn a comparison round, so that no default makes it.
 */
public final class SoldByProducts {
    /** Kinds of ingredients that come along with something else; a crop, a forage and a mixed feed are made for their own sake. */
    private static final Set<String> KINDS = Set.of("by-product", "residue", "animal");

    private final Set<String> ingredients;

    private SoldByProducts(Library library) {
        this.ingredients = library.table("ingredients").rows().stream()
                .filter(row -> row.text("market").equals("sold") && KINDS.contains(row.text("kind")))
                .map(row -> row.text("id"))
                .collect(Collectors.toUnmodifiableSet());
    }

    public static SoldByProducts of(Library library) {
        return library.view(SoldByProducts.class, SoldByProducts::new);
    }

    /** True for a by-product that is bought and sold. */
    public boolean includes(String ingredient) {
        return ingredients.contains(ingredient);
    }

    /**
     * Why a line of feed cannot be counted as it is: it is a by-product that is sold, and how its burden is allocated is not said. Own
     * factors for all that is counted leave nothing to allocate.
     */
    public Optional<Obstacle> obstacle(FeedUse feed) {
        if (feed.burden().isPresent() || !includes(feed.ingredient()) || isComplete(feed.own())) {
            return Optional.empty();
        }
        return Optional.of(new Obstacle(
                "burden",
                feed.ingredient()
                        + " is a by-product that is bought and sold, so the records must say how much of the burden of the"
                        + " whole it carries: " + Burden.ECONOMIC.id() + " (its share by price), "
                        + Burden.MASS.id() + " (its share by mass), " + Burden.BURDEN_FREE.id()
                        + " (nothing; displaces names what had to replace it where it was fed before) or "
                        + Burden.DISPLACED.id() + " (the burden of what replaces it there, named by displaces)"));
    }

    private static boolean isComplete(OwnFactors own) {
        return Stream.of(own.ghg(), own.land(), own.energy(), own.water()).allMatch(factor -> factor.isPresent());
    }
}
