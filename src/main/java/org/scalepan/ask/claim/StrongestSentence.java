package org.scalepan.ask.claim;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.IndicatorWording;
import org.scalepan.ask.OtherEvidence;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Side;
import org.scalepan.ask.ThinEvidence;
import org.scalepan.factors.Boundary;
import org.scalepan.footprint.Bound;
import org.scalepan.quantity.SignificantFigures;

/** Finds the strongest sentence that can be defended instead of a claim, and words it. */
final class StrongestSentence {
    /** How sure it is: never a probability, because draws are no more than what was put into them. */
    private static final String IN_SO_MANY_DRAWS = "in 90 % of the draws";

    private final ClaimQuestion question;
    private final Side side;
    private final List<GridCell> cells;
    private final Optional<GridCell> underOtherLandUse;
    private final Optional<EvidenceKind> otherEvidence;

    StrongestSentence(
            ClaimQuestion question,
            Side side,
            List<GridCell> cells,
            Optional<GridCell> underOtherLandUse,
            Optional<EvidenceKind> otherEvidence) {
        this.otherEvidence = otherEvidence;
        this.underOtherLandUse = underOtherLandUse;
        this.question = question;
        this.side = side;
        this.cells = cells;
    }

    /** The strongest sentence: on the basis asked, or on the nearest to it that has evidence. */
    Instead find() {
        Optional<GridCell> cell = cells.stream()
                .filter(one -> one.unciteable().isEmpty())
                .filter(one -> question.reference().isPresent()
                        ? one.bounds().isPresent()
                        : one.product().leastCaused().isPresent())
                .min(Comparator.comparingInt(this::remoteness));
        if (cell.isEmpty()) {
            return new Instead(
                    "Nothing can be said of " + side.words()
                            + question.reference()
                                    .map(other -> " against " + other.words())
                                    .orElse("")
                            + " from this library" + unciteable()
                            + otherEvidence
                                    .map(kind -> "; " + OtherEvidence.wordsOfBoth(kind))
                                    .orElse("")
                            + "; if you have a farm's records, send them as a system.",
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of());
        }
        return question.reference().isPresent() ? compared(cell.get()) : caused(cell.get());
    }

    /** Why the figures that there are make no sentence; empty where none is withheld. */
    private String unciteable() {
        List<String> which = cells.stream()
                .flatMap(cell -> cell.unciteable().stream())
                .distinct()
                .toList();
        return which.isEmpty()
                ? ""
                : ", because the publication behind the figure of " + String.join(" and ", which)
                        + " is not identified and cannot be cited";
    }

    private int remoteness(GridCell cell) {
        ComparisonBasis basis = cell.basis();
        ComparisonBasis asked = question.basis();
        int boundary = basis.boundary() == asked.boundary() ? 0 : basis.boundary() == Boundary.ANIMAL ? 8 : 4;
        return boundary
                + (basis.per() == asked.per() ? 0 : 2)
                + (basis.gwp().id().equals(asked.gwp().id()) ? 0 : 1);
    }

    private Instead compared(GridCell cell) {
        GridCell.Bounds bounds = cell.bounds().orElseThrow();
        String where = elsewhereThanAsked(cell) + capital(BasisWording.of(cell.basis())) + ", ";
        String behind =
                IN_SO_MANY_DRAWS + " (" + cell.amounts() + warmingSet(cell) + ")" + thin(cell) + otherLandUse(cell);
        if (bounds.less()) {
            return new Instead(
                    where + side.words() + " "
                            + IndicatorWording.of(cell.basis()).verb() + " at least " + number(bounds.least())
                            + " times less " + IndicatorWording.of(cell.basis()).noun() + " than "
                            + question.referenceWords() + ", " + behind,
                    Optional.of(cell.basis()),
                    OptionalDouble.of(bounds.least()),
                    OptionalDouble.empty(),
                    sources(cell));
        }
        if (bounds.more()) {
            return new Instead(
                    where + side.words() + " "
                            + IndicatorWording.of(cell.basis()).verb() + " more "
                            + IndicatorWording.of(cell.basis()).noun() + " than "
                            + question.referenceWords() + ": at least " + number(bounds.reverseLeast())
                            + " times as much, "
                            + behind,
                    Optional.of(cell.basis()),
                    OptionalDouble.empty(),
                    OptionalDouble.of(bounds.reverseLeast()),
                    sources(cell));
        }
        if (cell.bound() != Bound.EXACT) {
            return undecided(cell, where);
        }
        return new Instead(
                where + "no reduction can be defended " + IN_SO_MANY_DRAWS + ": "
                        + ClaimWording.ratio(question, side, cell)
                        + " (" + question.sampling().coverageInPercent() + " interval; " + cell.amounts()
                        + warmingSet(cell) + ")" + thin(cell) + otherLandUse(cell),
                Optional.of(cell.basis()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                sources(cell));
    }

    /** The same in short with land-use change the other way round, where that says another thing. */
    private String otherLandUse(GridCell cell) {
        if (!cell.equals(cells.get(0))) {
            return "";
        }
        String asked = shortly(cell);
        return underOtherLandUse
                .filter(other -> other.bounds().isPresent() && other.bound() != Bound.NONE)
                .filter(other -> !shortly(other).equals(asked))
                .map(other -> " " + other.basis().luc().words() + ": " + shortly(other) + ".")
                .orElse("");
    }

    private static String shortly(GridCell cell) {
        GridCell.Bounds bounds = cell.bounds().orElseThrow();
        if (bounds.less()) {
            return "at least " + number(bounds.least()) + " times less";
        }
        return bounds.more()
                ? "at least " + number(bounds.reverseLeast()) + " times as much"
                : "no reduction can be defended";
    }

    /** Of a bound that supports neither sentence: what is missing, and no number to be quoted. */
    private Instead undecided(GridCell cell, String where) {
        if (!cell.contradictions().isEmpty()) {
            return new Instead(
                    where + "nothing can be said of " + side.words() + " against " + question.referenceWords()
                            + ", because the records contradict themselves: " + cell.contradictions() + ".",
                    Optional.of(cell.basis()),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    sources(cell));
        }
        return new Instead(
                where + "nothing can be said of " + side.words() + " against " + question.referenceWords()
                        + (cell.isOpenByLandUse()
                                ? " in this state of land-use change: " + cell.openEnds()
                                : cell.isModelled()
                                        ? " from reference farms (" + cell.amounts() + "): " + cell.openEnds()
                                        : " before these are recorded or have a factor: " + cell.uncounted())
                        + ".",
                Optional.of(cell.basis()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                sources(cell));
    }

    /** A sentence on another boundary must not pass for one on the boundary asked. */
    private String elsewhereThanAsked(GridCell cell) {
        return cell.basis().boundary() == question.basis().boundary()
                ? ""
                : "Nothing can be said " + new Sentences(question.basis(), 0.9).boundary()
                        + "; on another boundary only: ";
    }

    /** Without a reference: what the product causes at least. */
    private Instead caused(GridCell cell) {
        ComparisonBasis basis = cell.basis();
        return new Instead(
                capital(new Sentences(basis, 0.9).boundary()) + ", " + side.words() + " "
                        + IndicatorWording.of(basis).verb()
                        + " at least "
                        + number(cell.product().leastCaused().getAsDouble()) + " "
                        + new Sentences(basis, 0.9).unit() + ", " + IN_SO_MANY_DRAWS + " ("
                        + cell.product().amount() + warmingSet(cell) + ")" + thin(cell),
                Optional.of(basis),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                sources(cell));
    }

    private static String thin(GridCell cell) {
        String animals = new Sentences(cell.basis(), 0.9).animalsOnly();
        if (!cell.isThin()) {
            return "." + animals + leftOut(cell);
        }
        List<String> single = Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .filter(one -> one.studies() == 1)
                .map(one -> "one study of " + one.words())
                .toList();
        return ". "
                + (single.isEmpty()
                        ? capital(ThinEvidence.words(cell.basis().lowestGrade())) + "."
                        : "It rests on " + String.join(" and ", single)
                                + ": how far another study would lie is assumed and not seen, and the evidence is thin.")
                + animals
                + leftOut(cell);
    }

    /** A figure that leaves out something usual, or counts more than is asked, is a bound; a quoted ratio must say so. */
    private static String leftOut(GridCell cell) {
        List<Bound> bounds = Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .map(GridCell.Evidenced::bound)
                .filter(bound -> bound != Bound.EXACT)
                .toList();
        // Of records that contradict themselves there is no quotable ratio at all.
        if (bounds.isEmpty() || !cell.contradictions().isEmpty()) {
            return "";
        }
        String which = bounds.size() == 2 ? "both true figures are " : "the true figure is ";
        return " " + capital(cell.openEnds()) + ": "
                + (bounds.size() == 2 && bounds.get(0) != bounds.get(1)
                        ? "the true figures lie on the sides that this leaves open."
                        : which + (bounds.get(0) == Bound.AT_MOST ? "lower." : "higher."));
    }

    private static List<String> sources(GridCell cell) {
        return Stream.concat(
                        cell.product().results().stream(),
                        cell.reference().stream().flatMap(other -> other.results().stream()))
                .map(result -> result.cited().source())
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .toList();
    }

    private static String warmingSet(GridCell cell) {
        if (!cell.basis().indicator().isWarming()) {
            return "";
        }
        boolean kept = Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .anyMatch(GridCell.Evidenced::keepsOtherSets);
        return "; " + cell.basis().gwp().name() + (kept ? " where studies could be converted" : "");
    }

    /** A number that has been rounded already. */
    private static String number(double rounded) {
        return SignificantFigures.text(rounded, 2);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
