package org.scalepan.web.claim;

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

/** No farm records what happens on the way to a shop: records are held against nothing that ends at retail. The farm is invented. */
class RecordsEndAtTheGateTest {
    private static final String FARM = """
            {"kind": "insects", "name": "bucket shed", "product": "mealworm", "harvest": {"kg_per_year": 160},
             "feed": [{"ingredient": "maize", "kg": 400}], "energy": [], "frass": {"kg": 100}, "building_m2": 12}""";

    @ParameterizedTest(name = "{0} with records up to retail is refused")
    @CsvSource(
            delimiter = '|',
            value = {
                "/v1/footprint | \"indicators\": [\"ghg\"] | boundary",
                "/v1/claim | \"reference\": \"beef\", \"times_less\": 2 | boundary",
                "/v1/claim | \"none\": \"yes\" | boundary",
                "/v1/brief | \"against\": \"beef\" | boundary",
                "/v1/break-even | \"against\": \"chicken\", \"input\": \"feed\" | boundary",
                "/v1/sensitivity | \"against\": \"chicken\" | boundary",
                "/v1/substitution | \"kg_per_year\": 100, \"displacement_rate\": 1, \"baseline\": [{\"product\": \"beef\"}] | boundary"
            })
    void records_are_refused_at_retail(String path, String rest, String field) {
        Posted posted = Posted.to(
                path, "application/json", "{\"system\": " + FARM + ", " + rest + ", \"boundary\": \"retail\"}");

        assertEquals(400, posted.status(), posted.body());
        JsonNode fault = posted.fault("/" + field);
        assertTrue(fault.path("allowed").toString().contains("processing-gate"), fault::toString);
        assertFalse(fault.path("allowed").toString().contains("retail"), fault::toString);
        assertEquals(1, posted.tree().path("errors").size(), posted.body());
    }

    @Test
    void rows_in_bulk_are_refused_at_retail() {
        assertEquals(
                400,
                Posted.to("/v1/footprints?boundary=retail", "application/x-ndjson", FARM.replace("\n", ""))
                        .status());
    }

    @ParameterizedTest
    @CsvSource({"ghg, none", "ghg, times", "land, times", "energy, times"})
    void no_cell_of_a_claim_about_records_ends_at_retail(String indicator, String kind) {
        String claimed = kind.equals("none") ? "\"none\": \"yes\"" : "\"reference\": \"beef\", \"times_less\": 2";
        Posted posted = Posted.to(
                "/v1/claim",
                "application/json",
                "{\"system\": " + FARM + ", \"indicator\": \"" + indicator + "\", \"draws\": 2000, " + claimed + "}");
        assertEquals(200, posted.status(), posted.body());

        List<String> ends = posted.tree().at("/checks/0/cells").findValuesAsText("boundary");
        assertFalse(ends.contains("retail"), ends::toString);
        assertEquals("farm-gate", JsonAt.text(posted.tree(), "/question/boundary"));
    }
}
