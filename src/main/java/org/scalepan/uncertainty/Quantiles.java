package org.scalepan.uncertainty;

import java.util.Arrays;

/**
 * Quantiles of draws: linear between neighbouring order statistics, with the first draw at probability 0 and the last at 1.
 *
 * <p>Source: Hyndman and Fan (1996), Am. Stat. 50, 361–365, definition 7.
 */
public final class Quantiles {
    private Quantiles() {}

    /**
     * One quantile. The draws are left as they are.
     *
     * @param draws at least one, all finite
     * @param p probability within 0 and 1
     * @throws IllegalArgumentException when there are no draws, one is not finite, or p is outside 0 and 1
     */
    public static double of(double[] draws, double p) {
        return of(draws, new double[] {p})[0];
    }

    /**
     * Several quantiles, in the order asked for, for little more than the cost of one. The draws are left as they are.
     *
     * @param draws at least one, all finite
     * @param ps probabilities within 0 and 1
     * @throws IllegalArgumentException when there are no draws, one is not finite, or a probability is outside 0 and 1
     */
    public static double[] of(double[] draws, double... ps) {
        if (draws.length == 0) {
            throw new IllegalArgumentException("quantiles need at least one draw");
        }
        Require.allFinite("draw", draws);
        double[] neighbours = OrderStatistics.at(draws, ranks(draws.length, ps));
        double[] quantiles = new double[ps.length];
        for (int i = 0; i < ps.length; i++) {
            quantiles[i] = between(draws.length, ps[i], neighbours[2 * i], neighbours[2 * i + 1]);
        }
        return quantiles;
    }

    /**
     * Several quantiles of the draws, and the same of their reciprocals: the k-th reciprocal from below is that of the k-th draw from
     * above, so one search serves both.
     *
     * @param draws at least one, all finite and above zero
     * @param ps probabilities within 0 and 1
     * @return the quantiles of the draws, then those of the reciprocals
     * @throws IllegalArgumentException when there are no draws, one is not finite, or a probability is outside 0 and 1
     */
    static double[][] ofBothWays(double[] draws, double... ps) {
        Require.allFinite("draw", draws);
        int[] ranks = ranks(draws.length, ps);
        int[] both = Arrays.copyOf(ranks, 2 * ranks.length);
        for (int i = 0; i < ranks.length; i++) {
            both[ranks.length + i] = draws.length - 1 - ranks[i];
        }
        double[] neighbours = OrderStatistics.at(draws, both);
        double[][] quantiles = new double[2][ps.length];
        for (int i = 0; i < ps.length; i++) {
            quantiles[0][i] = between(draws.length, ps[i], neighbours[2 * i], neighbours[2 * i + 1]);
            int mirrored = ranks.length + 2 * i;
            quantiles[1][i] = between(draws.length, ps[i], 1 / neighbours[mirrored], 1 / neighbours[mirrored + 1]);
        }
        return quantiles;
    }

    private static double between(int n, double p, double lower, double upper) {
        double place = (n - 1) * p;
        double part = place - (int) place;
        // At a whole rank the upper neighbour has no weight, however far away it is.
        // Rounding must not carry it past a neighbour: of draws that are all the same, every quantile is the same.
        return part == 0 ? lower : Math.min(upper, Math.max(lower, lower * (1 - part) + upper * part));
    }

    /** For each probability the ranks of its two neighbours; after the last there is none but itself. */
    private static int[] ranks(int n, double[] ps) {
        int[] ranks = new int[2 * ps.length];
        for (int i = 0; i < ps.length; i++) {
            int below = (int) ((n - 1) * Require.probability(ps[i]));
            ranks[2 * i] = below;
            ranks[2 * i + 1] = Math.min(below + 1, n - 1);
        }
        return ranks;
    }
}
