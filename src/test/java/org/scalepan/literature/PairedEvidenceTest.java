package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.ask.InventedResults;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.uncertainty.PublishedSpread;
import org.scalepan.uncertainty.RandomEffects;
import org.scalepan.uncertainty.SpreadKind;

/** Ratios out of single studies, and when and by what variances they are pooled. */
class PairedEvidenceTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final List<String> STUDIES = List.of("oonincx-2010", "dreyer-2021", "thevenot-2018");

    @TempDir
    Path folder;

    /** The library holds two studies of milk and beef at the farm gate that count land-use change; two intervals of one degree of freedom would run from 0.04 to 295. */
    @Test
    void two_studies_are_shown_and_not_pooled() {
        PairedEvidence paired = between(Asked.of(LIBRARY).luc(LandUseChange.INCLUDE), LIBRARY, "milk", "beef");

        assertEquals(2, paired.ratios().size());
        assertTrue(paired.pooled().isEmpty());
    }

    /**
     * Invented: three studies find 2, 4 and 8 times; each side has the 95 % limits value ÷ 1.48 and value × 1.48, so a standard error of ln
     * 1.48/1.96 = 0.200022 a side and a variance of 2 × 0.040009 = 0.080018 a ratio. By hand: weights 12.4972, mean ln 4 = 1.386294,
     * Q = 2 × 0.480453 × 12.4972 = 12.00867, τ² = (Q − 2)/(37.4916 − 12.4972) = 0.400436; the three are spaced evenly, so Hartung and Knapp's
     * error is √(0.480453/3) = 0.400188, more than √(0.480454/3), and t with 2 degrees of freedom is 4.302653.
     */
    @Test
    void three_studies_are_pooled_by_their_sampling_variances() {
        InventedResults invented = new InventedResults(folder);
        double[] times = {2, 4, 8};
        for (int i = 0; i < 3; i++) {
            invented.ci95("cockroach", STUDIES.get(i), 1 / 1.48, 1.48)
                    .ci95("sun-beetle", STUDIES.get(i), times[i] / 1.48, times[i] * 1.48);
        }
        PairedEvidence paired = live(invented.library());

        paired.ratios()
                .forEach(ratio -> assertEquals(0.080018, ratio.samplingVariance(), 1e-6, "ln² of " + ratio.study()));
        RandomEffects.Pooled pooled = paired.pooled().orElseThrow();
        assertEquals(1.386294, pooled.mean(), 1e-6, "ln ratio");
        assertEquals(0.400436, pooled.tau2(), 5e-5);
        assertEquals(4 * Math.exp(-4.302653 * 0.400188), PairedEvidence.low(pooled), 1e-3, "times, 2.5th percentile");
        assertEquals(4 * Math.exp(4.302653 * 0.400188), PairedEvidence.high(pooled), 1e-2, "times, 97.5th percentile");
    }

    /** Invented: single cases without a published error. The default of a result counts once for the ratio, and not for each side. */
    @Test
    void a_single_case_takes_the_default_spread_once() {
        InventedResults invented = new InventedResults(folder);
        STUDIES.forEach(
                study -> invented.exact("cockroach", study, 2, "kg-live").exact("sun-beetle", study, 8, "kg-live"));
        Library library = invented.library();
        double error = Math.log(library.spreadDefaults().result());
        PairedEvidence paired = live(library);

        paired.ratios().forEach(ratio -> assertEquals(error * error, ratio.samplingVariance(), 1e-12, "ln²"));
        // Three that agree: the factor is 1, and t with 2 degrees of freedom 4.302653.
        assertEquals(
                4 * Math.exp(-4.302653 * error / Math.sqrt(3)),
                PairedEvidence.low(paired.pooled().orElseThrow()),
                1e-5,
                "times, 2.5th percentile");
    }

    /** 90 % of farms between 1 and e^3.28971: a standard deviation of ln of 1, and of the mean of 100 farms of 0.1. */
    @Test
    void what_lies_between_the_farms_of_a_survey_is_divided_by_their_number() {
        PublishedSpread farms = new PublishedSpread(
                SpreadKind.P5_P95,
                OptionalDouble.empty(),
                false,
                OptionalDouble.of(1),
                OptionalDouble.of(Math.exp(3.2897073)),
                new TreeMap<>());

        assertEquals(0.01, SamplingError.published(farms, OptionalInt.of(100)).orElseThrow(), 1e-8, "ln²");
        assertTrue(SamplingError.published(farms, OptionalInt.empty()).isEmpty(), "no number of farms, no error");
        assertTrue(SamplingError.published(farms, OptionalInt.of(1)).isEmpty(), "one farm is no survey");
    }

    private static PairedEvidence live(Library library) {
        return between(Asked.of(library).per(FunctionalUnit.KG_LIVE), library, "cockroach", "sun-beetle");
    }

    private static PairedEvidence between(Asked asked, Library library, String product, String reference) {
        return PairedEvidence.between(library, asked.some(product), asked.some(reference));
    }
}
