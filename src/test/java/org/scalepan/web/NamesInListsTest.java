package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;

/** In a body a list has one entry per name: a comma belongs to the name, and no product has such a name. */
class NamesInListsTest {
    private static final String FARM = """
            {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": 100},
             "feed": [{"ingredient": "wheat-bran", "kg": 250, "burden": "mass"}], "energy": []}
            """;

    private static String compared(String products) {
        return "{\"system\": " + FARM + ", \"compare\": {\"products\": [" + products + "]}}";
    }

    private static String substituted(String alternatives) {
        return """
               {"product": "mealworm", "kg_per_year": 1000, "baseline": [{"product": "beef"}], "displacement_rate": 0.5,
                "alternatives": [%s]}
               """.formatted(alternatives);
    }

    private static String briefed(String products) {
        return "{\"system\": " + FARM + ", \"against\": \"beef\", \"products\": [" + products + "]}";
    }

    private static JsonNode onlyFault(String route, String body, String pointer) {
        Posted posted = Posted.to(route, "application/json", body);
        assertEquals(400, posted.status(), posted::body);
        assertEquals(1, posted.tree().path("errors").size(), posted::body);
        return posted.fault(pointer);
    }

    @Test
    void two_names_in_one_entry_of_compare_are_no_product() {
        JsonNode fault = onlyFault("/v1/footprint", compared("\"chicken,beef\""), "/compare/products/0");

        assertEquals("unknown product \"chicken,beef\"", JsonAt.text(fault, "/message"));
    }

    @Test
    void two_names_in_one_entry_of_alternatives_are_no_product() {
        JsonNode fault = onlyFault("/v1/substitution", substituted("\"egg\", \"chicken,pork\""), "/alternatives/1");

        assertEquals("unknown alternative \"chicken,pork\"", JsonAt.text(fault, "/message"));
    }

    @Test
    void two_names_in_one_entry_of_a_brief_are_no_product() {
        JsonNode fault = onlyFault("/v1/brief", briefed("\"mealworm,chicken\""), "/products/0");

        assertEquals("unknown product \"mealworm,chicken\"", JsonAt.text(fault, "/message"));
    }

    @Test
    void two_names_in_the_field_of_one_product_are_no_product() {
        String body = "{\"product\": \"mealworm,chicken\", \"reference\": \"beef\", \"times_less\": 2}";

        assertEquals(
                "unknown product \"mealworm,chicken\"",
                JsonAt.text(onlyFault("/v1/claim", body, "/product"), "/message"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'\"beef\", \"chiken\"' | /compare/products/1 | chicken",
                "'\"mealwurm\"' | /compare/products/0 | mealworm"
            })
    void a_misspelt_name_is_reported_at_its_entry(String products, String pointer, String meant) {
        JsonNode fault = onlyFault("/v1/footprint", compared(products), pointer);

        assertEquals(meant, JsonAt.text(fault, "/did_you_mean/0"));
    }

    @Test
    void an_unknown_form_is_reported_at_its_name() {
        JsonNode fault = onlyFault("/v1/footprint", compared("\"mealworm:paste\""), "/compare/products/0");

        assertEquals("unknown form \"paste\"", JsonAt.text(fault, "/message"));
    }

    @Test
    void an_empty_entry_is_no_product() {
        onlyFault("/v1/footprint", compared("\"beef\", \"\""), "/compare/products/1");
    }

    @Test
    void names_in_entries_of_their_own_are_all_compared() {
        Posted posted = Posted.to("/v1/footprint", "application/json", compared("\"chicken\", \"beef\""));

        assertEquals(200, posted.status(), posted::body);
        assertEquals(
                "[\"chicken\",\"beef\"]",
                posted.tree().path("question").path("products").toString());
        assertTrue(posted.tree().path("footprints").size() > 1);
    }
}
