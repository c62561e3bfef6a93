package org.scalepan.web.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** A programme of a farm that leaves something required open saves at most what is computed. The farm is invented. */
class BoundSubstitutionTest {
    private static JsonNode programme(String records) {
        Posted posted = Posted.to("/v1/substitution", "application/json", """
                {"system": {"kind": "insects", "name": "bucket shed", "product": "palm-weevil", "region": "peru",
                   "harvest": {"kg_per_year": 160}, "feed": [%s]},
                 "kg_per_year": 150, "unit": "kg-live", "displacement_rate": 0.5, "baseline": [{"product": "beef"}],
                 "households": 50, "years": 3, "cost_per_year": 9000, "currency": "PEN", "draws": 2000}
                """.formatted(records));
        assertEquals(200, posted.status(), posted.body());
        return posted.tree();
    }

    @Test
    void given_feed_without_a_factor_then_nothing_is_quoted_as_avoided_and_a_tonne_costs_at_least() {
        JsonNode answer = programme("{\"ingredient\": \"pineapple-residue\", \"kg\": 1500}");

        JsonNode ghg = answer.path("indicators").path(0);
        assertEquals("at-most", JsonAt.text(ghg, "/avoided/bound"));
        assertTrue(JsonAt.text(ghg, "/avoided/text").startsWith("at most "), ghg::toString);
        assertEquals("at-least", JsonAt.text(ghg, "/caused_by_product/bound"));
        assertEquals("exact", JsonAt.text(ghg, "/caused_by_displaced/bound"));
        assertFalse(ghg.path("conservative").has("value"), ghg::toString);
        assertFalse(ghg.has("share_of_draws_avoids"), ghg::toString);
        for (JsonNode swing : ghg.path("sensitivity")) {
            assertEquals("at-most", JsonAt.text(swing, "/avoided/bound"));
        }
        String paragraph = JsonAt.text(answer, "/paragraph");
        assertFalse(paragraph.matches(".*at least [0-9.]+ t CO2e.*"), paragraph);
        assertTrue(paragraph.contains("to be quoted as no saving"), paragraph);
        assertTrue(paragraph.contains("pineapple-residue"), paragraph);
        assertTrue(answer.path("statements").toString().contains("not counted"), answer.path("statements")::toString);
        assertEquals("at-least", JsonAt.text(answer, "/money/per_tonne_avoided/bound"));
        assertTrue(JsonAt.text(answer, "/money/per_tonne_avoided/text").startsWith("at least "));
    }
}
