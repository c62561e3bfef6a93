package org.scalepan.ask.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.nutrition.FoodQuestions.LIBRARY;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.factors.Cited;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.uncertainty.PublishedSpread;
import org.scalepan.uncertainty.SpreadKind;

/** Protein quality as measured: what is truncated, what is not, and with which pattern and method. */
class MeasuredQualityTest {
    private static MeasuredQuality score(String kind, double printed) {
        PublishedSpread spread = new PublishedSpread(
                SpreadKind.NONE,
                OptionalDouble.of(printed),
                false,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                new TreeMap<>());
        CompositionRow row = new CompositionRow(
                "trial",
                "milk",
                "dried",
                kind,
                spread,
                "fraction",
                "kg-protein",
                CompositionRow.RowUse.DEFAULT,
                OptionalDouble.empty(),
                new Cited("trial", "trial", Grade.FULLTEXT),
                Optional.empty(),
                true);
        return new MeasuredQuality(row, Optional.empty());
    }

    /** Rutherfurd et al. (2015), as Nutr. Metab. 13:64 (2016) table 1 quotes it: whey isolate 1.00 and 1.09, soy isolate A 1.00 and 0.91. */
    @ParameterizedTest
    @CsvSource({
        "pdcaas, 1.09, 1.00, true",
        "diaas, 1.09, 1.09, false",
        "diaas, 0.91, 0.91, false",
        "pdcaas, 0.98, 0.98, false"
    })
    void only_pdcaas_is_truncated_at_one(String kind, double printed, double reported, boolean truncated) {
        MeasuredQuality measured = score(kind, printed);

        assertEquals(reported, measured.reported(printed), 0);
        assertEquals(truncated, measured.isTruncated());
    }

    /** The order of the two scores in Rutherfurd et al. (2015): pea concentrate 0.89 and 0.82, rice 0.42 and 0.37; here cooked pulses and groundnut. */
    @ParameterizedTest
    @ValueSource(strings = {"peas", "beans", "groundnut"})
    void by_the_gut_a_plant_protein_scores_lower_than_by_the_whole_animal(String food) {
        double corrected = used(food, MeasuredQuality.PDCAAS);
        double digestible = used(food, MeasuredQuality.DIAAS);

        assertTrue(digestible < corrected, food + ": " + digestible + " and " + corrected);
    }

    private static double used(String food, String kind) {
        return MeasuredQuality.of(LIBRARY, FoodQuestions.food(food), kind, Grade.MEMORY)
                .get(0)
                .row()
                .printed()
                .value()
                .orElseThrow();
    }

    /** Jensen et al. (2019), abstract: sulphur amino acids limit the protein of the mealworm. */
    @Test
    void what_a_source_names_as_limiting_is_reported() {
        MeasuredQuality measured = MeasuredQuality.of(
                        LIBRARY, FoodQuestions.food("mealworm:dried"), MeasuredQuality.PDCAAS, Grade.MEMORY)
                .get(0);

        assertEquals(
                List.of("methionine-plus-cysteine"),
                measured.method().orElseThrow().limiting());
        assertEquals("rats", measured.method().orElseThrow().method());
    }

    @Test
    void the_score_in_use_comes_before_the_others() {
        List<MeasuredQuality> beef =
                MeasuredQuality.of(LIBRARY, FoodQuestions.food("beef"), MeasuredQuality.DIAAS, Grade.MEMORY);

        assertEquals(5, beef.size());
        assertEquals(CompositionRow.RowUse.DEFAULT, beef.get(0).row().use());
    }

    @Test
    void every_measured_score_says_how_it_was_measured() {
        LIBRARY.composition().stream()
                .filter(row ->
                        List.of(MeasuredQuality.PDCAAS, MeasuredQuality.DIAAS).contains(row.quantity()))
                .forEach(row -> assertTrue(LIBRARY.qualityMethods().containsKey(row.id()), row.id()));
    }

    @Test
    void a_score_of_another_form_is_named_and_not_used() {
        NutritionFacts fresh = FoodQuestions.facts(FoodQuestions.question(Basis.TEN_GRAMS_PROTEIN, "mealworm"));

        assertFalse(fresh.quality().stream()
                .anyMatch(measured -> measured.row().quantity().equals(MeasuredQuality.PDCAAS)));
        assertTrue(fresh.notes().stream()
                .anyMatch(note -> note.id().equals("pdcaas") && note.reason().contains("mealworm:dried")));
    }
}
