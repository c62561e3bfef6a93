package org.scalepan.uncertainty.hierarchy;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.scalepan.uncertainty.Probability;
import org.scalepan.uncertainty.Require;
import org.scalepan.uncertainty.StandardNormal;

/**
 * A mixture of normal distributions: with probability p_j the normal N(m_j, d_j²). Its distribution function is F(x) = Σp_j·Φ((x − m_j)/d_j).
 * A component without spread is a step, and half of it lies below its own place, as ties count half.
 *
 * <p>The same components give the same bits on every machine.
 */
public final class NormalMixture {
    private static final int MOST_STEPS = 200;
    /** Relative to the stretch in which a quantile is looked for: a little above the rounding of the sums. */
    private static final double CLOSE = 1e-14;
    /** Relative to the least spread of a component: a step of Newton's method as short ends where its square is as good as nothing. */
    private static final double NEARLY_CLOSE = 1e-8;
    /** From so many components on, quantiles are read from groups of them. */
    private static final int MANY = 512;

    private static volatile double[] lastEqualWeights = {};

    private final double[] weights;
    private final double[] means;
    private final double[] sds;
    private volatile @Nullable NormalMixture groups;

    private NormalMixture(double[] weights, double[] means, double[] sds) {
        this.weights = weights;
        this.means = means;
        this.sds = sds;
    }

    /**
     * A mixture.
     *
     * @param weights one per component, at least one, zero or more and not all zero; they are taken relative to their sum
     * @param means as many, finite
     * @param sds standard deviations, as many, zero or more
     * @throws IllegalArgumentException when there are none, unequal numbers, or a value out of range
     */
    public static NormalMixture of(double[] weights, double[] means, double[] sds) {
        Require.sameLength("weights", weights, "means", means);
        Require.sameLength("weights", weights, "standard deviations", sds);
        Require.allFinite("mean", means);
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += Require.notNegative("weight", weights[j]);
            Require.notNegative("standard deviation", sds[j]);
        }
        Require.positive("sum of weights", sum);
        double[] shares = new double[weights.length];
        for (int j = 0; j < shares.length; j++) {
            shares[j] = weights[j] / sum;
        }
        return new NormalMixture(shares, means.clone(), sds.clone());
    }

    /**
     * A mixture of equally probable components, such as one for each draw of what is given. The arrays are kept and not copied: callers must not
     * write to them.
     *
     * @param means at least one, finite
     * @param sds standard deviations, as many, zero or more
     * @throws IllegalArgumentException when there are none, unequal numbers, or a value out of range
     */
    public static NormalMixture ofEqual(double[] means, double[] sds) {
        Require.sameLength("means", means, "standard deviations", sds);
        Require.positive("number of components", means.length);
        Require.allFinite("mean", means);
        for (double sd : sds) {
            if (!(sd >= 0 && sd < Double.POSITIVE_INFINITY)) {
                Require.notNegative("standard deviation", sd);
            }
        }
        return new NormalMixture(equalWeights(means.length), means, sds);
    }

    /** Most mixtures have as many components as the last one; nobody writes to them. */
    private static double[] equalWeights(int components) {
        double[] last = lastEqualWeights;
        if (last.length != components) {
            last = new double[components];
            Arrays.fill(last, 1.0 / components);
            lastEqualWeights = last;
        }
        return last;
    }

    /** The share at or below a value, 0 to 1: F(x). */
    public double shareBelow(double value) {
        return share(value, 1);
    }

    /** The share above a value, 0 to 1: 1 − F(x), with its own figures however small it is. */
    public double shareAbove(double value) {
        return share(value, -1);
    }

    /** @param side 1 for what lies below, −1 for what lies above */
    private double share(double value, double side) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += weights[j] * StandardNormal.probabilityBelow(side * score(value, j));
        }
        return Math.min(1, sum);
    }

    private double score(double value, int component) {
        double distance = value - means[component];
        return distance == 0 ? 0 : distance / sds[component];
    }

    /** What a component adds to the density; a step has none. */
    private double densityOf(int component, double bell) {
        return sds[component] > 0 ? weights[component] * StandardNormal.densityOfBell(bell) / sds[component] : 0;
    }

    /**
     * The value not exceeded with the given probability: to about 10⁻¹⁴ of the spread of the mixture, and from {@value #MANY} components on,
     * whose neighbours are taken together, to about 10⁻⁴ of it.
     *
     * @param probability above 0 and below 1
     * @throws IllegalArgumentException when the probability is not between 0 and 1, or NaN
     */
    public double quantile(double probability) {
        Require.innerProbability(probability);
        return weights.length < MANY ? quantileOfAll(probability) : grouped().quantileOfAll(probability);
    }

    /** The same, from all components one by one. */
    double quantileOfAll(double probability) {
        // The quantile of a mixture lies among the quantiles of its components.
        double z = StandardNormal.score(probability);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double leastSd = Double.POSITIVE_INFINITY;
        for (int j = 0; j < weights.length; j++) {
            leastSd = Math.min(leastSd, sds[j]);
            double own = means[j] + z * sds[j];
            low = Math.min(low, own);
            high = Math.max(high, own);
        }
        // From the smaller tail, so that its figures count.
        double side = probability <= 0.5 ? 1 : -1;
        double wanted = probability <= 0.5 ? probability : 1 - probability;
        double close = CLOSE * (high - low);
        double nearlyClose = Math.max(close, NEARLY_CLOSE * leastSd);
        double guess = mean() + z * sd();
        double x = guess > low && guess < high ? guess : low + (high - low) / 2;
        for (int step = 0; step < MOST_STEPS && high - low > close; step++) {
            double share = 0;
            double density = 0;
            for (int j = 0; j < weights.length; j++) {
                double score = score(x, j);
                double bell = StandardNormal.bell(score);
                share += weights[j] * StandardNormal.probabilityBelow(side * score, bell);
                density += densityOf(j, bell);
            }
            double excess = side * (Math.min(1, share) - wanted);
            if (excess == 0) {
                return x;
            }
            if (excess > 0) {
                high = x;
            } else {
                low = x;
            }
            double next = x - stepOfScores(side, share, z, density);
            if (Math.abs(next - x) <= nearlyClose) {
                return Math.min(Math.max(next, low), high);
            }
            // Newton's step while it stays inside, half the stretch otherwise.
            x = next > low && next < high ? next : low + (high - low) / 2;
        }
        return low + (high - low) / 2;
    }

    /**
     * Newton's step for the normal score of the share, Φ⁻¹(F(x)), which is a straight line for one normal and nearly one for a mixture, so that few
     * steps are needed. NaN where there is no density or the share is 0 or 1.
     *
     * @param share below the value where the side is 1, above it where the side is −1
     */
    private static double stepOfScores(double side, double share, double wantedScore, double density) {
        double score = side * StandardNormal.score(Math.min(1, share));
        return (score - wantedScore) * StandardNormal.density(score) / density;
    }

    /** How many components. */
    public int components() {
        return weights.length;
    }

    /**
     * A value with the standard error that it has because the components are a sample.
     *
     * @param value estimated from the components
     * @param standardError in its unit, zero or more
     */
    public record Estimated(double value, double standardError) {
        /** The value less so many standard errors; negative numbers add them. */
        public double less(double standardErrors) {
            return value - standardErrors * standardError;
        }
    }

    /** The share above a value with its standard error, for equally probable components that are independent draws. */
    public Probability above(double value) {
        NormalMixture near = weights.length < MANY ? this : grouped();
        return new Probability(near.shareAbove(value), standardErrorOfShare(value));
    }

    /** The share below a value with its standard error, for equally probable components that are independent draws. */
    public Probability below(double value) {
        NormalMixture near = weights.length < MANY ? this : grouped();
        return new Probability(near.shareFromHalf(value, 1), standardErrorOfShare(value));
    }

    /** The share above a value as {@link #below} gives it of the quantity turned round: a half is exactly that. */
    public Probability aboveFromHalf(double value) {
        NormalMixture near = weights.length < MANY ? this : grouped();
        return new Probability(near.shareFromHalf(value, -1), standardErrorOfShare(value));
    }

    /**
     * By distances from a half, so that a half is exactly that.
     *
     * @param side 1 for what lies below, −1 for what lies above
     */
    private double shareFromHalf(double value, double side) {
        double distance = 0;
        for (int j = 0; j < weights.length; j++) {
            distance += weights[j] * (StandardNormal.probabilityBelow(side * score(value, j)) - 0.5);
        }
        return Math.min(1, Math.max(0, 0.5 + distance));
    }

    private double standardErrorOfShare(double value) {
        NormalMixture near = weights.length < MANY ? this : grouped();
        return Math.sqrt(near.varianceOfShare(value) / weights.length);
    }

    private double varianceOfShare(double value) {
        double share = 0;
        double squares = 0;
        for (int j = 0; j < weights.length; j++) {
            double below = StandardNormal.probabilityBelow(score(value, j));
            share += weights[j] * below;
            squares += weights[j] * below * below;
        }
        return Math.max(0, squares - share * share);
    }

    /** Neighbouring components taken together; made when it is first asked for, and the same whoever makes it. */
    private NormalMixture grouped() {
        NormalMixture made = groups;
        if (made == null) {
            made = ComponentGroups.of(weights, means, sds)
                    .map(found -> new NormalMixture(found.weights(), found.means(), found.sds()))
                    .orElse(this);
            groups = made;
        }
        return made;
    }

    /**
     * The standard error of the quantile that a value is, for equally probable components that are independent draws; 0 where there is no
     * density.
     */
    public double standardErrorAt(double value) {
        NormalMixture near = weights.length < MANY ? this : grouped();
        double density = 0;
        double share = 0;
        double squares = 0;
        for (int j = 0; j < near.weights.length; j++) {
            double score = near.score(value, j);
            double bell = StandardNormal.bell(score);
            double below = StandardNormal.probabilityBelow(score, bell);
            share += near.weights[j] * below;
            squares += near.weights[j] * below * below;
            density += near.densityOf(j, bell);
        }
        double error = density > 0 ? Math.sqrt(Math.max(0, squares - share * share) / weights.length) / density : 0;
        return Double.isFinite(error) ? error : 0;
    }

    /**
     * The expected value of the exponential of a multiple, Σp_j·exp(k·m_j + k²d_j²/2), with its standard error for equally probable components
     * that are independent draws.
     *
     * @param times k: 1 for a quantity of which this is the natural logarithm, −1 for its reciprocal
     */
    public Estimated meanOfExponential(double times) {
        return weights.length < MANY
                ? meanOfExponential(times, weights.length)
                : grouped().meanOfExponential(times, weights.length);
    }

    private Estimated meanOfExponential(double times, int components) {
        // Distances from the first are summed, so that equal ones have exactly themselves as their mean.
        double first = StrictMath.exp(times * means[0] + times * times * sds[0] * sds[0] / 2);
        double sum = 0;
        double squares = 0;
        for (int j = 0; j < weights.length; j++) {
            double distance = StrictMath.exp(times * means[j] + times * times * sds[j] * sds[j] / 2) - first;
            sum += weights[j] * distance;
            squares += weights[j] * distance * distance;
        }
        return new Estimated(first + sum, Math.sqrt(Math.max(0, squares - sum * sum) / components));
    }

    /** The expected value: Σp_j·m_j. */
    public double mean() {
        double mean = 0;
        for (int j = 0; j < weights.length; j++) {
            mean += weights[j] * means[j];
        }
        return mean;
    }

    /** The standard deviation: the root of Σp_j(d_j² + (m_j − mean)²). */
    public double sd() {
        double mean = mean();
        double variance = 0;
        for (int j = 0; j < weights.length; j++) {
            double deviation = means[j] - mean;
            variance += weights[j] * (sds[j] * sds[j] + deviation * deviation);
        }
        return Math.sqrt(variance);
    }
}
