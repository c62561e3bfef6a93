package org.scalepan.uncertainty;

/**
 * Widens a basic uncertainty by the quality of the datum: reliability, completeness, time, geography, technology.
 *
 * <p>Two conventions are in circulation and must not be mixed; here every contribution is a <em>squared</em> geometric standard
 * deviation, the ratio of the 97.5th percentile to the median. Formula from memory: Frischknecht and others (2005), Int. J.
 * Life Cycle Assess. 10, 3–9, after Weidema and Wesnæs (1996), J. Clean. Prod. 4, 167–174:
 * GSD² = exp √(ln²Ub + Σ ln²Ui).
 */
public final class Pedigree {
    private Pedigree() {}

    /**
     * The widened geometric standard deviation (not squared), ready for {@link Lognormal#ofMedianAndGsd}.
     *
     * @param baseGsd basic geometric standard deviation, not squared, 1 or more
     * @param squaredGsdFactors contributions as squared geometric standard deviations, 1 or more each
     * @throws IllegalArgumentException when one is below 1 or not finite
     */
    public static double gsd(double baseGsd, double... squaredGsdFactors) {
        Require.atLeastOne("basic geometric standard deviation", baseGsd);
        return Math.sqrt(squaredGsd(baseGsd * baseGsd, squaredGsdFactors));
    }

    /**
     * The widened squared geometric standard deviation, as such tables print it.
     *
     * @param baseSquaredGsd basic squared geometric standard deviation, 1 or more
     * @param squaredGsdFactors contributions as squared geometric standard deviations, 1 or more each
     * @throws IllegalArgumentException when one is below 1 or not finite
     */
    public static double squaredGsd(double baseSquaredGsd, double... squaredGsdFactors) {
        double base = StrictMath.log(Require.atLeastOne("basic squared geometric standard deviation", baseSquaredGsd));
        double sum = base * base;
        for (double factor : squaredGsdFactors) {
            double log = StrictMath.log(Require.atLeastOne("pedigree factor", factor));
            sum += log * log;
        }
        return StrictMath.exp(Math.sqrt(sum));
    }
}
