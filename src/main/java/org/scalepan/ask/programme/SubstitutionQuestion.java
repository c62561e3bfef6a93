package org.scalepan.ask.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.input.Obstacle;
import org.scalepan.production.Scope;

/**
 * A question about a programme that substitutes one food or feed for another, all defaults resolved.
 *
 * @param animal whose diet it is, when the product is used as feed
 * @param rate how much of the equal basis is displaced for each unit supplied, 0 to 1. There is no default: nobody but the asker can assume
 *     it. 0 is food on top of what is eaten anyway; above 1 is refused, because on an equal basis a kilogram cannot replace more than a
 *     kilogram
 * @param bases one for each indicator, counting {@link EqualBasis#counted}
 * @param alternatives what else might be displaced, for the sensitivity of the result to that choice
 */
public record SubstitutionQuestion(
        Use use,
        Optional<FedAnimal> animal,
        Side product,
        Programme programme,
        Baseline baseline,
        double rate,
        EqualBasis equalBasis,
        List<ComparisonBasis> bases,
        List<Side> alternatives,
        Optional<Prices> prices,
        Sampling sampling) {
    public SubstitutionQuestion {
        bases = List.copyOf(bases);
        alternatives = List.copyOf(alternatives);
        if (!(rate >= 0 && rate <= 1)) {
            throw new IllegalArgumentException("a displacement rate lies between 0 and 1, not at " + rate);
        }
        if (bases.isEmpty()) {
            throw new IllegalArgumentException("a substitution is asked about at least one indicator");
        }
    }

    /** The indicators that a programme can be asked about. */
    public static final List<String> INDICATORS =
            List.of("ghg", "land", "feed", "feed-dry-matter", "energy", "water", "water-footprint");

    /** Those of a question that names none. */
    public static final List<String> USUAL_INDICATORS = List.of("ghg", "land", "feed", "water");

    /**
     * The boundaries that a programme can be asked about, narrowest first. Avoided gases of the animals alone are not the avoided footprint
     * of a product: feed, energy and housing would be left out.
     *
     * @param recorded whether a side is computed from records, which end at a gate
     */
    public static List<Boundary> boundaries(boolean recorded) {
        return Stream.of(Boundary.values())
                .filter(boundary -> boundary != Boundary.ANIMAL)
                .filter(boundary -> !recorded || Scope.BOUNDARIES.contains(boundary))
                .toList();
    }

    /** Why nothing can be computed at all: a content that the equal basis needs and the library lacks, each named. */
    public List<Obstacle> obstacles(Library library) {
        List<String> missing = new ArrayList<>();
        if (equalBasis == EqualBasis.DIGESTIBLE_LYSINE
                && animal.filter(FedAnimal.POULTRY::equals).isEmpty()) {
            missing.add("this library has no lysine-digestibility in "
                    + animal.map(FedAnimal::id).orElse("people") + ": what it has was measured in poultry");
        }
        if (supply(library) instanceof Supply.MissingSupply lacking) {
            missing.add(lacking.text() + unitHint());
        }
        for (Baseline.BaselinePart part : baseline.parts()) {
            Supply supply = Supply.of(library, part.side(), equalBasis.counted(), equalBasis, bases.get(0));
            if (supply instanceof Supply.MissingSupply lacking) {
                missing.add(lacking.text());
            }
        }
        return missing.stream().distinct().map(text -> new Obstacle("on", text)).toList();
    }

    /** With a known protein content, say from the label, no factor is needed. */
    private String unitHint() {
        return equalBasis == EqualBasis.PROTEIN
                ? "; if you know it yourself, count the quantity in kg-protein (unit)"
                : "";
    }

    /** What a kilogram of the product supplies. */
    Supply supply(Library library) {
        return Supply.of(library, product, programme.unit(), equalBasis, bases.get(0));
    }

    /** The same, when there are no {@link #obstacles}. */
    Supply.Known knownSupply(Library library) {
        if (supply(library) instanceof Supply.Known known) {
            return known;
        }
        throw new IllegalArgumentException("the question has obstacles: "
                + obstacles(library).stream().map(Obstacle::text).collect(Collectors.joining("; ")));
    }
}
