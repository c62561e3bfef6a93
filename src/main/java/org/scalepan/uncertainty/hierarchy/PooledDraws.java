package org.scalepan.uncertainty.hierarchy;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.scalepan.uncertainty.Require;

/**
 * A pool of findings at each of many draws of what is given: τ, and the conversions that brought the findings to what is asked. Given
 * those, the mean is μ = Σw_i(y_i + δ_i + s_i·z_i + τ·u_i)/Σw, where w_i = 1/(s_i² + τ²), δ_i is the natural logarithm of a draw of the
 * conversion less that of its median, and z_i and u_i are standard normal scores keyed by the finding. Without conversions its law is
 * N(μ_τ, 1/Σw) exactly. What two pools share has the same scores in both and cancels from their difference.
 *
 * <p>A difference of two natural logarithms is that of a ratio. The scores need not be drawn for it: given τ and the conversions it is
 * normal, so its distribution is a mixture with one component for each draw.
 *
 * <p>Sources: posterior of the mean given τ, Röver (2020), J. Stat. Softw. 93(6); averaging conditional distributions instead of drawing
 * them, Gelfand and Smith (1990), J. Am. Stat. Assoc. 85, 398–409; common random numbers, Law (2015), Simulation Modeling and Analysis, ch. 11.
 */
public final class PooledDraws {
    private static final int BLOCK = 256;

    private final StudyEffects effects;
    private final List<String> findings;
    private final double[] taus;
    private final double[][] conversions;
    private final Optional<FurtherStudy> further;

    /**
     * What is asked of one study beyond those pooled: its own true value, and an error.
     *
     * @param id names its scores: equal on two sides only when the same further study is meant
     * @param errorVariance variance of its error, zero or more; see {@link HeterogeneityPosterior#furtherStudy}
     */
    public record FurtherStudy(String id, double errorVariance) {
        public FurtherStudy {
            Require.notNegative("error variance", errorVariance);
        }
    }

    private PooledDraws(
            StudyEffects effects,
            List<String> findings,
            double[] taus,
            double[][] conversions,
            Optional<FurtherStudy> further) {
        this.effects = effects;
        this.findings = findings;
        this.taus = taus;
        this.conversions = conversions;
        this.further = further;
    }

    /**
     * The pool's mean at draws of τ and of the conversions. The arrays are kept and not copied: callers must not write to them.
     *
     * @param effects what was found, at the medians of the conversions
     * @param findings the id of each, no two equal; the same finding on two sides has the same id. Sums go in this order: to cancel to the
     *     last bit, two sides must have their findings in the same one
     * @param taus draws of τ, each zero or more
     * @param conversions for each finding its δ, one at each draw; an empty array for a finding without conversion
     * @throws IllegalArgumentException when numbers are unequal or an id comes twice
     */
    public static PooledDraws of(StudyEffects effects, List<String> findings, double[] taus, double[][] conversions) {
        requireOneForEach("ids", findings.size(), effects);
        requireOneForEach("conversions", conversions.length, effects);
        if (new HashSet<>(findings).size() < findings.size()) {
            throw new IllegalArgumentException("a finding comes twice in " + findings);
        }
        for (double[] conversion : conversions) {
            if (conversion.length > 0) {
                Require.sameLength("draws of a conversion", conversion, "draws of τ", taus);
            }
        }
        return new PooledDraws(effects, List.copyOf(findings), taus, conversions.clone(), Optional.empty());
    }

    private static void requireOneForEach(String name, int number, StudyEffects effects) {
        if (number != effects.size()) {
            throw new IllegalArgumentException(
                    name + " and effects must be equally many, not " + number + " and " + effects.size());
        }
    }

    /** The same pool, asked for a further study instead of for the mean. */
    public PooledDraws askedFor(FurtherStudy study) {
        return new PooledDraws(effects, findings, taus, conversions, Optional.of(study));
    }

    /** The same pool, asked for the mean. */
    public PooledDraws askedForMean() {
        return new PooledDraws(effects, findings, taus, conversions, Optional.empty());
    }

    /** True when a finding, or the further study asked for, is also in another pool, so that what they share cancels. */
    public boolean sharesWith(PooledDraws other) {
        return isOfSameFurther(other) || findings.stream().anyMatch(other.findings::contains);
    }

    private boolean isOfSameFurther(PooledDraws other) {
        return further.isPresent()
                && other.further.isPresent()
                && further.get().id().equals(other.further.get().id());
    }

    /** How many draws. */
    public int size() {
        return taus.length;
    }

    /**
     * The mean μ at each draw.
     *
     * @param errors for each finding its scores z, one at each draw
     * @param own for each finding its scores u, one at each draw, independent of z
     * @throws IllegalArgumentException when numbers are unequal
     */
    public double[] means(double[][] errors, double[][] own) {
        requireOneForEach("scores of errors", errors.length, effects);
        requireOneForEach("scores of own values", own.length, effects);
        for (int i = 0; i < errors.length; i++) {
            Require.sameLength("scores of an error", errors[i], "draws of τ", taus);
            Require.sameLength("scores of an own value", own[i], "draws of τ", taus);
        }
        double[] drawn = new double[taus.length];
        double[] shares = new double[effects.size()];
        for (int d = 0; d < drawn.length; d++) {
            effects.shares(taus[d], shares);
            double sum = 0;
            for (int i = 0; i < shares.length; i++) {
                double scatter = effects.standardError(i) * errors[i][d] + taus[d] * own[i][d];
                sum += shares[i] * (stated(i, d) + scatter);
            }
            drawn[d] = sum;
        }
        return drawn;
    }

    /**
     * What a further study would state at each draw: mean + τ·u + √v·z.
     *
     * @param means as {@link #means} gave them
     * @param study the study asked for
     * @param error scores z of its error
     * @param own scores u of its own true value, independent of z
     * @throws IllegalArgumentException when numbers are unequal
     */
    public double[] statements(double[] means, FurtherStudy study, double[] error, double[] own) {
        Require.sameLength("means", means, "draws of τ", taus);
        Require.sameLength("scores of the error", error, "draws of τ", taus);
        Require.sameLength("scores of the own value", own, "draws of τ", taus);
        double sd = Math.sqrt(study.errorVariance());
        double[] drawn = new double[taus.length];
        for (int d = 0; d < drawn.length; d++) {
            drawn[d] = means[d] + taus[d] * own[d] + sd * error[d];
        }
        return drawn;
    }

    /**
     * What is asked (mean or further study), given τ and the conversions of each draw: a normal distribution for each draw.
     *
     * @param means of the normals
     * @param sds their standard deviations
     */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    public record GivenDraws(double[] means, double[] sds) {
        public NormalMixture distribution() {
            return NormalMixture.ofEqual(means, sds);
        }
    }

    /** What is asked, given each draw: its mean and standard deviation. Study by study, so that the machine takes several draws at a time. */
    public GivenDraws given() {
        int draws = taus.length;
        double more = further.map(FurtherStudy::errorVariance).orElse(0.0);
        double ofBetween = further.isPresent() ? 1 : 0;
        double[] means = new double[draws];
        double[] sds = new double[draws];
        double[][] weights = new double[effects.size()][BLOCK];
        double[] between = new double[BLOCK];
        double[] total = new double[BLOCK];
        double[] ofMean = new double[BLOCK];
        for (int from = 0; from < draws; from += BLOCK) {
            int size = Math.min(BLOCK, draws - from);
            for (int d = 0; d < size; d++) {
                between[d] = taus[from + d] * taus[from + d];
                total[d] = 0;
            }
            for (int i = 0; i < weights.length; i++) {
                weigh(effects.variance(i), between, weights[i], total, size);
            }
            for (int d = 0; d < size; d++) {
                ofMean[d] = 1 / total[d];
                sds[from + d] = Math.sqrt(ofMean[d] + (ofBetween * between[d] + more));
            }
            for (int i = 0; i < weights.length; i++) {
                add(i, weights[i], ofMean, means, from, size);
            }
        }
        return new GivenDraws(means, sds);
    }

    private static void weigh(double variance, double[] between, double[] weights, double[] total, int size) {
        for (int d = 0; d < size; d++) {
            weights[d] = 1 / (variance + between[d]);
            total[d] += weights[d];
        }
    }

    /**
     * Adds what a study states, by its share.
     *
     * @param ofMean the variance of the weighted mean, 1/Σw, at each draw
     */
    private void add(int study, double[] weights, double[] ofMean, double[] means, int from, int size) {
        double effect = effects.effect(study);
        double[] conversion = conversions[study];
        if (conversion.length == 0) {
            for (int d = 0; d < size; d++) {
                means[from + d] += weights[d] * ofMean[d] * effect;
            }
        } else {
            for (int d = 0; d < size; d++) {
                means[from + d] += weights[d] * ofMean[d] * (effect + conversion[from + d]);
            }
        }
    }

    /** The distribution of what is asked: a mixture with one component for each draw. */
    public NormalMixture distribution() {
        return given().distribution();
    }

    /**
     * The distribution of what is asked of this pool less what is asked of another: of a ln ratio. A pool less itself is nought exactly.
     *
     * @param other with as many draws, of the same numbering
     * @throws IllegalArgumentException when the numbers of draws differ
     */
    public NormalMixture less(PooledDraws other) {
        Require.sameLength("draws of one side", taus, "draws of the other", other.taus);
        double[] means = new double[taus.length];
        double[] sds = new double[taus.length];
        double[] shares = new double[effects.size()];
        double[] others = new double[other.effects.size()];
        int[] partners = findings.stream().mapToInt(other.findings::indexOf).toArray();
        int[] alone = unshared(partners, others.length);
        boolean sameFurther = isOfSameFurther(other);
        for (int d = 0; d < means.length; d++) {
            effects.shares(taus[d], shares);
            other.effects.shares(other.taus[d], others);
            means[d] = stated(shares, d) - other.stated(others, d);
            double variance = 0;
            for (int i = 0; i < shares.length; i++) {
                int p = partners[i];
                double share = p < 0 ? 0 : others[p];
                double error = p < 0 ? 0 : share * other.effects.standardError(p);
                variance += square(shares[i] * effects.standardError(i) - error)
                        + square(shares[i] * taus[d] - share * other.taus[d]);
            }
            for (int p : alone) {
                variance += square(others[p] * other.effects.standardError(p)) + square(others[p] * other.taus[d]);
            }
            variance += sameFurther
                    ? square(taus[d] - other.taus[d]) + square(furtherError() - other.furtherError())
                    : furtherVariance(d) + other.furtherVariance(d);
            sds[d] = Math.sqrt(variance);
        }
        return NormalMixture.ofEqual(means, sds);
    }

    /** The places of the other side's findings that this side has not. */
    private static int[] unshared(int[] partners, int others) {
        boolean[] shared = new boolean[others];
        for (int partner : partners) {
            if (partner >= 0) {
                shared[partner] = true;
            }
        }
        return IntStream.range(0, others).filter(p -> !shared[p]).toArray();
    }

    private double stated(double[] shares, int draw) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * stated(i, draw);
        }
        return sum;
    }

    private double stated(int finding, int draw) {
        double[] conversion = conversions[finding];
        return conversion.length == 0 ? effects.effect(finding) : effects.effect(finding) + conversion[draw];
    }

    private double furtherVariance(int draw) {
        return further.isPresent() ? square(taus[draw]) + further.get().errorVariance() : 0;
    }

    private double furtherError() {
        return further.isPresent() ? Math.sqrt(further.get().errorVariance()) : 0;
    }

    private static double square(double x) {
        return x * x;
    }
}
