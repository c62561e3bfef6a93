package org.scalepan.literature;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.CommonRandomNumbers.Substream;
import org.scalepan.uncertainty.Logarithms;
import org.scalepan.uncertainty.hierarchy.HeterogeneityPosterior;
import org.scalepan.uncertainty.hierarchy.PooledDraws;
import org.scalepan.uncertainty.hierarchy.PooledDraws.FurtherStudy;
import org.scalepan.uncertainty.hierarchy.StudyEffects;

/**
 * The studies of a pool as a random-effects hierarchy of natural logarithms: each found its own true value with an error, and true values differ
 * between studies. Findings of one study are made one first: their logarithms are averaged, first within each product (beef of beef herds, beef of
 * dairy herds), then over the products, and so are the squares of their errors.
 *
 * <p>Conversions that bring a finding to what is asked are no errors of the study. They are drawn beside it, from the streams of their factors, so
 * that a factor on both sides of a ratio cancels.
 *
 * <p>Sources: Higgins, Thompson and Spiegelhalter (2009), J. R. Stat. Soc. A 172, 137–159; prior of the spread between studies, see the row of
 * {@code pooling.csv}.
 */
public final class StudyHierarchy {
    private final List<Study> studies;
    private final List<String> ids;
    private final List<List<Double>> findingShares;
    private final HeterogeneityPosterior posterior;
    private final double[] shares;
    private final OptionalDouble dispersion;
    private final String key;
    private final IntervalOf of;

    private StudyHierarchy(
            PoolQuestion question,
            List<Study> studies,
            List<List<Double>> findingShares,
            StudyEffects effects,
            double scale) {
        this.studies = studies;
        this.findingShares = findingShares;
        this.ids = studies.stream().map(StudyHierarchy::id).toList();
        this.posterior = HeterogeneityPosterior.of(effects, scale);
        this.shares = posterior.shares();
        this.dispersion = dispersion(studies);
        this.key = question.product().id() + "/" + question.form() + "/"
                + question.indicator().id() + "/" + question.boundary().id();
        this.of = question.of();
    }

    /**
     * The hierarchy of some studies; none where a finding is not above zero throughout, because then it has no logarithm.
     *
     * @param studies at least one, in the order of the library
     * @param scale of the half-normal prior of the standard deviation between studies, of natural logarithms
     */
    static Optional<StudyHierarchy> of(PoolQuestion question, List<Study> studies, double scale) {
        boolean linear =
                studies.stream().flatMap(study -> study.findings().stream()).anyMatch(item -> !item.isPositive());
        if (linear) {
            return Optional.empty();
        }
        double[] effects = new double[studies.size()];
        double[] errors = new double[effects.length];
        List<List<Double>> findingShares = new ArrayList<>();
        for (int i = 0; i < effects.length; i++) {
            List<Harmonised> findings = studies.get(i).findings();
            List<Double> within = sharesWithin(findings);
            findingShares.add(within);
            double squares = 0;
            for (int f = 0; f < findings.size(); f++) {
                effects[i] += within.get(f) * StrictMath.log(findings.get(f).central());
                squares += within.get(f)
                        * findings.get(f).lnError()
                        * findings.get(f).lnError();
            }
            errors[i] = Math.sqrt(squares);
        }
        return Optional.of(
                new StudyHierarchy(question, studies, findingShares, StudyEffects.of(effects, errors), scale));
    }

    /** Products of a study count the same, and the findings of one product share its part. */
    private static List<Double> sharesWithin(List<Harmonised> findings) {
        Map<String, Long> ofProduct = findings.stream()
                .collect(Collectors.groupingBy(finding -> finding.result().product(), Collectors.counting()));
        return findings.stream()
                .map(finding -> 1.0
                        / ofProduct.size()
                        / ofProduct.getOrDefault(finding.result().product(), 1L))
                .toList();
    }

    /** The same findings on two sides are the same id. */
    private static String id(Study study) {
        return study.findings().stream()
                .map(finding -> finding.result().finding())
                .collect(Collectors.joining("+"));
    }

    /** The mean of the variances between farms, over the studies that publish one. */
    private static OptionalDouble dispersion(List<Study> studies) {
        return studies.stream()
                .flatMap(study -> study.findings().stream()
                        .flatMapToDouble(finding -> finding.farmLnSd().stream())
                        .map(sd -> sd * sd)
                        .average()
                        .stream()
                        .boxed())
                .mapToDouble(Double::doubleValue)
                .average();
    }

    /** What the interval speaks of. */
    public IntervalOf of() {
        return of;
    }

    /** True where the studies say how farms differ, so that something is known of the next one. */
    boolean knowsFarms() {
        return dispersion.isPresent();
    }

    /** What is known of the spread between studies, the standard deviation of natural logarithms. */
    public HeterogeneityPosterior between() {
        return posterior;
    }

    /** What the studies found, natural logarithms, with their errors. */
    public StudyEffects effects() {
        return posterior.effects();
    }

    /** The share of a study in the mean; those of all add up to 1. */
    public double share(Study study) {
        return shares[studies.indexOf(study)];
    }

    /** The part of a finding in its study; those of a study add up to 1. */
    public double shareWithin(Study study, Harmonised finding) {
        return findingShares.get(studies.indexOf(study)).get(study.findings().indexOf(finding));
    }

    /** The standard error of a study, of the natural logarithm. */
    public double error(Study study) {
        return effects().standardError(studies.indexOf(study));
    }

    /** What a study found, brought to the question, at the medians of the conversions. */
    public double found(Study study) {
        return StrictMath.exp(effects().effect(studies.indexOf(study)));
    }

    /** True when studies of this pool make one of several products, such as beef of beef herds and of dairy herds. */
    public boolean averagesProducts() {
        return averagedProducts().findAny().isPresent();
    }

    /** The ids of the products of which a study makes one. */
    public Stream<String> averagedProducts() {
        return studies.stream()
                .map(study -> study.findings().stream()
                        .map(finding -> finding.result().product())
                        .distinct()
                        .toList())
                .filter(products -> products.size() > 1)
                .flatMap(List::stream)
                .distinct();
    }

    /** The draws that stand for the differences between studies: their size, each study's own, and that of the next one. */
    public Set<Substream> betweenStreams() {
        Set<Substream> streams = new LinkedHashSet<>();
        streams.add(new Substream(sizeOfDifferences(), true));
        ids.forEach(id -> streams.add(new Substream(own(id), false)));
        if (of != IntervalOf.MEAN) {
            streams.add(new Substream(own(next()), false));
        }
        return streams;
    }

    /** The draws that stand for the errors of the studies, and which study each is of. */
    public Map<Substream, Study> errorStreams() {
        Map<Substream, Study> streams = new LinkedHashMap<>();
        for (int i = 0; i < ids.size(); i++) {
            streams.put(new Substream(ids.get(i), false), studies.get(i));
        }
        return streams;
    }

    /** The draws that stand for the error of the next study, and for what is its own farm; none of the mean. */
    public Optional<Substream> nextErrorStream() {
        return of == IntervalOf.MEAN ? Optional.empty() : Optional.of(new Substream(next(), false));
    }

    /** The draws of the next study's own difference; none of the mean. */
    public Optional<Substream> nextOwnStream() {
        return of == IntervalOf.MEAN ? Optional.empty() : Optional.of(new Substream(own(next()), false));
    }

    /** The draws of each study's own difference, in the order of the studies. */
    public List<Substream> ownStreams() {
        return ids.stream().map(id -> new Substream(own(id), false)).toList();
    }

    /** The size of the differences between studies. */
    public Substream sizeStream() {
        return new Substream(sizeOfDifferences(), true);
    }

    private String sizeOfDifferences() {
        return "between-studies/" + key;
    }

    private String next() {
        return "next-" + of.id() + "/" + key;
    }

    private static String own(String id) {
        return "own/" + id;
    }

    /** What is asked, given draws of the spread between studies and of the conversions. */
    public PooledDraws given(CommonRandomNumbers random) {
        double[] taus = posterior.at(random.uniforms(sizeOfDifferences()));
        Map<Map<HarmonisationStep, Double>, double[]> known = new HashMap<>();
        double[][] conversions = new double[studies.size()][];
        for (int i = 0; i < conversions.length; i++) {
            conversions[i] = known.computeIfAbsent(steps(i), steps -> deviation(steps, random));
        }
        PooledDraws mean = PooledDraws.of(effects(), ids, taus, conversions);
        return of == IntervalOf.MEAN ? mean : mean.askedFor(further());
    }

    private FurtherStudy further() {
        double error = effects().meanVariance();
        return new FurtherStudy(next(), of == IntervalOf.FARM ? error + dispersion.orElse(0) : error);
    }

    /** The conversions of a study that are drawn, each with its weight in the study. */
    private Map<HarmonisationStep, Double> steps(int study) {
        Map<HarmonisationStep, Double> steps = new LinkedHashMap<>();
        List<Harmonised> findings = studies.get(study).findings();
        for (int f = 0; f < findings.size(); f++) {
            double share = findingShares.get(study).get(f);
            findings.get(f).steps().stream()
                    .filter(HarmonisationStep::isDrawn)
                    .forEach(step -> steps.merge(step, share, Double::sum));
        }
        return steps;
    }

    /** The natural logarithm of what the conversions multiply by, less that at their medians. */
    private static double[] deviation(Map<HarmonisationStep, Double> steps, CommonRandomNumbers random) {
        if (steps.isEmpty()) {
            return new double[0];
        }
        double[] sum = new double[random.size()];
        steps.forEach((step, weight) -> {
            double[] logarithms = random.derived(step, one -> deviation(one, random));
            for (int i = 0; i < sum.length; i++) {
                sum[i] += weight * logarithms[i];
            }
        });
        return sum;
    }

    private static double[] deviation(HarmonisationStep step, CommonRandomNumbers random) {
        double[] values = new double[random.size()];
        Arrays.fill(values, 1 / step.multiplier());
        step.apply(values, random);
        Logarithms.replace(values);
        return values;
    }

    /** Draws of the natural logarithm of what is asked. */
    public double[] logarithms(PooledDraws given, CommonRandomNumbers random) {
        double[][] errors = new double[ids.size()][];
        double[][] own = new double[ids.size()][];
        for (int i = 0; i < errors.length; i++) {
            errors[i] = random.scores(ids.get(i));
            own[i] = random.scores(own(ids.get(i)));
        }
        double[] means = given.means(errors, own);
        return of == IntervalOf.MEAN
                ? means
                : given.statements(means, further(), random.scores(next()), random.scores(own(next())));
    }
}
