package org.scalepan.footprint;

import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.scalepan.factors.Boundary;
import org.scalepan.uncertainty.Summary;
import org.scalepan.uncertainty.hierarchy.LognormalMixture;
import org.scalepan.uncertainty.hierarchy.NormalMixture;
import org.scalepan.uncertainty.hierarchy.PooledDraws;
import org.scalepan.uncertainty.hierarchy.PooledDraws.GivenDraws;

/**
 * A distribution of one indicator on one functional unit: what both the literature and a farm's own records end in, and what
 * every question starts from.
 *
 * <p>The draws are kept in the order of the question's {@link CommonRandomNumbers}, so that draw i of two footprints belongs to the same
 * state of the factors they share. A pooled footprint is a distribution given each draw of its factors; it is drawn itself only where draws
 * are asked for, and its summaries and ratios are read from those distributions.
 */
public final class Footprint {
    private final String indicator;
    private final String unit;
    private final FunctionalUnit per;
    private final Boundary boundary;
    private final Optional<String> warmingSet;
    private final Drawn drawn;
    private final Optional<PooledLogarithm> pooled;
    private final boolean positive;
    private final Bound bound;

    /** The draws, made when they are first asked for. */
    private static final class Drawn {
        private final int size;
        private final Supplier<double[]> make;
        private volatile double @Nullable [] made;

        Drawn(int size, Supplier<double[]> make) {
            this.size = size;
            this.make = make;
        }

        /** Whoever asks first makes them; who asks meanwhile makes the same. */
        double[] values() {
            double[] values = made;
            if (values == null) {
                values = make.get();
                made = values;
            }
            return values;
        }
    }

    /** The natural logarithm of a pooled footprint: normal, given τ and the conversions of each draw. */
    private static final class PooledLogarithm {
        private final PooledDraws pool;
        private volatile @Nullable GivenDraws made;

        PooledLogarithm(PooledDraws pool) {
            this.pool = pool;
        }

        /** Whoever asks first makes it; who asks meanwhile makes the same. */
        private GivenDraws given() {
            GivenDraws given = made;
            if (given == null) {
                given = pool.given();
                made = given;
            }
            return given;
        }

        NormalMixture distribution() {
            return given().distribution();
        }

        NormalMixture distributionOfMean() {
            return pool.askedForMean().distribution();
        }

        NormalMixture less(PooledLogarithm other) {
            if (pool.sharesWith(other.pool)) {
                return pool.less(other.pool);
            }
            double[] difference = given().means().clone();
            double[] spread = given().sds().clone();
            double[] otherMeans = other.given().means();
            double[] otherSds = other.given().sds();
            for (int i = 0; i < difference.length; i++) {
                difference[i] -= otherMeans[i];
                spread[i] = Math.sqrt(spread[i] * spread[i] + otherSds[i] * otherSds[i]);
            }
            return NormalMixture.ofEqual(difference, spread);
        }

        /** Less the logarithms of draws that share its factors. */
        NormalMixture less(double[] draws, double sign) {
            double[] difference = given().means().clone();
            for (int i = 0; i < difference.length; i++) {
                difference[i] = sign * (difference[i] - StrictMath.log(draws[i]));
            }
            return NormalMixture.ofEqual(difference, given().sds());
        }
    }

    /**
     * @param indicator indicator id, for instance {@code ghg}
     * @param unit the indicator's unit
     * @param per functional unit of every draw
     * @param boundary system boundary of every draw
     * @param warmingSet warming set of a {@code ghg} footprint
     * @param draws values in {@code unit} per {@code per}; not copied, the caller gives them away
     */
    public Footprint(
            String indicator,
            String unit,
            FunctionalUnit per,
            Boundary boundary,
            Optional<String> warmingSet,
            double[] draws) {
        this(indicator, unit, per, boundary, warmingSet, draws, Bound.EXACT);
    }

    /**
     * A footprint that may be a bound.
     *
     * @param draws values in {@code unit} per {@code per}; not copied, the caller gives them away
     * @param bound on which side of every draw the true value lies
     */
    public Footprint(
            String indicator,
            String unit,
            FunctionalUnit per,
            Boundary boundary,
            Optional<String> warmingSet,
            double[] draws,
            Bound bound) {
        this(
                indicator,
                unit,
                per,
                boundary,
                warmingSet,
                new Drawn(draws.length, () -> draws),
                Optional.empty(),
                allPositive(draws),
                bound);
    }

    /**
     * A pooled footprint, above zero.
     *
     * @param pool natural logarithm of the footprint, given the draws of its factors
     * @param logarithms draws of it, made when they are first asked for; the same whenever they are
     * @param bound on which side of every draw the true value lies
     */
    public static Footprint pooled(
            String indicator,
            String unit,
            FunctionalUnit per,
            Boundary boundary,
            Optional<String> warmingSet,
            PooledDraws pool,
            Supplier<double[]> logarithms,
            Bound bound) {
        return new Footprint(
                indicator,
                unit,
                per,
                boundary,
                warmingSet,
                new Drawn(pool.size(), () -> exponentials(logarithms.get())),
                Optional.of(new PooledLogarithm(pool)),
                true,
                bound);
    }

    private static double[] exponentials(double[] logarithms) {
        double[] values = new double[logarithms.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = StrictMath.exp(logarithms[i]);
        }
        return values;
    }

    private Footprint(
            String indicator,
            String unit,
            FunctionalUnit per,
            Boundary boundary,
            Optional<String> warmingSet,
            Drawn drawn,
            Optional<PooledLogarithm> pooled,
            boolean positive,
            Bound bound) {
        this.indicator = indicator;
        this.unit = unit;
        this.per = per;
        this.boundary = boundary;
        this.warmingSet = warmingSet;
        this.drawn = drawn;
        this.pooled = pooled;
        this.positive = positive;
        this.bound = bound;
    }

    public String indicator() {
        return indicator;
    }

    public String unit() {
        return unit;
    }

    public FunctionalUnit per() {
        return per;
    }

    public Boundary boundary() {
        return boundary;
    }

    public Optional<String> warmingSet() {
        return warmingSet;
    }

    /** Whether this is the figure or a bound of it. */
    public Bound bound() {
        return bound;
    }

    /** A copy of the draws. */
    public double[] draws() {
        return drawn.values().clone();
    }

    /** True when every draw is above zero, as a ratio needs; a footprint with credits may not be. */
    public boolean isPositive() {
        return positive;
    }

    private String measure() {
        return indicator + " in " + unit + " per " + per.id();
    }

    private static boolean allPositive(double[] draws) {
        for (double draw : draws) {
            if (!(draw > 0)) {
                return false;
            }
        }
        return true;
    }

    /** The natural logarithm of this over another, where a side is pooled. */
    private Optional<NormalMixture> logarithmLess(Footprint other) {
        if (pooled.isPresent() && other.pooled.isPresent()) {
            return Optional.of(pooled.get().less(other.pooled.get()));
        }
        if (pooled.isPresent()) {
            return Optional.of(pooled.get().less(other.drawn.values(), 1));
        }
        return other.pooled.map(law -> law.less(drawn.values(), -1));
    }

    /**
     * The ratio of this footprint to another.
     *
     * @param other positive, as this one must be
     * @throws IllegalArgumentException when the other is of another indicator, unit or functional unit, or has other draws
     */
    public FootprintRatio over(Footprint other) {
        requireSameQuestion(other);
        return logarithmLess(other)
                .map(FootprintRatio::ofLogarithm)
                .orElseGet(() -> FootprintRatio.ofDraws(drawn.values(), other.drawn.values()));
    }

    /**
     * Draw by draw, this footprint over another: how many times more.
     *
     * @throws IllegalArgumentException when the other is of another indicator, unit or functional unit, or has other draws
     */
    public double[] dividedBy(Footprint other) {
        requireSameQuestion(other);
        double[] ratio = draws();
        double[] divisors = other.drawn.values();
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] /= divisors[i];
        }
        return ratio;
    }

    /**
     * Median, mean and equal-tailed interval.
     *
     * @param coverage share of the draws inside the interval, for instance 0.9
     */
    public Summary summary(double coverage) {
        return pooled.map(law -> LognormalMixture.of(law.distribution()).summary(coverage))
                .orElseGet(() -> Summary.of(drawn.values(), coverage));
    }

    /**
     * Of a pooled footprint the mean of the pool, whatever is asked of it: median, mean and equal-tailed interval.
     *
     * @param coverage share inside the interval, for instance 0.9
     */
    public Optional<Summary> summaryOfMean(double coverage) {
        return pooled.map(law -> LognormalMixture.of(law.distributionOfMean()).summary(coverage));
    }

    /**
     * A lower bound of the value that it exceeds with a probability: the estimate less two Monte Carlo standard errors, so that more draws do not
     * lower what was printed.
     *
     * @param probability above 0 and below 1
     */
    public double exceeded(double probability) {
        double below = 1 - probability;
        if (pooled.isEmpty()) {
            return FootprintRatio.cautious(drawn.values(), below);
        }
        LognormalMixture law = LognormalMixture.of(pooled.get().distribution());
        return law.estimatedQuantile(below).less(FootprintRatio.CAUTION);
    }

    /** A ratio has no unit only if both sides have the same one. */
    private void requireSameQuestion(Footprint other) {
        if (!other.measure().equals(measure())) {
            throw new IllegalArgumentException(
                    "footprints of different questions: " + measure() + " and " + other.measure());
        }
        if (other.drawn.size != drawn.size) {
            throw new IllegalArgumentException(
                    "footprints of different questions: " + drawn.size + " draws and " + other.drawn.size);
        }
    }
}
