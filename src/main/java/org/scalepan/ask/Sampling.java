package org.scalepan.ask;

import org.scalepan.footprint.CommonRandomNumbers;

/**
 * How an answer is drawn.
 *
 * @param coverage share of the draws inside an interval, 0.5 to 0.99
 * @param draws number of draws, 1 000 to 200 000
 * @param seed the same seed gives the same answer
 */
public record Sampling(double coverage, int draws, long seed) {
    public static final double DEFAULT_COVERAGE = 0.9;
    public static final int DEFAULT_DRAWS = 10_000;
    public static final long DEFAULT_SEED = 1;
    public static final int FEWEST_DRAWS = 1_000;
    public static final int MOST_DRAWS = 200_000;
    /** How many draws the footprints of one answer may have together; a choice of this service, for its memory. */
    public static final int MOST_DRAWS_OF_AN_ANSWER = 2_000_000;

    /** {@code 90 %}. */
    public String coverageInPercent() {
        return Math.round(coverage * 100) + " %";
    }

    /** How near to 0 or 1 a probability can be resolved: the rule of three, 3 ÷ draws (Hanley and Lippman-Hand 1983). */
    public double resolution() {
        return 3.0 / draws;
    }

    /** The random numbers that the sides of one question share. */
    public CommonRandomNumbers random() {
        return new CommonRandomNumbers(seed, draws);
    }
}
