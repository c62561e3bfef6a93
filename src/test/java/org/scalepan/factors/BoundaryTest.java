package org.scalepan.factors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;

class BoundaryTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static Indicator indicator(String id) {
        return Objects.requireNonNull(LIBRARY.indicators().get(id));
    }

    @Test
    void the_table_describes_every_boundary_narrowest_first() {
        assertEquals(Boundary.ids(), List.copyOf(LIBRARY.ids("boundaries")));
    }

    @Test
    void a_wider_boundary_includes_the_narrower_ones_and_itself() {
        assertTrue(Boundary.RETAIL.includes(Boundary.PROCESSING_GATE));
        assertTrue(Boundary.FARM_GATE.includes(Boundary.ANIMAL));
        assertTrue(Boundary.FARM_GATE.includes(Boundary.FARM_GATE));
        assertFalse(Boundary.FARM_GATE.includes(Boundary.PROCESSING_GATE));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "animal | ghg | from the animals and their manure or frass only",
                "animal | feed-dry-matter | fed to the growing animals",
                "farm-gate | feed | up to the farm gate",
                "processing-gate | land | up to the processing gate",
                "retail | water | up to retail"
            })
    void a_sentence_names_the_system_boundary(String id, String indicator, String words) {
        assertEquals(words, Boundary.of(id).orElseThrow().words(indicator(indicator)));
    }

    @Test
    void a_name_that_no_table_has_is_no_boundary() {
        assertEquals(Optional.empty(), Boundary.of("cradle-to-grave"));
    }

    @ParameterizedTest
    @CsvSource({"ghg, FARM_GATE", "water, RETAIL", "feed, ANIMAL", "feed-dry-matter, ANIMAL"})
    void the_table_of_indicators_gives_the_default_boundary(String id, Boundary usual) {
        assertEquals(usual, indicator(id).defaultBoundary());
    }
}
