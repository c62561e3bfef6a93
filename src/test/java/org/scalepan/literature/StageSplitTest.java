package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
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
        // 41.266 / 59.570 = 0.69273; 30.27 x 0.69273 = 20.969
        Harmonised beef = beef(poore().at("farm-gate").luc(LandUseChange.EXCLUDE));
        assertEquals(41.266 / 59.570, beef.steps().get(0).multiplier(), 1e-9);
        assertEquals(20.969, beef.central(), 0.001, "kg CO2e per 100 g protein");
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
        // (41.266 + 2.026) / 59.570 = 0.72674; 30.27 x 0.72674 = 21.998
        Harmonised beef = beef(poore().at("retail").luc(LandUseChange.EXCLUDE));
        assertEquals(21.998, beef.central(), 0.001, "kg CO2e per 100 g protein");
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
