package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Functional units, and how protein is counted. */
class FunctionalUnitTest {
    @ParameterizedTest
    @CsvSource({
        "kg-live, KG_LIVE, kg live weight, false",
        "kg-carcass, KG_CARCASS, kg carcass weight, false",
        "kg-product, KG_PRODUCT, kg product as sold, false",
        "kg-edible, KG_EDIBLE, kg edible product, false",
        "kg-dry-matter, KG_DRY_MATTER, kg dry matter, false",
        "kg-protein, KG_PROTEIN, kg protein, true",
        "100g-protein, HUNDRED_G_PROTEIN, 100 g protein, true",
        "kg-quality-protein, KG_QUALITY_PROTEIN, kg protein adjusted for quality, true",
        "litre, LITRE, litre, false"
    })
    void a_unit_is_requested_by_its_id_and_reported_in_words(
            String id, FunctionalUnit unit, String words, boolean protein) {
        assertEquals(Optional.of(unit), FunctionalUnit.of(id));
        assertEquals(id, unit.id());
        assertEquals(words, unit.words());
        assertEquals(protein, unit.countsProtein(), "a nitrogen factor applies where protein is counted");
    }

    @Test
    void an_unknown_unit_is_not_guessed() {
        assertEquals(Optional.empty(), FunctionalUnit.of("kilo"));
        assertEquals(Optional.empty(), FunctionalUnit.of("KG_LIVE"));
        assertEquals(Optional.empty(), FunctionalUnit.of(""));
    }

    /** The litre is the unit of published results of milk only. */
    @Test
    void every_unit_may_be_asked_for_but_the_litre() {
        List<String> askable = FunctionalUnit.askable();

        assertFalse(askable.contains("litre"));
        assertEquals(
                Stream.of(FunctionalUnit.values())
                        .map(FunctionalUnit::id)
                        .filter(id -> !id.equals("litre"))
                        .toList(),
                askable);
    }

    @ParameterizedTest
    @CsvSource({"crude, CRUDE", "corrected, CORRECTED"})
    void protein_is_crude_or_corrected(String id, ProteinBasis basis) {
        assertEquals(Optional.of(basis), ProteinBasis.of(id));
        assertEquals(id, basis.id());
        assertEquals(Optional.empty(), ProteinBasis.of("whole"));
    }
}
