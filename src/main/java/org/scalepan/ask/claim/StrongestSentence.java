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
import org.scalepan.words.DisplayName;
import org.scalepan.words.Figure;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * Finds the strongest sentence that can be defended instead of a claim, and words it. How sure it is, "in 90 % of the draws", is never called
 * a probability, because draws are no more than what was put into them.
 */
final class StrongestSentence {
    private final ClaimQuestion question;
    private final Side side;
    private final List<GridCell> cells;
    private final Optional<GridCell> underOtherLandUse;
    private final Optional<EvidenceKind> otherEvidence;
    private final PaperSentence paper;
    private final Language language;

    StrongestSentence(
            ClaimQuestion question,
            Side side,
            List<GridCell> cells,
            Optional<GridCell> underOtherLandUse,
            Optional<EvidenceKind> otherEvidence,
            PaperSentence paper,
            Language language) {
        this.paper = paper;
        this.language = language;
        this.otherEvidence = otherEvidence;
        this.underOtherLandUse = underOtherLandUse;
        this.question = question;
        this.side = side;
        this.cells = cells;
    }

    /** The strongest sentence: on the basis asked, or on the nearest to it that has evidence; where none has, what one paper printed itself. */
    Instead find() {
        Optional<GridCell> cell = cells.stream()
                .filter(one -> one.unciteable().isEmpty())
                .filter(one -> question.reference().isPresent()
                        ? one.bounds().isPresent()
                        : one.product().leastCaused().isPresent())
                .min(Comparator.comparingInt(this::remoteness));
        if (cell.isEmpty() && paper.sentence().isPresent()) {
            return paper.sentence().orElseThrow();
        }
        if (cell.isEmpty()) {
            return new Instead(
                    language.say(
                            question.reference().isPresent() ? "instead.nothing.against" : "instead.nothing",
                            "side",
                            side.name(),
                            "reference",
                            question.referenceName(),
                            "library",
                            OtherEvidence.after(fromLibrary(), otherEvidence)),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of());
        }
        return question.reference().isPresent() ? compared(cell.get()) : caused(cell.get());
    }

    /** The library, and why the figures that it has make no sentence where one is withheld. */
    private Message fromLibrary() {
        List<DisplayName> which = cells.stream()
                .flatMap(cell -> cell.unciteable().stream())
                .distinct()
                .toList();
        Message library = Message.of("library");
        return which.isEmpty()
                ? library
                : Message.of("library.unciteable", "library", library, "which", Listing.and(which));
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
        if (bounds.less()) {
            return new Instead(
                    elsewhereThanAsked(cell, comparing("instead.less", cell, bounds.least()))
                            + thin(cell)
                            + otherLandUse(cell),
                    Optional.of(cell.basis()),
                    OptionalDouble.of(bounds.least()),
                    OptionalDouble.empty(),
                    sources(cell));
        }
        if (bounds.more()) {
            return new Instead(
                    elsewhereThanAsked(cell, comparing("instead.more", cell, bounds.reverseLeast()))
                            + thin(cell)
                            + otherLandUse(cell),
                    Optional.of(cell.basis()),
                    OptionalDouble.empty(),
                    OptionalDouble.of(bounds.reverseLeast()),
                    sources(cell));
        }
        if (cell.bound() != Bound.EXACT) {
            return undecided(cell);
        }
        String none = language.say(
                "instead.no-reduction",
                "where",
                BasisWording.of(cell.basis()),
                "ratio",
                ClaimWording.ratio(question, side, cell, language),
                "percent",
                ClaimWording.percent(question),
                "behind",
                behind(cell, cell.amounts()));
        return new Instead(
                elsewhereThanAsked(cell, none) + thin(cell) + otherLandUse(cell),
                Optional.of(cell.basis()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                sources(cell));
    }

    private String comparing(String key, GridCell cell, double times) {
        IndicatorWording wording = IndicatorWording.of(cell.basis(), language);
        return language.say(
                key,
                "where",
                BasisWording.of(cell.basis()),
                "side",
                side.name(),
                "verb",
                wording.verb(),
                "times",
                number(times),
                "part",
                new Figure(Reduction.percent(times).toPlainString()),
                "noun",
                wording.noun(),
                "reference",
                question.referenceName(),
                "behind",
                behind(cell, cell.amounts()));
    }

    /** The same in short with land-use change the other way round, where that says another thing. */
    private String otherLandUse(GridCell cell) {
        if (!cell.equals(cells.get(0))) {
            return "";
        }
        Message asked = shortly(cell);
        return underOtherLandUse
                .filter(other -> other.bounds().isPresent() && other.bound() != Bound.NONE)
                .filter(other -> !shortly(other).equals(asked))
                .map(other -> " "
                        + language.say(
                                "shortly.luc", "state", other.basis().luc().message(), "what", shortly(other)))
                .orElse("");
    }

    private static Message shortly(GridCell cell) {
        GridCell.Bounds bounds = cell.bounds().orElseThrow();
        if (bounds.less()) {
            return Message.of(
                    "shortly.less",
                    "percent",
                    new Figure(Reduction.percent(bounds.least()).toPlainString()));
        }
        return bounds.more()
                ? Message.of("shortly.more", "times", number(bounds.reverseLeast()))
                : Message.of("shortly.no-reduction");
    }

    /** Of a bound that supports neither sentence: what is missing, and no number to be quoted. */
    private Instead undecided(GridCell cell) {
        String key = !cell.contradictions().isEmpty()
                ? "instead.contradicted"
                : cell.isOpenByLandUse()
                        ? "instead.open-by-luc"
                        : cell.isModelled() ? "instead.open-by-practice" : "instead.open-by-records";
        String said = language.say(
                key,
                "where",
                BasisWording.of(cell.basis()),
                "side",
                side.name(),
                "reference",
                question.referenceName(),
                "why",
                Listing.semicolons(cell.contradictions()),
                "ends",
                cell.openEnds(),
                "amounts",
                cell.amounts(),
                "what",
                cell.uncounted());
        return new Instead(
                elsewhereThanAsked(cell, said),
                Optional.of(cell.basis()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                sources(cell));
    }

    /** A sentence on another boundary must not pass for one on the boundary asked. */
    private String elsewhereThanAsked(GridCell cell, String sentence) {
        return cell.basis().boundary() == question.basis().boundary()
                ? sentence
                : language.say(
                        "instead.elsewhere", "boundary", BasisWording.boundary(question.basis()), "sentence", sentence);
    }

    /** Without a reference: what the product causes at least. */
    private Instead caused(GridCell cell) {
        ComparisonBasis basis = cell.basis();
        String said = language.say(
                "instead.causes",
                "where",
                BasisWording.boundary(basis),
                "side",
                side.name(),
                "verb",
                IndicatorWording.of(basis, language).verb(),
                "amount",
                number(cell.product().leastCaused().getAsDouble()),
                "unit",
                new Sentences(basis, 0.9, language).unit(),
                "behind",
                behind(cell, cell.product().amount()));
        return new Instead(
                said + thin(cell), Optional.of(basis), OptionalDouble.empty(), OptionalDouble.empty(), sources(cell));
    }

    /** What must follow a sentence: that it rests on little, that it is about animals alone, or that it is a bound. */
    private String thin(GridCell cell) {
        String animals = new Sentences(cell.basis(), 0.9, language).animalsOnly();
        if (!cell.isThin()) {
            return animals + leftOut(cell);
        }
        List<Message> single = Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .filter(one -> one.studies() == 1)
                .map(one -> Message.of("rests-on.one", "name", one.name()))
                .toList();
        String rests = single.isEmpty()
                ? language.say(
                        "rests-on.thin",
                        "thin",
                        ThinEvidence.message(cell.basis().lowestGrade()))
                : language.say("rests-on.single", "which", Listing.and(single));
        return " " + rests + animals + leftOut(cell);
    }

    /** A figure that leaves out something usual, or counts more than is asked, is a bound; a quoted ratio must say so. */
    private String leftOut(GridCell cell) {
        List<Bound> bounds = Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .map(GridCell.Evidenced::bound)
                .filter(bound -> bound != Bound.EXACT)
                .toList();
        // Of records that contradict themselves there is no quotable ratio at all.
        if (bounds.isEmpty() || !cell.contradictions().isEmpty()) {
            return "";
        }
        boolean both = bounds.size() == 2;
        String direction = bounds.get(0) == Bound.AT_MOST ? "lower" : "higher";
        String key = both && bounds.get(0) != bounds.get(1)
                ? "true.open"
                : both ? "true.both-" + direction : "true." + direction;
        return " " + language.say(key, "ends", cell.openEnds());
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

    /** How much stands behind a sentence, and the warming set of its figures. */
    private static Message behind(GridCell cell, Message amounts) {
        if (!cell.basis().indicator().isWarming()) {
            return amounts;
        }
        boolean kept = Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .anyMatch(GridCell.Evidenced::keepsOtherSets);
        return Message.of("behind.set", "amounts", amounts, "set", Sentences.warmingSet(cell.basis(), kept));
    }

    /** A number that has been rounded already. */
    private static Figure number(double rounded) {
        return new Figure(SignificantFigures.text(rounded, 2));
    }
}
