package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.IndicatorWording;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.OtherEvidence;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Side;
import org.scalepan.ask.ThinEvidence;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.uncertainty.Summary;

/** Words a claim, and the reasons of its verdict. What can be said instead is {@link StrongestSentence}. */
final class ClaimWording {
    private final ClaimQuestion question;
    private final Side side;
    private final List<GridCell> cells;
    private final PairedWording paired;
    private final Optional<GridCell> underOtherLandUse;
    private final Optional<EvidenceKind> otherEvidence;

    ClaimWording(
            Library library,
            ClaimQuestion question,
            Side side,
            List<GridCell> cells,
            List<PairedFinding> paired,
            Optional<GridCell> underOtherLandUse,
            Optional<EvidenceKind> otherEvidence) {
        this.otherEvidence = otherEvidence;
        this.underOtherLandUse = underOtherLandUse;
        this.question = question;
        this.side = side;
        this.cells = cells;
        this.paired = new PairedWording(library, question, side, paired);
    }

    /** The claim itself: {@code yellow mealworm causes at least 100 times less greenhouse gas emissions than beef}. */
    static String claim(ClaimQuestion question, String product) {
        IndicatorWording wording = IndicatorWording.of(question.basis());
        boolean many = product.equals(Subject.INSECTS);
        String verb = many ? wording.verb().replaceFirst("s$", "") : wording.verb();
        if (question.claimed().times().isEmpty()) {
            return product + " " + verb + " no " + wording.noun();
        }
        return product + " " + verb + " " + question.claimed().words() + " " + wording.noun() + " than "
                + question.reference().map(Side::words).orElse("");
    }

    String reason(Overall overall) {
        List<String> sentences = new ArrayList<>();
        sentences.add(asked());
        otherLandUse().ifPresent(sentences::add);
        sentences.addAll(elsewhere(overall));
        paired.sentence().ifPresent(sentences::add);
        return String.join(" ", sentences);
    }

    private String asked() {
        GridCell asked = cells.get(0);
        String where = capital(BasisWording.of(asked.basis()));
        if (!asked.hasEvidence()) {
            return where + (asked.isModelled() ? ", there is no modelled figure: " : ", there is no evidence: ")
                    + missing(asked)
                    + otherEvidence
                            .map(kind -> "; " + OtherEvidence.wordsOfBoth(kind))
                            .orElse("")
                    + ".";
        }
        if (!asked.contradictions().isEmpty()) {
            return where + ", it is not decided, because the records contradict themselves: " + asked.contradictions()
                    + ".";
        }
        if (question.claimed().times().isPresent() && asked.bound() == Bound.NONE) {
            return where + ", nothing can be compared, because both sides are " + asked.bothBounds()
                    + (asked.isModelled() ? " (" + asked.amounts() + "): " : ": ") + asked.openEnds() + ".";
        }
        if (question.claimed().times().isEmpty()) {
            Sentences sentences =
                    new Sentences(asked.basis(), question.sampling().coverage());
            return capital(sentences.boundary()) + ", " + side.words() + " "
                    + IndicatorWording.of(asked.basis()).verb() + " "
                    + asked.product().bound().words()
                    + asked.product().footprint().map(sentences::footprint).orElse("") + " ("
                    + question.sampling().coverageInPercent()
                    + " interval; " + asked.product().amount()
                    + "). "
                    + (asked.verdict() == Verdict.FAILS
                            ? "A footprint of none fails on every boundary on which "
                                    + (asked.isModelled() ? "practice gives one." : "a study has measured one.")
                            : "With credits taken off, " + asked.verdict().words() + ".");
        }
        if (asked.bound() != Bound.EXACT) {
            return where + ", " + ratio(question, side, asked) + ": "
                    + asked.verdict().words() + " there ("
                    + asked.amounts() + "). " + capital(asked.openEnds()) + "."
                    + (asked.verdict() == Verdict.UNDECIDED && !asked.isOpenByLandUse()
                            ? asked.isModelled()
                                    ? " The records of a farm can decide it."
                                    : " Record them, or give their factors, to decide it."
                            : "");
        }
        String thin = asked.hasEnoughStudies()
                ? ""
                : "; " + ThinEvidence.words(asked.basis().lowestGrade());
        return where + ", " + ratio(question, side, asked) + ", and "
                + (question.times() == 1 ? "less" : "at least " + question.timesInWords() + " times")
                + " comes out in "
                + Sentences.share(asked.probability().orElseThrow().value()) + " of the draws: "
                + asked.verdict().words() + " there (" + asked.amounts()
                + thin + ").";
    }

    /** {@code With land-use change counted: 7.4 (3.9 to 16) times, it holds.}, where the ratio asked is another. */
    private Optional<String> otherLandUse() {
        Optional<String> asked = times(cells.get(0));
        return underOtherLandUse.flatMap(other -> times(other)
                .filter(text -> asked.filter(text::equals).isEmpty())
                .map(text -> other.basis().luc().words() + ": " + text + " times, "
                        + other.verdict().words() + "."));
    }

    private static Optional<String> times(GridCell cell) {
        return cell.bound() == Bound.NONE
                ? Optional.empty()
                : cell.timesLess().map(ratio -> cell.bound().words() + Sentences.ratio(ratio));
    }

    /** {@code beef has 6.1 (3.2 to 13) times the greenhouse gas emissions of yellow mealworm}. */
    static String ratio(ClaimQuestion question, Side side, GridCell cell) {
        Summary timesLess = cell.timesLess().orElseThrow();
        return question.referenceWords() + " has " + cell.bound().words() + Sentences.ratio(timesLess) + " times the "
                + new Sentences(cell.basis(), question.sampling().coverage()).indicator() + " of " + side.words();
    }

    private List<String> elsewhere(Overall overall) {
        List<GridCell> others = cells.subList(1, cells.size()).stream()
                .filter(GridCell::hasEvidence)
                .toList();
        if (others.isEmpty()) {
            return cells.get(0).hasEvidence()
                    ? List.of("No other basis has evidence.")
                    : List.of("No basis of this library has evidence of all that is compared.");
        }
        if (question.claimed().times().isEmpty()) {
            return measured(others);
        }
        List<String> sentences = new ArrayList<>();
        List<GridCell> holding = with(Verdict.HOLDS, others);
        List<GridCell> failing = with(Verdict.FAILS, others);
        if (!holding.isEmpty()) {
            String only = overall == Overall.HOLDS_ONLY_FOR ? "On another basis it holds: " : "It also holds ";
            sentences.add(only + String.join("; ", BasisWording.of(holding, cells)) + "." + animalsOnly(holding));
        } else if (overall != Overall.HOLDS) {
            sentences.add("It holds on no other basis with evidence.");
        }
        if (!failing.isEmpty()) {
            sentences.add("It " + (cells.get(0).verdict() == Verdict.FAILS ? "also fails " : "fails ")
                    + String.join("; ", BasisWording.of(failing, cells)) + ".");
        }
        return sentences;
    }

    /** What was measured at other boundaries, once for each. */
    private List<String> measured(List<GridCell> others) {
        Map<Boundary, GridCell> byBoundary = new LinkedHashMap<>();
        others.stream()
                .filter(cell -> cell.basis().boundary() != question.basis().boundary())
                .forEach(cell -> byBoundary.merge(cell.basis().boundary(), cell, ClaimWording::plainer));
        return byBoundary.values().stream()
                .map(cell -> {
                    Sentences sentences =
                            new Sentences(cell.basis(), question.sampling().coverage());
                    return capital(sentences.boundary()) + ": "
                            + cell.product().bound().words()
                            + cell.product()
                                    .footprint()
                                    .map(sentences::footprint)
                                    .orElse("") + ".";
                })
                .toList();
    }

    /** Gases of the animals alone are measured, and stated, per kg live weight. */
    private static GridCell plainer(GridCell one, GridCell other) {
        return one.basis().per() != FunctionalUnit.KG_LIVE
                        && other.basis().boundary() == Boundary.ANIMAL
                        && other.basis().per() == FunctionalUnit.KG_LIVE
                ? other
                : one;
    }

    private static List<GridCell> with(Verdict verdict, List<GridCell> cells) {
        return cells.stream().filter(cell -> cell.verdict() == verdict).toList();
    }

    private static String animalsOnly(List<GridCell> holding) {
        return holding.stream()
                .map(cell -> new Sentences(cell.basis(), 0.9).animalsOnly())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** The verdict on one of many products, in half a sentence. */
    String shortly() {
        GridCell asked = cells.get(0);
        List<GridCell> holding = with(Verdict.HOLDS, cells.subList(1, cells.size()));
        List<GridCell> failing = with(Verdict.FAILS, cells.subList(1, cells.size()));
        StringBuilder text = new StringBuilder(side.words()).append(": ");
        if (!asked.hasEvidence()) {
            text.append(asked.isModelled() ? "not modelled on the basis asked" : "not measured on the basis asked");
        } else if (!asked.contradictions().isEmpty()) {
            text.append("not decided, because the records contradict themselves");
        } else if (question.claimed().times().isPresent() && asked.bound() == Bound.NONE) {
            text.append("not comparable, because both sides are ")
                    .append(asked.bothBounds())
                    .append(asked.isModelled() ? " (" + asked.amounts() + ")" : "");
        } else if (question.claimed().times().isEmpty()) {
            Sentences sentences =
                    new Sentences(asked.basis(), question.sampling().coverage());
            text.append(asked.product().bound().words())
                    .append(asked.product()
                            .footprint()
                            .map(sentences::footprint)
                            .orElse(""))
                    .append(", ")
                    .append(asked.verdict().words());
        } else {
            text.append(ratio(question, side, asked))
                    .append(", ")
                    .append(asked.verdict().words());
        }
        if (!holding.isEmpty()) {
            text.append(", it holds ").append(String.join(" and ", BasisWording.of(holding, cells)));
        }
        if (!asked.hasEvidence() && !failing.isEmpty()) {
            text.append(", it fails ").append(String.join(" and ", BasisWording.of(failing, cells)));
        }
        return text.toString();
    }

    private static String missing(GridCell cell) {
        return Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .flatMap(one ->
                        one
                                .missing()
                                .or(() -> one.noRatio().map(why -> "of " + one.words() + ", " + why.words()))
                                .stream())
                .findFirst()
                .orElse(NoRatio.NOT_ABOVE_ZERO.words());
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
