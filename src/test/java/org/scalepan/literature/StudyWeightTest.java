package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.FunctionalUnit;

/** Which studies are in a pool, and with what weight. */
class StudyWeightTest {
    private static final Library LIBRARY = Libraries.bundled();

    @TempDir
    Path folder;

    /** An invented result, printed alone, of a product that has no other at the farm gate. */
    private static OwnFolder invented(OwnFolder own, String id, String finding, String source, String value) {
        Map<String, String> cells = new HashMap<>(Map.of(
                "id",
                id,
                "finding",
                finding,
                "source",
                source,
                "boundary",
                "farm-gate",
                "gwp",
                "ar6-100",
                "data_year",
                "2020"));
        cells.putAll(Map.of("value", "", "statistic", "none", "spread", "range", "low", value, "high", value));
        cells.putAll(Map.of("reliability", "", "completeness", "", "technology", ""));
        return own.rowLike("results", "oonincx-2010.cockroach.ghg.kg-live", cells);
    }

    @Test
    void a_study_with_nine_results_has_the_weight_of_a_study_with_one() {
        OwnFolder own = invented(new OwnFolder(folder), "own.one", "own.one", "oonincx-2010", "1");
        for (int i = 1; i <= 9; i++) {
            invented(own, "own.many." + i, "own.many." + i, "dreyer-2021", "100");
        }
        Evidence.PooledEvidence some =
                Asked.of(own.library()).per(FunctionalUnit.KG_LIVE).some("cockroach");
        assertEquals(2, some.studies().size());
        assertEquals(10, some.findings().count());
        for (Study study : some.studies()) {
            assertEquals(0.5, some.weight(study), 1e-12, study.id());
        }
    }

    @Test
    void the_results_of_one_study_share_its_weight_equally() {
        OwnFolder own = invented(new OwnFolder(folder), "own.a", "own.a", "dreyer-2021", "1");
        invented(own, "own.b", "own.b", "dreyer-2021", "2");
        invented(own, "own.c", "own.c", "dreyer-2021", "3");
        invented(own, "own.d", "own.d", "oonincx-2010", "4");
        Evidence.PooledEvidence some =
                Asked.of(own.library()).per(FunctionalUnit.KG_LIVE).some("cockroach");
        Study three = some.study("dreyer-2021").orElseThrow();
        for (Harmonised finding : three.findings()) {
            assertEquals(
                    1.0 / 6,
                    some.weight(three, finding),
                    1e-12,
                    finding.result().id());
        }
        assertEquals(0.5, some.weight(some.study("oonincx-2010").orElseThrow()), 1e-12);
    }

    @Test
    void alternative_statements_of_one_finding_are_not_pooled() {
        OwnFolder own = invented(new OwnFolder(folder), "own.a", "own.same", "dreyer-2021", "1");
        invented(own, "own.b", "own.same", "dreyer-2021", "2");
        assertEquals(
                List.of("own.a"),
                Asked.of(own.library())
                        .per(FunctionalUnit.KG_LIVE)
                        .some("cockroach")
                        .findings()
                        .map(finding -> finding.result().id())
                        .toList());
    }

    /** FAO's livestock assessment of 2013 was published twice; only the statement that was seen is used. */
    @Test
    void a_finding_in_two_publications_counts_once_and_the_one_that_was_seen_goes_first() {
        Asked asked = Asked.of(LIBRARY).at("retail").luc(LandUseChange.INCLUDE);
        List<String> ids =
                asked.some("beef").findings().map(f -> f.result().id()).toList();
        assertTrue(ids.contains("gerber-fao-2013.beef.ghg.kg-protein"), ids::toString);
        assertTrue(!ids.contains("opio-fao-2013.beef.ghg.kg-carcass"), ids::toString);
        List<String> without = asked.without("gerber-fao-2013")
                .some("beef")
                .findings()
                .map(f -> f.result().id())
                .toList();
        assertTrue(without.contains("opio-fao-2013.beef.ghg.kg-carcass"), without::toString);
    }

    @Test
    void of_two_units_the_one_asked_for_is_taken() {
        // Oonincx & de Boer 2012: 2.65 kg CO2e per kg live and 14 per kg protein state one finding.
        assertEquals("oonincx-deboer-2012.mealworm.ghg.kg-protein", oonincx(FunctionalUnit.KG_PROTEIN));
        assertEquals("oonincx-deboer-2012.mealworm.ghg.kg-live", oonincx(FunctionalUnit.KG_LIVE));
    }

    private static String oonincx(FunctionalUnit per) {
        List<Harmonised> findings = Asked.of(LIBRARY)
                .per(per)
                .only("oonincx-deboer-2012")
                .some("mealworm")
                .findings()
                .toList();
        assertEquals(1, findings.size());
        return findings.get(0).result().id();
    }

    /** Property, over everything the library can be asked. */
    @Test
    void no_pool_holds_a_finding_twice_a_source_twice_another_form_or_another_indicator() {
        int pools = 0;
        for (Product product : LIBRARY.products().values()) {
            for (String form : LIBRARY.ids("forms")) {
                for (String indicator : LIBRARY.indicators().keySet()) {
                    for (String boundary : LIBRARY.ids("boundaries")) {
                        Evidence evidence = Asked.of(LIBRARY)
                                .indicator(indicator)
                                .at(boundary)
                                .per(FunctionalUnit.KG_EDIBLE)
                                .evidence(product.id() + ":" + form);
                        if (evidence instanceof Evidence.PooledEvidence some) {
                            pools++;
                            sound(some, form, indicator);
                        }
                    }
                }
            }
        }
        assertTrue(pools > 50, pools + " pools");
    }

    @Test
    void the_weights_of_a_pool_add_to_one() {
        Evidence.PooledEvidence beef = Asked.of(LIBRARY).some("beef");

        assertTrue(beef.studies().size() > 1);
        assertEquals(1, beef.studies().stream().mapToDouble(beef::weight).sum(), 1e-12);
        assertEquals(
                1,
                beef.studies().stream()
                        .flatMapToDouble(
                                study -> study.findings().stream().mapToDouble(finding -> beef.weight(study, finding)))
                        .sum(),
                1e-12);
    }

    private static void sound(Evidence.PooledEvidence some, String form, String indicator) {
        List<String> sources = some.sources();
        assertEquals(sources.size(), new HashSet<>(sources).size(), sources::toString);
        List<String> findings =
                some.findings().map(item -> item.result().finding()).toList();
        assertEquals(findings.size(), new HashSet<>(findings).size(), findings::toString);
        some.findings().forEach(item -> {
            assertEquals(form, item.result().form(), item.result().id());
            assertEquals(indicator, item.result().indicator(), item.result().id());
            assertTrue(
                    item.central() > 0 && Double.isFinite(item.central()),
                    item.result().id());
        });
    }
}
