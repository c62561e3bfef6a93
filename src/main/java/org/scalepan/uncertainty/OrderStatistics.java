package org.scalepan.uncertainty;

import java.util.Arrays;

/**
 * Puts chosen order statistics in their places without sorting the rest; a handful of quantiles of ten thousand draws would
 * otherwise cost more than the draws.
 *
 * <p>Source: quickselect, Hoare (1961), Comm. ACM 4, 321–322 (algorithm 65), for several ranks at once; ranges that split
 * badly too often are sorted, so no order of the draws costs more than a sort.
 */
final class OrderStatistics {
    private static final int SMALL = 48;

    private OrderStatistics() {}

    /**
     * Reorders the values so that each of the ranks holds what it would hold after sorting.
     *
     * @param ranks rising, each a valid index
     */
    static void place(double[] values, int[] ranks) {
        int depth = 2 * (32 - Integer.numberOfLeadingZeros(values.length));
        place(values, 0, values.length - 1, ranks, 0, ranks.length, depth);
    }

    private static void place(double[] a, int from, int to, int[] ranks, int firstRank, int endRank, int depth) {
        int low = from;
        int first = firstRank;
        for (int left = depth; first < endRank && to - low >= SMALL && left > 0; left--) {
            double pivot = pivot(a, low, to);
            int i = low;
            int j = to;
            while (i <= j) {
                while (a[i] < pivot) {
                    i++;
                }
                while (a[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double swapped = a[i];
                    a[i++] = a[j];
                    a[j--] = swapped;
                }
            }
            int endBelow = first;
            while (endBelow < endRank && ranks[endBelow] <= j) {
                endBelow++;
            }
            place(a, low, j, ranks, first, endBelow, left - 1);
            // Between j and i stands at most one value, equal to the pivot and already in place.
            while (endBelow < endRank && ranks[endBelow] < i) {
                endBelow++;
            }
            first = endBelow;
            low = i;
        }
        if (first < endRank && low <= to) {
            Arrays.sort(a, low, to + 1);
        }
    }

    /** The median of three medians of three, spread over the range; only values of the range itself. */
    private static double pivot(double[] a, int low, int high) {
        int eighth = (high - low) / 8;
        int middle = (low + high) >>> 1;
        return median(
                median(a[low], a[low + eighth], a[low + 2 * eighth]),
                median(a[middle - eighth], a[middle], a[middle + eighth]),
                median(a[high - 2 * eighth], a[high - eighth], a[high]));
    }

    private static double median(double a, double b, double c) {
        return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    }
}
