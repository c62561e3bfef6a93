package org.scalepan.uncertainty;

import java.util.Arrays;

/**
 * Finds chosen order statistics without sorting the rest; a handful of quantiles of ten thousand draws would otherwise cost more than
 * the draws.
 *
 * <p>The draws are dealt into buckets by the leading bits of their place among all doubles, which is close to a logarithmic scale and
 * never breaks their order; only the buckets in which a rank falls are sorted. Selection by comparing is slow because each comparison
 * may go either way; here the one branch on a draw, whether its bucket is wanted, nearly always goes the same. Source: bucket sort,
 * Knuth (1998), The Art of Computer Programming 3, 5.2.5; the order of doubles by their bits, IEEE 754-2019, 5.10.
 */
final class OrderStatistics {
    private static final int BUCKET_BITS = 11;
    /** Below this a sort is quicker. */
    private static final int SMALL = 256;

    private OrderStatistics() {}

    /**
     * The value at each rank after sorting. The draws are left as they are.
     *
     * @param draws none NaN
     * @param ranks valid indices, in any order
     */
    static double[] at(double[] draws, int... ranks) {
        if (draws.length < SMALL) {
            double[] sorted = draws.clone();
            Arrays.sort(sorted);
            return Arrays.stream(ranks).mapToDouble(rank -> sorted[rank]).toArray();
        }
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (double draw : draws) {
            long place = place(draw);
            least = Math.min(least, place);
            most = Math.max(most, place);
        }
        // The distance may be beyond the largest long; as an unsigned number it is not.
        int shift = Math.max(0, Long.SIZE - Long.numberOfLeadingZeros(most - least) - BUCKET_BITS);
        int[] starts = starts(draws, least, shift);
        return among(draws, least, shift, starts, ranks);
    }

    /** How many draws lie in lower buckets, for each bucket and one more. */
    private static int[] starts(double[] draws, long least, int shift) {
        int[] starts = new int[(1 << BUCKET_BITS) + 1];
        for (double draw : draws) {
            starts[(int) ((place(draw) - least) >>> shift) + 1]++;
        }
        for (int bucket = 1; bucket < starts.length; bucket++) {
            starts[bucket] += starts[bucket - 1];
        }
        return starts;
    }

    private static double[] among(double[] draws, long least, int shift, int[] starts, int[] ranks) {
        // Where the next draw of a bucket goes.
        int[] next = new int[1 << BUCKET_BITS];
        int[] buckets = new int[ranks.length];
        boolean[] wanted = new boolean[next.length];
        for (int i = 0; i < ranks.length; i++) {
            buckets[i] = bucketOf(ranks[i], starts);
            wanted[buckets[i]] = true;
        }
        int[] section = new int[next.length];
        int gathered = 0;
        for (int bucket = 0; bucket < next.length; bucket++) {
            if (wanted[bucket]) {
                section[bucket] = gathered;
                next[bucket] = gathered;
                gathered += starts[bucket + 1] - starts[bucket];
            }
        }
        double[] held = new double[gathered];
        for (double draw : draws) {
            int bucket = (int) ((place(draw) - least) >>> shift);
            if (wanted[bucket]) {
                held[next[bucket]++] = draw;
            }
        }
        for (int bucket = 0; bucket < next.length; bucket++) {
            if (wanted[bucket]) {
                Arrays.sort(held, section[bucket], next[bucket]);
            }
        }
        double[] values = new double[ranks.length];
        for (int i = 0; i < ranks.length; i++) {
            values[i] = held[section[buckets[i]] + ranks[i] - starts[buckets[i]]];
        }
        return values;
    }

    /** The last bucket that starts at or below the rank and is not empty. */
    private static int bucketOf(int rank, int[] starts) {
        int low = 0;
        int high = starts.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (starts[middle] <= rank) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The place of a double among all doubles: rising with it, minus zero just below zero, as {@link Arrays#sort} has them. */
    private static long place(double value) {
        long bits = Double.doubleToRawLongBits(value);
        return bits ^ ((bits >> (Long.SIZE - 1)) & Long.MAX_VALUE);
    }
}
