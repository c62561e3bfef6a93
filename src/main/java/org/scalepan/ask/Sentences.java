package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Regions;
import org.scalepan.footprint.Bound;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.PairedEvidence;
import org.scalepan.literature.PairedStudy;
import org.scalepan.quantity.Print;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/** Words results as plain sentences with unit, boundary, interval and number of studies. */
public final class Sentences {
    private final ComparisonBasis basis;
    private final double coverage;
    private final Language language;

    /** In English. */
    public Sentences(ComparisonBasis basis, double coverage) {
        this(basis, coverage, Language.ENGLISH);
    }

    public Sentences(ComparisonBasis basis, double coverage, Language language) {
        this.basis = basis;
        this.coverage = coverage;
        this.language = language;
    }

    public Language language() {
        return language;
    }

    /** {@code 8.2 (3.9 to 17)}: a ratio with its interval. */
    public static String ratio(Summary summary) {
        return ratio(summary, Language.ENGLISH);
    }

    public static String ratio(Summary summary, Language language) {
        return interval(
                Print.ratio(summary.median()), Print.ratio(summary.low()), Print.ratio(summary.high()), language);
    }

    /** {@code at least 8.2 (3.9 to 17)}: a ratio that may be a bound. */
    public static String ratio(Summary summary, Bound bound, Language language) {
        return language.say(bound.message(ratio(summary, language)));
    }

    /** {@code 16 (11 to 24) kg CO2e per kg protein}: a footprint with its interval. */
    public String footprint(Summary summary) {
        return footprint(summary, Bound.EXACT);
    }

    /** The same of a figure that may be a bound. */
    public String footprint(Summary summary, Bound bound) {
        return language.say("figure-with-unit", "figure", bound.message(interval(summary, language)), "unit", unit());
    }

    /** {@code 16 (11 to 24)}: a footprint with its interval, for a table whose head names the unit. */
    public static String interval(Summary summary) {
        return interval(summary, Language.ENGLISH);
    }

    public static String interval(Summary summary, Language language) {
        return interval(
                Print.footprint(summary.median()),
                Print.footprint(summary.low()),
                Print.footprint(summary.high()),
                language);
    }

    private static String interval(String median, String low, String high, Language language) {
        return language.say(
                "interval",
                "median",
                language.figure(median),
                "low",
                language.figure(low),
                "high",
                language.figure(high));
    }

    /** The unit of every figure of this basis. */
    public String unit() {
        return language.say(
                "unit",
                "unit",
                language.sayOr(
                        "unit-name." + basis.indicator().id(), basis.indicator().unit()),
                "per",
                basis.per().message());
    }

    /** The same in English, as programs read it in every language. */
    public String unitField() {
        return new Sentences(basis, coverage).unit();
    }

    /** {@code greenhouse gas emissions per kg protein, up to the farm gate}: what the figures are of. */
    public String measure() {
        return language.say(
                "measure", "indicator", indicator(), "per", basis.per().message(), "boundary", boundary());
    }

    /** One product or farm in a sentence. */
    public String estimate(Estimate estimate) {
        if (isUnciteable(estimate)) {
            return language.say(
                    "estimate.unciteable",
                    "name",
                    estimate.name(),
                    "boundary",
                    boundary(),
                    "why",
                    unciteable(List.of(estimate)));
        }
        return estimate.summary()
                .map(summary -> language.say(
                                "estimate",
                                "name",
                                estimate.name(),
                                "boundary",
                                boundary(),
                                "figure",
                                footprint(summary, estimate.bound()),
                                "interval",
                                interval(List.of(estimate)),
                                "studies",
                                withBasis(studies(estimate, Optional.empty()), List.of(estimate)))
                        + uncounted(estimate)
                        + contradicted(estimate, language)
                        + animalsOnly())
                .orElseGet(() -> language.say(
                        "estimate.none",
                        "name",
                        estimate.name(),
                        "boundary",
                        boundary(),
                        "per",
                        basis.per().message()));
    }

    /** A product against the reference in a sentence. */
    public String versus(Estimate product, Estimate reference, Ratio versus) {
        if (isUnciteable(product) || isUnciteable(reference)) {
            return language.say(
                    "versus.unciteable",
                    "product",
                    product.name(),
                    "reference",
                    reference.name(),
                    "boundary",
                    boundary(),
                    "why",
                    unciteable(List.of(product, reference)));
        }
        List<Estimate> sides = List.of(product, reference);
        return language.say(
                        isLess(versus) ? "versus.reference" : "versus.product",
                        "product",
                        product.name(),
                        "reference",
                        reference.name(),
                        "ratio",
                        turned(versus, versus),
                        "indicator",
                        indicator(),
                        "per",
                        basis.per().message(),
                        "boundary",
                        boundary(),
                        "interval",
                        interval(sides),
                        "studies",
                        withBasis(studies(product, reference), sides))
                + " "
                + shareOfDraws(product, reference, versus)
                + animalsOnly();
    }

    /** A product against the reference in a sentence, and shortly with land-use change the other way round where that differs. */
    public String versus(Estimate product, Estimate reference, Ratio versus, Optional<Ratio> otherLandUse) {
        String asked = turned(versus, versus);
        if (isUnciteable(product) || isUnciteable(reference)) {
            return versus(product, reference, versus);
        }
        return versus(product, reference, versus)
                + otherLandUse
                        .map(other -> turned(versus, other))
                        .filter(other -> !other.equals(asked))
                        .map(this::otherLandUse)
                        .orElse("");
    }

    private static boolean isLess(Ratio versus) {
        return versus.timesLess().median() >= 1;
    }

    /** A ratio in the direction in which another is worded. */
    private String turned(Ratio worded, Ratio ratio) {
        return isLess(worded)
                ? ratio(ratio.timesLess(), ratio.bound(), language)
                : ratio(ratio.share(), ratio.bound().reversed(), language);
    }

    /** One product or farm in a sentence, and shortly with land-use change the other way round where that differs. */
    public String estimate(Estimate estimate, Optional<? extends Estimate> otherLandUse) {
        String asked = estimate.summary().map(Sentences::interval).orElse("");
        if (isUnciteable(estimate)) {
            return estimate(estimate);
        }
        return estimate(estimate)
                + otherLandUse
                        .flatMap(other -> other.summary()
                                .filter(summary -> !interval(summary).equals(asked))
                                .map(summary ->
                                        otherLandUse(language.say(other.bound().message(interval(summary, language))))))
                        .orElse("");
    }

    /** True when the figure rests on a publication that nobody can look up. */
    private static boolean isUnciteable(Estimate estimate) {
        return estimate instanceof PublishedEstimate published && published.isUnciteable();
    }

    /** Why no sentence is made, in place of a figure. */
    private static Message unciteable(List<Estimate> estimates) {
        List<DisplayName> which = estimates.stream()
                .filter(Sentences::isUnciteable)
                .map(Estimate::name)
                .toList();
        return Message.of("unciteable", "which", Listing.and(which));
    }

    /** {@code " With land-use change counted: 9.3 (4.1 to 21)."} */
    private String otherLandUse(String figure) {
        return " " + language.say("luc-other", "state", basis.luc().other().message(), "figure", figure);
    }

    /** The evidence of a side in English words: {@code 2 studies in Kenya, 1 from memory}. */
    public static String studies(Estimate estimate) {
        return studies(estimate, Optional.empty()).english();
    }

    /** The evidence of a side in words, with its name: {@code 2 studies of beef in Kenya, 1 from memory}. */
    public static Message studiesOf(Estimate estimate) {
        return studies(estimate, Optional.of(estimate.name()));
    }

    private static Message studies(Estimate estimate, Optional<DisplayName> name) {
        if (estimate instanceof ModelledEstimate) {
            return ofSide(estimate.summary().isEmpty() ? "modelled.none" : "modelled", name);
        }
        if (!(estimate instanceof PublishedEstimate published)) {
            return ofSide("computed", name);
        }
        int n = published.studies();
        Message text = name.map(of -> Message.of("studies.of", "n", n, "name", of))
                .orElseGet(() -> Message.of("studies", "n", n));
        if (published.evidence() instanceof Evidence.PooledEvidence some
                && !some.regionUsed().equals(Regions.WORLD)) {
            text = Message.of("studies.in", "studies", text, "region", some.regionName());
        }
        int unseen = published.studiesFromMemory();
        if (unseen > 0) {
            text = unseen < n
                    ? Message.of("studies.memory", "studies", text, "n", unseen)
                    : Message.of(n == 1 ? "studies.memory.one" : "studies.memory.all", "studies", text);
        }
        if (published.isUnciteable()) {
            text = Message.of("studies.unidentified", "studies", text);
        }
        return published.ownRows() ? Message.of("studies.own-rows", "studies", text) : text;
    }

    private static Message ofSide(String key, Optional<DisplayName> name) {
        String of = key.equals("modelled.none") ? "-of" : ".of";
        return name.map(side -> Message.of(key + of, "name", side)).orElseGet(() -> Message.of(key));
    }

    /** The evidence of both sides in words. */
    private static Message studies(Estimate product, Estimate reference) {
        return product instanceof ModelledEstimate && reference instanceof ModelledEstimate
                ? ModelledEstimate.MESSAGE_OF_BOTH
                : Message.of("verbatim", "text", Listing.commas(List.of(studiesOf(product), studiesOf(reference))));
    }

    /** The source of a paired ratio: the study, and where it took a side from. */
    public static String study(PairedStudy paired) {
        return paired.study()
                + paired.borrowed()
                        .product()
                        .map(from -> ", product from " + from)
                        .orElse("")
                + paired.borrowed()
                        .reference()
                        .map(from -> ", reference from " + from)
                        .orElse("");
    }

    /**
     * The ratios out of single studies: {@code 2 of 2 studies of both find less for chicken than for pork (pork ÷ chicken: 3.5, 3.4).} Of three
     * or more the pooled ratio stands behind it; two make no interval.
     */
    public static String paired(Estimate product, Estimate reference, PairedEvidence paired, Language language) {
        List<PairedStudy> ratios = paired.ratios();
        int less = (int) ratios.stream().filter(ratio -> ratio.central() > 1).count();
        String list = ratios.stream()
                .map(ratio -> language.figure(Print.ratio(ratio.central())))
                .collect(Collectors.joining(language == Language.ENGLISH ? ", " : " ; "));
        return paired.pooled()
                .map(pooled -> language.say(
                        "paired.pooled",
                        "less",
                        less,
                        "n",
                        ratios.size(),
                        "product",
                        product.name(),
                        "reference",
                        reference.name(),
                        "ratios",
                        list,
                        "pooled",
                        language.figure(Print.ratio(StrictMath.exp(pooled.mean()))),
                        "low",
                        language.figure(Print.ratio(PairedEvidence.low(pooled))),
                        "high",
                        language.figure(Print.ratio(PairedEvidence.high(pooled)))))
                .orElseGet(() -> language.say(
                        "paired",
                        "less",
                        less,
                        "n",
                        ratios.size(),
                        "product",
                        product.name(),
                        "reference",
                        reference.name(),
                        "ratios",
                        list));
    }

    /** What must be added where gases of the animals alone are counted; otherwise empty. */
    public String animalsOnly() {
        boolean gases = basis.boundary() == Boundary.ANIMAL && basis.indicator().isWarming();
        return gases ? " " + language.say("animals-only") : "";
    }

    private String uncounted(Estimate quote) {
        return listed("not-counted", quote.uncounted()) + listed("counted-beyond", quote.countedBeyond());
    }

    private String listed(String key, List<Message> what) {
        return what.isEmpty() ? "" : " " + language.say(key, "what", Listing.commas(what));
    }

    /**
     * What makes bounds of the sides of an answer, as sentences with a blank before each; empty where all are exact: {@code " Not counted are
     * feed of the bucket shed. Counted beside what is asked are emissions from land-use change of beef."}
     */
    public static String bounds(Stream<? extends Estimate> sides) {
        return bounds(sides, Language.ENGLISH);
    }

    public static String bounds(Stream<? extends Estimate> sides, Language language) {
        List<? extends Estimate> all = sides.distinct().toList();
        return bounds("not-counted", all, Estimate::uncounted, language)
                + bounds("counted-beyond", all, Estimate::countedBeyond, language);
    }

    private static String bounds(
            String key, List<? extends Estimate> sides, Function<Estimate, List<Message>> what, Language language) {
        List<Message> named = sides.stream()
                .filter(side -> !what.apply(side).isEmpty())
                .map(side -> whatOf(what.apply(side), side.name()))
                .toList();
        return named.isEmpty() ? "" : " " + language.say(key, "what", Listing.semicolons(named));
    }

    /** {@code feed, energy of the bucket shed}. */
    public static Message whatOf(List<Message> what, DisplayName side) {
        return Message.of("what-of", "what", Listing.commas(what), "name", side);
    }

    /** Why nothing can be said with a figure, behind a sentence; empty where its records do not contradict themselves. */
    public static String contradicted(Estimate estimate, Language language) {
        return estimate.contradictions().isEmpty()
                ? ""
                : " " + language.say("contradicted", "why", Listing.semicolons(estimate.contradictions()));
    }

    private String shareOfDraws(Estimate product, Estimate reference, Ratio versus) {
        if (versus.less().isEmpty()) {
            return bounds(Stream.of(product, reference), language).strip();
        }
        String share = share(versus.less().get().value(), language);
        boolean thin = !product.hasEnoughStudies() || !reference.hasEnoughStudies();
        return thin
                ? language.say(
                        "draws-less.thin",
                        "product",
                        product.name(),
                        "share",
                        share,
                        "thin",
                        ThinEvidence.message(basis.lowestGrade()))
                : language.say("draws-less", "product", product.name(), "share", share);
    }

    /** A share of draws: never said to be none or all, because draws end somewhere. */
    public static String share(double value) {
        return share(value, Language.ENGLISH);
    }

    public static String share(double value, Language language) {
        if (value > 0.99) {
            return language.say("share.above");
        }
        return value < 0.01 ? language.say("share.below") : language.say("percent", "percent", Math.round(value * 100));
    }

    /** What is counted, as it stands in a sentence: {@code greenhouse gas emissions}. */
    public String indicator() {
        return IndicatorWording.of(basis, language).quantity();
    }

    /** The indicator as it begins a sentence: {@code Greenhouse gas emissions}. */
    public String capitalIndicator() {
        return language.capital(indicator());
    }

    /** The system boundary, as it stands in a sentence: {@code up to the farm gate}. */
    public String boundary() {
        return language.say(basis.boundary().message(basis.indicator()));
    }

    /** The evidence, and what else a warming figure depends on: the warming set and whether land-use change is in. */
    private Message withBasis(Message studies, List<Estimate> estimates) {
        if (!basis.indicator().isWarming()) {
            return studies;
        }
        boolean kept = estimates.stream()
                .anyMatch(estimate ->
                        estimate instanceof PublishedEstimate published && published.keepsOtherWarmingSets());
        return Message.of(
                "studies.basis",
                "studies",
                studies,
                "basis",
                Message.of("warming." + basis.luc().id(), "gwp", warmingSet(basis, kept)));
    }

    /** {@code AR6 GWP100 where studies could be converted}. */
    public static Message warmingSet(ComparisonBasis basis, boolean kept) {
        String gwp = basis.gwp().name();
        return kept ? Message.of("warming.kept", "gwp", gwp) : Message.verbatim(gwp);
    }

    /** {@code 90 % interval for what the next study of each would find}: of what the interval speaks. */
    private Message interval(List<Estimate> sides) {
        List<Estimate> pooled =
                sides.stream().filter(side -> side.speaksOf().isPresent()).toList();
        long percent = Math.round(coverage * 100);
        if (pooled.isEmpty()) {
            return Message.of("interval-of", "percent", percent);
        }
        Message subject = pooled.get(0)
                .speaksOf()
                .map(of -> pooled.size() == 2
                        ? of.ofEach()
                        : sides.size() == 2 ? of.of(pooled.get(0).name()) : of.message())
                .orElseThrow();
        return Message.of("interval-of.subject", "percent", percent, "subject", subject);
    }
}
