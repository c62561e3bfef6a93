package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Regions;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.LandUseChange;
import org.scalepan.literature.PairedEvidence;
import org.scalepan.literature.PairedStudy;
import org.scalepan.quantity.Print;
import org.scalepan.uncertainty.Summary;

/** Words results as plain sentences with unit, boundary, interval and number of studies. */
public final class Sentences {
    private final ComparisonBasis basis;
    private final double coverage;

    public Sentences(ComparisonBasis basis, double coverage) {
        this.basis = basis;
        this.coverage = coverage;
    }

    /** {@code 8.2 (3.9 to 17)}: a ratio with its interval. */
    public static String ratio(Summary summary) {
        return Print.ratio(summary.median()) + " (" + Print.ratio(summary.low()) + " to " + Print.ratio(summary.high())
                + ")";
    }

    /** {@code 16 (11 to 24) kg CO2e per kg protein}: a footprint with its interval. */
    public String footprint(Summary summary) {
        return interval(summary) + " " + unit();
    }

    /** {@code 16 (11 to 24)}: a footprint with its interval, for a table whose head names the unit. */
    public static String interval(Summary summary) {
        return Print.footprint(summary.median()) + " (" + Print.footprint(summary.low()) + " to "
                + Print.footprint(summary.high()) + ")";
    }

    /** The unit of every figure of this basis. */
    public String unit() {
        return basis.indicator().unit() + " per " + basis.per().words();
    }

    /** {@code greenhouse gas emissions per kg protein, up to the farm gate}: what the figures are of. */
    public String measure() {
        return indicator() + " per " + basis.per().words() + ", " + boundary();
    }

    /** One product or farm in a sentence. */
    public String estimate(Estimate estimate) {
        String where = capital(name(estimate)) + ", " + boundary();
        if (isUnciteable(estimate)) {
            return where + ": " + unciteable(List.of(estimate));
        }
        return estimate.summary()
                .map(summary -> where + ": " + estimate.bound().words() + footprint(summary) + " ("
                        + interval(List.of(estimate)) + "; " + studies(estimate, "") + basis(List.of(estimate)) + ")."
                        + uncounted(estimate)
                        + contradicted(estimate)
                        + animalsOnly())
                .orElse(where + ": no evidence per " + basis.per().words() + ".");
    }

    /** A product against the reference in a sentence. */
    public String versus(Estimate product, Estimate reference, Ratio versus) {
        if (isUnciteable(product) || isUnciteable(reference)) {
            return capital(name(product)) + " against " + name(reference) + ", " + boundary() + ": "
                    + unciteable(List.of(product, reference));
        }
        String more = versus.timesLess().median() >= 1
                ? capital(name(reference)) + " has " + versus.bound().words() + ratio(versus.timesLess())
                        + " times the " + indicator() + " of " + name(product)
                : capital(name(product)) + " has " + versus.bound().reversed().words() + ratio(versus.share())
                        + " times the " + indicator() + " of " + name(reference);
        return more + ", per " + basis.per().words() + ", " + boundary() + " ("
                + interval(List.of(product, reference)) + "; "
                + studies(product, reference)
                + basis(List.of(product, reference)) + "). " + shareOfDraws(product, reference, versus)
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

    /** A ratio in the direction in which another is worded. */
    private static String turned(Ratio worded, Ratio ratio) {
        return worded.timesLess().median() >= 1
                ? ratio.bound().words() + ratio(ratio.timesLess())
                : ratio.bound().reversed().words() + ratio(ratio.share());
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
                                .map(Sentences::interval)
                                .filter(figure -> !figure.equals(asked))
                                .map(figure -> otherLandUse(other.bound().words() + figure)))
                        .orElse("");
    }

    /** True when the figure rests on a publication that nobody can look up. */
    private static boolean isUnciteable(Estimate estimate) {
        return estimate instanceof PublishedEstimate published && published.isUnciteable();
    }

    /** Why no sentence is made, in place of a figure. */
    private static String unciteable(List<Estimate> estimates) {
        String which = estimates.stream()
                .filter(Sentences::isUnciteable)
                .map(Estimate::words)
                .collect(Collectors.joining(" and "));
        return "no sentence is made, because the publication behind the figure of " + which
                + " is not identified and cannot be cited.";
    }

    /** {@code " With land-use change counted: 9.3 (4.1 to 21)."} */
    private String otherLandUse(String figure) {
        return " " + basis.luc().other().words() + ": " + figure + ".";
    }

    /**
     * The evidence of a side in words: {@code 2 studies of beef in Kenya, 1 from memory}.
     *
     * @param of what goes behind the number of studies, such as {@code " of beef"}; may be empty
     */
    public static String studies(Estimate estimate, String of) {
        if (estimate instanceof ModelledEstimate && estimate.summary().isEmpty()) {
            return "no modelled figure" + of;
        }
        if (estimate instanceof ModelledEstimate) {
            return of.isEmpty() ? ModelledEstimate.WORDS : estimate.words() + " " + ModelledEstimate.WORDS;
        }
        if (!(estimate instanceof PublishedEstimate published)) {
            return of.isEmpty() ? "computed from records" : estimate.words() + " computed from records";
        }
        StringBuilder text = new StringBuilder(count(published.studies(), "study", "studies")).append(of);
        if (published.evidence() instanceof Evidence.PooledEvidence some
                && !some.regionUsed().equals(Regions.WORLD)) {
            text.append(" in ").append(some.regionWords());
        }
        if (published.studiesFromMemory() > 0) {
            boolean all = published.studiesFromMemory() == published.studies();
            String many = all ? (published.studies() == 1 ? "" : "all ") : published.studiesFromMemory() + " ";
            text.append(", ").append(many).append("from memory");
        }
        text.append(published.isUnciteable() ? ", publication not identified" : "");
        return text.append(published.ownRows() ? ", own rows among them" : "").toString();
    }

    /** The evidence of both sides in words. */
    private static String studies(Estimate product, Estimate reference) {
        return product instanceof ModelledEstimate && reference instanceof ModelledEstimate
                ? ModelledEstimate.WORDS_OF_BOTH
                : studies(product, " of " + name(product)) + ", " + studies(reference, " of " + name(reference));
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
    public static String paired(Estimate product, Estimate reference, PairedEvidence paired) {
        List<PairedStudy> ratios = paired.ratios();
        long less = ratios.stream().filter(ratio -> ratio.central() > 1).count();
        return less + " of " + count(ratios.size(), "study", "studies") + " of both "
                + (ratios.size() == 1 ? "finds" : "find") + " less for " + name(product) + " than for "
                + name(reference)
                + " (" + name(reference) + " ÷ " + name(product) + ": "
                + ratios.stream().map(ratio -> Print.ratio(ratio.central())).collect(Collectors.joining(", "))
                + paired.pooled()
                        .map(pooled -> "; pooled " + Print.ratio(StrictMath.exp(pooled.mean())) + ", 95 % interval "
                                + Print.ratio(PairedEvidence.low(pooled)) + " to "
                                + Print.ratio(PairedEvidence.high(pooled)))
                        .orElse("")
                + ").";
    }

    /** What must be added where gases of the animals alone are counted; otherwise empty. */
    public String animalsOnly() {
        boolean gases = basis.boundary() == Boundary.ANIMAL && basis.indicator().isWarming();
        return gases ? " This is not the footprint of a product: feed, energy and housing are left out." : "";
    }

    private static String uncounted(Estimate quote) {
        return (quote.uncounted().isEmpty() ? "" : " Not counted are " + String.join(", ", quote.uncounted()) + ".")
                + (quote.countedBeyond().isEmpty()
                        ? ""
                        : " Counted beside what is asked are " + String.join(", ", quote.countedBeyond()) + ".");
    }

    /**
     * What makes bounds of the sides of an answer, as sentences with a blank before each; empty where all are exact: {@code " Not counted are
     * feed of the bucket shed. Counted beside what is asked are emissions from land-use change of beef."}
     */
    public static String bounds(Stream<? extends Estimate> sides) {
        List<? extends Estimate> all = sides.distinct().toList();
        return bounds(" Not counted are ", all, Estimate::uncounted)
                + bounds(" Counted beside what is asked are ", all, Estimate::countedBeyond);
    }

    private static String bounds(String before, List<? extends Estimate> sides, Function<Estimate, List<String>> what) {
        String named = sides.stream()
                .filter(side -> !what.apply(side).isEmpty())
                .map(side -> String.join(", ", what.apply(side)) + " of " + side.words())
                .collect(Collectors.joining("; "));
        return named.isEmpty() ? "" : before + named + ".";
    }

    /** Why nothing can be said with a figure, behind a sentence; empty where its records do not contradict themselves. */
    public static String contradicted(Estimate estimate) {
        return estimate.contradictions().isEmpty()
                ? ""
                : " Nothing can be said with it, because the records contradict themselves: "
                        + String.join("; ", estimate.contradictions()) + ".";
    }

    private String shareOfDraws(Estimate product, Estimate reference, Ratio versus) {
        if (versus.less().isEmpty()) {
            return bounds(Stream.of(product, reference)).strip();
        }
        double value = versus.less().get().value();
        boolean thin = !product.hasEnoughStudies() || !reference.hasEnoughStudies();
        return capital(name(product)) + " has less in " + share(value) + " of the draws"
                + (thin ? "; " + ThinEvidence.words(basis.lowestGrade()) : "") + ".";
    }

    /** A share of draws: never said to be none or all, because draws end somewhere. */
    public static String share(double value) {
        if (value > 0.99) {
            return "more than 99 %";
        }
        return value < 0.01 ? "fewer than 1 %" : Math.round(value * 100) + " %";
    }

    /** What is counted, as it stands in a sentence: {@code greenhouse gas emissions}. */
    public String indicator() {
        return IndicatorWording.of(basis).quantity();
    }

    /** The indicator as it begins a sentence: {@code Greenhouse gas emissions}. */
    public String capitalIndicator() {
        return capital(indicator());
    }

    /** The system boundary, as it stands in a sentence: {@code up to the farm gate}. */
    public String boundary() {
        return basis.boundary().words(basis.indicator());
    }

    /** What else a warming figure depends on: the warming set and whether land-use change is in. */
    private String basis(List<Estimate> estimates) {
        if (!basis.indicator().isWarming()) {
            return "";
        }
        boolean all = estimates.stream()
                .noneMatch(estimate ->
                        estimate instanceof PublishedEstimate published && published.keepsOtherWarmingSets());
        String luc = basis.luc() == LandUseChange.EXCLUDE ? "without" : "with";
        return "; " + basis.gwp().name() + (all ? "" : " where studies could be converted") + ", " + luc
                + " land-use change where studies report it";
    }

    /** {@code 90 % interval for what the next study of each would find}: of what the interval speaks. */
    private String interval(List<Estimate> sides) {
        List<Estimate> pooled =
                sides.stream().filter(side -> side.speaksOf().isPresent()).toList();
        if (pooled.isEmpty()) {
            return percent() + " interval";
        }
        String of = pooled.size() == 2 ? " of each" : sides.size() == 2 ? " of " + name(pooled.get(0)) : "";
        return percent() + " interval for "
                + pooled.get(0).speaksOf().map(subject -> subject.words(of)).orElse("");
    }

    private String percent() {
        return Math.round(coverage * 100) + " %";
    }

    private static String name(Estimate estimate) {
        return estimate.words();
    }

    private static String count(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
