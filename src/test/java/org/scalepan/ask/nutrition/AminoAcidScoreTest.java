package org.scalepan.ask.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.nutrition.FoodQuestions.LIBRARY;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.factors.AminoAcidPattern;
import org.scalepan.factors.AminoAcidRequirement;
import org.scalepan.factors.Cited;
import org.scalepan.factors.Grade;

/** The least ratio of content to requirement over the indispensable amino acids of a pattern. */
class AminoAcidScoreTest {
    private static final double EXACT = 1e-12;
    private static final int TRIALS = 200;
    private static final Cited TRIAL = new Cited("trial", "trial", Grade.FULLTEXT);

    private static AminoAcidProfile.Acid acid(String id, double milligrams) {
        return new AminoAcidProfile.Acid(id, milligrams, List.of("row." + id), TRIAL);
    }

    private static AminoAcidPattern pattern(String id) {
        return LIBRARY.aminoAcidPatterns().get(id);
    }

    /** Handbook example to FAO/WHO/UNU (1985): whole wheat, lysine 26 mg/g against 58 at 2 to 5 years, score 45 %. */
    @Test
    void lysine_of_whole_wheat_gives_a_score_of_45_per_cent_at_2_to_5_years() {
        AminoAcidScore score = AminoAcidScore.of(
                pattern("fao-who-unu-1985-2-5-years"), new AminoAcidProfile(List.of(acid("lysine", 26))));

        assertEquals(0.45, score.value(), 0.005);
        assertEquals("lysine", score.limiting().acid());
    }

    /** FNB/IOM (2002): wheat 44, chickpea 87, and wheat with chickpea and skim milk 110, truncated to 100 per cent. */
    @ParameterizedTest
    @CsvSource({"0.44, 0.44", "0.87, 0.87", "1.10, 1.00"})
    void a_corrected_score_above_100_per_cent_is_reported_as_100(double computed, double reported) {
        assertEquals(reported, AminoAcidScore.truncated(computed), EXACT);
    }

    /** Arithmetic on the compositions of the USDA (release 26) over the FAO (2013) pattern of over 3 years: Val 48.6/40, Leu 86.5/61, SAA 33.1/23. */
    @ParameterizedTest
    @CsvSource({"beef, 1.215, valine", "egg, 1.418033, leucine", "milk, 1.439130, methionine-plus-cysteine"})
    void beef_egg_and_milk_have_more_of_everything_than_people_over_3_years_need(
            String food, double expected, String limiting) {
        AminoAcidScore score = FoodQuestions.facts(FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, food))
                .score()
                .orElseThrow();

        assertEquals(expected, score.value(), 1e-6);
        assertEquals(limiting, score.limiting().acid());
        assertEquals(1, score.truncated(), EXACT);
        assertTrue(score.isComplete());
    }

    /** Arithmetic on the same tables: beef Trp 11.6/6.6, Val 48.6/40, Leu 79.4/61, Ile 44.3/30. */
    @ParameterizedTest
    @CsvSource({"tryptophan, 1.757576", "valine, 1.215", "leucine, 1.301639", "isoleucine, 1.476667"})
    void each_amino_acid_of_beef_has_its_share(String acid, double expected) {
        AminoAcidScore score = FoodQuestions.facts(FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, "beef"))
                .score()
                .orElseThrow();

        assertEquals(
                expected,
                score.shares().stream()
                        .filter(share -> share.acid().equals(acid))
                        .findFirst()
                        .orElseThrow()
                        .ratio(),
                1e-6);
    }

    /** Arithmetic on the printed meal (lysine 3.04 g and protein 58.5 g per 100 g, Table 5 of its source): 52 mg/g. */
    @Test
    void amino_acids_printed_per_kilogram_of_meal_are_put_over_the_protein_of_the_same_meal() {
        AminoAcidScore score = FoodQuestions.facts(
                        FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, "black-soldier-fly:defatted-meal"))
                .score()
                .orElseThrow();

        assertEquals(
                30.4 / 0.585,
                score.shares().stream()
                        .filter(share -> share.acid().equals("lysine"))
                        .findFirst()
                        .orElseThrow()
                        .milligrams(),
                1e-9);
        assertFalse(score.isComplete());
        assertEquals(List.of("phenylalanine-plus-tyrosine", "tryptophan"), score.unknown());
    }

    @Test
    void more_of_everything_raises_the_score_in_proportion_and_changes_nothing_else() {
        Random random = new Random(20_261_125);
        for (int trial = 0; trial < TRIALS; trial++) {
            AminoAcidPattern pattern = any(random);
            AminoAcidProfile profile = profile(random, pattern, 9);
            double factor = 0.2 + random.nextDouble();
            AminoAcidScore score = AminoAcidScore.of(pattern, profile);
            AminoAcidScore more = AminoAcidScore.of(pattern, scaled(profile, factor));

            assertEquals(score.value() * factor, more.value(), 1e-9);
            assertEquals(score.limiting().acid(), more.limiting().acid());
        }
    }

    @Test
    void no_amino_acid_has_a_smaller_share_than_the_limiting_one() {
        Random random = new Random(7);
        for (int trial = 0; trial < TRIALS; trial++) {
            AminoAcidPattern pattern = any(random);
            AminoAcidScore score = AminoAcidScore.of(pattern, profile(random, pattern, 9));

            score.shares().forEach(share -> assertTrue(share.ratio() >= score.value()));
            assertEquals(score.value(), score.limiting().ratio(), 0);
        }
    }

    @Test
    void to_know_one_more_amino_acid_never_raises_a_score() {
        Random random = new Random(11);
        for (int trial = 0; trial < TRIALS; trial++) {
            AminoAcidPattern pattern = any(random);
            AminoAcidProfile all = profile(random, pattern, 9);
            int known = 1 + random.nextInt(8);
            AminoAcidScore some =
                    AminoAcidScore.of(pattern, new AminoAcidProfile(all.acids().subList(0, known)));

            assertTrue(some.value() >= AminoAcidScore.of(pattern, all).value());
            assertEquals(9 - known, some.unknown().size());
        }
    }

    private static AminoAcidPattern any(Random random) {
        List<AminoAcidPattern> patterns =
                List.copyOf(LIBRARY.aminoAcidPatterns().values());
        return patterns.get(random.nextInt(patterns.size()));
    }

    private static AminoAcidProfile profile(Random random, AminoAcidPattern pattern, int acids) {
        List<AminoAcidProfile.Acid> drawn = new ArrayList<>();
        for (AminoAcidRequirement requirement : pattern.requirements().subList(0, acids)) {
            drawn.add(acid(requirement.acid(), 5 + 100 * random.nextDouble()));
        }
        return new AminoAcidProfile(drawn);
    }

    private static AminoAcidProfile scaled(AminoAcidProfile profile, double factor) {
        return new AminoAcidProfile(profile.acids().stream()
                .map(acid -> acid(acid.id(), factor * acid.milligrams()))
                .toList());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, 1001, Double.POSITIVE_INFINITY})
    void a_gram_of_protein_holds_no_impossible_amount_of_an_amino_acid(double milligrams) {
        assertThrows(IllegalArgumentException.class, () -> acid("lysine", milligrams));
    }

    @Test
    void without_any_amino_acid_there_is_no_score() {
        AminoAcidPattern pattern = LIBRARY.defaultAminoAcidPattern();
        assertThrows(IllegalArgumentException.class, () -> new AminoAcidScore(pattern, List.of()));
    }

    /** Each pattern has the nine amino acids and pairs of its table (FAO/WHO/UNU 1985, FNB/IOM 2002, WHO/FAO/UNU 2007, FAO 2013). */
    @Test
    void every_pattern_asks_for_all_nine() {
        assertEquals(14, LIBRARY.aminoAcidPatterns().size());
        LIBRARY.aminoAcidPatterns()
                .values()
                .forEach(pattern -> assertEquals(
                        LIBRARY.ids("amino_acids"),
                        pattern.requirements().stream()
                                .map(AminoAcidRequirement::acid)
                                .toList(),
                        pattern.id()));
    }

    @Test
    void a_pattern_from_memory_does_not_judge_where_memory_is_not_wanted() {
        NutritionQuestion usual = FoodQuestions.question(
                Basis.TEN_GRAMS_PROTEIN, org.scalepan.footprint.ProteinBasis.CRUDE, Grade.SECONDARY, "beef");
        NutritionQuestion memory = new NutritionQuestion(
                usual.foods(),
                usual.basis(),
                pattern("who-fao-unu-2007-3-10-years"),
                usual.protein(),
                usual.grade(),
                usual.prices(),
                usual.currency());

        assertTrue(FoodQuestions.facts(usual).score().isPresent());
        assertTrue(FoodQuestions.facts(memory).score().isEmpty());
        assertTrue(FoodQuestions.facts(memory).notes().stream()
                .anyMatch(note -> note.reason().contains("the pattern was not seen")));
    }
}
