package org.scalepan.uncertainty;

/**
 * A printed default with unequal limits: normal on each side, with a standard deviation of its own below and above, so that the
 * printed value is the median and the limits are its 2.5th and 97.5th percentiles. What would fall below zero counts as zero.
 *
 * <p>The IPCC guidelines print emission factors so: a default to calculate with and a 95 % interval about it that may be far from
 * even (2006, volume 1, chapter 3; the wording of the tables is from memory). A triangle with the same three numbers would move the
 * middle away from the default.
 *
 * <p>Source: after the two-piece normal, Wallis (2014), Statistical Science 29, 106–112; there the mode is kept, here the median.
 *
 * @param low 2.5th percentile, 0 or above
 * @param middle median, within low and high
 * @param high 97.5th percentile, above low
 */
public record SplitNormal(double low, double middle, double high) implements Distribution {
    private static final double LIMIT_SCORE = 1.96;

    public SplitNormal {
        Require.notNegative("low", low);
        Require.ascending("low", low, "high", high);
        Require.finite("middle", middle);
        if (middle < low || middle > high) {
            throw new IllegalArgumentException("middle " + middle + " lies outside " + low + " to " + high);
        }
    }

    @Override
    public double atScore(double score) {
        double reach = score < 0 ? middle - low : high - middle;
        // A side without width has no draws of its own, not even at an infinite score.
        return reach == 0 ? middle : Math.max(0, middle + score / LIMIT_SCORE * reach);
    }

    /** The mean of the draws, with the half below zero folded onto zero: closed form of two half normals. */
    @Override
    public double mean() {
        double below = (middle - low) / LIMIT_SCORE;
        double above = (high - middle) / LIMIT_SCORE;
        double whole = middle + (above - below) * StandardNormal.density(0);
        if (below == 0) {
            return whole;
        }
        double zero = -middle / below;
        // Takes out the negative part of the lower half, because draws below zero count as zero.
        double lost = below * StandardNormal.density(zero) - middle * StandardNormal.probabilityBelow(zero);
        return whole + lost;
    }
}
