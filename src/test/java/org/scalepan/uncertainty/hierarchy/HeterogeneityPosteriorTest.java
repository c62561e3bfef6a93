package org.scalepan.uncertainty.hierarchy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.uncertainty.RandomEffects;
import org.scalepan.uncertainty.StandardNormal;
import org.scalepan.uncertainty.hierarchy.StudyEffects.MeanGivenTau;

/** Effects and τ are natural logarithms or in the unit that the example has. */
class HeterogeneityPosteriorTest {
    /** Crins and others 2014, log odds ratios as analysed in Röver 2020, J. Stat. Softw. 93(6), section 3.3. */
    private static final StudyEffects CRINS = StudyEffects.of(
            new double[] {
                -2.309702560763, -0.459532329378, -2.302585092994, -1.757857917552, -1.258460989610, -2.417895939505
            },
            new double[] {0.599476299648, 0.556395563778, 0.880340843083, 0.455868502919, 0.641996176709, 1.528810746187
            });

    /** Colditz and others 1994, JAMA 271, 698–702: cases and non-cases, vaccinated then not. */
    private static final double[][] BCG = {
        {4, 119, 11, 128},
        {6, 300, 29, 274},
        {3, 228, 11, 209},
        {62, 13536, 248, 12619},
        {33, 5036, 47, 5761},
        {180, 1361, 372, 1079},
        {8, 2537, 10, 619},
        {505, 87886, 499, 87892},
        {29, 7470, 45, 7232},
        {17, 1699, 65, 1600},
        {186, 50448, 141, 27197},
        {5, 2493, 3, 2338},
        {27, 16886, 29, 17825}
    };

    /**
     * Two to eight studies. Expected: quadrature beside this code on millions of points of τ; the reference implementation in R agrees to the figures
     * that its coarser grid has. The last row: Rubin 1981, J. Educ. Stat. 6, 377–401.
     */
    @ParameterizedTest
    @CsvSource({
        "2.639057329615 3.015534900833, 0.24 0.24, 0.5,"
                + "0.266431 0.827618, 2.301252 2.827296 3.353340, 1.995034 2.273876 2.827296 3.380716 3.659559",
        "2.639057329615, 0.24, 0.5,"
                + "0.337245 0.979982, 1.765866 2.639057 3.512249, 1.458438 1.847951 2.639057 3.430164 3.819676",
        "1.054312029772 1.199964782928 1.619388243287, 0.15 0.24 0.20, 0.5,"
                + "0.280873 0.748298, 0.888798 1.272320 1.682005, 0.553882 0.787100 1.269495 1.780684 2.018974",
        "1.054312029772 1.199964782928 1.619388243287 1.975468951319 2.002830439443, 0.15 0.24 0.20 0.30 0.24, 0.32,"
                + "0.337612 0.613652, 1.216023 1.522209 1.861415, 0.844079 1.026252 1.517921 2.046681 2.239501",
        "28 8 -3 7 -1 1 18 12, 15 10 16 11 9 11 10 18, 25,"
                + "4.951664 15.669260, -0.118608 7.879467 16.061101, -6.232677 -1.910331 7.831502 17.859163 22.403340"
    })
    void worked_examples_come_out_to_every_figure(
            String effects, String errors, double scale, String tau, String mean, String further) {
        HeterogeneityPosterior posterior =
                HeterogeneityPosterior.of(StudyEffects.of(numbers(effects), numbers(errors)), scale);

        assertArrayEquals(
                numbers(tau), new double[] {posterior.quantile(0.5), posterior.quantile(0.95)}, 5e-6 * scale, "τ");
        assertArrayEquals(
                numbers(mean), quantiles(posterior.pooledMean(), 0.05, 0.5, 0.95), 1e-6 * Math.max(1, scale), "mean");
        assertArrayEquals(
                numbers(further),
                quantiles(posterior.furtherStudy(0), 0.05, 0.1, 0.5, 0.9, 0.95),
                1e-6 * Math.max(1, scale),
                "true value of a further study");
    }

    /**
     * The paper has a prior N(0, 4²) on the mean where this code has a flat one; the test puts it on afterwards: at each τ the weight is
     * multiplied by the density of 0 under N(μ_τ, 1/Σw + 16), and the two normals are combined. Expected: printed in the paper.
     */
    @Test
    void the_published_analysis_of_six_transplant_trials_comes_out() {
        double prior = 16;
        TauGrid grid = new TauGrid(
                tau -> HeterogeneityPosterior.of(CRINS, 0.5).logDensity(tau) + logNormal(CRINS.given(tau), prior),
                0.4,
                6,
                80);
        double[] weights = new double[grid.points()];
        double[] means = new double[grid.points()];
        double[] sds = new double[grid.points()];
        double[] further = new double[grid.points()];
        double meanTau = 0;
        for (int j = 0; j < grid.points(); j++) {
            MeanGivenTau given = CRINS.given(grid.tau(j));
            double precision = 1 / (given.standardError() * given.standardError());
            weights[j] = grid.weight(j);
            means[j] = given.mean() * precision / (precision + 1 / prior);
            sds[j] = Math.sqrt(1 / (precision + 1 / prior));
            further[j] = Math.hypot(sds[j], grid.tau(j));
            meanTau += weights[j] * grid.tau(j);
        }
        NormalMixture mean = NormalMixture.of(weights, means, sds);
        NormalMixture next = NormalMixture.of(weights, means, further);

        assertEquals(0.3445, grid.quantile(0.5), 0.005, "median of τ");
        assertEquals(0.3811, meanTau, 0.005, "mean of τ");
        assertEquals(-1.5735, mean.quantile(0.5), 0.005, "median of the mean");
        assertEquals(-1.5764, mean.mean(), 0.005, "mean of the mean");
        assertEquals(0.3295, mean.sd(), 0.005, "standard deviation of the mean");
        assertArrayEquals(new double[] {-2.231, -0.926}, shortest(mean), 0.005, "shortest 95 % of the mean");
        assertEquals(-1.570, next.quantile(0.5), 0.005, "median of the next study");
        assertEquals(0.5672, next.sd(), 0.005, "standard deviation of the next study");
        assertArrayEquals(new double[] {-2.766, -0.407}, shortest(next), 0.005, "shortest 95 % of the next study");
    }

    /** With a flat prior on τ the posterior is the restricted likelihood. Expected: as in {@link RandomEffects}' tests, REML of a general library. */
    @Test
    void with_a_wide_prior_the_mode_is_the_restricted_maximum_likelihood_of_the_vaccine_trials() {
        StudyEffects trials = logRiskRatios();
        HeterogeneityPosterior posterior = HeterogeneityPosterior.of(trials, 1e4);
        double mode = IntStream.range(40_000, 70_000)
                .mapToObj(i -> i * 1e-5)
                .max((a, b) -> Double.compare(posterior.logDensity(a), posterior.logDensity(b)))
                .orElseThrow();

        assertEquals(0.3132, mode * mode, 5e-5);
        assertEquals(-0.7145, trials.given(mode).mean(), 5e-5);
        assertEquals(0.1798, trials.given(mode).standardError(), 5e-5);
    }

    @Test
    void one_study_says_nothing_of_what_lies_between_studies_so_that_the_prior_remains() {
        for (double error : new double[] {1e-12, 1e-6, 0.01, 0.24, 3, 1e9}) {
            HeterogeneityPosterior posterior =
                    HeterogeneityPosterior.of(StudyEffects.of(new double[] {2.6}, new double[] {error}), 0.5);
            for (double p : new double[] {0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99, 0.9999}) {
                double expected = 0.5 * StandardNormal.score((1 + p) / 2);
                assertEquals(
                        expected, posterior.quantile(p), 1e-3 * expected, "at " + p + " with an error of " + error);
            }
            assertEquals(0.5 * Math.sqrt(2 / Math.PI), posterior.mean(), 1e-4, "mean with an error of " + error);
            assertEquals(1, posterior.shares()[0], 1e-12);
            double sd = Math.sqrt(error * error + 0.25);
            assertEquals(sd, posterior.pooledMean().sd(), 1e-6 * sd, "spread of the mean");
        }
    }

    @Test
    void with_next_to_no_room_between_studies_the_mean_is_the_fixed_one() {
        StudyEffects studies = StudyEffects.of(new double[] {1, 1.4, 0.7}, new double[] {0.2, 0.3, 0.4});
        NormalMixture mean = HeterogeneityPosterior.of(studies, 1e-6).pooledMean();

        double weight = 1 / 0.04 + 1 / 0.09 + 1 / 0.16;
        assertEquals((1 / 0.04 + 1.4 / 0.09 + 0.7 / 0.16) / weight, mean.mean(), 1e-9);
        assertEquals(Math.sqrt(1 / weight), mean.sd(), 1e-9);
    }

    /** Two hundred studies drawn with τ = 0.3: what little the prior says no longer counts. */
    @Test
    void with_many_studies_it_agrees_with_the_moments_of_dersimonian_and_laird() {
        SplittableRandom random = new SplittableRandom(7);
        double[] effects = new double[200];
        double[] errors = new double[200];
        double[] variances = new double[200];
        for (int i = 0; i < 200; i++) {
            errors[i] = 0.1 + 0.1 * random.nextDouble();
            variances[i] = errors[i] * errors[i];
            effects[i] = 2 + 0.3 * normal(random) + errors[i] * normal(random);
        }
        RandomEffects.Pooled moments = RandomEffects.pool(effects, variances);
        HeterogeneityPosterior posterior = HeterogeneityPosterior.of(StudyEffects.of(effects, errors), 0.5);

        assertEquals(Math.sqrt(moments.tau2()), posterior.mean(), 0.02, "τ");
        assertEquals(moments.mean(), posterior.pooledMean().mean(), 0.05 * moments.standardError(), "mean");
        assertEquals(moments.standardError(), posterior.pooledMean().sd(), 0.03 * moments.standardError(), "its error");
    }

    /** What the fineness of the grid is worth: against four times as many steps, over all sorts of studies. */
    @Test
    void a_finer_grid_moves_what_is_printed_by_less_than_one_in_a_thousand() {
        double worst = 0;
        for (Example example : examples()) {
            HeterogeneityPosterior grid = HeterogeneityPosterior.of(example.studies(), example.scale());
            HeterogeneityPosterior finer =
                    HeterogeneityPosterior.of(example.studies(), example.scale(), 4 * HeterogeneityPosterior.INTERVALS);
            worst = Math.max(worst, apart(finer.mean(), grid.mean(), finer.mean(), example + ": mean of τ"));
            NormalMixture mean = grid.pooledMean();
            NormalMixture finerMean = finer.pooledMean();
            NormalMixture next = grid.nextStatement();
            NormalMixture finerNext = finer.nextStatement();
            for (double p : new double[] {0.025, 0.05, 0.25, 0.5, 0.9, 0.975, 0.999}) {
                double tau = finer.quantile(p);
                worst = Math.max(worst, apart(tau, grid.quantile(p), tau, example + ": τ at " + p));
                // Relative to their spread, since in another unit they would have another size.
                apart(finerMean.quantile(p), mean.quantile(p), finerMean.sd(), example + ": mean at " + p);
                apart(finerNext.quantile(p), next.quantile(p), finerNext.sd(), example + ": next at " + p);
            }
            double[] shares = grid.shares();
            double[] finerShares = finer.shares();
            for (int i = 0; i < example.studies().size(); i++) {
                apart(finerShares[i], shares[i], 1, example + ": share of study " + i);
            }
        }
        assertTrue(worst > 0, "grids of different fineness cannot agree to the last bit");
    }

    private static double apart(double expected, double actual, double size, String what) {
        assertEquals(expected, actual, 1e-3 * size, what);
        return Math.abs(expected - actual) / size;
    }

    /** Expected: quadrature beside this code, to sixty scales. */
    @Test
    void studies_that_differ_far_beyond_the_prior_are_not_cut_off_where_the_prior_ends() {
        HeterogeneityPosterior posterior =
                HeterogeneityPosterior.of(StudyEffects.of(new double[] {0, 100}, new double[] {0.1, 0.1}), 0.5);

        assertEquals(5.94519, posterior.quantile(0.5), 1e-4, "median of τ");
        assertEquals(6.37028, posterior.quantile(0.95), 1e-4, "95th percentile of τ");
        assertEquals(6.76707, posterior.quantile(0.999), 1e-3, "99.9th percentile of τ");
    }

    @Test
    void quantiles_of_tau_rise_from_nought_and_agree_at_scores_and_at_uniform_draws() {
        for (Example example : examples()) {
            HeterogeneityPosterior posterior = HeterogeneityPosterior.of(example.studies(), example.scale());
            double before = -1;
            for (int i = 0; i <= 1000; i++) {
                double tau = posterior.quantile(i / 1000.0);
                assertTrue(tau >= before && tau >= 0, example + ": falls at " + i / 1000.0);
                before = tau;
            }
            assertEquals(posterior.quantile(0.5), posterior.atScore(0), 0.0, example.toString());
            assertArrayEquals(
                    new double[] {posterior.quantile(0), posterior.quantile(0.3), posterior.quantile(1)},
                    posterior.at(new double[] {0, 0.3, 1}));
            assertEquals(1, Arrays.stream(posterior.shares()).sum(), 1e-9, example.toString());
        }
    }

    @Test
    void identical_effects_are_their_own_mean_to_the_last_bit_however_small_their_errors() {
        double[] effects = {3.3, 3.3, 3.3};
        HeterogeneityPosterior posterior =
                HeterogeneityPosterior.of(StudyEffects.of(effects, new double[] {1e-12, 1e-10, 0.3}), 0.5);

        assertEquals(3.3, posterior.effects().given(0).mean(), 0.0);
        assertEquals(3.3, posterior.pooledMean().quantile(0.5), 1e-9);
        assertTrue(posterior.quantile(0.5) < 0.2, "studies that agree speak for a small τ: " + posterior.quantile(0.5));
    }

    @Test
    void adding_a_number_to_every_effect_adds_it_to_the_mean_and_leaves_tau_alone() {
        for (Example example : examples()) {
            StudyEffects studies = example.studies();
            double shift = 5 * example.scale();
            HeterogeneityPosterior here = HeterogeneityPosterior.of(studies, example.scale());
            HeterogeneityPosterior there = HeterogeneityPosterior.of(
                    StudyEffects.of(each(studies, i -> studies.effect(i) + shift), errors(studies)), example.scale());
            double sd = here.pooledMean().sd();
            assertEquals(here.quantile(0.8), there.quantile(0.8), 1e-3 * here.quantile(0.8), example.toString());
            assertEquals(
                    here.pooledMean().quantile(0.2) + shift, there.pooledMean().quantile(0.2), 1e-3 * sd, "" + example);
        }
    }

    @Test
    void the_order_of_the_studies_does_not_matter() {
        for (Example example : examples()) {
            StudyEffects studies = example.studies();
            int last = studies.size() - 1;
            HeterogeneityPosterior here = HeterogeneityPosterior.of(studies, example.scale());
            HeterogeneityPosterior turned = HeterogeneityPosterior.of(
                    StudyEffects.of(
                            each(studies, i -> studies.effect(last - i)),
                            each(studies, i -> studies.standardError(last - i))),
                    example.scale());
            double sd = here.pooledMean().sd();
            assertEquals(here.quantile(0.8), turned.quantile(0.8), 1e-9 * here.quantile(0.8), example.toString());
            assertEquals(here.pooledMean().quantile(0.2), turned.pooledMean().quantile(0.2), 1e-9 * sd, "" + example);
            assertEquals(here.shares()[0], turned.shares()[last], 1e-9, example.toString());
        }
    }

    @Test
    void in_another_unit_everything_is_the_same_but_for_the_unit() {
        for (Example example : examples()) {
            StudyEffects studies = example.studies();
            HeterogeneityPosterior here = HeterogeneityPosterior.of(studies, example.scale());
            HeterogeneityPosterior there = HeterogeneityPosterior.of(
                    StudyEffects.of(
                            each(studies, i -> -7 * studies.effect(i)),
                            each(studies, i -> 7 * studies.standardError(i))),
                    7 * example.scale());
            double sd = here.nextStatement().sd();
            assertEquals(7 * here.quantile(0.8), there.quantile(0.8), 1e-7 * here.quantile(0.8), example.toString());
            assertEquals(
                    -7 * here.nextStatement().quantile(0.1),
                    there.nextStatement().quantile(0.9),
                    1e-7 * sd + 1e-14,
                    "" + example);
        }
    }

    @Test
    void numbers_out_of_range_are_refused() {
        double[] one = {1};
        assertRefused("pooling needs at least one study", () -> StudyEffects.of(new double[0], new double[0]));
        assertRefused(
                "effects and standard errors must be equally many, not 2 and 1",
                () -> StudyEffects.of(new double[2], one));
        assertRefused(
                "effect 0 must be within ±1.0E12, not NaN", () -> StudyEffects.of(new double[] {Double.NaN}, one));
        assertRefused("standard error 0 must be 1.0E-12 to 1.0E12, not 0.0", () -> StudyEffects.of(one, new double[1]));
        StudyEffects studies = StudyEffects.of(one, one);
        assertRefused("scale must be 1.0E-12 to 1.0E12, not 0.0", () -> HeterogeneityPosterior.of(studies, 0));
        HeterogeneityPosterior posterior = HeterogeneityPosterior.of(studies, 1);
        assertRefused("probability must be within 0 and 1, not NaN", () -> posterior.quantile(Double.NaN));
        assertRefused("error variance must be zero or more and finite, not -1.0", () -> posterior.furtherStudy(-1));
    }

    private static void assertRefused(String message, Executable call) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
    }

    private record Example(String name, StudyEffects studies, double scale) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** Few and many studies, agreeing and not, with errors far below and far above the prior's scale. */
    private static List<Example> examples() {
        List<Example> all = new ArrayList<>();
        all.add(new Example("transplants", CRINS, 0.5));
        all.add(new Example("vaccines", logRiskRatios(), 0.5));
        SplittableRandom random = new SplittableRandom(11);
        for (int k : new int[] {1, 2, 3, 5, 20, 200}) {
            for (double error : new double[] {1e-9, 1e-3, 0.05, 0.25, 2, 1e6}) {
                for (double between : new double[] {0, 0.01, 0.4, 10}) {
                    double[] effects = new double[k];
                    double[] errors = new double[k];
                    for (int i = 0; i < k; i++) {
                        errors[i] = error * (0.5 + random.nextDouble());
                        effects[i] = 1.5 + between * normal(random);
                    }
                    String name = k + " studies, error " + error + ", between " + between;
                    all.add(new Example(name, StudyEffects.of(effects, errors), 0.5));
                }
            }
        }
        all.add(new Example(
                "one precise among rough",
                StudyEffects.of(new double[] {1, 1.5, 2.5}, new double[] {1e-6, 0.3, 0.3}),
                0.5));
        all.add(new Example(
                "two camps",
                StudyEffects.of(new double[] {0, 0, 0, 0, 3}, new double[] {.01, .01, .01, .01, .01}),
                0.5));
        return all;
    }

    private static double normal(SplittableRandom random) {
        return StandardNormal.score(random.nextDouble(1e-12, 1));
    }

    private static double[] each(StudyEffects studies, IntToDoubleFunction value) {
        return IntStream.range(0, studies.size()).mapToDouble(value).toArray();
    }

    private static double[] errors(StudyEffects studies) {
        return each(studies, studies::standardError);
    }

    private static StudyEffects logRiskRatios() {
        double[] effects = new double[BCG.length];
        double[] errors = new double[BCG.length];
        for (int i = 0; i < BCG.length; i++) {
            double[] t = BCG[i];
            double vaccinated = t[0] + t[1];
            double control = t[2] + t[3];
            effects[i] = Math.log((t[0] / vaccinated) / (t[2] / control));
            errors[i] = Math.sqrt(1 / t[0] - 1 / vaccinated + 1 / t[2] - 1 / control);
        }
        return StudyEffects.of(effects, errors);
    }

    private static double logNormal(MeanGivenTau given, double prior) {
        double variance = given.standardError() * given.standardError() + prior;
        return -0.5 * Math.log(variance) - 0.5 * given.mean() * given.mean() / variance;
    }

    private static double[] shortest(NormalMixture mixture) {
        double[] best = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
        for (double p = 0.0001; p < 0.05; p += 0.0001) {
            double low = mixture.quantile(p);
            double high = mixture.quantile(p + 0.95);
            if (high - low < best[1] - best[0]) {
                best = new double[] {low, high};
            }
        }
        return best;
    }

    private static double[] quantiles(NormalMixture mixture, double... probabilities) {
        return Arrays.stream(probabilities).map(mixture::quantile).toArray();
    }

    private static double[] numbers(String words) {
        return Arrays.stream(words.trim().split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
