package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/**
 * Where emissions of land-use change are asked for, beef has them; a farm whose feed factors do not count them must not look the better for
 * it. The farm is invented.
 */
class FeedLandUseChangeTest {
    private static JsonNode answer(String feed, String luc) {
        return Posted.answer("""
                {"system": {"kind": "insects", "name": "attic trays", "product": "mealworm", "region": "peru",
                  "harvest": {"kg_per_year": 180}, "feed": [%s], "energy": [], "frass": {"kg": 100}, "building_m2": 12},
                 "indicators": ["ghg"], "luc": "%s", "draws": 1000, "compare": {"products": ["beef"]}}""".formatted(feed, luc));
    }

    private static final String BRAN = "{\"ingredient\": \"wheat-bran\", \"kg\": 700, \"burden\": \"mass\"}";

    @Test
    void given_bran_whose_factor_does_not_count_it_then_the_farm_is_a_lower_bound_where_it_is_asked_for() {
        JsonNode asked = answer(BRAN, "include");

        assertEquals("at-least", JsonAt.text(asked, "/footprints/0/bound"));
        assertTrue(
                JsonAt.texts(asked, "/footprints/0/not_counted").contains("feed (wheat-bran, land-use change)"),
                () -> JsonAt.node(asked, "/footprints/0/not_counted").toString());
        assertEquals("at-most", JsonAt.text(asked, "/footprints/0/compare/0/times_less/bound"));
        assertFalse(JsonAt.node(asked, "/footprints/0/compare/0").has("share_of_draws_less"));
    }

    @Test
    void given_the_same_farm_then_nothing_is_said_of_it_where_it_is_not_asked_for() {
        JsonNode left = answer(BRAN, "exclude");

        assertEquals("exact", JsonAt.text(left, "/footprints/0/bound"));
        assertFalse(JsonAt.node(left, "/gaps").toString().contains("land-use change"));
    }

    @Test
    void given_feed_whose_factor_counts_it_then_the_figure_is_exact() {
        JsonNode asked = answer("{\"ingredient\": \"rice\", \"kg\": 2000}", "include");

        assertEquals("exact", JsonAt.text(asked, "/footprints/0/bound"));
    }
}
