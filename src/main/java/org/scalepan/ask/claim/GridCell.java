package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.Footprint;
import org.scalepan.footprint.FootprintRatio;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.IntervalOf;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.uncertainty.Probability;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * A claim on one basis. It retains no draws, so that a grid of any size needs little memory.
 *
 * @param probability that the claim is true, with its Monte Carlo standard error; none for a claim of none about a footprint that
 *     no credit can bring to zero, and none where a side is a bound
 * @param timesLess reference ÷ product
 * @param bound whether that ratio is one or a bound; of a claim of none, whether the product's footprint is
 * @param bounds what can be said of that ratio in 90 % of the draws
 */
public record GridCell(
        ComparisonBasis basis,
        Verdict verdict,
        Optional<Probability> probability,
        Optional<Summary> timesLess,
        Bound bound,
        Optional<Bounds> bounds,
        Evidenced product,
        Optional<Evidenced> reference) {

    /**
     * How one side is measured on this basis.
     *
     * @param leastCaused its 10th percentile rounded down to two figures, where that is above zero
     * @param bound whether the figure is the figure or a bound of it
     * @param uncounted what is required and not counted, so that the true figure is higher, in words
     * @param countedBeyond what is counted although the question leaves it out, so that the true figure is lower, in words
     * @param contradictions how the records behind it contradict themselves, in words
     * @param keepsOtherSets whether some result could not be put on the warming set asked for
     * @param unciteable whether the publication behind the figure is not identified, so that no sentence may quote it
     * @param speaksOf of what the interval of a pooled figure speaks
     * @param amount how many studies support it, in words
     * @param results the published numbers used
     * @param noRatio what stands against a ratio of the figure
     */
    public record Evidenced(
            DisplayName name,
            Optional<Summary> footprint,
            OptionalDouble leastCaused,
            int studies,
            boolean hasEnoughStudies,
            Bound bound,
            List<Message> uncounted,
            List<Message> countedBeyond,
            List<Message> contradictions,
            boolean keepsOtherSets,
            boolean unciteable,
            Optional<IntervalOf> speaksOf,
            Message amount,
            List<PublishedResult> results,
            Optional<NoRatio> noRatio,
            Optional<Message> missing) {
        public Evidenced {
            uncounted = List.copyOf(uncounted);
            countedBeyond = List.copyOf(countedBeyond);
            contradictions = List.copyOf(contradictions);
            results = List.copyOf(results);
        }

        static Evidenced of(Estimate estimate, Optional<Message> unlike) {
            PublishedEstimate published = estimate instanceof PublishedEstimate one ? one : null;
            List<PublishedResult> results =
                    published != null && published.evidence() instanceof Evidence.PooledEvidence some
                            ? some.findings().map(finding -> finding.result()).toList()
                            : List.of();
            return new Evidenced(
                    estimate.name(),
                    estimate.summary(),
                    estimate.footprint()
                            .filter(footprint -> estimate.isComparable())
                            .map(footprint -> OptionalDouble.of(SignificantFigures.floor(footprint.exceeded(0.9), 2)))
                            .orElse(OptionalDouble.empty()),
                    published == null ? 0 : published.studies(),
                    estimate.hasEnoughStudies(),
                    estimate.bound(),
                    estimate.uncounted(),
                    estimate.countedBeyond(),
                    estimate.contradictions(),
                    published != null && published.keepsOtherWarmingSets(),
                    published != null && published.isUnciteable(),
                    estimate.speaksOf(),
                    Sentences.studiesOf(estimate),
                    results,
                    estimate.noRatio(),
                    estimate.why().or(() -> unlike));
        }

        /** True when too few studies stand behind it. */
        boolean isThin() {
            return !hasEnoughStudies && bound == Bound.EXACT;
        }
    }

    /**
     * A ratio's bounds, both rounded towards saying less.
     *
     * @param least the 10th percentile rounded down to two figures: "at least so many times less"
     * @param reverseLeast the 10th percentile of the ratio turned round, rounded down to two figures: "at least so many times more"
     */
    public record Bounds(double least, double reverseLeast, Bound bound) {
        static Bounds of(FootprintRatio timesLess, Bound bound) {
            return new Bounds(
                    SignificantFigures.floor(timesLess.exceeded(0.9), 2),
                    SignificantFigures.floor(1 / timesLess.notExceeded(0.9), 2),
                    bound);
        }

        /** True when a reduction can be defended. */
        public boolean less() {
            return least > 1 && bound.supportsAtLeast();
        }

        /** True when it can be defended that the product causes more. */
        public boolean more() {
            return reverseLeast > 1 && bound.supportsAtMost();
        }
    }

    /** Checks a claim for two estimates on one basis. */
    static GridCell of(
            Claimed claimed, ComparisonBasis basis, Estimate product, Optional<Estimate> reference, double coverage) {
        Optional<FootprintRatio> ratio = reference
                .filter(other -> product.isComparable()
                        && other.isComparable()
                        && product.unlike(other).isEmpty())
                .map(other ->
                        other.footprint().orElseThrow().over(product.footprint().orElseThrow()));
        Optional<Probability> probability = claimed.times().isPresent()
                ? ratio.map(r -> r.atLeast(claimed.times().getAsDouble()))
                : product.footprint().map(GridCell::ofNone);
        // A footprint without credits is above zero by the form of its distribution: that it is none is ruled out and
        // not improbable.
        Bound bound =
                reference.map(other -> other.bound().over(product.bound())).orElse(product.bound());
        // That a footprint is none or less can only be refuted by what it is at least.
        Bound ofClaim = claimed.times().isPresent() ? bound : product.bound().reversed();
        boolean ruledOut = claimed.times().isEmpty()
                && product.footprint().filter(Footprint::isPositive).isPresent();
        return new GridCell(
                basis,
                probability.map(found -> Verdict.of(found.value(), ofClaim)).orElse(Verdict.NO_EVIDENCE),
                probability.filter(found -> !ruledOut && ofClaim == Bound.EXACT),
                ratio.map(r -> r.bothWays(coverage).forth()),
                bound,
                ratio.map(r -> Bounds.of(r, bound)),
                Evidenced.of(product, Optional.empty()),
                reference.map(other -> Evidenced.of(other, product.unlike(other))));
    }

    /** The probability that a footprint is zero or below, which only credits can bring about. */
    private static Probability ofNone(Footprint footprint) {
        double[] turned = footprint.draws();
        for (int i = 0; i < turned.length; i++) {
            turned[i] = -turned[i];
        }
        return Probability.ofAtLeast(turned, 0);
    }

    /** The sides whose figure no sentence may quote, in words; empty when there are none. */
    List<DisplayName> unciteable() {
        return Stream.concat(Stream.of(product), reference.stream())
                .filter(Evidenced::unciteable)
                .map(Evidenced::name)
                .toList();
    }

    /** True when there is a verdict. */
    public boolean hasEvidence() {
        return verdict != Verdict.NO_EVIDENCE;
    }

    /** What makes bounds of the sides, in a clause: {@code not counted are feed, energy of the bucket shed}; empty when nothing does. */
    Message openEnds() {
        List<Message> ends = Stream.of(
                        named(Evidenced::uncounted).map(what -> Message.of("ends.not-counted", "what", what)),
                        named(Evidenced::countedBeyond).map(what -> Message.of("ends.counted-beyond", "what", what)))
                .flatMap(Optional::stream)
                .toList();
        return Message.of("verbatim", "text", Listing.semicolons(ends));
    }

    /** What is required and not counted, for whom: {@code feed, energy of the bucket shed}. */
    Listing uncounted() {
        return named(Evidenced::uncounted).orElse(Listing.semicolons(List.of()));
    }

    private Optional<Listing> named(Function<Evidenced, List<Message>> what) {
        List<Message> named = Stream.concat(Stream.of(product), reference.stream())
                .filter(side -> !what.apply(side).isEmpty())
                .map(side -> Sentences.whatOf(what.apply(side), side.name()))
                .toList();
        return named.isEmpty() ? Optional.empty() : Optional.of(Listing.semicolons(named));
    }

    /** True where the bounds come of land-use change alone, which another question treats the other way round. */
    boolean isOpenByLandUse() {
        return Stream.concat(Stream.of(product), reference.stream())
                .filter(side -> side.bound() != Bound.EXACT)
                .allMatch(side -> side.studies() > 0);
    }

    /** True when reference farms are asked for. */
    public boolean isModelled() {
        return basis.evidence() == EvidenceKind.MODELLED;
    }

    /** What both sides are where no ratio bounds anything. */
    Message bothBounds() {
        return Message.of(product.bound() == Bound.AT_MOST ? "bounds.upper" : "bounds.lower");
    }

    /** How records of a side contradict themselves, for whom; empty when they do not. */
    List<Message> contradictions() {
        return Stream.concat(Stream.of(product), reference.stream())
                .filter(side -> !side.contradictions().isEmpty())
                .map(side ->
                        Message.of("of-side", "side", side.name(), "what", Listing.semicolons(side.contradictions())))
                .toList();
    }

    /** How much stands behind both sides, in words. */
    Message amounts() {
        if (isModelled() && reference.isPresent()) {
            return ModelledEstimate.MESSAGE_OF_BOTH;
        }
        Message amounts = Message.of(
                "verbatim",
                "text",
                Listing.commas(Stream.concat(Stream.of(product), reference.stream())
                        .map(Evidenced::amount)
                        .toList()));
        return subject()
                .map(subject -> Message.of("amounts.subject", "subject", subject, "amounts", amounts))
                .orElse(amounts);
    }

    /** {@code what the next study of each would find}: of what the draws of pooled sides speak; empty where none is pooled. */
    private Optional<Message> subject() {
        List<Evidenced> pooled = Stream.concat(Stream.of(product), reference.stream())
                .filter(side -> side.speaksOf().isPresent())
                .toList();
        return pooled.stream()
                .findFirst()
                .flatMap(first -> first.speaksOf()
                        .map(of -> pooled.size() == 2
                                ? of.ofEach()
                                : reference.isPresent() ? of.of(first.name()) : of.message()));
    }

    /** True when a side rests on too few studies. */
    public boolean isThin() {
        return product.isThin() || reference.filter(Evidenced::isThin).isPresent();
    }

    /** True when both sides rest on enough studies, and nothing usual is left out of what was computed. */
    public boolean hasEnoughStudies() {
        return product.hasEnoughStudies()
                && reference.filter(side -> !side.hasEnoughStudies()).isEmpty();
    }
}
