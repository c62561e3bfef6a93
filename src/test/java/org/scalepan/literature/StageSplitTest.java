package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;
import org.scalepan.factors.StageSplit;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;

/**
 * Poore & Nemecek 2018 end at retail with land-use change in. Data S2, sheet Results - Global Totals, splits the world total of
 * each product: beef from beef herds 59.570 kg CO2e = 16.278 land-use change + 41.266 feed and farm + 2.026 after the farm.
 */
class StageSplitTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final String SOURCE = "poore-nemecek-2018";

    private static Asked poore() {
        return Asked.of(LIBRARY).only(SOURCE).gwp("ar5-100-feedback").per(FunctionalUnit.HUNDRED_G_PROTEIN);
    }

    private static Harmonised beef(Asked asked) {
        List<Harmonised> findings = asked.some("beef-beef-herd").findings().toList();
        assertEquals(1, findings.size());
        return findings.get(0);
    }

    @Test
    void to_the_farm_gate_without_land_use_change_by_hand() {
        // After the farm: 57.544 / 59.570 = 0.96599. Of the 57.544 left 16.278 are land-use change, 0.28288: the part
        // without it is
        // drawn between 0.71712 and 1, in the middle 0.85856. 30.27 x 0.96599 x 0.85856 = 25.105
        Harmonised beef = beef(poore().at("farm-gate").luc(LandUseChange.EXCLUDE));
        HarmonisationStep.ByStages step =
                (HarmonisationStep.ByStages) beef.steps().get(0);
        assertEquals(41.266 / 59.570, step.bounds()[0], 1e-9, "with the mean share taken off");
        assertEquals(57.544 / 59.570, step.bounds()[1], 1e-9, "with nothing to take off");
        assertEquals(25.105, beef.central(), 0.001, "kg CO2e per 100 g protein");
    }

    /** Land-use change is none on most farms and a multiple of the mean on some. */
    @Test
    void the_part_without_land_use_change_is_drawn_evenly_between_one_less_its_mean_share_and_one() {
        CommonRandomNumbers random = new CommonRandomNumbers(1, 20_000);
        Harmonised beef = beef(poore().at("farm-gate").luc(LandUseChange.EXCLUDE));
        double[] factor = new double[20_000];
        java.util.Arrays.fill(factor, 1);
        beef.steps().get(0).apply(factor, random);
        java.util.Arrays.sort(factor);
        assertEquals(0.69273, factor[0], 0.001, "lowest factor");
        assertEquals(0.82936, factor[10_000], 0.002, "middle");
        assertEquals(0.96599, factor[19_999], 0.001, "highest");
    }

    /** One row of the split is drawn once, so that it cancels between two questions about one product. */
    @Test
    void the_draw_belongs_to_the_row_of_the_split_and_not_to_the_question() {
        CommonRandomNumbers random = new CommonRandomNumbers(1, 1_000);
        double[] edible = new double[1_000];
        double[] protein = new double[1_000];
        java.util.Arrays.fill(edible, 1);
        java.util.Arrays.fill(protein, 1);
        beef(poore().at("farm-gate").per(FunctionalUnit.KG_EDIBLE))
                .steps()
                .get(0)
                .apply(edible, random);
        beef(poore().at("farm-gate")).steps().get(0).apply(protein, random);
        assertTrue(java.util.Arrays.equals(edible, protein));
    }

    /** An invented mean of the same source: there the split of means is one of its own, and is taken off in full. */
    @Test
    void of_a_mean_the_share_of_the_means_is_taken_off(@TempDir Path folder) {
        Library own = new OwnFolder(folder)
                .rowLike(
                        "results",
                        SOURCE + ".beef-beef-herd.ghg.100g-protein.ar5-100-feedback",
                        Map.ofEntries(
                                Map.entry("id", SOURCE + ".beef-beef-herd.ghg.100g-protein.ar5-100-feedback"),
                                Map.entry("value", "50"),
                                Map.entry("statistic", "mean"),
                                Map.entry("spread", "none"),
                                Map.entry("p5", ""),
                                Map.entry("p10", ""),
                                Map.entry("p50", ""),
                                Map.entry("p90", ""),
                                Map.entry("p95", ""),
                                Map.entry("reliability", "2"),
                                Map.entry("completeness", "2"),
                                Map.entry("technology", "1")))
                .library();
        Harmonised beef = Asked.of(own)
                .only(SOURCE)
                .gwp("ar5-100-feedback")
                .per(FunctionalUnit.HUNDRED_G_PROTEIN)
                .some("beef-beef-herd")
                .findings()
                .findFirst()
                .orElseThrow();
        assertEquals(50 * 41.266 / 59.570, beef.central(), 1e-6, "kg CO2e per 100 g protein");
        assertTrue(!beef.says(Note.Codes.SPLIT_OF_MEANS));
    }

    @Test
    void to_the_farm_gate_with_land_use_change_by_hand() {
        // (41.266 + 16.278) / 59.570 = 0.96599; 30.27 x 0.96599 = 29.2405
        Harmonised beef = beef(poore().at("farm-gate").luc(LandUseChange.INCLUDE));
        assertEquals((41.266 + 16.278) / 59.570, beef.steps().get(0).multiplier(), 1e-9);
        assertEquals(29.2405, beef.central(), 0.001, "kg CO2e per 100 g protein");
    }

    @Test
    void at_retail_without_land_use_change_by_hand() {
        // Land-use change is 16.278 / 59.570 = 0.27326 of the mean: the part without it is drawn between 0.72674 and 1,
        // in the middle
        // 0.86337. 30.27 x 0.86337 = 26.134
        Harmonised beef = beef(poore().at("retail").luc(LandUseChange.EXCLUDE));
        assertEquals(26.134, beef.central(), 0.001, "kg CO2e per 100 g protein");
    }

    @Test
    void at_retail_with_land_use_change_nothing_is_converted() {
        Harmonised beef = beef(poore().at("retail").luc(LandUseChange.INCLUDE));
        assertEquals(List.of(), beef.steps());
        assertEquals(30.27, beef.central(), 1e-9, "kg CO2e per 100 g protein");
        assertTrue(beef.notes().isEmpty(), () -> beef.notes().toString());
    }

    @Test
    void a_converted_result_says_so() {
        Note note = beef(poore()).notes().get(0);
        assertEquals(Note.Codes.BY_STAGE_SPLIT, note.code());
        assertEquals(
                "carried from retail to the farm gate and freed of land-use change by the stage proportions of its source's"
                        + " world totals",
                note.text());
    }

    /** Property: counting land-use change never makes a footprint smaller, in any draw. */
    @ParameterizedTest
    @CsvSource({
        "beef-beef-herd, farm-gate",
        "beef-dairy-herd, retail",
        "lamb, farm-gate",
        "pork, farm-gate",
        "chicken, retail",
        "egg, farm-gate",
        "cheese, retail",
        "farmed-fish, farm-gate",
        "shrimp, farm-gate",
        "tofu, farm-gate"
    })
    void land_use_change_included_is_at_least_as_much_as_excluded(String product, String boundary) {
        CommonRandomNumbers random = new CommonRandomNumbers(1, 1_000);
        Asked asked = poore().at(boundary).per(FunctionalUnit.KG_PROTEIN);
        double[] with =
                asked.luc(LandUseChange.INCLUDE).some(product).footprint(random).draws();
        double[] without =
                asked.luc(LandUseChange.EXCLUDE).some(product).footprint(random).draws();
        for (int i = 0; i < with.length; i++) {
            assertTrue(with[i] >= without[i], product + ", draw " + i + ": " + with[i] + " and " + without[i]);
        }
    }

    /**
     * Data S2 has land in three columns, all of the farm: 20.507 arable, 5.067 fallow and 168.092 permanent pasture for beef from
     * beef herds. So land at retail is land at the farm gate.
     */
    @Test
    void land_at_retail_is_land_at_the_farm_gate_because_all_of_it_arises_on_farms() {
        Harmonised gate = beef(poore().indicator("land").at("farm-gate"));
        Harmonised retail = beef(poore().indicator("land").at("retail"));

        assertEquals(1, gate.steps().get(0).multiplier(), 0);
        assertEquals(retail.central(), gate.central(), 0, "m2*yr per 100 g protein");
        assertEquals(Note.Codes.BY_STAGE_SPLIT, gate.notes().get(0).code());
    }

    @Test
    void every_split_is_whole_so_that_nothing_is_carried_by_half() {
        for (StageSplit split : LIBRARY.stageSplits()) {
            List<String> stages = LIBRARY.stageSplits().stream()
                    .filter(other -> other.product().equals(split.product())
                            && other.indicator().equals(split.indicator())
                            && other.cited().source().equals(split.cited().source()))
                    .map(StageSplit::stage)
                    .sorted()
                    .toList();
            // Greenhouse gases by stage; land by kind, all three kinds of the farm.
            List<String> whole = split.indicator().equals("ghg")
                    ? List.of("farm", "luc", "post-farm")
                    : List.of("farm", "farm", "farm");
            assertEquals(whole, stages, split.product() + " " + split.indicator());
        }
    }

    @Test
    void without_a_split_of_its_own_source_a_result_stays_at_its_boundary() {
        // Clune et al. 2017 end at the regional distribution centre and print no stages.
        Evidence evidence = Asked.of(LIBRARY).only("clune-2017").at("farm-gate").evidence("beef");
        Evidence.NoEvidence none = (Evidence.NoEvidence) evidence;
        assertTrue(
                none.unused().stream()
                        .anyMatch(item -> item.result().cited().source().equals("clune-2017")
                                && item.reason()
                                        .equals(
                                                "its boundary is retail, and its source publishes no stage split that leads"
                                                        + " to farm-gate")),
                none.reason());
    }

    @Test
    void no_result_is_converted_to_a_wider_boundary() {
        Evidence.NoEvidence none =
                (Evidence.NoEvidence) Asked.of(LIBRARY).at("retail").evidence("mealworm");
        assertTrue(
                none.reason()
                        .contains("results end at farm-gate, animal, and no published stage split leads from there"),
                none.reason());
    }

    @Test
    void of_two_statements_of_a_study_the_one_that_treats_land_use_change_as_asked_is_used() {
        // Desjardins et al. 2012, EU-27: 10.4 without and 13.3 with land-use change, kg CO2e per kg live.
        Asked asked = Asked.of(LIBRARY).only("desjardins-2012").in("eu-27").per(FunctionalUnit.KG_LIVE);
        assertEquals(10.4, only(asked.luc(LandUseChange.EXCLUDE)).central(), 1e-9, "kg CO2e per kg live");
        assertEquals(13.3, only(asked.luc(LandUseChange.INCLUDE)).central(), 1e-9, "kg CO2e per kg live");
    }

    private static Harmonised only(Asked asked) {
        List<Harmonised> findings = asked.some("beef").findings().toList();
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }
}
