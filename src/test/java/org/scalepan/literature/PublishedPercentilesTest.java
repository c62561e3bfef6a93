package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.uncertainty.Summary;

/** On exactly the basis of a study, the service returns the published percentiles. */
class PublishedPercentilesTest {

    /**
     * Poore & Nemecek 2018, Data S2, sheet Results - Nutritional Units: kg CO2e per 100 g protein at retail with land-use change
     * under AR5 with feedback.
     */
    @ParameterizedTest
    @CsvSource({
        "beef-beef-herd,  20.25, 30.27, 105.2",
        "beef-dairy-herd,  9.088, 17.29,  25.79",
        "cheese,           4.946, 8.442,  17.81",
        "farmed-fish,      2.478, 3.46,   11.62",
        "tofu,             1.0,   1.613,   3.469",
        "groundnut,        0.6226, 1.257,  2.219"
    })
    void the_80_percent_interval_of_greenhouse_gases_is_the_published_one(
            String product, double p10, double median, double p90) {
        Summary summary = Asked.of(Libraries.bundled())
                .only("poore-nemecek-2018")
                .at("retail")
                .luc(LandUseChange.INCLUDE)
                .gwp("ar5-100-feedback")
                .per(FunctionalUnit.HUNDRED_G_PROTEIN)
                .some(product)
                .findings()
                .map(finding -> Summary.of(finding.draw(new CommonRandomNumbers(1, 10_000)), 0.8))
                .findFirst()
                .orElseThrow();
        assertEquals(p10, summary.low(), 0.03 * p10, "kg CO2e per 100 g protein, p10");
        assertEquals(median, summary.median(), 0.03 * median, "kg CO2e per 100 g protein, median");
        assertEquals(p90, summary.high(), 0.03 * p90, "kg CO2e per 100 g protein, p90");
    }

    /** The same sheet: m2·yr of land per 100 g protein. */
    @ParameterizedTest
    @CsvSource({"beef-beef-herd, 41.54, 85.44, 368.7", "peas, 1.247, 3.029, 6.386"})
    void the_80_percent_interval_of_land_is_the_published_one(String product, double p10, double median, double p90) {
        Summary summary = Asked.of(Libraries.bundled())
                .only("poore-nemecek-2018")
                .indicator("land")
                .at("retail")
                .per(FunctionalUnit.HUNDRED_G_PROTEIN)
                .some(product)
                .findings()
                .map(finding -> Summary.of(finding.draw(new CommonRandomNumbers(1, 10_000)), 0.8))
                .findFirst()
                .orElseThrow();
        assertEquals(p10, summary.low(), 0.03 * p10, "m2*yr per 100 g protein, p10");
        assertEquals(median, summary.median(), 0.03 * median, "m2*yr per 100 g protein, median");
        assertEquals(p90, summary.high(), 0.03 * p90, "m2*yr per 100 g protein, p90");
    }
}
