package org.scalepan.factors;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;

/** Sentences use names and no ids. */
class NamesTest {
    private static final Library LIBRARY = Libraries.bundled();

    @ParameterizedTest
    @CsvSource({
        "product, cockroach, Argentinean cockroach",
        "product, house-cricket, house cricket",
        "ingredient, maize, maize grain",
        "carrier, grid-electricity, grid electricity",
        "quantity, mcf, methane conversion factor",
        "category, all-animals, all animals",
        "quantity, dry-matter, dry matter",
        "fertiliser, ammonium-nitrate, ammonium nitrate"
    })
    void an_id_is_worded_as_its_name(String column, String id, String name) {
        assertEquals(name, Names.of(LIBRARY).of(column, id));
    }

    @Test
    void a_region_is_worded_as_its_name() {
        assertEquals("the European Union of 27", LIBRARY.regions().words("eu-27"));
        assertEquals("the United States of America", LIBRARY.regions().words("united-states"));
        assertEquals("Northern Europe", LIBRARY.regions().words("northern-europe"));
        assertEquals("the world", LIBRARY.regions().words("world"));
    }
}
