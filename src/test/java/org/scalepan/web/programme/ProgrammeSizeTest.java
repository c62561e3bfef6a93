package org.scalepan.web.programme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** A programme beside the farm that is to supply it. The farms are invented. */
class ProgrammeSizeTest {
    private static final String FARM = """
            {"kind": "insects", "name": "bucket shed", "product": "mealworm", "harvest": {"kg_per_year": 160},
             "feed": [{"ingredient": "maize", "kg": 1000}], "frass": {"kg": 100}, "building_m2": 12%s}""";
    private static final String MEAL = ", \"form\": \"meal\", \"sold_kg\": 45";

    private static JsonNode answer(String farm, String programme) {
        Posted posted = Posted.to(
                "/v1/substitution",
                "application/json",
                "{\"system\": " + farm + ", \"displacement_rate\": 0.5, \"draws\": 2000, " + programme + "}");
        assertEquals(200, posted.status(), posted.body());
        return posted.tree();
    }

    private static List<String> codes(JsonNode answer) {
        return answer.path("warnings").findValuesAsText("code");
    }

    @Test
    void given_a_diet_that_takes_more_meal_than_the_farm_sells_then_the_paragraph_says_so() {
        JsonNode answer = answer(
                FARM.formatted(MEAL + ", \"energy\": []"),
                "\"as\": \"feed\", \"animal\": \"fish\", \"inclusion_percent\": 10, \"feed_kg_per_year\": 5000,"
                        + " \"baseline\": [{\"product\": \"fishmeal\"}]");

        String said = "The programme takes 500 kg product as sold a year, and bucket shed gives 45 by its records";
        assertTrue(JsonAt.text(answer, "/paragraph").contains(said), answer.path("paragraph")::toString);
        assertTrue(codes(answer).contains("larger-than-farm"), answer.path("warnings")::toString);
    }

    /** Mealworm is 37.5 to 38.9 % dry in the library: 160 kg live hold about 60 kg of dry matter. */
    @ParameterizedTest(name = "{0} {1} a year of 160 kg live: larger than the farm {2}")
    @CsvSource({
        "160, kg-live, false",
        "161, kg-live, false",
        "162, kg-live, true",
        "40, kg-dry-matter, false",
        "100, kg-dry-matter, true",
        "60, kg-protein, true"
    })
    void sizes_are_compared_in_the_unit_of_the_records(double kilograms, String unit, boolean larger) {
        JsonNode answer = answer(
                FARM.formatted(", \"energy\": []"),
                "\"kg_per_year\": " + kilograms + ", \"unit\": \"" + unit
                        + "\", \"baseline\": [{\"product\": \"beef\"}]");

        assertEquals(larger, codes(answer).contains("larger-than-farm"), answer.path("warnings")::toString);
        assertEquals(larger, JsonAt.text(answer, "/paragraph").contains("bucket shed gives"));
    }

    @ParameterizedTest(name = "{0}: a remark that nothing after the harvest is recorded: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "'energy': [] | true",
                "'energy': [{'carrier': 'natural-gas', 'amount': 9}] | true",
                "'energy': [{'carrier': 'natural-gas', 'amount': 9, 'for': 'processing'}] | false",
                "'processing': [{'step': 'drying', 'water_kg': 90, 'carrier': 'natural-gas'}] | false"
            })
    void meal_without_recorded_processing_is_remarked_upon(String records, boolean remarked) {
        String farm = FARM.formatted(MEAL + ", " + records.replace('\'', '"'));
        JsonNode computed =
                Posted.answer("{\"system\": " + farm + ", \"boundary\": \"processing-gate\", \"draws\": 2000}");
        JsonNode programme = answer(
                farm,
                "\"as\": \"feed\", \"animal\": \"fish\", \"kg_per_year\": 40, \"baseline\": [{\"product\": \"fishmeal\"}]");

        assertEquals(remarked, computed.path("remarks").findValuesAsText("code").contains("processing-not-recorded"));
        assertEquals(remarked, codes(programme).contains("processing-not-recorded"));
        assertFalse(codes(programme).contains("larger-than-farm"));
    }

    @Test
    void a_burden_free_by_product_is_warned_of_with_the_second_figure() {
        JsonNode answer = answer(
                FARM.formatted(", \"energy\": []")
                        .replace("\"maize\"", "\"wheat-bran\", \"burden\": \"burden-free\", \"displaces\": \"maize\""),
                "\"kg_per_year\": 40, \"unit\": \"kg-live\", \"baseline\": [{\"product\": \"beef\"}], \"indicators\": [\"ghg\"]");

        assertTrue(codes(answer).contains("burden-free-by-product"), answer.path("warnings")::toString);
    }
}
