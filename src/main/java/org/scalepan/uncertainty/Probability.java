package org.scalepan.uncertainty;

/**
 * The share of draws for which a statement holds.
 *
 * <p>Source: standard error of a proportion, √(p(1 − p)/n); it is 0 where all draws agree, which with n draws is still compatible with a
 * probability of up to about 3/n (Hanley and Lippman-Hand 1983, JAMA 249, 1743–1745).
 *
 * @param value within 0 and 1
 * @param standardError Monte Carlo standard error, zero or more
 */
public record Probability(double value, double standardError) {
    public Probability {
        Require.probability(value);
        Require.notNegative("standard error", standardError);
    }

    /**
     * The probability that a is less than b, draw by draw; ties count half.
     *
     * @param a draws of the one side, none NaN
     * @param b draws of the other, equally many, none NaN
     * @throws IllegalArgumentException when there are no draws, unequal numbers, or a NaN
     */
    public static Probability ofLess(double[] a, double[] b) {
        Require.sameLength("draws of a", a, "draws of b", b);
        int less = 0;
        int more = 0;
        int same = 0;
        // Counted without branches: in a chain of ifs the processor would mispredict one draw in two.
        for (int i = 0; i < a.length; i++) {
            less += a[i] < b[i] ? 1 : 0;
            more += a[i] > b[i] ? 1 : 0;
            same += a[i] == b[i] ? 1 : 0;
        }
        if (less + more + same < a.length) {
            throw new IllegalArgumentException("a draw is NaN and cannot be compared");
        }
        return share(less + 0.5 * same, a.length);
    }

    /**
     * The probability that r is at least k.
     *
     * @param r draws, none NaN
     * @param k finite
     * @throws IllegalArgumentException when there are no draws, a NaN, or k is not finite
     */
    public static Probability ofAtLeast(double[] r, double k) {
        Require.finite("k", k);
        int count = 0;
        for (int i = 0; i < r.length; i++) {
            if (r[i] >= k) {
                count++;
            } else if (Double.isNaN(r[i])) {
                throw new IllegalArgumentException("draw " + i + " is NaN");
            }
        }
        return share(count, r.length);
    }

    private static Probability share(double count, int n) {
        if (n == 0) {
            throw new IllegalArgumentException("a probability needs at least one draw");
        }
        double p = count / n;
        return new Probability(p, Math.sqrt(p * (1 - p) / n));
    }
}
