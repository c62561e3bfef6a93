package org.scalepan.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.Compared.SAMPLING;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.literature.LandUseChange;

/** Thin evidence is said to be thin, by codes that a client may rely on. */
class WarningsTest {
    private static final Library LIBRARY = Libraries.bundled();

    @TempDir
    Path folder;

    private static List<Warning> warnings(Library library, Asked asked, String... products) {
        List<PublishedEstimate> estimates = Stream.of(products)
                .map(product -> Estimating.estimate(library, asked.item(product), asked.basis(), SAMPLING))
                .toList();
        return Warnings.of(library, estimates);
    }

    private static Warning warning(List<Warning> warnings, String code) {
        return warnings.stream()
                .filter(warning -> warning.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not among " + warnings));
    }

    private static Set<String> codes(List<Warning> warnings) {
        return new HashSet<>(warnings.stream().map(Warning::code).toList());
    }

    @Test
    void fewer_than_three_studies_are_said_to_be_few() {
        List<Warning> warnings = warnings(LIBRARY, Asked.of(LIBRARY), "tilapia", "beef");
        assertEquals(List.of("tilapia"), warning(warnings, "few-studies").about());
    }

    @Test
    void three_studies_are_not() {
        // Egg at the farm gate: de Vries & de Boer 2010, Leinonen 2012b, Poore & Nemecek 2018.
        List<Warning> warnings = warnings(LIBRARY, Asked.of(LIBRARY), "egg");
        assertTrue(!codes(warnings).contains("few-studies"), warnings::toString);
    }

    @Test
    void a_product_without_evidence_is_named_and_not_counted_as_thin() {
        List<Warning> warnings = warnings(LIBRARY, Asked.of(LIBRARY), "palm-weevil", "egg");
        assertEquals(List.of("palm-weevil"), warning(warnings, "no-evidence").about());
        assertTrue(!codes(warnings).contains("few-studies"), warnings::toString);
    }

    @Test
    void a_wider_region_than_asked_is_told() {
        Asked ethiopia = Asked.of(LIBRARY).in("ethiopia").per(FunctionalUnit.KG_EDIBLE);
        assertEquals(
                "No result for cow's milk in Ethiopia; the nearest region with results is Eastern Africa.",
                warning(warnings(LIBRARY, ethiopia, "milk"), "region-fallback").text());
        assertTrue(!codes(warnings(LIBRARY, ethiopia.in("kenya"), "milk")).contains("region-fallback"));
    }

    @Test
    void numbers_from_memory_and_assumed_spreads_name_their_rows() {
        List<Warning> warnings = warnings(LIBRARY, Asked.of(LIBRARY), "mealworm");
        assertEquals(
                List.of("oonincx-deboer-2012.mealworm.ghg.kg-protein"),
                warning(warnings, "memory-graded").about());
        assertEquals(
                List.of(
                        "dreyer-2021.mealworm.ghg.kg-protein",
                        "oonincx-deboer-2012.mealworm.ghg.kg-protein",
                        "paris-2024.mealworm.ghg.kg-protein"),
                warning(warnings, "assumed-spread").about());
        assertTrue(!codes(warnings(LIBRARY, Asked.of(LIBRARY).grade(Grade.SECONDARY), "mealworm"))
                .contains("memory-graded"));
    }

    @Test
    void what_was_done_to_the_large_livestock_data_set_is_told() {
        Set<String> codes = codes(warnings(LIBRARY, Asked.of(LIBRARY).only("poore-nemecek-2018"), "pork"));
        assertEquals(Set.of("few-studies", "by-stage-split", "split-of-means", "open-gas-shares"), codes);
    }

    @Test
    void asked_for_just_what_it_publishes_only_the_number_of_studies_is_told() {
        Asked asPublished = Asked.of(LIBRARY)
                .only("poore-nemecek-2018")
                .at("retail")
                .luc(LandUseChange.INCLUDE)
                .gwp("ar5-100-feedback")
                .per(FunctionalUnit.HUNDRED_G_PROTEIN);
        assertEquals(Set.of("few-studies"), codes(warnings(LIBRARY, asPublished, "pork")));
    }

    @Test
    void land_use_change_and_warming_sets_that_could_not_be_set_right_are_told() {
        Set<String> codes = codes(warnings(LIBRARY, Asked.of(LIBRARY), "chicken"));
        assertTrue(codes.containsAll(Set.of("luc-not-stated", "other-warming-set")), codes::toString);
    }

    /** Of goat milk at retail only assessments with land-use change in them are held, and no split of theirs. */
    @Test
    void a_figure_that_counts_land_use_change_though_it_was_left_out_of_the_question_is_told_to_be_a_bound() {
        List<Warning> warnings = warnings(LIBRARY, Asked.of(LIBRARY).at("retail"), "goat-milk", "milk");
        assertEquals(List.of("goat-milk"), warning(warnings, "luc-bound").about());
        assertTrue(codes(warnings).contains("luc-not-split"), warnings::toString);
    }

    /** Petersson et al. and others at retail lie below studies that end at the farm gate. */
    @Test
    void a_later_boundary_below_an_earlier_one_is_told() {
        Warning told =
                warning(warnings(LIBRARY, Asked.of(LIBRARY).indicator("land"), "chicken"), "later-boundary-lower");
        assertEquals(List.of("chicken"), told.about());
        assertTrue(told.text().contains("retail below farm-gate (chicken)"), told.text());
    }

    @Test
    void boundaries_in_the_order_of_the_chain_are_not() {
        // Of peas one study stands at both boundaries.
        assertTrue(!codes(warnings(LIBRARY, Asked.of(LIBRARY), "peas")).contains("later-boundary-lower"));
    }

    @Test
    void factors_of_the_broader_product_are_told() {
        Asked retail = Asked.of(LIBRARY).at("retail").only("opio-fao-2013");
        assertTrue(codes(warnings(LIBRARY, retail, "beef-dairy-herd")).contains("factor-of-broader-product"));
    }

    @Test
    void feed_of_an_unstated_basis_is_told() {
        Asked feed = Asked.of(LIBRARY).indicator("feed").at("animal").per(FunctionalUnit.KG_LIVE);
        assertTrue(codes(warnings(LIBRARY, feed, "house-cricket")).contains("feed-basis-not-stated"));
    }

    @Test
    void own_rows_are_told_even_when_the_answer_uses_none_of_them() {
        Library library = new InventedResults(folder)
                .exact("cockroach", "oonincx-2010", 2, "kg-live")
                .library();
        assertEquals(
                "2 rows of a user's own library lie over the bundled one.",
                warning(warnings(library, Asked.of(library), "egg"), "own-library")
                        .text());
        assertEquals(
                List.of("invented.cockroach.oonincx-2010"),
                warning(warnings(library, Asked.of(library).per(FunctionalUnit.KG_LIVE), "cockroach"), "own-rows")
                        .about());
    }

    @Test
    void each_thing_is_said_once_and_in_words() {
        List<Warning> warnings = warnings(LIBRARY, Asked.of(LIBRARY), "beef", "pork", "chicken", "milk", "mealworm");
        assertEquals(warnings.size(), codes(warnings).size());
        warnings.forEach(warning -> assertTrue(warning.text().endsWith("."), warning.text()));
    }
}
