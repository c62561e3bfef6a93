package org.scalepan.uncertainty;

import java.util.Arrays;

/**
 * A sum that carries the rounding error of each addition along, as exact as one in twice the precision. Without a branch, so that several
 * can run side by side; the order of the additions is fixed, so the same draws give the same bits on every machine.
 *
 * <p>Source: Ogita, Rump and Oishi (2005), Accurate sum and dot product, SIAM J. Sci. Comput. 26, 1955–1988, algorithm 4.4.
 */
final class CompensatedSum {
    /** Sums side by side, each over its own draws: loops over arrays, which the machine runs several steps at a time. */
    private static final int LANES = 256;

    private final double[] sums = new double[LANES];
    private final double[] lost = new double[LANES];

    private CompensatedSum() {}

    /** The sum of the values. */
    static double of(double[] values) {
        CompensatedSum sum = new CompensatedSum();
        double[] terms = new double[LANES];
        for (int from = 0; from < values.length; from += LANES) {
            sum.add(taken(values, from, 0, terms));
        }
        return sum.total();
    }

    /** The sum of the squared deviations from a centre. */
    static double ofSquares(double[] values, double centre) {
        CompensatedSum sum = new CompensatedSum();
        double[] terms = new double[LANES];
        for (int from = 0; from < values.length; from += LANES) {
            square(taken(values, from, centre, terms), centre);
            sum.add(terms);
        }
        return sum.total();
    }

    /** The next values; lanes beyond the last value take {@code rest}. */
    private static double[] taken(double[] values, int from, double rest, double[] terms) {
        int count = Math.min(LANES, values.length - from);
        System.arraycopy(values, from, terms, 0, count);
        Arrays.fill(terms, count, LANES, rest);
        return terms;
    }

    private static void square(double[] terms, double centre) {
        for (int lane = 0; lane < LANES; lane++) {
            double deviation = terms[lane] - centre;
            terms[lane] = deviation * deviation;
        }
    }

    private void add(double[] terms) {
        for (int lane = 0; lane < LANES; lane++) {
            double term = terms[lane];
            double sum = sums[lane];
            double next = sum + term;
            double taken = next - sum;
            lost[lane] += (sum - (next - taken)) + (term - taken);
            sums[lane] = next;
        }
    }

    /** The lanes added up in the same way. */
    private double total() {
        double total = 0;
        double rest = 0;
        for (int lane = 0; lane < LANES; lane++) {
            double next = total + sums[lane];
            double taken = next - total;
            rest += (total - (next - taken)) + (sums[lane] - taken);
            rest += lost[lane];
            total = next;
        }
        return total + rest;
    }
}
