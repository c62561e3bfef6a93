package org.scalepan.uncertainty;

/**
 * A sum that carries along what each addition rounds off, as exact as one in twice the precision. Without a branch, so that several
 * can run side by side; the order of the additions is fixed, so the same draws give the same bits on every machine.
 *
 * <p>Source: Ogita, Rump and Oishi (2005), Accurate sum and dot product, SIAM J. Sci. Comput. 26, 1955–1988, algorithm 4.4.
 */
final class CompensatedSum {
    private double sum;
    private double lost;

    private CompensatedSum() {}

    /** The sum of the values. */
    static double of(double[] values) {
        return ofDeviations(values, 0, false);
    }

    /** The sum of the squared deviations from a centre. */
    static double ofSquares(double[] values, double centre) {
        return ofDeviations(values, centre, true);
    }

    private static double ofDeviations(double[] values, double centre, boolean squared) {
        CompensatedSum a = new CompensatedSum();
        CompensatedSum b = new CompensatedSum();
        CompensatedSum c = new CompensatedSum();
        CompensatedSum d = new CompensatedSum();
        int i = 0;
        for (; i + 3 < values.length; i += 4) {
            a.add(term(values[i], centre, squared));
            b.add(term(values[i + 1], centre, squared));
            c.add(term(values[i + 2], centre, squared));
            d.add(term(values[i + 3], centre, squared));
        }
        for (; i < values.length; i++) {
            a.add(term(values[i], centre, squared));
        }
        a.add(b);
        a.add(c);
        a.add(d);
        return a.sum + a.lost;
    }

    private static double term(double value, double centre, boolean squared) {
        double deviation = value - centre;
        return squared ? deviation * deviation : deviation;
    }

    private void add(CompensatedSum other) {
        add(other.sum);
        lost += other.lost;
    }

    private void add(double term) {
        double next = sum + term;
        double taken = next - sum;
        lost += (sum - (next - taken)) + (term - taken);
        sum = next;
    }
}
