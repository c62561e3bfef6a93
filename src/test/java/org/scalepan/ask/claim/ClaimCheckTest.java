package org.scalepan.ask.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Asked;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.literature.Borrowed;

/** Verdicts on claims whose sources are known. */
class ClaimCheckTest {
    private static final Asked ALIVE =
            Asked.of(SampleClaims.LIBRARY).per(FunctionalUnit.KG_LIVE).at("animal");

    private static Asked asked() {
        return Asked.of(SampleClaims.LIBRARY);
    }

    @Test
    void a_hundred_times_less_than_beef_holds_for_the_animals_alone_and_fails_from_cradle_to_farm_gate() {
        ClaimCheck check = SampleClaims.check(asked(), "mealworm", "beef", 100);

        assertEquals(Overall.HOLDS_ONLY_FOR, check.overall());
        assertEquals(Verdict.FAILS, check.asked().verdict());
        assertEquals(Boundary.FARM_GATE, check.asked().basis().boundary());
        assertEquals(FunctionalUnit.KG_PROTEIN, check.asked().basis().per());
        assertTrue(check.holding().stream().anyMatch(cell -> cell.basis().per() == FunctionalUnit.KG_LIVE));
        assertTrue(check.holding().stream().allMatch(cell -> cell.basis().boundary() == Boundary.ANIMAL));
        assertTrue(check.reason().contains("not the footprint of a product"), check::reason);
        assertTrue(
                check.circulating().stream().anyMatch(one -> one.claim().id().equals("c01")),
                "the claim circulates, and the check says so");
        assertTrue(check.instead().timesLess().orElseThrow() < 100);
    }

    /** oonincx-2010: cattle against crickets, mealworms and locusts, 1815, 376 and 161 times by the table as printed (AR4). */
    @ParameterizedTest
    @CsvSource({"house-cricket, 1815", "mealworm, 376", "migratory-locust, 161"})
    void the_chamber_study_is_matched_on_its_own_basis(String insect, double printed) {
        ClaimCheck check = SampleClaims.check(
                Asked.of(SampleClaims.LIBRARY)
                        .per(FunctionalUnit.KG_LIVE)
                        .at("animal")
                        .gwp("ar4-100"),
                insect,
                "beef",
                100);

        // Printed without a spread the cattle value is the middle of its interval; the insects' values are means as
        // printed.
        double ratio = check.asked()
                        .reference()
                        .orElseThrow()
                        .footprint()
                        .orElseThrow()
                        .median()
                / check.asked().product().results().get(0).printed().value().orElseThrow();
        assertEquals(printed, ratio, 0.03 * printed);
    }

    /** oonincx-deboer-2012: 5.52 to 12.51 times less than beef, 1.51 to 3.87 than pork, per kg protein at the farm gate. */
    @ParameterizedTest
    @CsvSource({"beef, 5.52, 12.51", "pork, 1.51, 3.87", "chicken, 1.32, 2.67", "milk, 1.77, 2.80"})
    void the_interval_that_a_study_prints_is_reported_beside_the_pooled_ratio(
            String reference, double low, double high) {
        ClaimCheck check = SampleClaims.check(asked(), "mealworm", reference, 100);

        PairedFinding found = check.paired().get(0);
        assertEquals("oonincx-deboer-2012", found.study().study());
        assertEquals(low, found.low().orElseThrow(), 1e-9);
        assertEquals(high, found.high().orElseThrow(), 1e-9);
        assertTrue(check.reason().contains("0 of 1 ratio"), check::reason);
    }

    /**
     * oonincx-deboer-2012 compares its mealworms with the livestock of devries-deboer-2010; oonincx-2010 takes cattle and van-huis-2013
     * every figure from the literature.
     */
    @Test
    void a_paper_that_did_not_measure_the_reference_itself_is_reported() {
        ClaimCheck straight = SampleClaims.check(asked(), "mealworm", "beef", 100);
        ClaimCheck turned = SampleClaims.check(asked(), "beef", "mealworm", 1);
        ClaimCheck chamber = SampleClaims.check(ALIVE.gwp("ar4-100"), "house-cricket", "beef", 100);

        Borrowed ofStraight = straight.paired().get(0).study().borrowed();
        assertEquals(Optional.of("devries-deboer-2010"), ofStraight.reference());
        assertTrue(ofStraight.product().isEmpty(), "the mealworms are the paper's own");
        assertTrue(straight.reason().contains("its beef is that of de Vries & de Boer 2010"), straight::reason);
        Borrowed ofTurned = turned.paired().get(0).study().borrowed();
        assertEquals(Optional.of("devries-deboer-2010"), ofTurned.product());
        assertTrue(ofTurned.reference().isEmpty());
        assertEquals(
                Optional.of(Borrowed.LITERATURE),
                chamber.paired().get(0).study().borrowed().reference());
        assertTrue(chamber.reason().contains("its beef is out of the literature"), chamber::reason);
    }

    @Test
    void the_sentence_offered_instead_claims_no_more_than_the_draws() {
        ClaimCheck check = SampleClaims.check(asked(), "mealworm", "beef", 100);
        double said = check.instead().timesLess().orElseThrow();

        double probability = SampleClaims.check(asked(), "mealworm", "beef", said)
                .asked()
                .probability()
                .orElseThrow()
                .value();
        assertTrue(probability >= 0.9, () -> said + " has " + probability);
        assertEquals(
                Overall.HOLDS,
                SampleClaims.check(asked(), "mealworm", "beef", said).overall());
        assertTrue(
                check.instead().sentence().contains("3 studies of yellow mealworm, 1 from memory"),
                check.instead()::sentence);
        assertTrue(check.instead().sentence().contains("the evidence is thin"), check.instead()::sentence);
        assertTrue(check.instead().sources().contains("oonincx-deboer-2012"));
    }

    @Test
    void a_sentence_out_of_one_study_a_side_says_so_and_claims_no_probability() {
        String alone = SampleClaims.check(asked().indicator("land").grade(Grade.SECONDARY), "peas", "lamb", 2)
                .instead()
                .sentence();
        String enough =
                SampleClaims.check(asked(), "chicken", "beef", 2).instead().sentence();

        assertTrue(alone.contains("in 90 % of the draws"), alone);
        assertTrue(alone.contains("It rests on one study of pea and one study of lamb and mutton"), alone);
        assertFalse(alone.contains("probability"), alone);
        assertTrue(enough.contains("in 90 % of the draws"), enough);
        assertFalse(enough.contains("thin"), enough);
        assertFalse(enough.contains("rests on"), enough);
    }

    @Test
    void where_no_reduction_can_be_defended_that_is_said() {
        ClaimCheck check = SampleClaims.check(asked(), "mealworm", "chicken", 2);

        assertTrue(check.instead().timesLess().isEmpty());
        assertTrue(check.instead().sentence().contains("no reduction can be defended"), check.instead()::sentence);
    }

    /** uk-defra-bsf-lca-2024 prints insect meal as up to 13.5 times soybean meal. */
    @Test
    void where_it_is_the_other_way_round_the_reverse_is_said() {
        ClaimCheck check =
                SampleClaims.check(asked().at("processing-gate"), "black-soldier-fly:meal", "soybean-meal", 1);

        assertEquals(Overall.FAILS, check.overall());
        assertTrue(check.instead().timesMore().orElseThrow() > 1);
        assertTrue(check.instead().timesMore().orElseThrow() < 13.5);
    }

    @Test
    void none_fails_wherever_a_study_measured_something_and_the_measured_value_is_shown() {
        ClaimCheck check = SampleClaims.checked(asked(), "mealworm", "", new Claimed.NoneAtAll())
                .checks()
                .get(0);

        assertEquals(Overall.FAILS, check.overall());
        assertTrue(check.cells().stream().allMatch(cell -> cell.verdict() == Verdict.FAILS));
        assertTrue(check.reason().contains("kg CO2e per kg protein"), check::reason);
        assertTrue(check.reason().contains("kg CO2e per kg live weight"), check::reason);
    }

    @Test
    void a_claim_without_evidence_is_not_traceable() {
        ClaimCheck check = SampleClaims.check(asked().indicator("land"), "house-cricket", "beef", 5);

        assertEquals(Overall.NOT_TRACEABLE, check.overall());
        assertEquals("beef", check.halfMeasured().get(0).measured().english());
        assertTrue(check.instead().sentence().startsWith("Nothing can be said"), check.instead()::sentence);
    }

    @Test
    void insects_are_checked_each_for_itself() {
        ClaimChecks checks = SampleClaims.checked(asked(), "insects", "beef", new Claimed.TimesLess(100));

        assertEquals(Overall.HOLDS_ONLY_FOR, checks.overall());
        assertTrue(checks.checks().size() > 3);
        assertTrue(checks.silent().stream().anyMatch(side -> side.written().equals("palm-weevil")));
        assertTrue(checks.instead().sentence().contains("yellow mealworm"), checks.instead()::sentence);
        assertTrue(checks.references().size() > 3);
    }

    @Test
    void evidence_is_called_thin_with_fewer_than_three_studies_on_a_side() {
        ClaimCheck thin = SampleClaims.check(asked(), "mealworm", "beef", 100);
        ClaimCheck enough = SampleClaims.check(asked(), "beef", "chicken", 1);

        assertFalse(thin.asked().hasEnoughStudies());
        assertTrue(thin.reason().contains("those from memory not counted: the evidence is thin"), thin::reason);
        assertTrue(enough.asked().hasEnoughStudies());
        assertFalse(enough.reason().contains("thin"), enough::reason);
    }

    @Test
    void differences_between_the_sources_of_a_grid_are_listed() {
        Differences differences =
                SampleClaims.check(asked(), "mealworm", "beef", 100).differences();

        assertTrue(differences.differing().keySet().containsAll(List.of("unit", "boundary", "warming_set", "region")));
        List<String> boundaries = differences.differing().getOrDefault("boundary", List.of());
        assertTrue(boundaries.containsAll(List.of("animal", "farm-gate")), boundaries::toString);
    }

    @Test
    void what_is_ruled_out_by_the_form_of_a_footprint_is_given_no_probability() {
        ClaimCheck none = SampleClaims.checked(asked(), "mealworm", "", new Claimed.NoneAtAll())
                .checks()
                .get(0);
        ClaimCheck less = SampleClaims.check(asked(), "mealworm", "beef", 1);

        assertEquals(Verdict.FAILS, none.asked().verdict());
        assertTrue(none.cells().stream().allMatch(cell -> cell.probability().isEmpty()));
        assertTrue(less.asked().probability().isPresent());
    }

    /** c11, fernandez-rios-2026: allocation alone moves one mealworm footprint 2.2 times. */
    @Test
    void one_footprint_of_mealworm_is_several_because_of_allocation_among_others() {
        ClaimCheck check = SampleClaims.checked(asked(), "mealworm", "", new Claimed.NoneAtAll())
                .checks()
                .get(0);

        assertTrue(check.differences().differing().containsKey("allocation"));
    }

    @Test
    void every_warming_set_with_evidence_is_in_the_grid() {
        List<String> sets = SampleClaims.check(asked(), "mealworm", "beef", 100).cells().stream()
                .filter(cell -> cell.basis().boundary() == Boundary.FARM_GATE)
                .map(cell -> cell.basis().gwp().id())
                .distinct()
                .sorted()
                .toList();

        assertTrue(sets.containsAll(List.of("ar4-100", "ar5-100", "ar6-100")), sets::toString);
        assertEquals(
                1,
                SampleClaims.check(asked().indicator("land"), "mealworm", "beef", 5).cells().stream()
                        .map(cell -> cell.basis().gwp().id())
                        .distinct()
                        .count(),
                "land does not depend on a warming set");
    }

    @Test
    void the_more_is_claimed_the_less_probable_it_is() {
        double last = 1;
        int verdict = 0;
        for (double k = 0.5; k < 3000; k *= 1.7) {
            GridCell cell = SampleClaims.check(asked().indicator("land"), "mealworm", "beef", k)
                    .asked();
            double probability = cell.probability().orElseThrow().value();
            assertTrue(probability <= last, k + " times less is more probable than a smaller claim");
            assertTrue(cell.verdict().ordinal() >= verdict, "a larger claim has a better verdict at " + k);
            last = probability;
            verdict = cell.verdict().ordinal();
        }
        assertEquals(0, last, 0.01);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.25, 2, 5, 8, 12.5, 100})
    void times_less_and_per_cent_less_are_two_ways_to_say_one_thing(double k) {
        Asked land = asked().indicator("land");
        GridCell times = SampleClaims.check(land, "mealworm", "beef", k).asked();
        GridCell percent = SampleClaims.checked(land, "mealworm", "beef", new Claimed.PercentLess(100 * (1 - 1 / k)))
                .checks()
                .get(0)
                .asked();

        assertEquals(times.verdict(), percent.verdict());
        assertEquals(
                times.probability().orElseThrow().value(),
                percent.probability().orElseThrow().value(),
                1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.3, 3.7, 9.1})
    void a_claim_and_its_contrary_share_all_draws(double k) {
        Asked land = asked().indicator("land");
        double holds = SampleClaims.check(land, "mealworm", "beef", k)
                .asked()
                .probability()
                .orElseThrow()
                .value();
        // Beef against mealworm is the reciprocal ratio: at least 1/k is at most k.
        double contrary = SampleClaims.check(land, "beef", "mealworm", 1 / k)
                .asked()
                .probability()
                .orElseThrow()
                .value();

        assertEquals(1, holds + contrary, 1e-12);
    }

    @Test
    void the_same_question_gives_the_same_check() {
        ClaimCheck once = SampleClaims.check(ALIVE, "mealworm", "pork", 10);
        ClaimCheck again = SampleClaims.check(ALIVE, "mealworm", "pork", 10);

        assertEquals(once.cells(), again.cells());
        assertEquals(once.reason(), again.reason());
        assertEquals(once.instead(), again.instead());
    }

    @Test
    void a_ratio_without_a_reference_is_no_claim() {
        assertThrows(
                IllegalArgumentException.class,
                () -> SampleClaims.checked(asked(), "mealworm", "", new Claimed.TimesLess(2)));
        assertThrows(IllegalArgumentException.class, () -> new Claimed.TimesLess(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Claimed.PercentLess(100));
    }
}
