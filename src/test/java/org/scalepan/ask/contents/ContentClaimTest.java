package org.scalepan.ask.contents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Side;
import org.scalepan.ask.claim.Overall;
import org.scalepan.ask.claim.Subject;
import org.scalepan.ask.claim.Verdict;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ProteinBasis;

/** A claim of contents is judged by the lowest and the highest published sample of both foods. */
class ContentClaimTest {
    private static final Library LIBRARY = Libraries.bundled();

    /** Samples of 10 to 20 beside 4 to 5 mg: between 2 and 5 times as much, whichever two are taken. */
    @ParameterizedTest
    @CsvSource({"2, HOLDS", "2.1, OPEN", "5, OPEN", "5.1, FAILS"})
    void the_verdict_is_that_of_the_extreme_samples(double times, Verdict verdict) {
        SampleRatio ratio =
                SampleRatio.of(samples(15, 10, 20, 3), samples(4.5, 4, 5, 2)).orElseThrow();

        assertEquals(2, ratio.low(), 1e-12, "times, lowest over highest");
        assertEquals(5, ratio.high(), 1e-12, "times, highest over lowest");
        assertEquals(verdict, ratio.verdict(times, false));
    }

    @Test
    void one_sample_on_a_side_decides_nothing() {
        SampleRatio ratio =
                SampleRatio.of(samples(100, 100, 100, 1), samples(1, 1, 1, 2)).orElseThrow();

        assertEquals(Verdict.OPEN, ratio.verdict(2, true), "a hundred times as much, of one sample");
    }

    /** Raw crickets 15.4 to 20.9 g protein (finke-2002, efsa-2024), beef 17.3 to 22.1 g (usda-sr26, sr27). */
    @Test
    void two_to_three_times_the_protein_of_beef_fails_raw_beside_raw_and_water_counts_for_no_verdict() {
        ContentCheck check = check("house-cricket", "fresh", "beef", amount("protein", 2));

        assertEquals(Verdict.FAILS, check.asked().verdict(), check::reason);
        assertEquals(Basis.HUNDRED_GRAMS_EDIBLE, check.asked().basis().orElseThrow());
        assertTrue(check.asked().times().orElseThrow().high() < 1.3, "times, grams for grams");
        ContentCell dried = check.cells().stream()
                .filter(cell -> cell.decidedByWater() && cell.food().form().equals("dried"))
                .findFirst()
                .orElseThrow();
        assertEquals(Verdict.HOLDS, dried.verdict(), "100 g of powder beside 100 g of raw beef");
        assertFalse(dried.counts());
        assertTrue(check.reason().contains("drying does that"), check::reason);
        assertEquals(Overall.FAILS, check.overall(), check::reason);
    }

    /** The crude protein of house cricket (N × 6.25) is 1.19 times that by its own factor of 5.25 (boulos-2020). */
    @Test
    void corrected_protein_stands_beside_crude() {
        ContentCheck check = check("house-cricket", "fresh", "beef", amount("protein", 1));
        ContentCell corrected = check.cells().stream()
                .filter(cell -> cell.quantity().equals("protein-corrected")
                        && cell.food().form().equals("fresh")
                        && cell.basis()
                                .filter(Basis.HUNDRED_GRAMS_EDIBLE::equals)
                                .isPresent())
                .findFirst()
                .orElseThrow();

        double crude = check.asked().productSide().found().orElseThrow().value();
        double own = corrected.productSide().found().orElseThrow().value();
        assertEquals(6.25 / 5.25, crude / own, 1e-9, "g crude protein per g by the own factor");
    }

    /** Crickets: one sample of iron, from memory (finke-2002); shown, and nothing decided. */
    @Test
    void iron_of_one_sample_is_open_and_content_is_not_absorption() {
        ContentCheck check = check("house-cricket", "fresh", "beef", amount("iron", 1), Grade.MEMORY);

        assertEquals(Verdict.OPEN, check.asked().verdict());
        assertTrue(check.asked().thin());
        assertTrue(check.reason().contains("Content is not absorption"), check::reason);
        assertTrue(
                check.absorption().stream().anyMatch(trial -> trial.source().equals("mwangi-2022")),
                "the trial with women in which little was absorbed");
    }

    /** hammer-2023 measured a DIAAS of mealworms of 0.89: the scarcest amino acid is there, so that all are. */
    @Test
    void every_indispensable_amino_acid_is_there_where_the_score_of_the_scarcest_is_above_zero() {
        ContentCheck check = check("mealworm", "fresh", "", new ContentClaimed.AllAminoAcids());

        assertEquals(Overall.HOLDS, check.overall(), check::reason);
        assertEquals(9, check.asked().productSide().found().orElseThrow().value(), "indispensable amino acids");
    }

    /** Nobody published tryptophan of field crickets (kim-2015-cricket): that they have it is not shown. */
    @Test
    void an_amino_acid_that_nobody_published_leaves_the_claim_open() {
        ContentCheck check = check("field-cricket", "dried", "", new ContentClaimed.AllAminoAcids());

        assertEquals(Overall.OPEN, check.overall(), check::reason);
        assertEquals(List.of("tryptophan"), check.protein().get(0).unknown());
    }

    @Test
    void a_wrong_count_of_essential_amino_acids_is_put_right() {
        ContentChecks twenty = checks("mealworm", "fresh", "", new ContentClaimed.AllAminoAcids(), OptionalInt.of(20));
        ContentChecks nine = checks("mealworm", "fresh", "", new ContentClaimed.AllAminoAcids(), OptionalInt.of(9));

        assertTrue(
                twenty.corrections().get(0).contains("9 are indispensable"),
                () -> twenty.corrections().toString());
        assertEquals(List.of(), nine.corrections());
    }

    /** Beef of fao and usda: nine published, all above the pattern. DIAAS 0.99 to 1.18. */
    @Test
    void a_protein_as_good_as_that_of_beef_fails_where_the_best_sample_is_below_its_worst() {
        ContentCheck check = check("mealworm", "dried", "beef", new ContentClaimed.ProteinAsGood());

        assertEquals(Verdict.FAILS, check.asked().verdict(), check::reason);
    }

    @Test
    void what_is_not_held_is_not_traceable_and_says_why() {
        ContentCheck check = check("mealworm", "fresh", "beef", new ContentClaimed.UnsaturatedFat(1, false));

        assertEquals(Overall.NOT_TRACEABLE, check.overall());
        assertTrue(check.reason().contains("no fatty acids are held"), check::reason);
    }

    @Test
    void less_is_the_claim_the_other_way_round() {
        SampleRatio more = check("house-cricket", "fresh", "beef", amount("protein", 1))
                .asked()
                .times()
                .orElseThrow();
        SampleRatio less = check(
                        "house-cricket",
                        "fresh",
                        "beef",
                        ContentClaimed.of("protein", 1, true).orElseThrow())
                .asked()
                .times()
                .orElseThrow();

        assertEquals(1 / more.high(), less.low(), 1e-12, "times less, lowest");
    }

    @Test
    void every_answer_warns_that_contents_treat_no_deficiency_and_of_allergy() {
        ContentChecks checks = checks("mealworm", "fresh", "", new ContentClaimed.AllAminoAcids(), OptionalInt.empty());

        String warned = checks.warnings().get(0).text();
        assertTrue(warned.contains("malnutrition") && warned.contains("allergic"), warned);
    }

    private static ContentClaimed amount(String content, double times) {
        return ContentClaimed.of(content, times, false).orElseThrow();
    }

    private static SampleRange samples(double value, double low, double high, int samples) {
        return new SampleRange(value, low, high, samples, List.of(), Set.of(), Grade.USUAL, List.of());
    }

    private static ContentCheck check(String product, String form, String reference, ContentClaimed claimed) {
        return check(product, form, reference, claimed, Grade.USUAL);
    }

    private static ContentCheck check(
            String product, String form, String reference, ContentClaimed claimed, Grade grade) {
        return ContentChecks.of(LIBRARY, question(product, form, reference, claimed, grade, OptionalInt.empty()))
                .checks()
                .get(0);
    }

    private static ContentChecks checks(
            String product, String form, String reference, ContentClaimed claimed, OptionalInt said) {
        return ContentChecks.of(LIBRARY, question(product, form, reference, claimed, Grade.USUAL, said));
    }

    private static ContentQuestion question(
            String product, String form, String reference, ContentClaimed claimed, Grade grade, OptionalInt said) {
        return new ContentQuestion(
                Subject.of(new Side.PublishedSide(food(product, form))),
                reference.isEmpty() ? Optional.empty() : Optional.of(food(reference, "fresh")),
                claimed,
                Basis.HUNDRED_GRAMS_EDIBLE,
                ProteinBasis.CRUDE,
                grade,
                said);
    }

    private static ProductForm food(String product, String form) {
        return new ProductForm(
                java.util.Objects.requireNonNull(LIBRARY.products().get(product)), form);
    }
}
