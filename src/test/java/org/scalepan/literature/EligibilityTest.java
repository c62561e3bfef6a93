package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;

/** Which published results are eligible for a question, and what is reported about the others. */
class EligibilityTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static String whyNot(Evidence evidence, String result) {
        return evidence.unused().stream()
                .filter(item -> item.result().id().equals(result))
                .findFirst()
                .orElseThrow(() -> new AssertionError(result + " is not among " + evidence.unused()))
                .reason();
    }

    private static Evidence.NoEvidence none(Evidence evidence) {
        return assertInstanceOf(Evidence.NoEvidence.class, evidence);
    }

    /** The chain is kenya, eastern-africa, sub-saharan-africa, africa, world; the first with a result is used, and reported. */
    @ParameterizedTest
    @CsvSource({
        "milk, farm-gate, kenya,    kenya",
        "milk, farm-gate, ethiopia, eastern-africa",
        "milk, farm-gate, nigeria,  sub-saharan-africa",
        "milk, farm-gate, egypt,    northern-africa",
        "milk, retail,    kenya,    eastern-africa",
        "milk, retail,    egypt,    africa",
        "beef, farm-gate, kenya,    world"
    })
    void the_nearest_region_with_a_result_is_taken_and_reported(
            String product, String boundary, String asked, String used) {
        Evidence.PooledEvidence some = Asked.of(LIBRARY)
                .at(boundary)
                .in(asked)
                .per(FunctionalUnit.KG_EDIBLE)
                .some(product);
        assertEquals(used, some.regionUsed());
        some.findings()
                .forEach(item -> assertTrue(
                        LIBRARY.regions().contains(used, item.result().region()),
                        item.result().id()));
    }

    @Test
    void results_outside_the_region_are_reported() {
        Evidence.PooledEvidence kenya =
                Asked.of(LIBRARY).in("kenya").per(FunctionalUnit.KG_EDIBLE).some("milk");
        assertEquals("it is about eu-27, outside kenya", whyNot(kenya, "leip-jrc-2010.milk.ghg.kg-product"));
    }

    @Test
    void the_way_out_to_the_world_has_no_gap() {
        assertEquals(
                List.of("kenya", "eastern-africa", "sub-saharan-africa", "africa", "world"),
                LIBRARY.regions().outwards("kenya"));
    }

    @Test
    void only_pinned_sources_are_eligible() {
        Evidence.PooledEvidence some = Asked.of(LIBRARY).only("dreyer-2021").some("mealworm");
        assertEquals(List.of("dreyer-2021"), some.sources());
        assertEquals("sources= pins others", whyNot(some, "oonincx-deboer-2012.mealworm.ghg.kg-protein"));
    }

    @Test
    void excluded_sources_are_not_used() {
        Evidence.PooledEvidence some = Asked.of(LIBRARY).without("dreyer-2021").some("mealworm");
        assertEquals(List.of("oonincx-deboer-2012", "paris-2024"), some.sources());
        assertEquals("exclude= drops its source", whyNot(some, "dreyer-2021.mealworm.ghg.kg-protein"));
    }

    @Test
    void numbers_from_memory_drop_out_under_a_better_grade() {
        Asked asked = Asked.of(LIBRARY);
        assertEquals(
                Set.of("dreyer-2021", "oonincx-deboer-2012", "paris-2024"),
                new TreeSet<>(asked.some("mealworm").sources()));
        Evidence.PooledEvidence seen = asked.grade(Grade.SECONDARY).some("mealworm");
        assertEquals(List.of("dreyer-2021", "paris-2024"), seen.sources());
        assertEquals(
                "its check grade is memory, below grade=secondary",
                whyNot(seen, "oonincx-deboer-2012.mealworm.ghg.kg-protein"));
    }

    @Test
    void a_number_from_memory_is_marked_as_one() {
        Harmonised memory = Asked.of(LIBRARY)
                .only("oonincx-deboer-2012")
                .some("mealworm")
                .findings()
                .findFirst()
                .orElseThrow();
        assertTrue(memory.notes().stream().anyMatch(note -> note.code().equals(Note.Codes.MEMORY_GRADED)));
    }

    /** An invented result of housefly larvae was seen, but that they are eaten whole is from memory. */
    @Test
    void a_number_that_was_seen_but_converted_from_memory_is_marked_and_drops_out_too(@TempDir Path path) {
        Library own = new OwnFolder(path)
                .rowLike(
                        "results",
                        "oonincx-2010.cockroach.ghg.kg-live",
                        Map.of("id", "invented.housefly", "finding", "invented.housefly", "product", "housefly"))
                .library();
        Asked asked = Asked.of(own).at("animal").per(FunctionalUnit.KG_EDIBLE);
        Harmonised larvae = asked.some("housefly").findings().findFirst().orElseThrow();
        assertEquals(Grade.SECONDARY, larvae.result().cited().check());
        assertEquals(
                List.of("converted with edible-fraction from memory (common-practice.housefly.fresh.edible-fraction)"),
                larvae.notes().stream()
                        .filter(note -> note.code().equals(Note.Codes.MEMORY_CONVERSION))
                        .map(Note::text)
                        .toList());
        String why =
                "what converts it to kg-edible (common-practice.housefly.fresh.edible-fraction) is of a grade below"
                        + " grade=secondary; grade=memory uses it";
        Evidence.NoEvidence unseen = none(asked.grade(Grade.SECONDARY).evidence("housefly"));
        assertEquals(why, whyNot(unseen, "invented.housefly"));
        assertTrue(unseen.reason().contains(why), unseen.reason());
        assertEquals(
                1,
                asked.per(FunctionalUnit.KG_LIVE)
                        .grade(Grade.SECONDARY)
                        .some("housefly")
                        .findings()
                        .count(),
                "per kg live no conversion is needed");
    }

    @Test
    void a_result_under_another_set_without_gas_shares_is_kept_marked_and_dropped_when_strict() {
        Asked asked = Asked.of(LIBRARY).gwp("ar6-100").only("oonincx-deboer-2012");
        Harmonised kept = asked.some("mealworm").findings().findFirst().orElseThrow();
        assertEquals(14, kept.central(), 1e-9, "kg CO2e per kg protein, as published");
        assertTrue(
                kept.notes().stream()
                        .anyMatch(
                                note -> note.code().equals(Note.Codes.OTHER_WARMING_SET)
                                        && note.text()
                                                .equals(
                                                        "it is under ar4-100 and its gas shares are not published; kept as published")));
        assertEquals(
                "it is under ar4-100 and its gas shares are not published (strict)",
                whyNot(none(asked.strict().evidence("mealworm")), "oonincx-deboer-2012.mealworm.ghg.kg-protein"));
    }

    @Test
    void a_result_that_states_no_set_is_dropped_when_strict_and_one_under_the_set_asked_stays() {
        assertEquals(
                "its warming set is not stated (strict)",
                whyNot(
                        none(Asked.of(LIBRARY).strict().only("dreyer-2021").evidence("mealworm")),
                        "dreyer-2021.mealworm.ghg.kg-protein"));
        assertEquals(
                14,
                Asked.of(LIBRARY)
                        .strict()
                        .gwp("ar4-100")
                        .only("oonincx-deboer-2012")
                        .some("mealworm")
                        .findings()
                        .findFirst()
                        .orElseThrow()
                        .central(),
                1e-9,
                "kg CO2e per kg protein");
    }

    /** Oonincx et al. 2010: cattle, 2.85 kg CO2e per kg gain under AR4, all of it methane; 2.85 x 27 / 25 = 3.078. */
    @Test
    void pure_methane_is_re_based_by_the_published_share() {
        Harmonised cattle = Asked.of(LIBRARY)
                .at("animal")
                .per(FunctionalUnit.KG_LIVE)
                .strict()
                .some("beef")
                .findings()
                .findFirst()
                .orElseThrow();
        assertEquals(3.078, cattle.central(), 1e-9, "kg CO2e per kg live gain");
    }

    @Test
    void a_feed_conversion_never_counts_dry_feed_with_feed_as_fed() {
        Asked live = Asked.of(LIBRARY).at("animal").per(FunctionalUnit.KG_LIVE);
        live.indicator("feed")
                .some("mealworm")
                .findings()
                .forEach(item -> assertTrue(
                        Set.of("as-fed", "not-stated")
                                .contains(item.result().feedBasis().orElseThrow()),
                        item.result().id()));
        List<Harmonised> dry =
                live.indicator("feed-dry-matter").some("mealworm").findings().toList();
        assertEquals(
                List.of("fasce-2022"),
                dry.stream()
                        .map(item -> item.result().cited().source())
                        .distinct()
                        .toList());
        dry.forEach(item -> assertEquals("dry-matter", item.result().feedBasis().orElseThrow()));
    }

    @Test
    void a_feed_conversion_that_hides_its_basis_is_marked() {
        Harmonised cricket = Asked.of(LIBRARY)
                .indicator("feed")
                .at("animal")
                .per(FunctionalUnit.KG_LIVE)
                .only("van-huis-2013")
                .some("house-cricket")
                .findings()
                .findFirst()
                .orElseThrow();
        assertEquals(1.7, cricket.central(), 1e-9, "kg feed per kg live");
        assertTrue(cricket.notes().stream().anyMatch(note -> note.code().equals(Note.Codes.FEED_BASIS_NOT_STATED)));
    }

    @Test
    void water_withdrawn_and_water_footprint_are_two_questions() {
        Asked beef = Asked.of(LIBRARY).per(FunctionalUnit.KG_EDIBLE);
        assertEquals(
                List.of("poore-nemecek-2018"),
                beef.indicator("water").at("retail").some("beef").sources());
        assertTrue(beef.indicator("water-footprint").at("farm-gate").some("beef").sources().stream()
                .allMatch(source -> source.startsWith("mekonnen-hoekstra")));
        assertEquals(
                "no published water result of yellow mealworm is in this library; water-footprint, which counts another thing, is held",
                none(Asked.of(LIBRARY).indicator("water").evidence("mealworm")).reason());
        assertEquals(
                1,
                Asked.of(LIBRARY)
                        .indicator("water-footprint")
                        .some("mealworm")
                        .findings()
                        .count());
    }

    @Test
    void fresh_larvae_meal_and_defatted_meal_are_never_mixed() {
        Asked asked = Asked.of(LIBRARY).at("processing-gate").per(FunctionalUnit.KG_PROTEIN);
        assertEquals(
                List.of("uk-defra-bsf-lca-2024"),
                asked.some("black-soldier-fly:meal").sources());
        assertEquals(
                List.of("smetana-2016"),
                asked.some("black-soldier-fly:defatted-meal").sources());
        assertEquals(
                List.of("salomone-2017"), asked.some("black-soldier-fly:dried").sources());
        assertEquals(
                "it is about the form meal; ask for black-soldier-fly:meal",
                whyNot(
                        asked.evidence("black-soldier-fly"),
                        "uk-defra-bsf-lca-2024.black-soldier-fly.food-waste.ghg.kg-protein"));
    }

    @Test
    void palm_weevil_has_no_result_and_none_of_another_species_is_used() {
        assertEquals(
                "no published ghg result of palm weevil is in this library",
                none(Asked.of(LIBRARY).evidence("palm-weevil")).reason());
    }

    /** Land after the farm is nil: an invented retail result without a split of its own stands at the farm gate. */
    @Test
    void land_at_retail_stands_at_the_farm_gate_with_a_note(@TempDir Path path) {
        Library own = land(new OwnFolder(path), "invented.retail", "retail").library();
        Harmonised finding = Asked.of(own)
                .indicator("land")
                .only("lundy-parrella-2015")
                .some("mealworm")
                .findings()
                .findFirst()
                .orElseThrow();
        assertTrue(finding.says(Note.Codes.LAND_FROM_RETAIL));
        assertEquals(5, finding.central(), 1e-9, "m2*yr per kg protein");
    }

    @Test
    void land_that_a_study_gives_at_both_is_one_finding(@TempDir Path path) {
        Library own = land(land(new OwnFolder(path), "invented.retail", "retail"), "invented.farm", "farm-gate")
                .library();
        Evidence.PooledEvidence some =
                Asked.of(own).indicator("land").only("lundy-parrella-2015").some("mealworm");
        assertEquals(
                List.of("invented.farm"),
                some.findings().map(finding -> finding.result().id()).toList());
        assertEquals("its study has land at farm-gate too, which is the same finding", whyNot(some, "invented.retail"));
    }

    private static OwnFolder land(OwnFolder folder, String id, String boundary) {
        return folder.rowLike(
                "results",
                "oonincx-deboer-2012.mealworm.land.kg-protein",
                Map.of(
                        "id",
                        id,
                        "finding",
                        id,
                        "boundary",
                        boundary,
                        "value",
                        "5",
                        "source",
                        "lundy-parrella-2015",
                        "check",
                        "fulltext"));
    }
}
