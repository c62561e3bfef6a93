package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.footprint.FootprintRatio;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.uncertainty.Summary;

/** Studies are pooled by what they differ by; the interval says of what it speaks. Figures in kg CO2e per kg protein. */
class StudyHierarchyTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final double COVERAGE = 0.9;

    private static Asked asked() {
        return Asked.of(LIBRARY).grade(Grade.SECONDARY);
    }

    private static Footprint footprint(String product, IntervalOf of, long seed, int draws) {
        return asked().of(of).some(product).footprint(new CommonRandomNumbers(seed, draws));
    }

    private static Footprint footprint(String product, long seed) {
        return footprint(product, IntervalOf.STUDY, seed, 10_000);
    }

    @ParameterizedTest
    @EnumSource(IntervalOf.class)
    void a_product_beside_itself_is_exactly_one_times_itself(IntervalOf of) {
        CommonRandomNumbers random = new CommonRandomNumbers(1, 2_000);
        Footprint one = asked().of(of).some("beef").footprint(random);
        Footprint other = asked().of(of).some("beef").footprint(random);

        Summary ratio = one.over(other).bothWays(COVERAGE).forth();

        assertEquals(List.of(1.0, 1.0, 1.0), List.of(ratio.low(), ratio.median(), ratio.high()));
        assertTrue(Arrays.stream(one.dividedBy(other)).allMatch(times -> times == 1));
    }

    @Test
    void the_next_study_is_less_sure_than_the_mean_and_the_next_farm_less_than_the_next_study() {
        double before = 1;
        for (IntervalOf of : IntervalOf.values()) {
            Summary summary = footprint("beef", of, 1, 10_000).summary(COVERAGE);
            double width = summary.high() / summary.low();
            assertTrue(width > 1.2 * before, of + " spans a factor of " + width);
            assertEquals(156.3, summary.median(), 1.0, of.id());
            before = width;
        }
    }

    @Test
    void where_no_survey_says_how_farms_differ_nothing_is_known_of_the_next_one() {
        Evidence evidence = asked().of(IntervalOf.FARM).evidence("mealworm");

        String reason = assertInstanceOf(Evidence.NoEvidence.class, evidence).reason();
        assertTrue(reason.contains("how much its farms differ") && reason.contains("of=study"), reason);
    }

    /** 724 farms, whose logarithms differ by 0.6: the middle is known to 0.02, and what the next farm adds is 0.6. */
    @Test
    void a_survey_errs_by_its_dispersion_over_the_root_of_its_farms() {
        Harmonised survey = asked().luc(LandUseChange.INCLUDE)
                .at("retail")
                .some("beef")
                .findings()
                .filter(finding -> finding.result().farms().orElse(1) == 724)
                .findFirst()
                .orElseThrow();

        assertEquals(survey.reading().lnSd() / Math.sqrt(724), survey.lnError(), 1e-15);
        assertEquals(survey.reading().lnSd(), survey.farmLnSd().orElseThrow(), 1e-15);
    }

    @Test
    void a_number_alone_errs_as_is_assumed_and_its_conversion_is_no_part_of_that() {
        Harmonised alone = Asked.of(LIBRARY)
                .only("oonincx-deboer-2012")
                .some("mealworm")
                .findings()
                .findFirst()
                .orElseThrow();

        assertTrue(alone.says(Note.Codes.ASSUMED_SPREAD));
        assertEquals(Math.log(alone.geometricSd()), alone.lnError(), 1e-12);
        assertTrue(alone.farmLnSd().isEmpty());
    }

    @Test
    void beef_of_beef_herds_and_of_dairy_herds_counts_half_and_half_within_a_study() {
        Evidence.PooledEvidence beef = asked().some("beef");
        Study study = beef.study("poore-nemecek-2018").orElseThrow();

        double logarithms = study.findings().stream()
                .mapToDouble(finding -> Math.log(finding.central()))
                .average()
                .orElseThrow();

        assertEquals(2, study.findings().size());
        assertEquals(Math.exp(logarithms), beef.hierarchy().orElseThrow().found(study), 1e-9);
        assertTrue(beef.hierarchy().orElseThrow().averagesProducts());
        assertEquals(
                List.of("beef-beef-herd", "beef-dairy-herd"),
                beef.hierarchy().orElseThrow().averagedProducts().toList());
    }

    /**
     * The large survey errs by 2 % (hundreds of farms), the others by about 22 %: by error alone it would have nearly all the weight. What studies
     * differ beyond their errors bounds it, w = 1/(s² + τ²), here by Simpson's rule over τ.
     */
    @Test
    void what_lies_between_studies_bounds_the_weight_of_a_large_survey() {
        Evidence.PooledEvidence beef = asked().some("beef");
        Study survey = beef.study("poore-nemecek-2018").orElseThrow();
        double[] found = beef.studies().stream()
                .mapToDouble(study -> Math.log(beef.hierarchy().orElseThrow().found(study)))
                .toArray();
        double[] errors = beef.studies().stream()
                .mapToDouble(study -> beef.hierarchy().orElseThrow().error(study))
                .toArray();
        int place = beef.studies().indexOf(survey);
        int steps = 20_000;
        double sum = 0;
        double all = 0;
        double byErrorAlone = 0;
        for (int i = 0; i <= steps; i++) {
            double tau = 3.0 * i / steps;
            double total = 0;
            double mean = 0;
            double log = -tau * tau / (2 * 0.5 * 0.5);
            for (int k = 0; k < found.length; k++) {
                double weight = 1 / (errors[k] * errors[k] + tau * tau);
                total += weight;
                mean += weight * found[k];
                log += 0.5 * Math.log(weight);
            }
            mean /= total;
            log -= 0.5 * Math.log(total);
            for (int k = 0; k < found.length; k++) {
                log -= 0.5 * (found[k] - mean) * (found[k] - mean) / (errors[k] * errors[k] + tau * tau);
            }
            double simpson = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            double share = 1 / (errors[place] * errors[place] + tau * tau) / total;
            byErrorAlone = i == 0 ? share : byErrorAlone;
            sum += simpson * Math.exp(log) * share;
            all += simpson * Math.exp(log);
        }

        assertEquals(sum / all, beef.weight(survey), 5e-4);
        assertTrue(errors[place] < 0.03, "standard error of ln " + errors[place]);
        assertTrue(byErrorAlone > 0.8, "by error alone " + byErrorAlone);
        assertTrue(beef.weight(survey) < 0.4, "of ten studies " + beef.weight(survey));
    }

    @Test
    void a_pool_with_a_number_that_reaches_zero_stays_on_the_linear_scale() {
        Evidence.PooledEvidence cricket =
                Asked.of(LIBRARY).at("animal").per(FunctionalUnit.KG_LIVE).some("house-cricket");

        assertTrue(cricket.hierarchy().isEmpty());
        assertEquals(
                1.0 / cricket.studies().size(), cricket.weight(cricket.studies().get(0)), 1e-12);
    }

    /** The standard deviation of printed ends over 50 seeds, in parts of the end. */
    @ParameterizedTest
    @ValueSource(strings = {"mealworm", "beef", "chicken", "milk"})
    void printed_ends_hold_whatever_the_seed(String product) {
        List<Summary> seeds = IntStream.rangeClosed(1, 50)
                .mapToObj(seed -> footprint(product, seed).summary(COVERAGE))
                .toList();

        assertTrue(scatter(seeds.stream().mapToDouble(Summary::low).toArray()) < 0.002, "low end");
        assertTrue(scatter(seeds.stream().mapToDouble(Summary::median).toArray()) < 0.002, "median");
        assertTrue(scatter(seeds.stream().mapToDouble(Summary::high).toArray()) < 0.002, "high end");
    }

    /** The 10th percentile of the ratio, by a million draws, in five parts of 200 000. */
    @ParameterizedTest
    @CsvSource({"beef, mealworm", "beef, chicken", "pork, mealworm"})
    void a_ratio_of_at_least_so_much_is_never_more_than_that_of_a_million_draws(String reference, String product) {
        double settled = IntStream.rangeClosed(1, 5)
                .mapToDouble(seed -> ratio(reference, product, seed, 200_000).quantileOfTenth())
                .average()
                .orElseThrow();
        double[] least = IntStream.rangeClosed(1, 50)
                .mapToDouble(seed -> ratio(reference, product, seed, 10_000).least())
                .toArray();

        assertTrue(Arrays.stream(least).allMatch(value -> value <= settled), Arrays.toString(least) + " of " + settled);
        assertTrue(Arrays.stream(least).allMatch(value -> value > 0.98 * settled), Arrays.toString(least));
    }

    private record Tenth(double least, double quantileOfTenth) {}

    private static Tenth ratio(String reference, String product, long seed, int draws) {
        CommonRandomNumbers random = new CommonRandomNumbers(seed, draws);
        FootprintRatio ratio = asked().some(reference)
                .footprint(random)
                .over(asked().some(product).footprint(random));
        return new Tenth(ratio.exceeded(0.9), ratio.bothWays(0.8).forth().low());
    }

    private static double scatter(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        double squares = Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .sum();
        return Math.sqrt(squares / (values.length - 1)) / mean;
    }

    /** Draws and distribution are two ways to one thing. */
    @Test
    void the_draws_have_the_quantiles_of_the_distribution() {
        Footprint beef = footprint("beef", IntervalOf.STUDY, 3, 100_000);
        Summary drawn = Summary.of(beef.draws(), COVERAGE);
        Summary read = beef.summary(COVERAGE);

        assertEquals(read.low(), drawn.low(), 0.015 * read.low());
        assertEquals(read.median(), drawn.median(), 0.01 * read.median());
        assertEquals(read.high(), drawn.high(), 0.015 * read.high());
        assertEquals(read.mean(), drawn.mean(), 0.01 * read.mean());
    }
}
