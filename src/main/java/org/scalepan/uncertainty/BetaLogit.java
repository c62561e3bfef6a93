package org.scalepan.uncertainty;

import org.apache.commons.math3.special.Beta;

/**
 * The logit ln(x/(1 − x)) of a beta-distributed fraction x, as a function of the standard normal score.
 *
 * <p>Own method. The density of the logit, x^α(1 − x)^β/B(α, β), is log-concave, so the logarithm of its distribution
 * function is concave and rising, and Newton's iteration on it cannot diverge: after at most one step too far it climbs to
 * the root from below. Commons Math is used for the complete beta function because its logarithms are pure Java and so the
 * same on every JVM.
 *
 * <p>Source of the distribution function: NIST Digital Library of Mathematical Functions, 8.17.22.
 */
final class BetaLogit {
    private static final int MOST_STEPS = 200;
    private static final int MOST_TERMS = 100_000;

    private final double alpha;
    private final double beta;
    private final double logBeta;

    BetaLogit(double alpha, double beta) {
        this.alpha = alpha;
        this.beta = beta;
        this.logBeta = Beta.logBeta(alpha, beta);
    }

    static double fraction(double logit) {
        if (logit > 0) {
            return 1 / (1 + StrictMath.exp(-logit));
        }
        double odds = StrictMath.exp(logit);
        return odds / (1 + odds);
    }

    double atScore(double score) {
        if (Double.isNaN(score) || Double.isInfinite(score)) {
            return score;
        }
        // Above the median the complement 1 − x is solved for, so that no probability close to 1 loses its figures.
        return score > 0 ? -new BetaLogit(/* alpha= */ beta, /* beta= */ alpha).below(-score) : below(score);
    }

    /** Scores at or below zero. */
    private double below(double score) {
        double probability = StandardNormal.probabilityBelow(score);
        if (probability == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        double target = StrictMath.log(probability);
        double logit = StrictMath.log(alpha / beta);
        for (int i = 0; i < MOST_STEPS; i++) {
            double logProbability = logProbabilityBelow(logit);
            double step = (target - logProbability) / StrictMath.exp(logDensity(logit) - logProbability);
            logit += step;
            // From the second step on the iteration only rises; a step that does not is rounding, and the root is
            // reached.
            if (i > 0 && step <= 1e-14 * (1 + Math.abs(logit))) {
                break;
            }
        }
        return logit;
    }

    private double logProbabilityBelow(double logit) {
        double x = fraction(logit);
        return x <= (alpha + 1) / (alpha + beta + 2)
                ? logTail(alpha, beta, logit)
                : StrictMath.log1p(-StrictMath.exp(logTail(/* alpha= */ beta, /* beta= */ alpha, -logit)));
    }

    /** ln of the regularised incomplete beta function; the logarithm, because far out the function itself underflows. */
    private double logTail(double alpha, double beta, double logit) {
        return -alpha * softPlus(-logit)
                - beta * softPlus(logit)
                - StrictMath.log(alpha)
                - logBeta
                - StrictMath.log(continuedFraction(alpha, beta, fraction(logit)));
    }

    /** 1 + d1/(1 + d2/(1 + …)), DLMF 8.17.22, by the method of Lentz as modified by Thompson and Barnett (1986). */
    private static double continuedFraction(double alpha, double beta, double x) {
        double value = 1;
        double above = 1;
        double below = 0;
        for (int k = 1; k <= MOST_TERMS; k++) {
            int m = k / 2;
            double d = k % 2 == 0
                    ? m * (beta - m) * x / ((alpha + k - 1) * (alpha + k))
                    : -(alpha + m) * (alpha + beta + m) * x / ((alpha + k - 1) * (alpha + k));
            below = 1 / notZero(1 + d * below);
            above = notZero(1 + d / above);
            value *= above * below;
            if (Math.abs(above * below - 1) < 1e-15) {
                break;
            }
        }
        return value;
    }

    private static double notZero(double x) {
        return Math.abs(x) < 1e-300 ? 1e-300 : x;
    }

    private double logDensity(double logit) {
        return -alpha * softPlus(-logit) - beta * softPlus(logit) - logBeta;
    }

    private static double softPlus(double x) {
        return x > 0 ? x + StrictMath.log1p(StrictMath.exp(-x)) : StrictMath.log1p(StrictMath.exp(x));
    }

    /**
     * Interpolates exact quantiles an eighth of a score apart, matching value, slope and curvature (quintic Hermite
     * pieces). The knots are always the same, so a draw depends on its score alone and not on how many are drawn.
     */
    Curve curve() {
        return new Curve(this);
    }

    static final class Curve {
        private static final double FARTHEST = 8.5;
        private static final double STEP = 0.125;
        private static final double HALF_LOG_TWO_PI = 0.9189385332046728;
        private static final int PIECES = (int) (2 * FARTHEST / STEP);

        private final BetaLogit exact;
        private final double[] value = new double[PIECES + 1];
        private final double[] slope = new double[PIECES + 1];
        private final double[] bend = new double[PIECES + 1];

        private Curve(BetaLogit exact) {
            this.exact = exact;
            for (int k = 0; k <= PIECES; k++) {
                double score = -FARTHEST + k * STEP;
                double logit = exact.atScore(score);
                double first = StrictMath.exp(logNormalDensity(score) - exact.logDensity(logit));
                double x = fraction(logit);
                double second = first * (-score - (exact.alpha * (1 - x) - exact.beta * x) * first);
                value[k] = logit;
                slope[k] = first * STEP;
                bend[k] = second * STEP * STEP;
            }
        }

        double atScore(double score) {
            if (!(Math.abs(score) < FARTHEST)) {
                return exact.atScore(score);
            }
            double place = (score + FARTHEST) / STEP;
            int k = (int) place;
            double t = place - k;
            double rise = value[k + 1] - value[k] - slope[k] - bend[k] / 2;
            double slopeGap = slope[k + 1] - slope[k] - bend[k];
            double bendGap = bend[k + 1] - bend[k];
            double cubic = 10 * rise - 4 * slopeGap + bendGap / 2;
            double quartic = -15 * rise + 7 * slopeGap - bendGap;
            double quintic = 6 * rise - 3 * slopeGap + bendGap / 2;
            return value[k] + t * (slope[k] + t * (bend[k] / 2 + t * (cubic + t * (quartic + t * quintic))));
        }

        private static double logNormalDensity(double score) {
            return -0.5 * score * score - HALF_LOG_TWO_PI;
        }
    }
}
