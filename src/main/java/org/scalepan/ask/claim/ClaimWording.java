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
import org.scalepan.words.Figure;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/** Words a claim, and the reasons of its verdict. What can be said instead is {@link StrongestSentence}. */
final class ClaimWording {
    private final ClaimQuestion question;
    private final Side side;
    private final List<GridCell> cells;
    private final PairedWording paired;
    private final Optional<GridCell> underOtherLandUse;
    private final Optional<EvidenceKind> otherEvidence;
    private final Language language;

    ClaimWording(
            Library library,
            ClaimQuestion question,
            Side side,
            List<GridCell> cells,
            List<PairedFinding> paired,
            Optional<GridCell> underOtherLandUse,
            Optional<EvidenceKind> otherEvidence,
            Language language) {
        this.otherEvidence = otherEvidence;
        this.underOtherLandUse = underOtherLandUse;
        this.question = question;
        this.side = side;
        this.cells = cells;
        this.language = language;
        this.paired = new PairedWording(library, question, side, paired, language);
    }

    /** The claim itself: {@code yellow mealworm emits at least 100 times less greenhouse gas than beef}. */
    static String claim(ClaimQuestion question, Language language) {
        List<Side> sides = question.subject().sides();
        boolean one = !question.subject().isInsects() || sides.size() == 1;
        IndicatorWording wording = IndicatorWording.of(question.basis(), language);
        Object product =
                sides.size() == 1 ? sides.get(0).name() : question.subject().group();
        if (question.claimed().times().isEmpty()) {
            return language.say(
                    "claim.none",
                    "product",
                    product,
                    "verb",
                    one ? wording.none() : wording.nones(),
                    "noun",
                    wording.noun());
        }
        return language.say(
                key(question.claimed()),
                "product",
                product,
                "verb",
                one ? wording.verb() : wording.verbs(),
                "times",
                question.timesInWords(),
                "percent",
                question.claimed() instanceof Claimed.PercentLess percent
                        ? new Figure(Claimed.number(percent.p()))
                        : "",
                "noun",
                wording.noun(),
                "reference",
                question.referenceName());
    }

    private static String key(Claimed claimed) {
        if (claimed instanceof Claimed.PercentLess) {
            return "claim.percent";
        }
        return claimed instanceof Claimed.TimesLess times && times.k() == 1 ? "claim.less" : "claim.times";
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
        Message where = BasisWording.of(asked.basis());
        if (!asked.hasEvidence()) {
            return language.say(
                    asked.isModelled() ? "reason.no-modelled" : "reason.no-evidence",
                    "where",
                    where,
                    "why",
                    OtherEvidence.after(missing(asked), otherEvidence));
        }
        if (!asked.contradictions().isEmpty()) {
            return language.say(
                    "reason.contradicted", "where", where, "why", Listing.semicolons(asked.contradictions()));
        }
        if (question.claimed().times().isPresent() && asked.bound() == Bound.NONE) {
            return language.say(
                    asked.isModelled() ? "reason.both-bounds.modelled" : "reason.both-bounds",
                    "where",
                    where,
                    "bounds",
                    asked.bothBounds(),
                    "amounts",
                    asked.amounts(),
                    "ends",
                    asked.openEnds());
        }
        if (question.claimed().times().isEmpty()) {
            return none(asked);
        }
        return asked.bound() == Bound.EXACT ? decided(asked, where) : bounded(asked, where);
    }

    /** Of a claim that there is no footprint. */
    private String none(GridCell asked) {
        String then = asked.verdict() == Verdict.FAILS
                ? language.say(asked.isModelled() ? "reason.none.fails.modelled" : "reason.none.fails")
                : language.say("reason.none.credits", "verdict", asked.verdict().message());
        return language.say(
                "reason.none",
                "where",
                BasisWording.boundary(asked.basis()),
                "side",
                side.name(),
                "verb",
                IndicatorWording.of(asked.basis(), language).verb(),
                "figure",
                figure(asked),
                "percent",
                percent(question),
                "amounts",
                asked.product().amount(),
                "then",
                then);
    }

    /** The figure of the product, which may be a bound. */
    private String figure(GridCell cell) {
        Sentences sentences = new Sentences(cell.basis(), question.sampling().coverage(), language);
        return cell.product()
                .footprint()
                .map(found -> sentences.footprint(found, cell.product().bound()))
                .orElseGet(() -> language.say(cell.product().bound().message("")));
    }

    /** {@code 90 %}. */
    static Message percent(ClaimQuestion question) {
        return Message.of(
                "percent", "percent", Math.round(100 * question.sampling().coverage()));
    }

    private String bounded(GridCell asked, Message where) {
        String said = language.say(
                "reason.bound",
                "where",
                where,
                "ratio",
                ratio(question, side, asked, language),
                "verdict",
                asked.verdict().message(),
                "amounts",
                asked.amounts(),
                "ends",
                asked.openEnds());
        return asked.verdict() == Verdict.UNDECIDED && !asked.isOpenByLandUse()
                ? said + " " + language.say(asked.isModelled() ? "reason.bound.farm" : "reason.bound.record")
                : said;
    }

    private String decided(GridCell asked, Message where) {
        Message amounts = asked.hasEnoughStudies()
                ? asked.amounts()
                : Message.of(
                        "amounts.thin",
                        "amounts",
                        asked.amounts(),
                        "thin",
                        ThinEvidence.message(asked.basis().lowestGrade()));
        return language.say(
                question.times() == 1 ? "reason.less" : "reason.times",
                "where",
                where,
                "ratio",
                ratio(question, side, asked, language),
                "times",
                question.timesInWords(),
                "share",
                Sentences.share(asked.probability().orElseThrow().value(), language),
                "verdict",
                asked.verdict().message(),
                "amounts",
                amounts);
    }

    /** {@code With land-use change counted: 7.4 (3.9 to 16) times, it holds.}, where the ratio asked is another. */
    private Optional<String> otherLandUse() {
        Optional<String> asked = times(cells.get(0));
        return underOtherLandUse.flatMap(other -> times(other)
                .filter(text -> asked.filter(text::equals).isEmpty())
                .map(text -> language.say(
                        "reason.other-luc",
                        "state",
                        other.basis().luc().message(),
                        "ratio",
                        text,
                        "verdict",
                        other.verdict().message())));
    }

    private Optional<String> times(GridCell cell) {
        return cell.bound() == Bound.NONE
                ? Optional.empty()
                : cell.timesLess().map(ratio -> Sentences.ratio(ratio, cell.bound(), language));
    }

    /** {@code beef has 6.1 (3.2 to 13) times the greenhouse gas emissions of yellow mealworm}. */
    static String ratio(ClaimQuestion question, Side side, GridCell cell, Language language) {
        Summary timesLess = cell.timesLess().orElseThrow();
        return language.say(
                "claim-ratio",
                "reference",
                question.referenceName(),
                "ratio",
                Sentences.ratio(timesLess, cell.bound(), language),
                "indicator",
                IndicatorWording.of(cell.basis(), language).quantity(),
                "product",
                side.name());
    }

    private List<String> elsewhere(Overall overall) {
        List<GridCell> others = cells.subList(1, cells.size()).stream()
                .filter(GridCell::hasEvidence)
                .toList();
        if (others.isEmpty()) {
            return List.of(language.say(cells.get(0).hasEvidence() ? "elsewhere.none" : "elsewhere.none-at-all"));
        }
        if (question.claimed().times().isEmpty()) {
            return measured(others);
        }
        List<String> sentences = new ArrayList<>();
        List<GridCell> holding = with(Verdict.HOLDS, others);
        List<GridCell> failing = with(Verdict.FAILS, others);
        if (!holding.isEmpty()) {
            String key = overall == Overall.HOLDS_ONLY_FOR ? "elsewhere.holds-only" : "elsewhere.holds";
            sentences.add(language.say(key, "bases", Listing.semicolons(BasisWording.of(holding, cells)))
                    + animalsOnly(holding));
        } else if (overall != Overall.HOLDS) {
            sentences.add(language.say("elsewhere.holds-nowhere"));
        }
        if (!failing.isEmpty()) {
            String key = cells.get(0).verdict() == Verdict.FAILS ? "elsewhere.fails-too" : "elsewhere.fails";
            sentences.add(language.say(key, "bases", Listing.semicolons(BasisWording.of(failing, cells))));
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
                .map(cell -> language.say(
                        "elsewhere.measured", "boundary", BasisWording.boundary(cell.basis()), "figure", figure(cell)))
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

    private String animalsOnly(List<GridCell> holding) {
        return holding.stream()
                .map(cell -> new Sentences(cell.basis(), 0.9, language).animalsOnly())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** The verdict on one of many products, in half a sentence. */
    String shortly() {
        GridCell asked = cells.get(0);
        List<GridCell> holding = with(Verdict.HOLDS, cells.subList(1, cells.size()));
        List<GridCell> failing = with(Verdict.FAILS, cells.subList(1, cells.size()));
        Message what = whatShortly(asked);
        if (!holding.isEmpty()) {
            what = Message.of("short.holds", "what", what, "bases", Listing.and(BasisWording.of(holding, cells)));
        }
        if (!asked.hasEvidence() && !failing.isEmpty()) {
            what = Message.of("short.fails", "what", what, "bases", Listing.and(BasisWording.of(failing, cells)));
        }
        return language.say("short", "side", side.name(), "what", what);
    }

    private Message whatShortly(GridCell asked) {
        if (!asked.hasEvidence()) {
            return Message.of(asked.isModelled() ? "short.not-modelled" : "short.not-measured");
        }
        if (!asked.contradictions().isEmpty()) {
            return Message.of("short.contradicted");
        }
        boolean times = question.claimed().times().isPresent();
        if (times && asked.bound() == Bound.NONE) {
            return Message.of(
                    asked.isModelled() ? "short.both-bounds.modelled" : "short.both-bounds",
                    "bounds",
                    asked.bothBounds(),
                    "amounts",
                    asked.amounts());
        }
        return Message.of(
                "short.verdict",
                "figure",
                times ? ratio(question, side, asked, language) : figure(asked),
                "verdict",
                asked.verdict().message());
    }

    private static Message missing(GridCell cell) {
        return Stream.concat(Stream.of(cell.product()), cell.reference().stream())
                .flatMap(one -> one
                        .missing()
                        .or(() -> one.noRatio()
                                .map(why -> Message.of("no-ratio-of", "name", one.name(), "why", why.message())))
                        .stream())
                .findFirst()
                .orElse(NoRatio.NOT_ABOVE_ZERO.message());
    }
}
