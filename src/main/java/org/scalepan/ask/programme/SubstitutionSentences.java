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
import org.scalepan.literature.LandUseChange;
import org.scalepan.quantity.Print;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.uncertainty.Summary;

/** Says what a programme changes in plain sentences that carry the assumptions along, for a proposal. */
public final class SubstitutionSentences {
    private static final int FIGURES = 2;

    private final Substitution substitution;
    private final SubstitutionQuestion question;

    public SubstitutionSentences(Substitution substitution) {
        this.substitution = substitution;
        this.question = substitution.question();
    }

    /** {@code 23 (12 to 40)}, with a sign where it is below zero; both ends to the nearest. */
    public static String interval(Summary summary) {
        return Print.footprint(summary.median()) + " (" + Print.footprint(summary.low()) + " to "
                + Print.footprint(summary.high()) + ")";
    }

    /**
     * The same of what is avoided. The unfavourable end is the one that is quoted, so here as there it is rounded against the
     * programme and never in its favour.
     */
    public static String avoidedInterval(Summary avoided) {
        return Print.footprint(avoided.median()) + " (" + Print.footprint(unfavourable(avoided)) + " to "
                + Print.footprint(avoided.high()) + ")";
    }

    /** What is avoided, or what more is caused, or that it may be either. */
    public static String avoided(Summary avoided, String unit) {
        if (avoided.low() > 0) {
            return avoidedInterval(avoided) + " " + unit + " avoided";
        }
        String most = Print.footprint(-unfavourable(avoided));
        if (avoided.high() < 0) {
            return Print.footprint(-avoided.median()) + " (" + Print.footprint(-avoided.high()) + " to " + most + ") "
                    + unit + " more than without it";
        }
        return "anything from " + most + " more to " + Print.footprint(avoided.high()) + " less (" + unit
                + "), so that no saving can be claimed";
    }

    /** The same of what may be a bound: a saving that is at most so much is called so, and one that bounds nothing is no saving. */
    public static String avoided(Summary avoided, String unit, Bound bound) {
        boolean either = avoided.low() <= 0 && avoided.high() >= 0;
        if (bound == Bound.NONE) {
            return "not known, because both what is avoided and what is caused are lower bounds (" + unit
                    + "), so that no saving can be claimed";
        }
        Bound said = avoided.high() < 0 ? bound.reversed() : bound;
        return (either ? "" : said.words()) + avoided(avoided, unit);
    }

    /** What is avoided, for a table whose head names the unit; with what a bound is called before it. */
    public static String avoidedInterval(Summary avoided, Bound bound) {
        return bound.words() + avoidedInterval(avoided);
    }

    /** The figure to quote, where a saving of at least so much can rest on it. */
    public static String conservative(Summary avoided, String unit, Bound bound) {
        return bound.supportsAtLeast()
                ? conservative(avoided, unit)
                : "no saving, because something required is not counted";
    }

    /** The figure to quote: the unfavourable end of the interval, with the share of the draws that are no worse. */
    public static String conservative(Summary avoided, String unit) {
        String draws = " in " + plain(SignificantFigures.round(50 * (1 + avoided.coverage()), 3)) + " % of the draws";
        return avoided.low() > 0
                ? "at least " + Print.footprint(unfavourable(avoided)) + " " + unit + " avoided" + draws
                : "no saving: up to " + Print.footprint(-unfavourable(avoided)) + " " + unit + " more" + draws;
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
        substitution.shortfall().map(Shortfall::sentence).ifPresent(sentences::add);
        for (YearlyChange change : substitution.changes()) {
            String name = change.basis().indicator().name();
            change.figures()
                    .ifPresentOrElse(
                            figures -> sentences.add(name + ", " + boundary(change) + ": "
                                    + avoided(figures.avoided(), change.unit().words() + " a year", figures.bound())
                                    + ", "
                                    + percent() + " interval; to be quoted as "
                                    + conservative(
                                            figures.avoided(), change.unit().words() + " a year", figures.bound())
                                    + "." + uncounted(change)),
                            () -> sentences.add(name + ": no evidence for " + String.join(" and ", change.silent())
                                    + "." + contradicted(change) + instead(change)));
        }
        people().forEach(sentences::add);
        substitution.money().ifPresent(money -> money(money, sentences));
        sentences.add(
                "The estimate is ex ante and unverified, it is not an offset or a credit, and the displacement is assumed.");
        return String.join(" ", sentences);
    }

    private static String contradicted(YearlyChange change) {
        return Stream.concat(Stream.of(change.product()), change.baseline().stream())
                .distinct()
                .map(Sentences::contradicted)
                .collect(Collectors.joining());
    }

    /** What is required and not counted on any side of a change, as a sentence; empty when nothing is. */
    private static String uncounted(YearlyChange change) {
        return Sentences.bounds(Stream.concat(Stream.of(change.product()), change.baseline().stream()));
    }

    /** {@code One study of both says that per kg protein black soldier fly causes 4.2 times as much as fishmeal (label)}. */
    public static List<String> known(YearlyChange change) {
        return change.instead().stream()
                .map(ratio -> {
                    double timesLess = ratio.printed().value().orElseThrow();
                    String how = timesLess >= 1
                            ? Print.ratio(timesLess) + " times less than "
                            : Print.ratio(1 / timesLess) + " times as much as ";
                    return "one study of both (" + ratio.cited().source()
                            + ratio.referenceFrom()
                                    .map(from -> ", reference from " + from)
                                    .orElse("") + ") says that "
                            + change.product().product().name() + " (" + ratio.productForm() + ") causes " + how
                            + reference(change, ratio) + ", per " + unit(ratio) + ", "
                            + new Sentences(change.basis(), 0.9).boundary();
                })
                .toList();
    }

    private static String reference(YearlyChange change, PairedRatio ratio) {
        return change.baseline().stream()
                .map(Estimate::product)
                .filter(product -> product.id().equals(ratio.reference()))
                .map(Product::name)
                .findFirst()
                .orElse(ratio.reference());
    }

    private static String unit(PairedRatio ratio) {
        return FunctionalUnit.of(ratio.per()).map(FunctionalUnit::words).orElse(ratio.per());
    }

    private static String instead(YearlyChange change) {
        List<String> known = known(change);
        return known.isEmpty() ? "" : " " + capital(String.join("; ", known)) + ".";
    }

    private String assumption() {
        Programme programme = question.programme();
        String what = capital(plain(programme.kilograms()) + " kg a year of "
                + question.product().words() + " (counted in "
                + programme.unit().words() + ")");
        String use =
                question.animal().map(animal -> " in diets of " + animal.id()).orElse("");
        return what + use + ", assumed to displace "
                + question.baseline().words() + " at a rate of " + plain(question.rate()) + " on equal "
                + question.equalBasis().words() + (question.rate() == 0 ? ", that is, nothing" : "") + ".";
    }

    private String boundary(YearlyChange change) {
        String luc = change.basis().luc() == LandUseChange.EXCLUDE ? "without" : "with";
        String gwp = change.basis().indicator().isWarming()
                ? " (" + change.basis().gwp().name() + ", " + luc + " land-use change where studies report it)"
                : "";
        return new Sentences(change.basis(), 0.9).boundary() + gwp;
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
        List<String> parts = new ArrayList<>();
        Summary avoided = change.figures().orElseThrow().avoided();
        Bound bound = change.figures().orElseThrow().bound();
        Programme programme = question.programme();
        String unit = change.basis().indicator().unit();
        each(change, avoided, programme.households(), unit + " per household and year", parts);
        each(change, avoided, programme.beneficiaries(), unit + " per beneficiary and year" + bySex(), parts);
        each(change, avoided, programme.meals(), unit + " per meal", parts);
        programme
                .years()
                .ifPresent(years -> parts.add("over " + plain(years) + " years "
                        + avoided(avoided.times(years), change.unit().words(), bound)));
        return parts.isEmpty()
                ? List.of()
                : List.of("Of " + change.basis().indicator().name().toLowerCase(Locale.ROOT) + " that is "
                        + String.join("; ", parts) + ".");
    }

    private static void each(
            YearlyChange change, Summary avoided, OptionalDouble count, String unit, List<String> parts) {
        Bound bound = change.figures().map(YearlyChange.Figures::bound).orElse(Bound.EXACT);
        count.ifPresent(number -> parts.add(avoided(avoided.times(change.unit().holds() / number), unit, bound)));
    }

    private String bySex() {
        Programme programme = question.programme();
        List<String> parts = new ArrayList<>();
        programme.women().ifPresent(women -> parts.add(plain(women) + " women"));
        programme.men().ifPresent(men -> parts.add(plain(men) + " men"));
        return parts.isEmpty() ? "" : " (" + String.join(", ", parts) + ")";
    }

    private static void money(MoneySide money, List<String> sentences) {
        money.perTonne()
                .ifPresent(each -> sentences.add(
                        "At the cost given, " + each.text() + " " + money.currency() + " per t CO2e avoided."));
        money.whyNotPerTonne().ifPresent(why -> sentences.add("No cost per tonne is given: " + why + "."));
        money.imported()
                .ifPresent(bill -> sentences.add("At the prices given, imports of " + interval(bill) + " "
                        + money.currency() + " a year would be avoided."));
    }

    /** The disclosure that must go with every figure of this answer. */
    public List<String> statements() {
        List<String> statements = new ArrayList<>();
        statements.add(
                "This is an estimate made beforehand (ex ante) and has not been verified. It is not an offset and not a"
                        + " credit, and no claim of climate neutrality can rest on it.");
        statements.add("The displacement rate of " + plain(question.rate())
                + " and what is displaced are assumptions of" + " the user; this library has no evidence for either.");
        substitution.changes().stream()
                .filter(change -> change.figures()
                        .filter(figures -> figures.bound() != Bound.EXACT)
                        .isPresent())
                .forEach(change ->
                        statements.add(change.basis().indicator().name() + ": something required is not counted."
                                + uncounted(change) + " What is avoided is "
                                + (change.figures().orElseThrow().bound() == Bound.AT_MOST
                                        ? "at most the figure given, and no saving may be quoted from it."
                                        : change.figures().orElseThrow().bound() == Bound.AT_LEAST
                                                ? "at least the figure given."
                                                : "not known.")));
        if (question.rate() == 0) {
            statements.add(
                    "At a rate of 0 the product comes on top of what is had anyway: all that it causes is added.");
        }
        statements.add(
                "A footprint per kilogram is not a saving. What people do with money saved, and whether farms elsewhere"
                        + " then produce less, is not counted.");
        statements.add(
                "Footprints are averages over studies, not those of the farms that would produce less. Breath CO2 of animals"
                        + " is counted on no side.");
        if (question.use() == Use.FEED) {
            statements.add("Equal "
                    + (question.equalBasis() == EqualBasis.PROTEIN
                            ? "crude protein"
                            : question.equalBasis().words())
                    + " is not equal growth: amino acids, digestibility, fat, minerals and chitin differ. A nutritionist must"
                    + " formulate the diet, within the feed law of the market (see cautions).");
            statements.add("Feed and food are different uses: this says nothing of insects on a plate.");
        }
        if (question.programme().years().isPresent()) {
            statements.add("The total over the years takes every year as the same and discounts none.");
        }
        if (question.prices().isPresent()) {
            statements.add(
                    "Prices, costs and imported shares are those of the user; nothing is converted, discounted or"
                            + " checked, and what follows is arithmetic.");
        }
        return statements;
    }

    private String percent() {
        return Math.round(question.sampling().coverage() * 100) + " %";
    }

    /** A number of the question as it was given. */
    static String plain(double number) {
        return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
