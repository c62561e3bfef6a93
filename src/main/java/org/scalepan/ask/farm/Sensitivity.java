package org.scalepan.ask.farm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.CommonRandomNumbers.Substream;
import org.scalepan.footprint.Footprint;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.StudyHierarchy;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.uncertainty.Sobol;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * Which inputs the uncertainty of a figure comes from: shares of its variance, and swings with one input moved and the others in the
 * middle. With a reference, of the ratio of the two figures: shares then are of the variance of the ratio's logarithm, for which it does
 * not matter which is divided by which.
 *
 * <p>Records given as one number are taken as exact; what entries do to the figure is shown apart, by moving each.
 *
 * @param central the figure, or with a reference the ratio, with every input in the middle
 * @param inputs those that are uncertain, the largest total share first; empty when there is no figure or no uncertainty
 * @param entries what a grower can change, the largest effect first
 * @param why why there is nothing to analyse
 */
public record Sensitivity(
        SensitivityQuestion question,
        Estimate estimate,
        Optional<Estimate> reference,
        double central,
        Optional<Sobol> sobol,
        List<UncertainInput> inputs,
        List<EntrySwing> entries,
        Optional<Message> why) {
    /** Why there is nothing to analyse, in English. */
    public Optional<String> missing() {
        return why.map(Message::english);
    }

    /** How many draws the inputs of one answer may have together; a choice of this service, for its memory and time. */
    public static final int MOST_DRAWS_OF_INPUTS = 1_000_000;

    /** Beyond this standard error a share is said to be noisy. */
    public static final double NOISY = 0.03;

    private static final double SCORE_P95 = 1.6448536269514722;
    private static final int PROBE = 2;

    public Sensitivity {
        inputs = List.copyOf(inputs);
        entries = List.copyOf(entries);
    }

    /**
     * What is asked.
     *
     * @param notebook the records, when the side is a farm or herd
     * @param against what the side is held against, when the ratio is analysed
     * @param usualPercent by how much entries of the records are moved
     * @param percents by how much named entries are moved instead
     */
    public record SensitivityQuestion(
            Side side,
            Optional<EditableRecords> notebook,
            Optional<Side> against,
            ComparisonBasis basis,
            Sampling sampling,
            double usualPercent,
            Map<String, Double> percents) {
        public SensitivityQuestion {
            percents = Map.copyOf(percents);
        }

        /** The same question with another number of draws. */
        public SensitivityQuestion drawn(int draws) {
            Sampling other = new Sampling(sampling.coverage(), draws, sampling.seed());
            return new SensitivityQuestion(side, notebook, against, basis, other, usualPercent, percents);
        }
    }

    /**
     * One uncertain input.
     *
     * @param stream what is drawn for it; of what is between studies the size of their differences, which stands for all draws of these
     * @param swing absent where the input has no effect with the others in the middle
     */
    public record UncertainInput(
            Substream stream, InputName name, Sobol.VarianceShare share, Optional<InputSwing> swing) {}

    /**
     * The figure at an input's 5th and 95th percentile; for what is between studies, at those of the next study's own difference or, of a mean,
     * of the mean of their differences; for a choice among studies of equal weight, with the lowest and the highest finding.
     */
    public record InputSwing(double low, double high) {}

    /**
     * The farm's figure with one entry of its records moved, every factor and range at its central value.
     *
     * @param lowValue the entry moved down, within its limits
     * @param highValue the entry moved up
     * @param central the figure with the entry as recorded
     */
    public record EntrySwing(
            RecordInput entry,
            double percent,
            double lowValue,
            double highValue,
            double central,
            double atLow,
            double atHigh) {
        /** By how many percent the figure is another than with the entry as recorded. */
        public double change(double figure) {
            return 100 * (figure - central) / Math.abs(central);
        }
    }

    /** The uncertain inputs of a question, found by a trial of two draws. */
    public static SortedSet<Substream> inputs(Library library, SensitivityQuestion question) {
        Sides sides = Sides.of(library, question.drawn(PROBE));
        SortedSet<Substream> all = new TreeSet<>(streams(sides.estimate()));
        sides.reference().ifPresent(other -> all.addAll(streams(other)));
        return all;
    }

    private static SortedSet<Substream> streams(Estimate estimate) {
        CommonRandomNumbers probe = new CommonRandomNumbers(0, PROBE);
        estimate.drawn(probe);
        NavigableSet<Substream> streams = new TreeSet<>(probe.streams());
        hierarchy(estimate).ifPresent(pool -> {
            streams.addAll(pool.errorStreams().keySet());
            pool.nextErrorStream().ifPresent(streams::add);
        });
        return streams;
    }

    private static Optional<StudyHierarchy> hierarchy(Estimate estimate) {
        return estimate instanceof PublishedEstimate published ? published.hierarchy() : Optional.empty();
    }

    /** The two standings of a question. */
    private record Sides(Estimate estimate, Optional<Estimate> reference) {
        static Sides of(Library library, SensitivityQuestion question) {
            CommonRandomNumbers random = question.sampling().random();
            return new Sides(
                    question.side().on(library, question.basis(), question.sampling(), random),
                    question.against().map(side -> side.on(library, question.basis(), question.sampling(), random)));
        }

        java.util.stream.Stream<Estimate> both() {
            return java.util.stream.Stream.concat(java.util.stream.Stream.of(estimate), reference.stream());
        }

        /** All that is drawn for an input: one stream, or those of the differences between the studies of a side. */
        Set<Substream> drawnFor(Substream input) {
            return both().flatMap(side -> hierarchy(side).stream())
                    .filter(pool -> pool.sizeStream().equals(input))
                    .findFirst()
                    .map(StudyHierarchy::betweenStreams)
                    .orElse(Set.of(input));
        }

        Optional<Message> missing() {
            Optional<Estimate> impossible = java.util.stream.Stream.concat(
                            java.util.stream.Stream.of(estimate), reference.stream())
                    .filter(one -> !one.contradictions().isEmpty())
                    .findFirst();
            if (impossible.isPresent()) {
                return impossible.map(one ->
                        Message.of("of-side", "side", one.name(), "what", Listing.semicolons(one.contradictions())));
            }
            Optional<Estimate> without = java.util.stream.Stream.concat(
                            java.util.stream.Stream.of(estimate), reference.stream())
                    .filter(one -> one.footprint().isEmpty())
                    .findFirst();
            return without.map(one -> Message.of(
                            "of-side", "side", one.name(), "what", one.why().orElseGet(() -> Message.of("no-figure"))))
                    .or(() -> reference.flatMap(estimate::unlike));
        }
    }

    /** Answers a question. */
    public static Sensitivity of(Library library, SensitivityQuestion question) {
        Sides sides = Sides.of(library, question);
        Optional<Message> missing = sides.missing();
        boolean contradicted = !sides.estimate.contradictions().isEmpty();
        List<EntrySwing> entries = contradicted ? List.of() : entries(library, question);
        if (missing.isPresent()) {
            return new Sensitivity(
                    question, sides.estimate, sides.reference, 0, Optional.empty(), List.of(), entries, missing);
        }
        Analysed analysed = new Analysed(sides, question.sampling());
        SortedSet<Substream> streams = inputs(library, question);
        List<Substream> ordered = List.copyOf(streams);
        Sobol sobol = Sobol.of(
                analysed.first(), analysed.second(), ordered.size(), number -> analysed.mixed(ordered.get(number)));
        if (analysed.leavesThePositive()) {
            return new Sensitivity(
                    question,
                    sides.estimate,
                    sides.reference,
                    0,
                    Optional.empty(),
                    List.of(),
                    entries,
                    Optional.of(Message.of("no-ratio.in-draws")));
        }
        Middle middle = new Middle(library, sides);
        List<UncertainInput> inputs = new ArrayList<>();
        for (int i = 0; i < sobol.shares().size(); i++) {
            Sobol.VarianceShare share = sobol.shares().get(i);
            // An input that changes no draw at all is a factor without a spread.
            if (share.total() > 0) {
                Substream stream = ordered.get(i);
                inputs.add(new UncertainInput(
                        stream,
                        InputName.of(library, stream, middle.names(), middle.lines()),
                        share,
                        middle.swing(stream)));
            }
        }
        inputs.sort(Comparator.<UncertainInput>comparingDouble(
                        input -> -input.share().total())
                .thenComparing(UncertainInput::stream));
        return new Sensitivity(
                question,
                sides.estimate,
                sides.reference,
                middle.central(),
                Optional.of(sobol),
                inputs,
                entries,
                Optional.empty());
    }

    /** The inputs whose shares the number of draws leaves too open. */
    public List<UncertainInput> noisy() {
        return inputs.stream()
                .filter(input -> Math.max(
                                input.share().firstStandardError(),
                                input.share().totalStandardError())
                        > NOISY)
                .toList();
    }

    /** The sum of the first-order shares: what is left to 1 comes from inputs that work together. */
    public double sumOfFirst() {
        return inputs.stream().mapToDouble(input -> input.share().first()).sum();
    }

    public double sumOfTotal() {
        return inputs.stream().mapToDouble(input -> input.share().total()).sum();
    }

    private static List<EntrySwing> entries(Library library, SensitivityQuestion question) {
        if (question.notebook().isEmpty() || !(question.side() instanceof Side.Recorded recorded)) {
            return List.of();
        }
        List<EntrySwing> swings = new ArrayList<>();
        Map<String, RecordInput> entries =
                RecordInputs.of(library, question.notebook().get());
        double central =
                central(library, question, recorded, question.notebook().get());
        for (RecordInput entry : entries.values()) {
            int colon = entry.id().indexOf(':');
            RecordInput all = colon < 0 ? null : entries.get(entry.id().substring(0, colon));
            // The only ingredient is all feed.
            if (entry.present() == 0 || (all != null && all.present() == entry.present())) {
                continue;
            }
            double percent = question.percents().getOrDefault(entry.id(), question.usualPercent());
            double low = entry.within(entry.present() * (1 - percent / 100));
            double high = entry.within(entry.present() * (1 + percent / 100));
            double atLow = central(library, question, recorded, entry.at().apply(low));
            double atHigh = central(library, question, recorded, entry.at().apply(high));
            // A change is reported as a part of the figure, which needs a figure that is not zero.
            if (central != 0
                    && Math.max(Math.abs(atLow - central), Math.abs(atHigh - central)) > 1e-12 * Math.abs(central)) {
                swings.add(new EntrySwing(entry, percent, low, high, central, atLow, atHigh));
            }
        }
        swings.sort(Comparator.<EntrySwing>comparingDouble(swing -> -Math.abs(swing.atHigh() - swing.atLow()))
                .thenComparing(swing -> swing.entry().id()));
        return swings;
    }

    private static double central(
            Library library, SensitivityQuestion question, Side.Recorded side, EditableRecords notebook) {
        return SystemEstimate.undrawn(library, notebook.inventory(library), question.basis(), side.credit())
                .system()
                .map(system -> system.central())
                .orElse(0.0);
    }

    /** The figure that is analysed, from two samples and with single streams exchanged. */
    private static final class Analysed {
        private final Sides sides;
        private final CommonRandomNumbers random;
        private final CommonRandomNumbers secondSample;
        private final Footprint own;
        private final Optional<Footprint> other;
        private final Set<Substream> ofOwn;
        private final Set<Substream> ofOther;
        private boolean notPositive;

        Analysed(Sides sides, Sampling sampling) {
            this.sides = sides;
            this.random = sampling.random();
            this.secondSample = new CommonRandomNumbers(
                    CommonRandomNumbers.ScoreSource.secondSeeded(sampling.seed()), sampling.draws());
            this.own = sides.estimate().drawn(random).orElseThrow();
            this.other = sides.reference().flatMap(estimate -> estimate.drawn(random));
            this.ofOwn = streams(sides.estimate());
            this.ofOther = sides.reference().map(Sensitivity::streams).orElseGet(TreeSet::new);
        }

        double[] first() {
            return result(own, other);
        }

        double[] second() {
            return result(
                    sides.estimate().drawn(secondSample).orElseThrow(),
                    sides.reference().flatMap(estimate -> estimate.drawn(secondSample)));
        }

        double[] mixed(Substream stream) {
            CommonRandomNumbers exchanged = random.exchanging(sides.drawnFor(stream), secondSample);
            return result(
                    ofOwn.contains(stream) ? sides.estimate().drawn(exchanged).orElseThrow() : own,
                    ofOther.contains(stream)
                            ? sides.reference().flatMap(estimate -> estimate.drawn(exchanged))
                            : other);
        }

        boolean leavesThePositive() {
            return notPositive;
        }

        private double[] result(Footprint one, Optional<Footprint> reference) {
            if (reference.isEmpty()) {
                return one.draws();
            }
            if (!one.isPositive() || !reference.get().isPositive()) {
                notPositive = true;
                return new double[random.size()];
            }
            double[] logarithms = reference.get().dividedBy(one);
            for (int i = 0; i < logarithms.length; i++) {
                logarithms[i] = StrictMath.log(logarithms[i]);
            }
            return logarithms;
        }
    }

    /** The figure with every input in the middle, and with single ones moved out of it. */
    private static final class Middle {
        private final Sides sides;
        private final Map<Substream, Evidence.PooledEvidence> pools = new HashMap<>();
        private final Map<Substream, StudyHierarchy> hierarchies = new HashMap<>();
        private final Map<Substream, InputName> names = new HashMap<>();
        private final CommonRandomNumbers random;

        Middle(Library library, Sides sides) {
            this.sides = sides;
            sides.both().forEach(estimate -> pool(library, estimate));
            this.random = new CommonRandomNumbers((stream, count) -> new double[] {middle(stream)}, 1);
        }

        private void pool(Library library, Estimate estimate) {
            if (estimate instanceof PublishedEstimate published
                    && published.evidence() instanceof Evidence.PooledEvidence some) {
                if (some.hierarchy().isPresent()) {
                    hierarchy(library, some.hierarchy().get(), published.words());
                    return;
                }
                pools.put(some.choice(), some);
                names.put(
                        some.choice(),
                        new InputName(
                                InputName.InputKind.CHOICE_OF_STUDY,
                                "choice of study for " + published.words(),
                                List.of()));
            }
        }

        private void hierarchy(Library library, StudyHierarchy pool, String words) {
            hierarchies.put(pool.sizeStream(), pool);
            names.put(
                    pool.sizeStream(),
                    new InputName(
                            InputName.InputKind.BETWEEN_STUDIES, "differences between studies of " + words, List.of()));
            String next = pool.of() == IntervalOf.FARM
                    ? "what is the next farm's own of " + words
                    : "the error of the next study of " + words;
            pool.nextErrorStream()
                    .ifPresent(stream ->
                            names.put(stream, new InputName(InputName.InputKind.NEXT_STUDY, next, List.of())));
            pool.errorStreams()
                    .forEach((stream, study) -> names.put(
                            stream,
                            InputName.ofResults(
                                    library,
                                    study.findings().stream()
                                            .map(finding -> finding.result())
                                            .toList())));
        }

        Map<Substream, InputName> names() {
            return names;
        }

        /** Where factors stand in the inventories, by the factor's id. */
        Map<String, String> lines() {
            Map<String, String> lines = new HashMap<>();
            java.util.stream.Stream.concat(java.util.stream.Stream.of(sides.estimate()), sides.reference().stream())
                    .filter(SystemEstimate.class::isInstance)
                    .flatMap(estimate -> ((SystemEstimate) estimate).inventory().flows().stream())
                    .forEach(flow -> flow.term().uses().stream()
                            .flatMap(use -> use.factor().behind())
                            .forEach(factor -> lines.putIfAbsent(factor.id(), flow.what())));
            return lines;
        }

        double central() {
            return at(random);
        }

        Optional<InputSwing> swing(Substream stream) {
            Evidence.PooledEvidence pool = pools.get(stream);
            StudyHierarchy hierarchy = hierarchies.get(stream);
            double low;
            double high;
            if (hierarchy != null) {
                low = at(ownDifferences(hierarchy, -SCORE_P95));
                high = at(ownDifferences(hierarchy, SCORE_P95));
            } else if (pool != null) {
                List<Evidence.PooledEvidence.WeightedFinding> places = pool.places();
                low = at(stream, places.get(0).place());
                high = at(stream, places.get(places.size() - 1).place());
            } else {
                low = at(stream, stream.choice() ? 0.05 : -SCORE_P95);
                high = at(stream, stream.choice() ? 0.95 : SCORE_P95);
            }
            return low == high || !Double.isFinite(low) || !Double.isFinite(high)
                    ? Optional.empty()
                    : Optional.of(new InputSwing(low, high));
        }

        private double middle(Substream stream) {
            Evidence.PooledEvidence pool = pools.get(stream);
            if (pool != null) {
                return pool.middle().place();
            }
            return stream.choice() ? 0.5 : 0;
        }

        /** The next study's own difference at a score, or of a mean those of all studies that together are likeliest to move it so far. */
        private static Map<Substream, Double> ownDifferences(StudyHierarchy hierarchy, double score) {
            if (hierarchy.nextOwnStream().isPresent()) {
                return Map.of(hierarchy.nextOwnStream().get(), score);
            }
            List<Substream> own = hierarchy.ownStreams();
            double[] shares = hierarchy.between().shares();
            double squares =
                    java.util.Arrays.stream(shares).map(share -> share * share).sum();
            Map<Substream, Double> scores = new HashMap<>();
            for (int i = 0; i < shares.length; i++) {
                scores.put(own.get(i), score * shares[i] / Math.sqrt(squares));
            }
            return scores;
        }

        private double at(Substream stream, double value) {
            return at(Map.of(stream, value));
        }

        private double at(Map<Substream, Double> moved) {
            return at(random.exchanging(
                    moved.keySet(),
                    new CommonRandomNumbers((other, count) -> new double[] {moved.getOrDefault(other, 0.0)}, 1)));
        }

        private double at(CommonRandomNumbers one) {
            Footprint own = sides.estimate().drawn(one).orElseThrow();
            return sides.reference()
                    .flatMap(estimate -> estimate.drawn(one))
                    .map(reference -> reference.dividedBy(own)[0])
                    .orElseGet(() -> own.draws()[0]);
        }
    }
}
