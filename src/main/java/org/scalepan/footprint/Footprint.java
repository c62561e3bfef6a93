package org.scalepan.footprint;

import java.util.Optional;
import org.scalepan.factors.Boundary;
import org.scalepan.uncertainty.Probability;
import org.scalepan.uncertainty.Summary;

/**
 * A distribution of one indicator on one functional unit: what both the literature and a farm's own records end in, and what
 * every question starts from.
 *
 * <p>The draws are kept in the order of the question's {@link CommonRandomNumbers}, so that draw i of two footprints belongs to the same
 * state of the factors they share.
 */
public final class Footprint {
    private final String indicator;
    private final String unit;
    private final FunctionalUnit per;
    private final Boundary boundary;
    private final Optional<String> warmingSet;
    private final double[] draws;
    private final boolean positive;
    private final Bound bound;

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
        this.indicator = indicator;
        this.unit = unit;
        this.per = per;
        this.boundary = boundary;
        this.warmingSet = warmingSet;
        this.draws = draws;
        this.positive = allPositive(draws);
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
        return draws.clone();
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

    /**
     * The probability that this footprint is less than another, draw by draw.
     *
     * @throws IllegalArgumentException when the other is of another indicator, unit or functional unit, or has other draws
     */
    public Probability below(Footprint other) {
        requireSameQuestion(other);
        return Probability.ofLess(draws, other.draws);
    }

    /**
     * Draw by draw, this footprint over another and the other over this, summed up.
     *
     * @param other positive, as this one must be
     * @param coverage share of the draws inside the intervals
     * @throws IllegalArgumentException when the other is of another indicator, unit or functional unit, or has other draws
     */
    public Summary.OfRatio ratioTo(Footprint other, double coverage) {
        requireSameQuestion(other);
        return Summary.ofRatio(draws, other.draws, coverage);
    }

    /**
     * Draw by draw, this footprint over another: how many times more.
     *
     * @throws IllegalArgumentException when the other is of another indicator, unit or functional unit, or has other draws
     */
    public double[] dividedBy(Footprint other) {
        requireSameQuestion(other);
        double[] ratio = new double[draws.length];
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = draws[i] / other.draws[i];
        }
        return ratio;
    }

    /**
     * Median, mean and equal-tailed interval.
     *
     * @param coverage share of the draws inside the interval, for instance 0.9
     */
    public Summary summary(double coverage) {
        return Summary.of(draws, coverage);
    }

    /** A ratio has no unit only if both sides have the same one. */
    private void requireSameQuestion(Footprint other) {
        if (!other.measure().equals(measure())) {
            throw new IllegalArgumentException(
                    "footprints of different questions: " + measure() + " and " + other.measure());
        }
        if (other.draws.length != draws.length) {
            throw new IllegalArgumentException(
                    "footprints of different questions: " + draws.length + " draws and " + other.draws.length);
        }
    }
}
