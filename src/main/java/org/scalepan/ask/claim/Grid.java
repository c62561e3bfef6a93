package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Side;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.factors.WarmingSet;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.Gap;

/**
 * The bases on which a claim is checked: functional units × boundaries × warming sets, the asked one first. Only bases with evidence stay,
 * so that the cost of a grid grows with its evidence.
 *
 * <p>Warming sets, for indicators that have them: the one asked, those of GWP100 that food studies have used since 2007, and the newest
 * GWP20, under which methane counts most.
 */
final class Grid {
    private static final List<String> WARMING_SETS = List.of("ar4-100", "ar5-100", "ar6-100", "ar6-20");

    private final Library library;
    private final ComparisonBasis asked;
    private final Optional<Side> reference;
    private final Map<ComparisonBasis, Boolean> referenceHasEvidence = new HashMap<>();

    Grid(Library library, ClaimQuestion question) {
        this.library = library;
        this.asked = question.basis();
        this.reference = question.reference();
    }

    /** The bases on which both sides have a figure, or the product alone where there is no reference; the asked one always. */
    List<ComparisonBasis> bases(Side product) {
        Set<ComparisonBasis> bases = new LinkedHashSet<>(List.of(asked));
        for (ComparisonBasis base : bases()) {
            if (bothHaveEvidence(base, product)) {
                // A set to which no result can be converted, such as GWP20 where no gas shares are known, is no basis.
                warmingSets()
                        .map(base::withGwp)
                        .filter(basis -> basis.equals(base) || bothHaveEvidence(basis, product))
                        .forEach(bases::add);
            }
        }
        return List.copyOf(bases);
    }

    private boolean bothHaveEvidence(ComparisonBasis basis, Side product) {
        return product.hasEvidence(library, basis)
                && referenceHasEvidence(basis)
                && !restsOnOtherSpecies(basis, product);
    }

    /**
     * True where nothing but the animals' gases counts and the species was never measured: then the figure is the range over all measured
     * species, which supports no verdict on this one.
     */
    private static boolean restsOnOtherSpecies(ComparisonBasis basis, Side product) {
        return basis.boundary() == Boundary.ANIMAL
                && product instanceof Side.Recorded recorded
                && recorded.system().gaps().stream()
                        .anyMatch(gap ->
                                gap.kind() == Gap.Kind.FILLED && gap.field().startsWith(Gap.ANIMAL_GASES));
    }

    /** True when the reference has a figure on a basis, or there is none to have one; looked up once for all products. */
    boolean referenceHasEvidence(ComparisonBasis basis) {
        return referenceHasEvidence.computeIfAbsent(
                basis,
                key -> reference.filter(side -> !side.hasEvidence(library, key)).isEmpty());
    }

    /** Every unit and boundary on the warming set asked, the boundary of the question and its unit first. */
    List<ComparisonBasis> bases() {
        List<ComparisonBasis> bases = new ArrayList<>();
        Stream<Boundary> boundaries = Stream.concat(
                Stream.of(asked.boundary()), Stream.of(Boundary.values()).filter(other -> other != asked.boundary()));
        boundaries.forEach(boundary ->
                units().forEach(unit -> bases.add(asked.withPer(unit).withBoundary(boundary))));
        return bases;
    }

    /** A ratio per 100 g protein is the same ratio per kg protein: it is included only where it is asked for. */
    private Stream<FunctionalUnit> units() {
        return Stream.concat(
                Stream.of(asked.per()),
                FunctionalUnit.askable().stream()
                        .flatMap(id -> FunctionalUnit.of(id).stream())
                        .filter(unit -> unit != asked.per() && unit != FunctionalUnit.HUNDRED_G_PROTEIN));
    }

    private Stream<WarmingSet> warmingSets() {
        if (!asked.indicator().isWarming()) {
            return Stream.of(asked.gwp());
        }
        return Stream.concat(
                        Stream.of(asked.gwp()),
                        WARMING_SETS.stream()
                                .flatMap(id -> Optional.ofNullable(
                                        library.warmingSets().get(id))
                                        .stream()))
                .distinct();
    }
}
