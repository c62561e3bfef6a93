package org.scalepan.ask.programme;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;
import org.scalepan.factors.PairedRatio;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.uncertainty.Probability;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * What a programme changes a year in one indicator. All sides are drawn with common random numbers, so that a factor on several of them
 * cancels.
 *
 * @param basis of the baseline; the product is counted per kilogram as it comes
 * @param alternatives those of the question's that have a figure
 * @param figures none when the product or a part of the baseline has no figure
 * @param instead where there are no figures: ratios that a study of both sides printed, which may exist where no footprint does
 */
public record YearlyChange(
        ComparisonBasis basis,
        YearlyUnit unit,
        Estimate product,
        List<Estimate> baseline,
        List<Estimate> alternatives,
        Optional<Figures> figures,
        List<PairedRatio> instead) {
    private static final double HALF = 0.5;

    public YearlyChange {
        baseline = List.copyOf(baseline);
        alternatives = List.copyOf(alternatives);
        instead = List.copyOf(instead);
    }

    /**
     * The figures, in {@link YearlyUnit}s a year.
     *
     * @param avoided what is displaced less what the product causes; below zero the programme causes more
     * @param own what the product causes
     * @param displaced what is no longer caused
     * @param saves the probability that anything is avoided, given the assumptions; none where that is a bound
     * @param bound whether {@code avoided} is a bound: at most, where something required of the product is not counted
     * @param ownBound the same of {@code own}
     * @param displacedBound the same of {@code displaced}
     */
    public record Figures(
            Summary avoided,
            Summary own,
            Summary displaced,
            Optional<Probability> saves,
            List<Swing> swings,
            Bound bound,
            Bound ownBound,
            Bound displacedBound) {
        public Figures {
            swings = List.copyOf(swings);
        }
    }

    /** What is avoided for each of so many households, people or meals, in the indicator's own unit; empty without figures. */
    public Optional<Summary> avoidedForEach(double number) {
        return figures.map(found -> found.avoided().times(unit.holds() / number));
    }

    /** Why there are no figures. */
    public Optional<Message> why() {
        List<Message> reasons = Stream.concat(Stream.of(product), baseline.stream())
                .flatMap(estimate -> Stream.concat(estimate.why().stream(), estimate.contradictions().stream())
                        .map(why -> Message.of("of-side", "side", estimate.name(), "what", why)))
                .distinct()
                .toList();
        if (reasons.isEmpty() && figures.isEmpty()) {
            return baseline.stream()
                    .flatMap(part -> product.unlike(part).stream())
                    .findFirst();
        }
        return reasons.isEmpty()
                ? Optional.empty()
                : Optional.of(Message.of("verbatim", "text", Listing.semicolons(reasons)));
    }

    /** The same in English. */
    public Optional<String> missing() {
        return why().map(Message::english);
    }

    /** The sides that have no figure, by name. */
    public List<DisplayName> silent() {
        return Stream.concat(Stream.of(product), baseline.stream())
                .filter(side -> isSilent(side) || product.unlike(side).isPresent())
                .map(Estimate::name)
                .distinct()
                .toList();
    }

    /** What it is counted in, in a year. */
    public Message yearly() {
        return Message.of("programme.yearly", "unit", unitName());
    }

    /** The unit of a year, as it is named. */
    public DisplayName unitName() {
        return DisplayName.of("yearly-unit." + basis.indicator().id(), unit.words());
    }

    /** True when no figure can rest on it: there is none, or it is of records that contradict themselves. */
    private static boolean isSilent(Estimate estimate) {
        return estimate.footprint().isEmpty() || !estimate.contradictions().isEmpty();
    }

    /** Every side behind the figures; none when there are none. */
    public List<Estimate> withEvidence() {
        if (figures.isEmpty()) {
            return List.of();
        }
        return Stream.of(Stream.of(product), baseline.stream(), alternatives.stream())
                .flatMap(estimates -> estimates)
                .distinct()
                .toList();
    }

    static YearlyChange of(Library library, SubstitutionQuestion question, ComparisonBasis basis) {
        Sampling sampling = question.sampling();
        CommonRandomNumbers random = sampling.random();
        Estimate product = question.product()
                .on(library, basis.withPer(question.programme().unit()), sampling, random);
        List<Estimate> baseline = question.baseline().parts().stream()
                .map(part -> part.side().on(library, basis, sampling, random))
                .toList();
        YearlyUnit unit = YearlyUnit.of(basis.indicator());
        boolean silent = Stream.concat(Stream.of(product), baseline.stream()).anyMatch(YearlyChange::isSilent);
        boolean unlike = baseline.stream().anyMatch(part -> product.unlike(part).isPresent());
        if (silent || unlike) {
            return new YearlyChange(
                    basis,
                    unit,
                    product,
                    baseline,
                    List.of(),
                    Optional.empty(),
                    ratios(library, product, baseline, basis));
        }
        List<Candidate> parts = new ArrayList<>();
        for (int i = 0; i < baseline.size(); i++) {
            candidate(library, question, question.baseline().parts().get(i).side(), baseline.get(i), basis, random)
                    .ifPresent(parts::add);
        }
        List<Candidate> alternatives = question.alternatives().stream()
                .flatMap(side ->
                        candidate(library, question, side, side.on(library, basis, sampling, random), basis, random)
                                .stream())
                .toList();
        double[] supplied = question.knownSupply(library).perKilogram(random);
        double[] own = product.footprint().map(Footprint::draws).orElseThrow();
        for (int i = 0; i < own.length; i++) {
            supplied[i] *= question.programme().kilograms();
            own[i] *= question.programme().kilograms() / unit.holds();
        }
        List<Double> shares = question.baseline().parts().stream()
                .map(Baseline.BaselinePart::share)
                .toList();
        double[] mixed = Balance.mix(parts.stream().map(Candidate::perUnit).toList(), shares);
        Balance balance = new Balance(supplied, own, mixed);
        Figures figures = figures(question, balance, own, product.bound(), parts, alternatives);
        return new YearlyChange(
                basis,
                unit,
                product,
                baseline,
                alternatives.stream().map(Candidate::estimate).toList(),
                Optional.of(figures),
                List.of());
    }

    private static List<PairedRatio> ratios(
            Library library, Estimate product, List<Estimate> baseline, ComparisonBasis basis) {
        return library.pairedRatios().stream()
                .filter(ratio -> ratio.product().equals(product.product().id())
                        && ratio.indicator().equals(basis.indicator().id())
                        && ratio.boundary() == basis.boundary()
                        && ratio.cited().check().isAtLeast(basis.lowestGrade())
                        && ratio.printed().value().isPresent()
                        && baseline.stream()
                                .anyMatch(other ->
                                        ratio.reference().equals(other.product().id())))
                .toList();
    }

    /** Something that may be displaced, with what a unit of the equal basis of it causes, in yearly units. */
    private static final class Candidate {
        private final Estimate estimate;
        private final double[] perUnit;

        private Candidate(Estimate estimate, double[] perUnit) {
            this.estimate = estimate;
            this.perUnit = perUnit;
        }

        private Estimate estimate() {
            return estimate;
        }

        private double[] perUnit() {
            return perUnit;
        }
    }

    private static Optional<Candidate> candidate(
            Library library,
            SubstitutionQuestion question,
            Side side,
            Estimate estimate,
            ComparisonBasis basis,
            CommonRandomNumbers random) {
        EqualBasis equalBasis = question.equalBasis();
        Supply supply = Supply.of(library, side, equalBasis.counted(), equalBasis, basis);
        if (isSilent(estimate) || !(supply instanceof Supply.Known known)) {
            return Optional.empty();
        }
        double[] perUnit = estimate.footprint().orElseThrow().draws();
        double[] held = known.perKilogram(random);
        double holds = YearlyUnit.of(basis.indicator()).holds();
        for (int i = 0; i < perUnit.length; i++) {
            perUnit[i] /= held[i] * holds;
        }
        return Optional.of(new Candidate(estimate, perUnit));
    }

    private static Figures figures(
            SubstitutionQuestion question,
            Balance balance,
            double[] own,
            Bound ownBound,
            List<Candidate> parts,
            List<Candidate> alternatives) {
        double coverage = question.sampling().coverage();
        double rate = question.rate();
        Bound mixed = parts.stream().map(part -> part.estimate().bound()).reduce(Bound.EXACT, Bound::plus);
        Bound displacedBound = mixed.times(rate);
        Bound bound = displacedBound.minus(ownBound);
        List<Swing> swings = new ArrayList<>();
        DoubleStream.of(0, HALF, rate, 1)
                .distinct()
                .sorted()
                .forEach(other -> swings.add(new Swing(
                        Swing.Driver.DISPLACEMENT_RATE,
                        BigDecimal.valueOf(other).stripTrailingZeros().toPlainString(),
                        other == rate,
                        Summary.of(balance.avoided(other), coverage),
                        mixed.times(other).minus(ownBound))));
        Stream.concat(parts.size() > 1 ? parts.stream() : Stream.empty(), alternatives.stream())
                .forEach(other -> swings.add(new Swing(
                        Swing.Driver.BASELINE,
                        other.estimate().words(),
                        false,
                        Summary.of(balance.displacing(other.perUnit()).avoided(rate), coverage),
                        other.estimate().bound().times(rate).minus(ownBound))));
        Summary caused = Summary.of(own, coverage);
        swings.add(ofProduct("low end", balance.causing(caused.low()), question, bound));
        swings.add(ofProduct("high end", balance.causing(caused.high()), question, bound));
        double[] displaced = balance.displaced(rate);
        return new Figures(
                Summary.of(balance.avoided(rate), coverage),
                caused,
                Summary.of(displaced, coverage),
                bound == Bound.EXACT ? Optional.of(Probability.ofLess(own, displaced)) : Optional.empty(),
                swings,
                bound,
                ownBound,
                displacedBound);
    }

    private static Swing ofProduct(String setting, Balance balance, SubstitutionQuestion question, Bound bound) {
        return new Swing(
                Swing.Driver.PRODUCT_FOOTPRINT,
                setting,
                false,
                Summary.of(balance.avoided(question.rate()), question.sampling().coverage()),
                bound);
    }
}
