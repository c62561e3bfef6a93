package org.scalepan.uncertainty.hierarchy;

import java.util.Optional;

/**
 * Components of a mixture of normals that lie close together, each group replaced by the normal with its mean and variance. A group is two fifths of
 * the least standard deviation wide and 2 % deep in standard deviation near the least (deeper where it is larger, as the root), so that the shares below any value move by less than one in 10⁵.
 *
 * @param weights of the groups, adding up to what the components add up to
 * @param means of the groups
 * @param sds of the groups
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
record ComponentGroups(double[] weights, double[] means, double[] sds) {
    private static final double WIDTH = 0.4;
    private static final double PER_DEPTH = 100;
    /** More cells than this are no gain; and spreads so unlike, or none, are no neighbours. */
    private static final int MOST_CELLS = 1 << 16;

    private static final int BLOCK = 256;

    /** The groups; none where the components are spread too unlike for it. */
    static Optional<ComponentGroups> of(double[] weights, double[] means, double[] sds) {
        double leastSd = sds[0];
        double mostSd = sds[0];
        double low = means[0];
        double high = means[0];
        for (int j = 1; j < sds.length; j++) {
            leastSd = sds[j] < leastSd ? sds[j] : leastSd;
            mostSd = sds[j] > mostSd ? sds[j] : mostSd;
            low = means[j] < low ? means[j] : low;
            high = means[j] > high ? means[j] : high;
        }
        if (!(leastSd > 0)) {
            return Optional.empty();
        }
        double perWidth = 1 / (WIDTH * leastSd);
        // Cells lie evenly about the middle, so that the groups of a difference are those of the difference turned
        // round.
        double middle = low + (high - low) / 2;
        double columnsBelow = Math.floor((high - middle) * perWidth) + 1;
        double cells = 2 * columnsBelow * (Math.floor(bin(mostSd, leastSd)) + 1);
        if (!(cells <= MOST_CELLS)) {
            return Optional.empty();
        }
        int rows = (int) bin(mostSd, leastSd) + 1;
        int[] group = new int[(int) cells];
        int[] of = new int[weights.length];
        int count = 0;
        int last = 2 * (int) columnsBelow - 1;
        double[] columns = new double[BLOCK];
        double[] bins = new double[BLOCK];
        for (int from = 0; from < of.length; from += BLOCK) {
            int size = Math.min(BLOCK, of.length - from);
            // Apart from the steps that go where the numbers lead, so that the machine takes several at a time.
            for (int j = 0; j < size; j++) {
                columns[j] = (means[from + j] - middle) * perWidth + columnsBelow;
            }
            for (int j = 0; j < size; j++) {
                bins[j] = bin(sds[from + j], leastSd);
            }
            for (int j = 0; j < size; j++) {
                int cell = Math.min((int) columns[j], last) * rows + (int) bins[j];
                // A cell that is still nought has no group yet.
                if (group[cell] == 0) {
                    group[cell] = ++count;
                }
                of[from + j] = group[cell] - 1;
            }
        }
        return Optional.of(together(weights, means, sds, of, count));
    }

    private static double bin(double sd, double least) {
        return (1 - Math.sqrt(least / sd)) * PER_DEPTH;
    }

    private static ComponentGroups together(double[] weights, double[] means, double[] sds, int[] of, int count) {
        double[] weight = new double[count];
        double[] mean = new double[count];
        double[] variance = new double[count];
        for (int j = 0; j < of.length; j++) {
            weight[of[j]] += weights[j];
            mean[of[j]] += weights[j] * means[j];
        }
        for (int g = 0; g < count; g++) {
            mean[g] = weight[g] > 0 ? mean[g] / weight[g] : 0;
        }
        for (int j = 0; j < of.length; j++) {
            double deviation = means[j] - mean[of[j]];
            variance[of[j]] += weights[j] * (sds[j] * sds[j] + deviation * deviation);
        }
        for (int g = 0; g < count; g++) {
            variance[g] = Math.sqrt(weight[g] > 0 ? variance[g] / weight[g] : 0);
        }
        return new ComponentGroups(weight, mean, variance);
    }
}
