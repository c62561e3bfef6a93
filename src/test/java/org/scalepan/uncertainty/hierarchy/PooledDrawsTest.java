package org.scalepan.uncertainty.hierarchy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.scalepan.uncertainty.Draws;
import org.scalepan.uncertainty.StandardNormal;
import org.scalepan.uncertainty.hierarchy.PooledDraws.FurtherStudy;
import org.scalepan.uncertainty.hierarchy.StudyEffects.MeanGivenTau;

/** Effects are natural logarithms of footprints; a difference is the logarithm of a ratio. */
class PooledDrawsTest {
    private static final long SEED = 1;
    private static final int DRAWS = 10_000;
    /** Kolmogorov's distance that 99 % of samples from the right distribution keep within. */
    private static final double KOLMOGOROV = 1.628 / Math.sqrt(DRAWS);

    private static final StudyEffects BREAD =
            StudyEffects.of(new double[] {1.05, 1.20, 1.62}, new double[] {0.15, 0.24, 0.20});
    private static final List<String> BAKERIES = List.of("bakery-1", "bakery-2", "bakery-3");
    private static final StudyEffects CAKE = StudyEffects.of(new double[] {2.1, 2.6}, new double[] {0.2, 0.3});
    private static final HeterogeneityPosterior OF_BREAD = HeterogeneityPosterior.of(BREAD, 0.5);
    private static final HeterogeneityPosterior OF_CAKE = HeterogeneityPosterior.of(CAKE, 0.5);

    @Test
    void without_conversions_the_mean_given_tau_has_exactly_its_normal_distribution() {
        for (double tau : new double[] {0, 0.1, 0.7}) {
            double[] taus = new double[DRAWS];
            Arrays.fill(taus, tau);
            PooledDraws pool = PooledDraws.of(BREAD, BAKERIES, taus, new double[3][0]);
            double[] means = pool.means(errorsOf(BAKERIES), ownOf(BAKERIES));

            MeanGivenTau given = BREAD.given(tau);
            assertLaw(
                    x -> StandardNormal.probabilityBelow((x - given.mean()) / given.standardError()),
                    means,
                    "mean given τ = " + tau);
            assertEquals(given.mean(), pool.given().means()[0], 1e-15);
            assertEquals(given.standardError(), pool.given().sds()[0], 1e-15);
        }
    }

    @Test
    void with_tau_drawn_mean_and_next_statement_have_the_distributions_that_need_no_draws() {
        PooledDraws pool = bread();
        double[] means = pool.means(errorsOf(BAKERIES), ownOf(BAKERIES));
        FurtherStudy next = new FurtherStudy("next bakery", BREAD.meanVariance());
        double[] statements = pool.statements(means, next, scores("next error"), scores("next own"));

        assertLaw(OF_BREAD.pooledMean()::shareBelow, means, "mean");
        assertLaw(OF_BREAD.nextStatement()::shareBelow, statements, "next statement");
        assertEquals(
                OF_BREAD.nextStatement().quantile(0.05),
                pool.askedFor(next).distribution().quantile(0.05),
                0.02,
                "5th percentile averaged over draws of τ");
    }

    @Test
    void a_pool_beside_itself_gives_a_ratio_of_exactly_one_draw_by_draw_and_in_distribution() {
        double[][] conversions = {perturbed("yield"), new double[0], perturbed("protein")};
        PooledDraws one = PooledDraws.of(BREAD, BAKERIES, tausOf("bread", OF_BREAD), conversions);
        PooledDraws other = PooledDraws.of(
                StudyEffects.of(new double[] {1.05, 1.20, 1.62}, new double[] {0.15, 0.24, 0.20}),
                List.copyOf(BAKERIES),
                tausOf("bread", OF_BREAD),
                conversions);

        assertArrayEquals(
                one.means(errorsOf(BAKERIES), ownOf(BAKERIES)), other.means(errorsOf(BAKERIES), ownOf(BAKERIES)), 0.0);
        FurtherStudy next = new FurtherStudy("next bakery", BREAD.meanVariance());
        for (NormalMixture lnRatio : List.of(one.less(other), one.askedFor(next).less(other.askedFor(next)))) {
            for (double p : new double[] {0.001, 0.05, 0.5, 0.95, 0.999}) {
                assertEquals(1, Math.exp(lnRatio.quantile(p)), 0.0, "ratio at " + p);
            }
            assertEquals(0.5, lnRatio.shareBelow(0), 1e-12, "ties count half");
        }
    }

    @Test
    void a_conversion_that_both_sides_use_cancels_and_one_that_one_side_uses_does_not() {
        double[] shared = perturbed("protein");
        PooledDraws bread =
                PooledDraws.of(BREAD, BAKERIES, tausOf("bread", OF_BREAD), new double[][] {shared, shared, shared});
        PooledDraws cake =
                PooledDraws.of(CAKE, List.of("a", "b"), tausOf("cake", OF_CAKE), new double[][] {shared, shared});

        NormalMixture plain = cake().less(bread());
        assertEquals(plain.quantile(0.05), cake.less(bread).quantile(0.05), 1e-12);
        assertEquals(plain.quantile(0.9), cake.less(bread).quantile(0.9), 1e-12);
        assertTrue(cake().less(bread).sd() > plain.sd() + 0.005, "a conversion of one side widens the ratio");
    }

    @Test
    void the_distribution_of_a_ratio_is_that_of_its_draws_when_the_sides_share_a_finding() {
        List<String> cakes = List.of("cake-1", "bakery-2");
        double[][] conversions = {perturbed("yield"), new double[0]};
        PooledDraws bread = bread();
        PooledDraws cake = PooledDraws.of(CAKE, cakes, tausOf("cake", OF_CAKE), conversions);
        FurtherStudy nextBread = new FurtherStudy("bread", 0.04);
        FurtherStudy nextCake = new FurtherStudy("cake", 0.09);

        double[] breads = bread.means(errorsOf(BAKERIES), ownOf(BAKERIES));
        double[] cakeMeans = cake.means(errorsOf(cakes), ownOf(cakes));
        assertLaw(cake.less(bread)::shareBelow, less(cakeMeans, breads), "ratio of means");
        assertLaw(
                cake.askedFor(nextCake).less(bread.askedFor(nextBread))::shareBelow,
                less(
                        cake.statements(cakeMeans, nextCake, scores("error/cake"), scores("own/cake")),
                        bread.statements(breads, nextBread, scores("error/bread"), scores("own/bread"))),
                "ratio of next statements");
        PooledDraws apart = PooledDraws.of(CAKE, List.of("a", "b"), tausOf("cake", OF_CAKE), conversions);
        assertTrue(cake.less(bread).sd() < apart.less(bread).sd() - 0.01, "what is shared makes the ratio narrower");
    }

    /** Ten thousand draws move the 5th percentile of a drawn ratio by about 1 %; averaged normals move it by far less. */
    @Test
    void the_distribution_of_a_ratio_hardly_depends_on_the_seed() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (long seed = 1; seed <= 8; seed++) {
            PooledDraws cake = PooledDraws.of(
                    CAKE, List.of("a", "b"), OF_CAKE.at(Draws.uniforms("cake", seed, 10_000)), new double[2][0]);
            PooledDraws bread = PooledDraws.of(
                    BREAD, BAKERIES, OF_BREAD.at(Draws.uniforms("bread", seed, 10_000)), new double[3][0]);
            double low = cake.less(bread).quantile(0.05);
            least = Math.min(least, low);
            most = Math.max(most, low);
        }
        assertTrue(most - least < 0.02, "ln ratio at 5 % from " + least + " to " + most);
    }

    @Test
    void unequal_numbers_and_findings_that_come_twice_are_refused() {
        double[] taus = new double[5];
        assertRefused(
                "ids and effects must be equally many, not 1 and 3",
                () -> PooledDraws.of(BREAD, List.of("a"), taus, new double[3][0]));
        assertRefused(
                "conversions and effects must be equally many, not 2 and 3",
                () -> PooledDraws.of(BREAD, BAKERIES, taus, new double[2][0]));
        assertRefused(
                "a finding comes twice in [a, b, a]",
                () -> PooledDraws.of(BREAD, List.of("a", "b", "a"), taus, new double[3][0]));
        assertRefused(
                "draws of a conversion and draws of τ must be equally many, not 4 and 5",
                () -> PooledDraws.of(BREAD, BAKERIES, taus, new double[3][4]));
        PooledDraws pool = PooledDraws.of(BREAD, BAKERIES, taus, new double[3][0]);
        assertRefused(
                "draws of one side and draws of the other must be equally many, not 5 and 10000",
                () -> pool.less(bread()));
        assertRefused(
                "scores of an error and draws of τ must be equally many, not 4 and 5",
                () -> pool.means(new double[3][4], new double[3][5]));
        assertEquals(5, pool.size());
    }

    private static void assertRefused(String message, Executable call) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
    }

    private static PooledDraws bread() {
        return PooledDraws.of(BREAD, BAKERIES, tausOf("bread", OF_BREAD), new double[3][0]);
    }

    private static PooledDraws cake() {
        return PooledDraws.of(CAKE, List.of("a", "b"), tausOf("cake", OF_CAKE), new double[2][0]);
    }

    private static double[] tausOf(String product, HeterogeneityPosterior posterior) {
        return posterior.at(Draws.uniforms(product, SEED, DRAWS));
    }

    private static double[] perturbed(String conversion) {
        return Arrays.stream(scores(conversion)).map(z -> 0.2 * z).toArray();
    }

    private static double[][] errorsOf(List<String> findings) {
        return findings.stream().map(id -> scores("error/" + id)).toArray(double[][]::new);
    }

    private static double[][] ownOf(List<String> findings) {
        return findings.stream().map(id -> scores("own/" + id)).toArray(double[][]::new);
    }

    private static double[] scores(String id) {
        return Draws.scores(id, SEED, DRAWS);
    }

    private static double[] less(double[] a, double[] b) {
        double[] differences = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            differences[i] = a[i] - b[i];
        }
        return differences;
    }

    /** Kolmogorov and Smirnov: the largest distance between a distribution function and that of the draws. */
    private static void assertLaw(DoubleUnaryOperator law, double[] draws, String what) {
        double[] sorted = draws.clone();
        Arrays.sort(sorted);
        double distance = 0;
        for (int i = 0; i < sorted.length; i += 25) {
            double expected = law.applyAsDouble(sorted[i]);
            distance = Math.max(distance, Math.abs(expected - (i + 0.5) / sorted.length));
        }
        assertTrue(distance < KOLMOGOROV, what + ": distance " + distance + " beyond " + KOLMOGOROV);
    }
}
