package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.OtherEvidence;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Side;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Language;

/**
 * A checked claim about one product or farm.
 *
 * @param side what the claim is about
 * @param product what can be said of it on the basis asked
 * @param reference the same of the reference
 * @param cells the claim on every basis with evidence; the first is the one asked, with or without evidence
 * @param halfMeasured bases on which only one of the sides has been measured
 * @param reason why the verdict is as it is, in sentences
 * @param shortly the same in half a sentence, for an answer about many products
 * @param displacedUse sentences of the sides that count by-products as burden-free although they are sold: the figure on the basis
 *     asked with their use elsewhere counted
 * @param paired findings of studies that assessed both
 * @param underOtherLandUse the claim on the basis asked with land-use change the other way round; empty for what has none
 */
public record ClaimCheck(
        ClaimQuestion question,
        Side side,
        Estimate product,
        Optional<Estimate> reference,
        List<GridCell> cells,
        List<HalfMeasured> halfMeasured,
        Overall overall,
        String reason,
        String shortly,
        Instead instead,
        List<String> displacedUse,
        List<PairedFinding> paired,
        Differences differences,
        List<Circulating> circulating,
        Optional<GridCell> underOtherLandUse) {
    public ClaimCheck {
        cells = List.copyOf(cells);
        halfMeasured = List.copyOf(halfMeasured);
        displacedUse = List.copyOf(displacedUse);
        paired = List.copyOf(paired);
        circulating = List.copyOf(circulating);
    }

    /**
     * A boundary on which one side is measured per the unit asked and the other is not.
     *
     * @param measured the side with a figure
     * @param unmeasured the side without
     */
    public record HalfMeasured(Boundary boundary, DisplayName measured, DisplayName unmeasured) {}

    /** The cell of the question itself. */
    public GridCell asked() {
        return cells.get(0);
    }

    /** The cells on which the claim holds. */
    public List<GridCell> holding() {
        return cells.stream().filter(cell -> cell.verdict() == Verdict.HOLDS).toList();
    }

    /** True when there is evidence on any basis. */
    public boolean isTraceable() {
        return overall != Overall.NOT_TRACEABLE;
    }

    /** Checks the claim for one of its sides on the bases of its grid, drawn with common random numbers that all sides share. */
    static ClaimCheck of(
            Library library,
            ClaimQuestion question,
            Side side,
            Grid grid,
            List<ComparisonBasis> bases,
            CommonRandomNumbers random,
            Language language) {
        Estimate product = side.on(library, question.basis(), question.sampling(), random);
        Optional<Estimate> reference =
                question.reference().map(other -> other.on(library, question.basis(), question.sampling(), random));
        List<GridCell> cells = new ArrayList<>();
        for (ComparisonBasis basis : bases) {
            boolean asked = cells.isEmpty();
            cells.add(GridCell.of(
                    question.claimed(),
                    basis,
                    asked ? product : side.on(library, basis, question.sampling(), random),
                    asked
                            ? reference
                            : question.reference().map(other -> other.on(library, basis, question.sampling(), random)),
                    question.sampling().coverage()));
        }
        List<PairedFinding> paired = question.reference()
                .map(other -> PairedFinding.between(library, grid, side, other))
                .orElse(List.of());
        Optional<GridCell> other = question.basis()
                .withOtherLandUse()
                .map(basis -> GridCell.of(
                        question.claimed(),
                        basis,
                        side.on(library, basis, question.sampling(), random),
                        question.reference().map(one -> one.on(library, basis, question.sampling(), random)),
                        question.sampling().coverage()));
        Overall overall = Overall.of(
                cells.get(0).verdict(), cells.stream().map(GridCell::verdict).toList());
        List<String> displaced = displacedUse(library, question, product, reference, random, language);
        Optional<EvidenceKind> instead = OtherEvidence.of(
                library,
                Stream.concat(Stream.of(side), question.reference().stream()).toList(),
                question.basis());
        ClaimWording words = new ClaimWording(library, question, side, cells, paired, other, instead, language);
        return new ClaimCheck(
                question,
                side,
                product,
                reference,
                cells,
                halfMeasured(library, grid, question, side),
                overall,
                words.reason(overall),
                words.shortly(),
                new StrongestSentence(
                                question,
                                side,
                                cells,
                                other,
                                instead,
                                new PaperSentence(library, question, side, paired, language),
                                language)
                        .find()
                        .followedBy(displaced),
                displaced,
                paired,
                Differences.of(cells),
                Circulating.met(library, question, side),
                other);
    }

    private static List<String> displacedUse(
            Library library,
            ClaimQuestion question,
            Estimate product,
            Optional<Estimate> reference,
            CommonRandomNumbers random,
            Language language) {
        Sentences sentences =
                new Sentences(question.basis(), question.sampling().coverage(), language);
        List<String> said = new ArrayList<>();
        DisplacedUseFigure.drawn(library, product, question.basis(), question.sampling(), random)
                .ifPresent(figure -> said.add(figure.sentence(
                        sentences,
                        figure.estimate()
                                .flatMap(found -> reference.flatMap(other -> Ratio.between(
                                        found, other, question.sampling().coverage()))),
                        question.referenceName())));
        reference
                .flatMap(other ->
                        DisplacedUseFigure.drawn(library, other, question.basis(), question.sampling(), random))
                .ifPresent(figure -> said.add(figure.sentence(sentences, Optional.empty(), DisplayName.given(""))));
        return said;
    }

    private static List<HalfMeasured> halfMeasured(Library library, Grid grid, ClaimQuestion question, Side side) {
        List<HalfMeasured> found = new ArrayList<>();
        question.reference()
                .ifPresent(other -> grid.bases().stream()
                        .filter(base -> base.per() == question.basis().per())
                        .forEach(base -> {
                            boolean product = side.hasEvidence(library, base);
                            if (product != grid.referenceHasEvidence(base)) {
                                found.add(new HalfMeasured(
                                        base.boundary(),
                                        product ? side.name() : other.name(),
                                        product ? other.name() : side.name()));
                            }
                        }));
        return found;
    }
}
