package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;
import org.scalepan.web.Reply;

/** A product beside a farm shows its figure and the ratio without and with emissions from land-use change. */
class LandUseBesideFarmTest {
    /** An invented shed fed on wheat bran, of which no land-use change is known. */
    private static final String SHED = """
            {"system": {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": 180},
              "feed": [{"ingredient": "wheat-bran", "kg": 400, "burden": "mass"}],
              "energy": [{"carrier": "grid-electricity", "amount": 60}]},
             "per": "kg-protein", "indicators": ["ghg", "land"], %s "compare": {"products": ["chicken"]}}
            """;

    private static JsonNode chicken(String luc, int indicator) {
        return JsonAt.array(Posted.answer(String.format(SHED, luc)), "/footprints/" + indicator + "/compare")
                .get(0);
    }

    @Test
    void each_state_is_what_the_question_about_it_gives() {
        JsonNode excluded = chicken("", 0);
        JsonNode included = chicken("\"luc\": \"include\",", 0);

        assertEquals(excluded.at("/footprint"), excluded.at("/by_luc/exclude/footprint"));
        assertEquals(excluded.at("/times_less"), excluded.at("/by_luc/exclude/times_less"));
        assertEquals(included.at("/footprint"), excluded.at("/by_luc/include/footprint"));
        assertEquals(included.at("/times_less"), excluded.at("/by_luc/include/times_less"));
        assertEquals(excluded.at("/by_luc"), included.at("/by_luc"), "both show the same states in the same order");
        assertTrue(
                JsonAt.number(excluded, "/by_luc/include/footprint/median")
                        > JsonAt.number(excluded, "/by_luc/exclude/footprint/median"),
                "kg CO2e per kg protein of chicken, soybean feed from cleared land counted");
    }

    @Test
    void the_figures_are_those_of_a_comparison_of_products() {
        JsonNode compared = Reply.to("/v1/comparison?products=chicken&against=beef&per=kg-protein")
                .json()
                .at("/items/0/by_luc");
        JsonNode beside = chicken("", 0).at("/by_luc");
        for (String state : new String[] {"exclude", "include"}) {
            assertEquals(compared.at("/" + state + "/footprint"), beside.at("/" + state + "/footprint"), state);
            assertEquals(
                    JsonAt.number(compared, "/" + state + "/studies"), JsonAt.number(beside, "/" + state + "/studies"));
        }
    }

    @Test
    void land_itself_has_no_such_states() {
        assertFalse(chicken("", 1).has("by_luc"));
    }
}
