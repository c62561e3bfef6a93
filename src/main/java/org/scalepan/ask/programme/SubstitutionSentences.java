package org.scalepan.ask.programme;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Sentences;
import org.scalepan.factors.PairedRatio;
import org.scalepan.factors.Product;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.quantity.Print;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Figure;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/** Says what a programme changes in plain sentences that carry the assumptions along, for a proposal. */
public final class SubstitutionSentences {
    private static final int FIGURES = 2;

    private final Substitution substitution;
    private final SubstitutionQuestion question;
    private final Language language;

    /** In English. */
    public SubstitutionSentences(Substitution substitution) {
        this(substitution, Language.ENGLISH);
    }

    public SubstitutionSentences(Substitution substitution, Language language) {
        this.substitution = substitution;
        this.question = substitution.question();
        this.language = language;
    }

    /** {@code 23 (12 to 40)}, with a sign where it is below zero; both ends to the nearest. */
    public static String interval(Summary summary) {
        return interval(summary, Language.ENGLISH);
    }

    public static String interval(Summary summary, Language language) {
        return Sentences.interval(summary, language);
    }

    /**
     * The same of what is avoided. The unfavourable end is the one that is quoted, so here as there it is rounded against the
     * programme and never in its favour.
     */
    public static String avoidedInterval(Summary avoided) {
        return avoidedMessage(avoided).english();
    }

    private static Message avoidedMessage(Summary avoided) {
        return Message.of(
                "interval",
                "median",
                figure(avoided.median()),
                "low",
                figure(unfavourable(avoided)),
                "high",
                figure(avoided.high()));
    }

    private static Figure figure(double value) {
        return new Figure(Print.footprint(value));
    }

    /** What is avoided, or what more is caused, or that it may be either. */
    public static Message avoided(Summary avoided, Object unit) {
        if (avoided.low() > 0) {
            return Message.of("programme.avoided", "figure", avoidedMessage(avoided), "unit", unit);
        }
        Figure most = figure(-unfavourable(avoided));
        if (avoided.high() < 0) {
            Message more = Message.of(
                    "interval", "median", figure(-avoided.median()), "low", figure(-avoided.high()), "high", most);
            return Message.of("programme.more", "figure", more, "unit", unit);
        }
        return Message.of("programme.either", "most", most, "less", figure(avoided.high()), "unit", unit);
    }

    /** The same of what may be a bound: a saving that is at most so much is called so, and one that bounds nothing is no saving. */
    public static Message avoided(Summary avoided, Object unit, Bound bound) {
        boolean either = avoided.low() <= 0 && avoided.high() >= 0;
        if (bound == Bound.NONE) {
            return Message.of("programme.unknown", "unit", unit);
        }
        Bound said = avoided.high() < 0 ? bound.reversed() : bound;
        Message plain = avoided(avoided, unit);
        return either ? plain : said.message(plain);
    }

    /** What is avoided, for a table whose head names the unit; with what a bound is called before it. */
    public static String avoidedInterval(Summary avoided, Bound bound) {
        return bound.words() + avoidedInterval(avoided);
    }

    /** The figure to quote, where a saving of at least so much can rest on it. */
    public static Message conservative(Summary avoided, Object unit, Bound bound) {
        return bound.supportsAtLeast() ? conservative(avoided, unit) : Message.of("programme.no-saving.bound");
    }

    /** The figure to quote: the unfavourable end of the interval, with the share of the draws that are no worse. */
    public static Message conservative(Summary avoided, Object unit) {
        boolean saves = avoided.low() > 0;
        return Message.of(
                saves ? "programme.conservative" : "programme.no-saving",
                "amount",
                figure(saves ? unfavourable(avoided) : -unfavourable(avoided)),
                "unit",
                unit,
                "percent",
                new Figure(plain(SignificantFigures.round(50 * (1 + avoided.coverage()), 3))));
    }

    private static double unfavourable(Summary avoided) {
        return avoided.low() > 0
                ? SignificantFigures.floor(avoided.low(), FIGURES)
                : SignificantFigures.ceiling(avoided.low(), FIGURES);
    }

    /** Everything in one paragraph. */
    public String paragraph() {
        List<String> sentences = new ArrayList<>();
        sentences.add(assumption());
        substitution
                .shortfall()
                .map(shortfall -> shortfall.warning().text(language))
                .ifPresent(sentences::add);
        substitution.changes().forEach(change -> sentences.add(sentence(change)));
        people().forEach(sentences::add);
        substitution.money().ifPresent(money -> money(money, sentences));
        sentences.add(language.say("programme.ex-ante"));
        return String.join(" ", sentences);
    }

    private String sentence(YearlyChange change) {
        return change.figures()
                .map(figures -> language.say(
                                "programme.change",
                                "name",
                                name(change),
                                "boundary",
                                boundary(change),
                                "avoided",
                                avoided(figures.avoided(), change.yearly(), figures.bound()),
                                "percent",
                                percent(),
                                "conservative",
                                conservative(figures.avoided(), change.yearly(), figures.bound()))
                        + uncounted(change))
                .orElseGet(() -> language.say(
                                "programme.no-evidence", "name", name(change), "silent", Listing.and(change.silent()))
                        + contradicted(change)
                        + instead(change));
    }

    private static DisplayName name(YearlyChange change) {
        return DisplayName.of(
                "indicator-name." + change.basis().indicator().id(),
                change.basis().indicator().name());
    }

    private String contradicted(YearlyChange change) {
        return Stream.concat(Stream.of(change.product()), change.baseline().stream())
                .distinct()
                .map(side -> Sentences.contradicted(side, language))
                .collect(Collectors.joining());
    }

    /** What is required and not counted on any side of a change, as a sentence; empty when nothing is. */
    private String uncounted(YearlyChange change) {
        return Sentences.bounds(Stream.concat(Stream.of(change.product()), change.baseline().stream()), language);
    }

    /** {@code One study of both says that per kg protein black soldier fly causes 4.2 times as much as fishmeal (label)}. */
    public static List<Message> known(YearlyChange change) {
        return change.instead().stream()
                .map(ratio -> {
                    double timesLess = ratio.printed().value().orElseThrow();
                    boolean less = timesLess >= 1;
                    Message source = ratio.referenceFrom()
                            .map(from -> Message.of(
                                    "programme.source-and-reference",
                                    "source",
                                    ratio.cited().source(),
                                    "from",
                                    from))
                            .orElseGet(() -> Message.verbatim(ratio.cited().source()));
                    return Message.of(
                            less ? "programme.known.less" : "programme.known.more",
                            "source",
                            source,
                            "product",
                            name(change.product().product()),
                            "form",
                            ratio.productForm(),
                            "times",
                            new Figure(Print.ratio(less ? timesLess : 1 / timesLess)),
                            "reference",
                            reference(change, ratio),
                            "unit",
                            FunctionalUnit.of(ratio.per())
                                    .map(FunctionalUnit::message)
                                    .orElseGet(() -> Message.verbatim(ratio.per())),
                            "boundary",
                            change.basis().boundary().message(change.basis().indicator()));
                })
                .toList();
    }

    private static DisplayName name(Product product) {
        return DisplayName.of("product." + product.id(), product.name());
    }

    private static DisplayName reference(YearlyChange change, PairedRatio ratio) {
        return change.baseline().stream()
                .map(Estimate::product)
                .filter(product -> product.id().equals(ratio.reference()))
                .map(SubstitutionSentences::name)
                .findFirst()
                .orElse(DisplayName.given(ratio.reference()));
    }

    private String instead(YearlyChange change) {
        List<Message> known = known(change);
        Message all = Message.of("verbatim", "text", Listing.semicolons(known));
        return known.isEmpty() ? "" : " " + language.say("programme.sentence", "text", all);
    }

    private String assumption() {
        Programme programme = question.programme();
        Message amount = Message.of(
                question.animal().isPresent() ? "programme.amount.diet" : "programme.amount",
                "kilograms",
                new Figure(plain(programme.kilograms())),
                "product",
                question.product().name(),
                "unit",
                programme.unit().message(),
                "animal",
                question.animal()
                        .map(animal -> DisplayName.of("fed-animal." + animal.id(), animal.id()))
                        .orElse(DisplayName.given("")));
        return language.capital(language.say(
                question.rate() == 0 ? "programme.assumption.nothing" : "programme.assumption",
                "amount",
                amount,
                "baseline",
                question.baseline().message(),
                "rate",
                new Figure(plain(question.rate())),
                "basis",
                question.equalBasis().message()));
    }

    private Message boundary(YearlyChange change) {
        Message boundary = change.basis().boundary().message(change.basis().indicator());
        return change.basis().indicator().isWarming()
                ? Message.of(
                        "programme.boundary-and-warming",
                        "boundary",
                        boundary,
                        "warming",
                        Message.of(
                                "warming." + change.basis().luc().id(),
                                "gwp",
                                change.basis().gwp().name()))
                : boundary;
    }

    /** For warming alone, or for what was asked first: a paragraph holds no table. */
    private List<String> people() {
        return substitution.changes().stream()
                .filter(change -> change.figures().isPresent())
                .findFirst()
                .map(this::people)
                .orElse(List.of());
    }

    private List<String> people(YearlyChange change) {
        List<Message> parts = new ArrayList<>();
        Summary avoided = change.figures().orElseThrow().avoided();
        Bound bound = change.figures().orElseThrow().bound();
        Programme programme = question.programme();
        each(change, avoided, programme.households(), perHousehold(change), parts);
        each(change, avoided, programme.beneficiaries(), bySex(perBeneficiary(change)), parts);
        each(change, avoided, programme.meals(), perMeal(change), parts);
        programme
                .years()
                .ifPresent(years -> parts.add(Message.of(
                        "programme.over-years",
                        "years",
                        new Figure(plain(years)),
                        "avoided",
                        avoided(avoided.times(years), change.unitName(), bound))));
        return parts.isEmpty()
                ? List.of()
                : List.of(language.say(
                        "programme.people",
                        "indicator",
                        DisplayName.of(
                                "indicator-name." + change.basis().indicator().id(),
                                change.basis().indicator().name().toLowerCase(Locale.ROOT)),
                        "parts",
                        Listing.semicolons(parts)));
    }

    /** {@code kg CO2e per household and year}. */
    public static Message perHousehold(YearlyChange change) {
        return Message.of("programme.per-household", "unit", unit(change));
    }

    public static Message perBeneficiary(YearlyChange change) {
        return Message.of("programme.per-beneficiary", "unit", unit(change));
    }

    public static Message perMeal(YearlyChange change) {
        return Message.of("programme.per-meal", "unit", unit(change));
    }

    private static DisplayName unit(YearlyChange change) {
        return DisplayName.of(
                "unit-name." + change.basis().indicator().id(),
                change.basis().indicator().unit());
    }

    private static void each(
            YearlyChange change, Summary avoided, OptionalDouble count, Message unit, List<Message> parts) {
        Bound bound = change.figures().map(YearlyChange.Figures::bound).orElse(Bound.EXACT);
        count.ifPresent(number -> parts.add(avoided(avoided.times(change.unit().holds() / number), unit, bound)));
    }

    private Message bySex(Message unit) {
        Programme programme = question.programme();
        List<Message> groups = new ArrayList<>();
        programme.women().ifPresent(women -> groups.add(Message.of("programme.women", "n", new Figure(plain(women)))));
        programme.men().ifPresent(men -> groups.add(Message.of("programme.men", "n", new Figure(plain(men)))));
        return groups.isEmpty() ? unit : Message.of("programme.by-sex", "unit", unit, "groups", Listing.commas(groups));
    }

    private void money(MoneySide money, List<String> sentences) {
        money.perTonne()
                .ifPresent(each -> sentences.add(
                        language.say("programme.cost", "figure", each.message(), "currency", money.currency())));
        money.whyNotPerTonne().ifPresent(why -> sentences.add(language.say("programme.no-cost", "why", why)));
        money.imported()
                .ifPresent(bill -> sentences.add(language.say(
                        "programme.imports", "figure", interval(bill, language), "currency", money.currency())));
    }

    /** The disclosure that must go with every figure of this answer. */
    public List<String> statements() {
        List<String> statements = new ArrayList<>();
        statements.add(language.say("statement.ex-ante"));
        statements.add(language.say("statement.rate", "rate", new Figure(plain(question.rate()))));
        substitution.changes().stream()
                .filter(change -> change.figures()
                        .filter(figures -> figures.bound() != Bound.EXACT)
                        .isPresent())
                .forEach(change -> statements.add(language.say(
                        "statement.bound",
                        "name",
                        name(change),
                        "uncounted",
                        uncounted(change),
                        "bound",
                        Message.of("statement.bound."
                                + change.figures().orElseThrow().bound().id()))));
        if (question.rate() == 0) {
            statements.add(language.say("statement.on-top"));
        }
        statements.add(language.say("statement.no-saving"));
        statements.add(language.say("statement.averages"));
        if (question.use() == Use.FEED) {
            statements.add(language.say(
                    "statement.growth",
                    "basis",
                    question.equalBasis() == EqualBasis.PROTEIN
                            ? Message.of("statement.crude-protein")
                            : question.equalBasis().message()));
            statements.add(language.say("statement.feed-is-not-food"));
        }
        if (question.programme().years().isPresent()) {
            statements.add(language.say("statement.years"));
        }
        if (question.prices().isPresent()) {
            statements.add(language.say("statement.prices"));
        }
        return statements;
    }

    private Message percent() {
        return Message.of("percent", "percent", Math.round(question.sampling().coverage() * 100));
    }

    /** A number of the question as it was given. */
    static String plain(double number) {
        return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
    }
}
