package org.scalepan.ask.programme;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Side;
import org.scalepan.ask.Warning;
import org.scalepan.cite.Reference;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.words.Language;

/**
 * A programme that substitutes one food or feed for another: kilograms × content × displacement rate × footprint of what is
 * displaced, less the footprint of the whole product, including the part that displaces nothing.
 *
 * <p>Source: system expansion by the displaced product, ISO 14044:2006, 4.3.4.2 (clause from memory).
 */
public record Substitution(
        SubstitutionQuestion question,
        Displaced displaced,
        List<YearlyChange> changes,
        Optional<MoneySide> money,
        Optional<Shortfall> shortfall) {
    public Substitution {
        changes = List.copyOf(changes);
    }

    /**
     * Answers a question that has no {@link SubstitutionQuestion#obstacles}.
     *
     * @throws IllegalArgumentException when it has
     */
    public static Substitution of(Library library, SubstitutionQuestion question) {
        List<YearlyChange> changes = question.bases().stream()
                .map(basis -> YearlyChange.of(library, question, basis))
                .toList();
        Displaced displaced =
                Displaced.of(library, question, question.sampling().random());
        Optional<YearlyChange.Figures> warming = changes.stream()
                .filter(change -> change.basis().indicator().isWarming())
                .findFirst()
                .flatMap(YearlyChange::figures);
        Optional<MoneySide> money = question.prices()
                .map(prices -> MoneySide.of(
                        prices,
                        question.programme(),
                        displaced,
                        warming.map(YearlyChange.Figures::avoided),
                        warming.map(YearlyChange.Figures::bound).orElse(Bound.EXACT),
                        question.sampling().coverage()));
        return new Substitution(question, displaced, changes, money, Shortfall.of(library, question));
    }

    /** What a reader must know, each thing once however many indicators it is about. */
    public List<Warning> warnings(Library library) {
        return warnings(library, Language.ENGLISH);
    }

    /** The same; some have figures of this answer in them, which are worded in a language. */
    public List<Warning> warnings(Library library, Language language) {
        return Stream.of(
                        shortfall.map(Shortfall::warning).stream(),
                        grounds(library).warnings().stream(),
                        displacedUse(library, language))
                .flatMap(each -> each)
                .distinct()
                .toList();
    }

    /** The figures of records that count by-products as burden-free although they are sold, with their use elsewhere counted. */
    private Stream<Warning> displacedUse(Library library, Language language) {
        return changes.stream()
                .flatMap(change -> change.withEvidence().stream()
                        .flatMap(estimate -> DisplacedUseFigure.drawn(
                                        library,
                                        estimate,
                                        change.basis(),
                                        question.sampling(),
                                        question.sampling().random())
                                .stream()
                                .map(figure -> figure.warning(
                                        new Sentences(
                                                change.basis(),
                                                question.sampling().coverage(),
                                                language),
                                        estimate.name().in(language)))));
    }

    private Provenance grounds(Library library) {
        return new Provenance(
                library,
                changes.stream()
                        .flatMap(change -> change.withEvidence().stream())
                        .toList());
    }

    /** The products on either side, with a figure or without: cautions do not depend on evidence. */
    public List<Product> products() {
        return Stream.concat(
                        Stream.of(question.product()),
                        question.baseline().parts().stream().map(Baseline.BaselinePart::side))
                .map(Side::product)
                .distinct()
                .toList();
    }

    /** The composition rows by which quantities were made equal, beside those of the footprints. */
    public List<CompositionRow> contents(Library library) {
        List<Supply> supplies = new ArrayList<>();
        supplies.add(question.supply(library));
        question.baseline()
                .parts()
                .forEach(part -> supplies.add(Supply.of(
                        library,
                        part.side(),
                        part.unit(),
                        question.equalBasis(),
                        question.bases().get(0))));
        return supplies.stream()
                .filter(Supply.Known.class::isInstance)
                .map(Supply.Known.class::cast)
                .flatMap(Substitution::rows)
                .distinct()
                .toList();
    }

    private static Stream<CompositionRow> rows(Supply.Known known) {
        return Stream.concat(
                known.steps().stream()
                        .filter(ChainStep.PublishedStep.class::isInstance)
                        .map(step -> ((ChainStep.PublishedStep) step).row()),
                known.contents().stream());
    }

    /** The publications, in the order in which they were met. */
    public List<Reference> references(Library library) {
        Set<Reference> references = new LinkedHashSet<>(grounds(library).references());
        contents(library).forEach(row -> library.reference(row.cited().source()).ifPresent(references::add));
        changes.stream()
                .flatMap(change -> change.instead().stream())
                .forEach(ratio -> library.reference(ratio.cited().source()).ifPresent(references::add));
        return List.copyOf(references);
    }

    /** The units that a programme may count its kilograms in. */
    public static List<FunctionalUnit> units() {
        return List.of(
                FunctionalUnit.KG_LIVE,
                FunctionalUnit.KG_PRODUCT,
                FunctionalUnit.KG_EDIBLE,
                FunctionalUnit.KG_DRY_MATTER,
                FunctionalUnit.KG_PROTEIN);
    }
}
