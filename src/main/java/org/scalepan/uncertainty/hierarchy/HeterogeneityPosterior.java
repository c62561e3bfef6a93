package org.scalepan.uncertainty.hierarchy;

import org.scalepan.uncertainty.Require;
import org.scalepan.uncertainty.StandardNormal;

/**
 * What is known of the standard deviation between studies, τ, after seeing their effects, and what follows for the mean and for a further
 * study. Flat prior on the mean μ, half-normal prior on τ:
 *
 * <p>p(τ | y) ∝ exp(−τ²/2σ²) · (Σw)^−½ · Πw_i^½ · exp(−½·Σw_i(y_i − μ_τ)²), with w_i = 1/(s_i² + τ²) and μ_τ = Σw_i·y_i/Σw.
 *
 * <p>Computed by sums over a grid of {@value #INTERVALS} steps (see {@link TauGrid}), with no draws and no chain; the same studies give
 * the same bits on every machine. With one study the posterior is the prior. Four times as many steps move quantiles by less than one in a
 * thousand; a test holds the grid to that for few and many studies, precise and rough.
 *
 * <p>Sources: Higgins, Thompson and Spiegelhalter (2009), J. R. Stat. Soc. A 172, 137–159; Röver (2020), J. Stat. Softw. 93(6).
 */
public final class HeterogeneityPosterior {
    static final int INTERVALS = 80;

    /** At this many scales above its mode the density is below e⁻³² of it. */
    private static final double SCALES_ABOVE = 8;

    private final StudyEffects effects;
    private final double scale;
    private final TauGrid grid;

    private HeterogeneityPosterior(StudyEffects effects, double scale, int intervals) {
        this.effects = effects;
        this.scale = scale;
        // Beyond (σ²S)^¼ the density only falls: there the prior falls by τ/σ², and what the likelihood gains is at
        // most S/τ³.
        double most = Math.sqrt(scale * Math.sqrt(effects.sumOfSquares())) + SCALES_ABOVE * scale;
        this.grid = new TauGrid(this::logDensity, Math.min(scale, effects.leastStandardError()), most, intervals);
    }

    /**
     * The posterior.
     *
     * @param effects the studies
     * @param scale σ of the half-normal prior, in the unit of the effects, 10⁻¹² to 10¹²: the prior's median is 0.674σ, its mean 0.798σ
     * @throws IllegalArgumentException when the scale is out of range
     */
    public static HeterogeneityPosterior of(StudyEffects effects, double scale) {
        return of(effects, scale, INTERVALS);
    }

    static HeterogeneityPosterior of(StudyEffects effects, double scale, int intervals) {
        return new HeterogeneityPosterior(effects, StudyEffects.requireScale("scale", scale), intervals);
    }

    /** Natural logarithm of the posterior density, but for a constant. */
    double logDensity(double tau) {
        double inScales = tau / scale;
        double prior = -0.5 * inScales * inScales;
        // One study says nothing of what lies between studies: its terms cancel, and are left out lest they leave their
        // rounding behind.
        return effects.size() == 1 ? prior : prior + effects.logLikelihood(tau);
    }

    /** σ of the half-normal prior, in the unit of the effects. */
    public double scale() {
        return scale;
    }

    /** The studies it is of. */
    public StudyEffects effects() {
        return effects;
    }

    /**
     * The τ not exceeded with the given probability; rises with it. At a uniform draw it is a draw of τ.
     *
     * @param probability within 0 and 1
     * @throws IllegalArgumentException when the probability is outside 0 and 1, or NaN
     */
    public double quantile(double probability) {
        return grid.quantile(Require.probability(probability));
    }

    /** The τ at a standard normal score: the quantile at the probability that a standard normal lies below the score. */
    public double atScore(double score) {
        return quantile(StandardNormal.probabilityBelow(score));
    }

    /**
     * Draws of τ, one at each uniform draw.
     *
     * @param uniforms each within 0 and 1
     * @throws IllegalArgumentException when one is outside 0 and 1, or NaN
     */
    public double[] at(double[] uniforms) {
        double[] taus = new double[uniforms.length];
        for (int i = 0; i < taus.length; i++) {
            taus[i] = quantile(uniforms[i]);
        }
        return taus;
    }

    /** The expected τ. */
    public double mean() {
        double mean = 0;
        for (int j = 0; j < grid.points(); j++) {
            mean += grid.weight(j) * grid.tau(j);
        }
        return mean;
    }

    /** The share of each study in the mean, w_i/Σw, averaged over what is known of τ; in the order of the studies, adding up to 1. */
    public double[] shares() {
        double[] average = new double[effects.size()];
        double[] shares = new double[average.length];
        for (int j = 0; j < grid.points(); j++) {
            effects.shares(grid.tau(j), shares);
            for (int i = 0; i < shares.length; i++) {
                average[i] += grid.weight(j) * shares[i];
            }
        }
        return average;
    }

    /** What is known of μ, the mean over all such studies: over τ, the mixture of N(μ_τ, 1/Σw). */
    public NormalMixture pooledMean() {
        return mixture(0, 0);
    }

    /**
     * What is known of the true value of a further study, plus an error of its own: over τ, the mixture of N(μ_τ, 1/Σw + τ² + v).
     *
     * @param errorVariance v: 0 for the true value itself; {@link StudyEffects#meanVariance()} for what the next study would state; that and
     *     the variance within studies for the next single case
     * @throws IllegalArgumentException when the variance is negative or not finite
     */
    public NormalMixture furtherStudy(double errorVariance) {
        return mixture(1, Require.notNegative("error variance", errorVariance));
    }

    /** What is known of what the next study would state, were it as precise as these are: {@code furtherStudy} with the mean of the s_i². */
    public NormalMixture nextStatement() {
        return furtherStudy(effects.meanVariance());
    }

    private NormalMixture mixture(double ofBetween, double more) {
        int points = grid.points();
        double[] weights = new double[points];
        double[] means = new double[points];
        double[] sds = new double[points];
        for (int j = 0; j < points; j++) {
            double tau = grid.tau(j);
            StudyEffects.MeanGivenTau given = effects.given(tau);
            weights[j] = grid.weight(j);
            means[j] = given.mean();
            double error = given.standardError();
            sds[j] = Math.sqrt(error * error + ofBetween * tau * tau + more);
        }
        return NormalMixture.of(weights, means, sds);
    }
}
