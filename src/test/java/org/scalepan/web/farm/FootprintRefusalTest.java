package org.scalepan.web.farm;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;
import org.scalepan.web.RunningScalepan;

/** Invalid records are refused with all errors at once, each with its JSON Pointer (RFC 6901). */
class FootprintRefusalTest {
    /** A valid farm except for the given parts. */
    private static String farm(String harvest, String feed, String more) {
        return """
               {"system": {"kind": "insects", "product": "mealworm", "harvest": %s, "feed": [%s], "energy": []%s}}
               """.formatted(harvest, feed, more);
    }

    private static String farm(String more) {
        return farm(
                "{\"kg_per_year\": 100}", "{\"ingredient\": \"wheat-bran\", \"kg\": 250, \"burden\": \"mass\"}", more);
    }

    private static String herd(String more) {
        return "{\"system\": {\"kind\": \"herd\", \"heads\": 10, \"breeding_stock\": \"included\"" + more + "}}";
    }

    private static Posted refused(String body) {
        return refused(body, 400, "/problems/bad-body");
    }

    /** A valid body that exceeds a limit. */
    private static Posted tooMuch(String body) {
        return refused(body, 422, "/problems/beyond-limits");
    }

    private static Posted refused(String body, int status, String type) {
        Posted posted = Posted.json(body);
        assertEquals(status, posted.status(), posted::body);
        assertEquals("application/problem+json", posted.mediaType());
        assertEquals(type, JsonAt.text(posted.tree(), "/type"));
        return posted;
    }

    private static void message(String expected, JsonNode fault) {
        assertTrue(JsonAt.text(fault, "/message").contains(expected), fault::toString);
    }

    @Test
    void the_farm_that_the_other_tests_alter_is_valid() {
        assertEquals(200, Posted.json(farm("")).status());
    }

    @Test
    void a_missing_system() {
        message("system is missing", refused("{}").fault("/system"));
    }

    @Test
    void a_missing_harvest() {
        Posted posted = refused(
                "{\"system\": {\"kind\": \"insects\", \"product\": \"mealworm\", \"feed\": [], \"energy\": []}}");

        message("harvest is missing", posted.fault("/system/harvest"));
    }

    @Test
    void a_heated_room_in_a_place_that_is_not_told() {
        Posted posted = refused(farm(", \"heating\": {\"room_m2\": 20, \"carrier\": \"grid-electricity\"}"));

        message("heating needs region", posted.fault("/system/heating"));
    }

    @Test
    void a_heated_room_on_a_continent() {
        Posted posted =
                refused(farm(", \"region\": \"europe\", \"heating\": {\"room_m2\": 20, \"carrier\": \"firewood\"}"));

        message("heating needs a country as region", posted.fault("/system/heating"));
    }

    @Test
    void a_heated_room_of_unheard_insulation() {
        Posted posted = refused(
                farm(
                        ", \"region\": \"norway\", \"heating\": {\"room_m2\": 20, \"carrier\": \"firewood\", \"insulation\": \"thick\"}"));

        message("insulation", posted.fault("/system/heating/insulation"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"kg_per_year\": 100, \"containers\": 3, \"kg_per_container\": 2, \"cycles_per_year\": 4}",
                "{\"kg_per_year\": 100, \"larvae\": 3000, \"larvae_per_kg\": 160}",
                "{}"
            })
    void a_harvest_in_two_ways_at_once_or_in_none(String harvest) {
        message("in one way", refused(farm(harvest, "", "")).fault("/system/harvest/kg_per_year"));
    }

    @Test
    void a_harvest_in_containers_without_their_cycles() {
        Posted posted = refused(farm("{\"containers\": 3, \"kg_per_container\": 2}", "", ""));

        message("cycles_per_year is missing", posted.fault("/system/harvest/cycles_per_year"));
    }

    @Test
    void an_unknown_ingredient_with_the_nearest_known() {
        Posted posted = refused(farm("{\"kg_per_year\": 1}", "{\"ingredient\": \"wheat-brann\", \"kg\": 2}", ""));

        assertEquals("wheat-bran", JsonAt.text(posted.fault("/system/feed/0/ingredient"), "/did_you_mean/0"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.2", "-0.1", "1", "\"wet\"", "null"})
    void a_moisture_that_is_not_a_fraction(String moisture) {
        String feed =
                "{\"ingredient\": \"wheat-bran\", \"kg\": 1, \"burden\": \"mass\"}, {\"ingredient\": \"maize\", \"kg\": 2, \"moisture\": "
                        + moisture + "}";

        message(
                "moisture must be",
                refused(farm("{\"kg_per_year\": 1}", feed, "")).fault("/system/feed/1/moisture"));
    }

    @Test
    void all_errors_are_reported_at_once() {
        Posted posted = refused("""
                {"system": {"kind": "insects", "product": "mealwurm", "harvest": {"kg_per_year": -1},
                  "feed": [{"ingredient": "wheat-bran", "burden": "mass"}], "energy": [{"carrier": "petroleum", "amount": 2}],
                  "colour": "green"}, "per": "kg-protien", "draws": 5}
                """);

        for (String pointer : new String[] {
            "/system/product",
            "/system/harvest/kg_per_year",
            "/system/feed/0/kg",
            "/system/energy/0/carrier",
            "/system/colour",
            "/per",
            "/draws"
        }) {
            posted.fault(pointer);
        }
        assertEquals(7, posted.tree().path("errors").size(), posted::body);
        assertEquals("mealworm", JsonAt.text(posted.fault("/system/product"), "/did_you_mean/0"));
        assertEquals("kg-protein", JsonAt.text(posted.fault("/per"), "/did_you_mean/0"));
    }

    @ParameterizedTest
    @CsvSource({
        "', \"harvst\": 1', /system/harvst",
        "', \"frass\": {\"kilograms\": 3}', /system/frass/kilograms",
        "', \"materials\": [{\"material\": \"glass\", \"kg\": 1, \"lifetime\": 3}]', /system/materials/0/lifetime"
    })
    void an_unknown_field_is_refused_at_any_depth(String more, String pointer) {
        message("unknown field", refused(farm(more)).fault(pointer));
    }

    @Test
    void the_boundary_of_retail_is_not_one_of_a_farm() {
        Posted posted = refused(farm("}, \"boundary\": \"retail\", \"compare\": {"));

        assertTrue(posted.fault("/boundary").path("allowed").toString().contains("processing-gate"), posted::body);
    }

    @Test
    void a_form_other_than_fresh_needs_the_kg_sold() {
        message("sold_kg is missing", refused(farm(", \"form\": \"dried\"")).fault("/system/sold_kg"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                ", \"co_product_allocation\": \"economic\"",
                ", \"co_product_allocation\": \"economic\", \"price_per_kg\": 0",
                ", \"co_product_allocation\": \"economic\", \"price_per_kg\": 5, \"co_products\": [{\"kg\": 3}]"
            })
    void economic_allocation_without_prices(String more) {
        message("needs price_per_kg", refused(farm(more)).fault("/system/co_product_allocation"));
    }

    @Test
    void a_displaced_burden_names_what_is_displaced() {
        String feed = "{\"ingredient\": \"cassava-peel\", \"kg\": 1, \"burden\": \"displaced\"}";

        message(
                "displaces goes with",
                refused(farm("{\"kg_per_year\": 1}", feed, "")).fault("/system/feed/0/displaces"));
    }

    @Test
    void co_products_of_a_herd_belong_in_its_yield() {
        message(
                "what a herd gives stands in yield",
                refused(herd(", \"animals\": \"layers\", \"yield\": {\"eggs_kg\": 90}, \"co_products\": [{\"kg\": 3}]"))
                        .fault("/system/co_products"));
    }

    @Test
    void a_herd_without_yield_or_animals() {
        Posted posted = refused(herd(""));

        posted.fault("/system/yield");
        posted.fault("/system/animals");
    }

    @Test
    void a_herd_that_gives_what_its_animals_do_not() {
        message(
                "no product",
                refused(herd(", \"animals\": \"sheep\", \"yield\": {\"milk_kg\": 90}"))
                        .fault("/system/yield/milk_kg"));
        message(
                "no product",
                refused(herd(", \"animals\": \"swine\", \"yield\": {\"eggs_kg\": 9}"))
                        .fault("/system/yield/eggs_kg"));
        refused(herd(", \"animals\": \"layers\", \"yield\": {\"eggs_kg\": 90}, \"product\": \"beef\""))
                .fault("/system/product");
    }

    @Test
    void manure_that_does_not_add_up() {
        Posted posted = refused(
                herd(
                        ", \"animals\": \"dairy-cattle\", \"yield\": {\"milk_kg\": 900},"
                                + " \"manure\": [{\"system\": \"pasture\", \"share\": 0.5}, {\"system\": \"solid-storage\", \"share\": 0.4}]"));

        message("add up to 0.9", posted.fault("/system/manure"));
    }

    @Test
    void tier_2_is_for_cattle_and_buffalo() {
        Posted posted = refused(herd(", \"animals\": \"layers\", \"yield\": {\"eggs_kg\": 90},"
                + " \"cattle\": {\"weight_kg\": 400, \"digestibility_percent\": 60}"));

        message("Tier 2", posted.fault("/system/cattle"));
    }

    /** Every animal, with and without Tier 2 where there is one, is answered, never with a server error. */
    @ParameterizedTest
    @CsvSource({
        "dairy-cattle, 2019, milk_kg",
        "dairy-cattle, 2006, live_kg",
        "other-cattle, 2019, live_kg",
        "other-cattle, 2006, milk_kg",
        "buffalo, 2019, milk_kg",
        "buffalo, 2006, live_kg"
    })
    void tier_2_answers_for_every_kind_of_cattle(String animals, String edition, String yield) {
        for (String kind : new String[] {"lactating", "not-lactating", "intact-males", "castrates"}) {
            String body = herd(
                    (", \"animals\": \"%s\", \"ipcc_edition\": \"%s\", \"yield\": {\"%s\": 900}, \"region\": \"india\","
                                    + " \"cattle\": {\"weight_kg\": 400, \"kind\": \"%s\", \"digestibility_percent\": 60}")
                            .formatted(animals, edition, yield, kind));
            assertEquals(200, Posted.json(body).status(), body);
        }
    }

    /** JSON has no NaN and no infinity; 1e999 is valid JSON but not finite. */
    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e999", "-1e999", "0x10", "+1", "01", "1.", "'1'"})
    void a_number_that_is_not_finite(String number) {
        refused(farm("{\"kg_per_year\": " + number + "}", "", "")).fault("");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e13", "0", "-5", "1e-10", "\"100\"", "true", "[100]"})
    void a_harvest_out_of_range_or_of_another_kind(String number) {
        refused(farm("{\"kg_per_year\": " + number + "}", "", "")).fault("/system/harvest/kg_per_year");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"system\": {\"kind\": \"insects\", \"kind\": \"herd\"}}",
                "{\"system\": {\"feed\": [{\"kg\": 1, \"kg\": 2}]}}",
                "{} {}",
                "{",
                "{\"system\": 1,}",
                "// nothing\n{}",
                "   ",
                ""
            })
    void a_body_that_is_not_one_json_object_without_duplicate_keys(String body) {
        refused(body).fault("");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[]", "1", "\"farm\"", "null"})
    void a_body_that_is_json_and_no_object(String body) {
        message("must be a JSON object", refused(body).fault(""));
    }

    @Test
    void a_body_nested_too_deeply() {
        tooMuch("[".repeat(5000)).fault("");
        message(
                "at most 16 deep",
                tooMuch("{\"system\":".repeat(40) + "1" + "}".repeat(40)).fault(""));
    }

    @Test
    void a_body_that_is_not_utf_8() {
        byte[] latin = "{\"name\": \"ferme d'été\"}".getBytes(StandardCharsets.ISO_8859_1);
        Posted posted = Posted.bytes(latin, "application/json");

        assertEquals(400, posted.status());
        message("not UTF-8", posted.fault(""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "text/plain", "application/jsonp", "application/x-www-form-urlencoded", "text/csv"})
    void another_media_type_is_a_problem_415(String mediaType) {
        Posted posted = Posted.bytes(farm("").getBytes(StandardCharsets.UTF_8), mediaType);

        assertEquals(415, posted.status());
        assertEquals("application/problem+json", posted.mediaType());
        assertEquals("/problems/media-type", JsonAt.text(posted.tree(), "/type"));
    }

    @Test
    void json_with_its_character_set_named_is_json() {
        assertEquals(
                200,
                Posted.bytes(farm("").getBytes(StandardCharsets.UTF_8), "application/json; charset=utf-8")
                        .status());
    }

    @Test
    void a_list_beyond_its_limit_is_refused() {
        String line = "{\"ingredient\": \"maize\", \"kg\": 1}";
        String feed = String.join(",", java.util.Collections.nCopies(101, line));

        message("at most 100", tooMuch(farm("{\"kg_per_year\": 1}", feed, "")).fault("/system/feed"));
    }

    @Test
    void get_on_a_route_for_records_is_405() {
        RunningScalepan.given()
                .get("/v1/footprint")
                .then()
                .statusCode(405)
                .contentType("application/problem+json")
                .header("Allow", equalTo("POST, OPTIONS"))
                .body("detail", containsString("POST"));
    }
}
