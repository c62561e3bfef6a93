package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** A farm's energy beside published energy, of which there are several kinds. The farm is invented. */
class FarmEnergyTest {
    private static final String FARM = """
            {"kind": "insects", "name": "bakery cellar", "product": "mealworm", "region": "france",
             "harvest": {"kg_per_year": 100},
             "feed": [{"ingredient": "wheat-bran", "kg": 360, "burden": "economic", "energy_per_kg": 2}],
             "energy": [{"carrier": "grid-electricity", "amount": 500}], "water_m3": 2}""";

    private static JsonNode answer(String path, String rest) {
        Posted posted = Posted.to(
                path,
                "application/json",
                "{\"system\": " + FARM + ", \"draws\": 1000, \"grade\": \"secondary\"" + rest + "}");
        assertEquals(200, posted.status(), posted.body());
        return posted.tree();
    }

    private static JsonNode beside(String indicator) {
        return answer(
                "/v1/footprint",
                ", \"indicators\": [\"%s\"], \"compare\": {\"products\": [\"pork\", \"chicken\", \"egg\"]}"
                        .formatted(indicator));
    }

    private static boolean warns(JsonNode answer, String text) {
        return StreamSupport.stream(answer.path("warnings").spliterator(), false)
                .anyMatch(warning -> JsonAt.text(warning, "/code").equals("unlike-energy")
                        && JsonAt.text(warning, "/text").contains(text));
    }

    /** Pork: garcia-gudino-2020, total; chicken: not stated; egg: three studies of fossil energy alone. */
    @Test
    void
            given_published_energy_of_three_kinds_then_a_ratio_is_made_with_all_primary_energy_and_with_what_is_not_stated() {
        JsonNode answer = beside("energy");
        JsonNode compare = answer.at("/footprints/0/compare");

        assertEquals("total", JsonAt.text(compare, "/0/energy_kind"));
        assertTrue(compare.path(0).has("times_less"));
        assertEquals("not-stated", JsonAt.text(compare, "/1/energy_kind"));
        assertTrue(compare.path(1).has("times_less"));
        assertTrue(warns(answer, "chicken (energy of a kind that is not stated)"), answer.path("warnings")::toString);
        assertEquals("cumulative-fossil", JsonAt.text(compare, "/2/energy_kind"));
        assertFalse(compare.path(2).has("times_less"));
        assertFalse(compare.path(2).has("share_of_draws_less"));
        assertTrue(warns(answer, "(fossil energy)"), answer.path("warnings")::toString);
    }

    /** 500 kWh x 3.6 x 1.9, and 360 kg x 2 MJ, over 100 kg. */
    @Test
    void given_meter_and_feed_then_energy_is_primary_and_energy_on_farm_is_the_meter() {
        JsonNode energy =
                answer("/v1/footprint", ", \"per\": \"kg-live\", \"indicators\": [\"energy\", \"energy-on-farm\"]");

        assertEquals(34.2 + 7.2, JsonAt.number(energy, "/footprints/0/first_order/value"), 1e-4, "MJ per kg live");
        assertEquals("exact", JsonAt.text(energy, "/footprints/0/bound"));
        assertEquals(18, JsonAt.number(energy, "/footprints/1/first_order/value"), 1e-6, "MJ per kg live");
    }

    @Test
    void given_what_the_meters_count_then_no_publication_stands_beside_it_and_the_answer_says_why() {
        JsonNode compare = beside("energy-on-farm").at("/footprints/0/compare");

        for (JsonNode side : compare) {
            assertEquals("no-evidence", JsonAt.text(side, "/status"));
            assertTrue(
                    JsonAt.text(side, "/reason").startsWith("only a farm's own meters count energy-on-farm"),
                    side::toString);
            assertFalse(side.has("times_less"));
        }
    }

    @Test
    void given_fossil_energy_alone_then_claim_break_even_and_shares_say_why_nothing_is_compared() {
        JsonNode claim = answer(
                "/v1/claim",
                ", \"reference\": \"egg\", \"indicator\": \"energy\", \"times_less\": 1.1, \"boundary\": \"farm-gate\"");
        JsonNode even =
                answer("/v1/break-even", ", \"against\": \"egg\", \"indicator\": \"energy\", \"input\": \"feed\"");
        JsonNode shares = answer("/v1/sensitivity", ", \"against\": \"egg\", \"indicator\": \"energy\"");

        assertTrue(JsonAt.text(claim, "/reason").contains("count fossil energy"), claim.path("reason")::toString);
        assertFalse(claim.path("say_instead").has("times_less"));
        assertEquals("no-figure", JsonAt.text(even, "/reason"));
        assertTrue(JsonAt.text(even, "/sentence").contains("count fossil energy"), even.path("sentence")::toString);
        assertEquals("not-computed", JsonAt.text(shares, "/status"));
    }
}
