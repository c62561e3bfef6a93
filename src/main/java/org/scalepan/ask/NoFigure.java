package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Pool;

/**
 * Why a product has no figure on a basis, so that an empty cell is not taken for one thing when it is another.
 *
 * @param code whether the question does not apply, is answered by another question, or has no answer
 * @param words why, as a clause
 * @param instead the question that has an answer
 */
public record NoFigure(NoFigureCode code, String words, Optional<Answerable> instead) {
    /** Functional units in the order in which another one is offered. */
    private static final List<FunctionalUnit> UNITS = List.of(
            FunctionalUnit.KG_PROTEIN,
            FunctionalUnit.KG_EDIBLE,
            FunctionalUnit.KG_PRODUCT,
            FunctionalUnit.KG_LIVE,
            FunctionalUnit.KG_DRY_MATTER);

    /** The three reasons. */
    public enum NoFigureCode {
        /** The question makes no sense of this product: an egg has no live weight. */
        NOT_APPLICABLE("not-applicable"),
        /** Another question about the product has an answer. */
        ELSEWHERE("elsewhere"),
        /** Nothing is known. */
        NONE("none");

        private final String id;

        NoFigureCode(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    /**
     * A question that has an answer.
     *
     * @param bound whether the answer is a bound, whose number has to be asked for
     */
    public record Answerable(ProductForm item, ComparisonBasis basis, boolean bound) {}

    /** Why there is none; for a question that has no figure. Nothing is drawn. */
    public static NoFigure of(Library library, ProductForm item, ComparisonBasis basis) {
        Optional<String> senseless = senseless(item.product(), basis);
        if (senseless.isPresent()) {
            Optional<Answerable> other = UNITS.stream()
                    .map(basis::withPer)
                    .filter(unit -> senseless(item.product(), unit).isEmpty())
                    .flatMap(unit -> answerable(library, item, unit).stream())
                    .findFirst();
            return new NoFigure(NoFigureCode.NOT_APPLICABLE, senseless.get(), other);
        }
        Optional<Answerable> other = candidates(library, item, basis)
                .flatMap(candidate -> answerable(library, candidate.item(), candidate.basis()).stream())
                .findFirst();
        return other.isPresent()
                ? new NoFigure(NoFigureCode.ELSEWHERE, difference(item, basis, other.get()), other)
                : new NoFigure(NoFigureCode.NONE, "nothing is known of it on any basis", Optional.empty());
    }

    private static Optional<String> senseless(Product product, ComparisonBasis basis) {
        if (basis.indicator().isFeed() && !product.isAnimal()) {
            return Optional.of(product.name() + " eats nothing");
        }
        if (basis.per() == FunctionalUnit.KG_LIVE && !product.hasLiveWeight()) {
            return Optional.of(product.name() + " has no live weight");
        }
        if (basis.per() == FunctionalUnit.KG_CARCASS && !product.hasCarcass()) {
            return Optional.of(product.name() + " has no carcass");
        }
        return Optional.empty();
    }

    /** Other questions, the nearest first: another end of the chain, form, wider product, unit, kind of evidence, grade. */
    private static Stream<OtherQuestion> candidates(Library library, ProductForm item, ComparisonBasis basis) {
        List<ProductForm> forms = library.results().stream()
                .filter(result -> result.product().equals(item.product().id())
                        && result.indicator().equals(basis.indicator().id()))
                .map(result -> new ProductForm(item.product(), result.form()))
                .distinct()
                .filter(form -> !form.equals(item))
                .toList();
        List<ProductForm> wider = item.product().broader().stream()
                .flatMap(id -> Stream.ofNullable(library.products().get(id)))
                .map(product -> new ProductForm(product, product.defaultForm()))
                .toList();
        List<Boundary> ends = ends(basis);
        return Stream.of(
                        atEnds(item, basis, ends),
                        forms.stream().flatMap(form -> atEnds(form, basis, ends)),
                        wider.stream().flatMap(product -> atEnds(product, basis, ends)),
                        UNITS.stream().flatMap(unit -> atEnds(item, basis.withPer(unit), ends)),
                        Stream.of(new OtherQuestion(item, basis.withOtherEvidence())),
                        atEnds(item, basis.withLowestGrade(Grade.MEMORY), ends),
                        // The gases and feed of the animals alone are no footprint of a food.
                        Stream.of(new OtherQuestion(item, basis.withBoundary(Boundary.ANIMAL))))
                .flatMap(some -> some);
    }

    private record OtherQuestion(ProductForm item, ComparisonBasis basis) {}

    private static List<Boundary> ends(ComparisonBasis basis) {
        return Stream.concat(
                        Stream.of(basis.boundary()),
                        Stream.of(Boundary.values()).filter(end -> end != Boundary.ANIMAL))
                .distinct()
                .toList();
    }

    private static Stream<OtherQuestion> atEnds(ProductForm item, ComparisonBasis basis, List<Boundary> ends) {
        return ends.stream().map(end -> new OtherQuestion(item, basis.withBoundary(end)));
    }

    private static Optional<Answerable> answerable(Library library, ProductForm item, ComparisonBasis basis) {
        if (!new Side.PublishedSide(item).hasEvidence(library, basis)
                || senseless(item.product(), basis).isPresent()) {
            return Optional.empty();
        }
        Bound bound = basis.evidence() == EvidenceKind.MODELLED
                ? ModelledEstimate.undrawn(library, item, basis).bound()
                : Pool.of(library, basis.question(item)) instanceof Evidence.PooledEvidence some
                        ? some.bound()
                        : Bound.EXACT;
        return Optional.of(new Answerable(item, basis, bound != Bound.EXACT));
    }

    /** How the question that has an answer differs from the one asked. */
    private static String difference(ProductForm item, ComparisonBasis asked, Answerable known) {
        ComparisonBasis basis = known.basis();
        String what =
                basis.evidence() != asked.evidence() ? "a " + basis.evidence().id() + " figure" : "a published figure";
        String of = known.item().equals(item) ? "" : " of " + known.item().words();
        String end = basis.boundary() == asked.boundary()
                ? ""
                : " " + basis.boundary().words(basis.indicator());
        String per = basis.per() == asked.per() ? "" : " per " + basis.per().words();
        String grade = basis.lowestGrade() == asked.lowestGrade() ? "" : " from numbers that nobody has seen";
        return "there is " + what + of + end + per + grade;
    }
}
