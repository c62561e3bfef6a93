package org.scalepan.uncertainty;

/**
 * Summary statistics of draws: centre, equal-tailed interval, and their Monte Carlo standard errors.
 *
 * <p>Sources: quantiles by definition 7 of Hyndman and Fan (1996), Am. Stat. 50, 361–365, by selection; standard error of the
 * median from the distribution-free interval between order statistics, David and Nagaraja (2003), Order Statistics, 7.1:
 * the quantiles at ½ ± 1.96·½/√n, half their distance over 1.96; sums compensated, see
 * {@link CompensatedSum}.
 *
 * @param mean arithmetic mean of the draws
 * @param median middle of the draws
 * @param low lower end of the interval
 * @param high upper end of the interval
 * @param coverage share of the draws within the interval, 0.5 to 0.99
 * @param draws number of draws, at least 2
 * @param medianStandardError Monte Carlo standard error of the median, in the unit of the draws
 * @param meanStandardError Monte Carlo standard error of the mean, in the unit of the draws
 */
public record Summary(
        double mean,
        double median,
        double low,
        double high,
        double coverage,
        int draws,
        double medianStandardError,
        double meanStandardError) {
    private static final double SMALLEST_COVERAGE = 0.5;
    private static final double LARGEST_COVERAGE = 0.99;
    private static final double Z_95 = 1.959963984540054;

    public Summary {
        requireCoverage(coverage);
        requireDraws(draws);
        Require.finite("mean", mean);
        Require.finite("median", median);
        Require.finite("low", low);
        Require.finite("high", high);
        Require.notNegative("standard error of the median", medianStandardError);
        Require.notNegative("standard error of the mean", meanStandardError);
    }

    /**
     * Sums the draws up; they are left as they are.
     *
     * @param draws at least two, all finite
     * @param coverage of the equal-tailed interval, 0.5 to 0.99
     * @throws IllegalArgumentException when draws are too few or not finite, or the coverage is out of range
     */
    public static Summary of(double[] draws, double coverage) {
        requireCoverage(coverage);
        requireDraws(draws.length);
        return of(draws, coverage, Quantiles.of(draws, probabilities(draws.length, coverage)));
    }

    /**
     * A ratio, draw by draw, and its reciprocal.
     *
     * @param forth the first over the second
     * @param back the second over the first
     */
    public record OfRatio(Summary forth, Summary back) {}

    /**
     * Sums up the ratio of two quantities both ways, for little more than the cost of one: the k-th smallest of the one ratio belongs to
     * the k-th largest of the other.
     *
     * @param over at least two, all above zero
     * @param under as many, all above zero
     * @param coverage of the equal-tailed intervals, 0.5 to 0.99
     * @throws IllegalArgumentException when draws are too few, not equally many or a ratio is not finite, or the coverage is out of
     *     range
     */
    public static OfRatio ofRatio(double[] over, double[] under, double coverage) {
        requireCoverage(coverage);
        requireDraws(over.length);
        Require.sameLength("draws above the line", over, "draws below it", under);
        double[] forth = divided(over, under);
        double[] back = divided(under, over);
        Require.allFinite("ratio", back);
        double[][] q = Quantiles.ofBothWays(forth, probabilities(over.length, coverage));
        return new OfRatio(of(forth, coverage, q[0]), of(back, coverage, q[1]));
    }

    private static double[] divided(double[] over, double[] under) {
        double[] ratio = new double[over.length];
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = over[i] / under[i];
        }
        return ratio;
    }

    /** The ends of the interval, the median, and the quantiles about it from which its standard error comes. */
    private static double[] probabilities(int draws, double coverage) {
        double tail = (1 - coverage) / 2;
        double reach = Math.min(0.5, Z_95 * 0.5 / Math.sqrt(draws));
        return new double[] {tail, 0.5 - reach, 0.5, 0.5 + reach, 1 - tail};
    }

    private static Summary of(double[] draws, double coverage, double[] q) {
        double mean = CompensatedSum.of(draws) / draws.length;
        double variance = CompensatedSum.ofSquares(draws, mean) / (draws.length - 1);
        return new Summary(
                mean,
                q[2],
                q[0],
                q[4],
                coverage,
                draws.length,
                (q[3] - q[1]) / (2 * Z_95),
                Math.sqrt(variance / draws.length));
    }

    /**
     * The summary of every draw times a number.
     *
     * @param factor above zero, so that the low end stays the low end
     * @throws IllegalArgumentException when the factor is zero, negative or not finite
     */
    public Summary times(double factor) {
        if (!(factor > 0) || !Double.isFinite(factor)) {
            throw new IllegalArgumentException("a summary can be scaled by a number above zero, not by " + factor);
        }
        return new Summary(
                mean * factor,
                median * factor,
                low * factor,
                high * factor,
                coverage,
                draws,
                medianStandardError * factor,
                meanStandardError * factor);
    }

    private static void requireCoverage(double coverage) {
        if (!(coverage >= SMALLEST_COVERAGE && coverage <= LARGEST_COVERAGE)) {
            throw new IllegalArgumentException(
                    "coverage must be " + SMALLEST_COVERAGE + " to " + LARGEST_COVERAGE + ", not " + coverage);
        }
    }

    private static void requireDraws(int draws) {
        if (draws < 2) {
            throw new IllegalArgumentException("a summary needs at least two draws, not " + draws);
        }
    }
}
