package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/**
 * A by-product that is bought and sold as feed is counted as the records say and never burden-free unasked; where they say burden-free,
 * a second figure counts its use elsewhere. The farms are invented.
 */
class SoldByProductTest {
    private static final String FARM = """
            {"kind": "insects", "product": "black-soldier-fly", "harvest": {"kg_per_year": 1500}, "frass": {"kg": 900},
             "feed": [{"ingredient": "carrot", "kg": 100}, {"ingredient": %s}], "energy": []}""";
    private static final String GRAINS = "\"brewers-grains-wet\", \"kg\": 6000";
    private static final String FREE = GRAINS + ", \"burden\": \"burden-free\"";
    private static final String FREE_OF_MAIZE = FREE + ", \"displaces\": \"maize\", \"displaced_kg_per_kg\": 0.2";
    private static final String DISPLACED = FREE_OF_MAIZE.replace("burden-free", "displaced");

    private static JsonNode answer(String line) {
        return Posted.answer("{\"system\": " + FARM.formatted(line)
                + ", \"per\": \"kg-protein\", \"indicators\": [\"ghg\", \"land\", \"feed\"], \"draws\": 2000,"
                + " \"compare\": {\"products\": [\"beef\"]}}");
    }

    private static JsonNode ghg(String line) {
        return answer(line).path("footprints").path(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "brewers-grains-wet",
                "wheat-bran",
                "soybean-meal",
                "molasses",
                "crop-straw",
                "bakery-by-product",
                "feather-meal"
            })
    void given_no_burden_then_its_line_is_refused_and_the_choices_are_explained(String ingredient) {
        Posted posted = Posted.json("{\"system\": " + FARM.formatted("\"" + ingredient + "\", \"kg\": 600") + "}");

        assertEquals(400, posted.status());
        JsonNode fault = posted.fault("/system/feed/1/burden");
        String said = JsonAt.text(fault, "/message");
        for (String word : new String[] {ingredient, "economic", "mass", "burden-free", "displaced", "displaces"}) {
            assertTrue(said.contains(word), said);
        }
        assertEquals(
                "[\"economic\",\"mass\",\"burden-free\",\"displaced\"]",
                fault.path("allowed").toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"maize", "compound-dairy-feed", "maize-silage", "cassava-peel", "pineapple-residue"})
    void given_a_crop_a_mixed_feed_or_a_residue_without_a_market_then_no_burden_is_asked_for(String ingredient) {
        assertEquals(
                200,
                Posted.json("{\"system\": " + FARM.formatted("\"" + ingredient + "\", \"kg\": 600") + "}")
                        .status());
    }

    @Test
    void given_own_factors_for_all_that_is_counted_then_nothing_is_left_to_allocate() {
        String own = "\"wheat-bran\", \"kg\": 600, \"ghg_per_kg\": 0.3, \"land_per_kg\": 2, \"energy_per_kg\": 1,"
                + " \"water_per_kg\": 0.1";

        assertEquals(
                200, Posted.json("{\"system\": " + FARM.formatted(own) + "}").status());
        posted(own.replace(", \"water_per_kg\": 0.1", "")).fault("/system/feed/1/burden");
    }

    private static Posted posted(String line) {
        return Posted.json("{\"system\": " + FARM.formatted(line) + "}");
    }

    @Test
    void given_a_share_by_price_that_nobody_published_then_the_figure_is_a_lower_bound_and_no_burden_free_zero() {
        JsonNode figure = ghg(GRAINS + ", \"burden\": \"economic\"");

        assertEquals("at-least", JsonAt.text(figure, "/bound"));
        assertEquals("feed (brewers-grains-wet, ghg)", JsonAt.text(figure, "/not_counted/0"));
    }

    @Test
    void given_burden_free_with_what_it_displaces_then_the_second_figure_is_that_of_displaced() {
        JsonNode free = ghg(FREE_OF_MAIZE);
        JsonNode displaced = ghg(DISPLACED);

        JsonNode second = free.path("with_displaced_use");
        assertEquals("ok", JsonAt.text(second, "/status"));
        assertEquals("[\"brewers-grains-wet\"]", second.path("ingredients").toString());
        assertEquals(
                JsonAt.number(displaced, "/footprint/median"),
                JsonAt.number(second, "/footprint/median"),
                1e-9,
                "kg CO2e per kg protein");
        assertTrue(
                JsonAt.number(second, "/footprint/median") > 1.2 * JsonAt.number(free, "/footprint/median"),
                second::toString);
        assertEquals(
                JsonAt.number(displaced, "/compare/0/times_less/median"),
                JsonAt.number(free, "/compare/0/times_less_with_displaced_use/median"),
                1e-9,
                "times");
        assertFalse(displaced.has("with_displaced_use"), "what is displaced is in the figure already");
        assertTrue(
                JsonAt.text(second, "/text").contains("with what had to replace it elsewhere counted too, it is "),
                second::toString);
    }

    @Test
    void given_burden_free_alone_then_the_share_by_price_makes_the_second_figure() {
        JsonNode land = answer("\"soybean-meal\", \"kg\": 900, \"burden\": \"burden-free\"")
                .path("footprints")
                .path(1);
        JsonNode economic = answer("\"soybean-meal\", \"kg\": 900, \"burden\": \"economic\"")
                .path("footprints")
                .path(1);

        assertEquals("ok", JsonAt.text(land, "/with_displaced_use/status"));
        assertEquals(
                JsonAt.number(economic, "/footprint/median"),
                JsonAt.number(land, "/with_displaced_use/footprint/median"),
                1e-9,
                "m2*yr per kg protein");
    }

    @Test
    void given_burden_free_and_neither_then_the_second_figure_is_reported_as_missing() {
        JsonNode answer = answer(FREE);
        JsonNode second = answer.at("/footprints/0/with_displaced_use");

        assertEquals("missing", JsonAt.text(second, "/status"));
        assertFalse(second.has("footprint"), second::toString);
        assertTrue(JsonAt.text(second, "/missing/0").contains("displaces"), second::toString);
        assertFalse(answer.at("/footprints/0/compare/0").has("times_less_with_displaced_use"));
        assertFalse(answer.at("/footprints/2").has("with_displaced_use"), "feed is feed whatever burden it carries");
    }

    @Test
    void given_a_residue_without_a_market_then_burden_free_has_no_second_figure() {
        assertFalse(ghg("\"cassava-peel\", \"kg\": 600, \"burden\": \"burden-free\"")
                .has("with_displaced_use"));
    }

    @Test
    void what_is_displaced_goes_with_displaced_and_burden_free_only() {
        JsonNode fault = posted(GRAINS + ", \"burden\": \"mass\", \"displaces\": \"maize\"")
                .fault("/system/feed/1/displaces");

        assertTrue(JsonAt.text(fault, "/message").startsWith("displaces goes with"), fault::toString);
    }

    @Test
    void a_claim_says_the_second_figure_in_the_sentence_to_copy() {
        Posted posted = Posted.to(
                "/v1/claim",
                "application/json",
                "{\"system\": " + FARM.formatted(FREE_OF_MAIZE)
                        + ", \"reference\": \"beef\", \"times_less\": 2, \"draws\": 2000}");
        assertEquals(200, posted.status(), posted.body());
        JsonNode answer = posted.tree();

        String second = JsonAt.text(answer, "/checks/0/with_displaced_use/0");
        assertTrue(
                second.matches(".*counted too, it is .* kg CO2e per kg protein, and beef has .* times as much.*"),
                second);
        assertTrue(JsonAt.text(answer, "/say_instead/sentence").endsWith(second), answer.path("say_instead")::toString);
    }

    @Test
    void a_brief_says_it_too() {
        Posted posted = Posted.to(
                "/v1/brief",
                "application/json",
                "{\"system\": " + FARM.formatted(FREE_OF_MAIZE) + ", \"against\": \"beef\", \"draws\": 2000}");

        assertEquals(200, posted.status(), posted.body());
        assertTrue(posted.body().contains("counted burden-free although sold as feed"), posted.body());
    }

    @Test
    void a_row_in_bulk_fails_in_its_place_and_with_detail_gives_the_second_figure() {
        String rows = (FARM.formatted(GRAINS) + "@" + FARM.formatted(FREE_OF_MAIZE))
                .replace("\n", "")
                .replace("@", "\n");
        String[] plain = bulk("/v1/footprints?indicators=ghg&per=kg-protein", "application/x-ndjson", rows);
        String[] detailed =
                bulk("/v1/footprints?indicators=ghg&per=kg-protein&detail=yes", "application/x-ndjson", rows);

        assertTrue(plain[0].contains("\"status\":\"wrong\"") && plain[0].contains("/feed/1/burden"), plain[0]);
        assertTrue(plain[0].contains("bought and sold"), plain[0]);
        assertFalse(plain[1].contains("with_displaced_use"), plain[1]);
        assertTrue(
                detailed[1].contains(
                        "\"with_displaced_use\":{\"ingredients\":[\"brewers-grains-wet\"],\"status\":\"ok\",\"value\":"),
                detailed[1]);
    }

    @Test
    void a_table_with_detail_has_columns_for_it_and_names_the_column_of_a_missing_burden() {
        String head = "kind,product,harvest.kg_per_year,feed.1.ingredient,feed.1.kg,feed.1.burden,feed.1.displaces\r\n";
        String[] lines = bulk(
                "/v1/footprints?indicators=ghg,feed&per=kg-protein&detail=yes",
                "text/csv",
                head
                        + "insects,mealworm,100,wheat-bran,300,,\r\ninsects,mealworm,100,wheat-bran,300,burden-free,maize\r\n");

        assertTrue(
                lines[0].contains(
                        "ghg_bound,ghg_interval_of,ghg_with_displaced_use,ghg_with_displaced_use_low,ghg_with_displaced_use_high,"
                                + "ghg_with_displaced_use_bound,feed,"),
                lines[0]);
        assertTrue(lines[1].contains("feed.1.burden"), lines[1]);
        int column = java.util.List.of(lines[0].split(",")).indexOf("ghg_with_displaced_use");
        double second = Double.parseDouble(lines[2].split(",")[column]);
        assertTrue(second > Double.parseDouble(lines[2].split(",")[6]), lines[2]);
    }

    private static String[] bulk(String path, String type, String rows) {
        Posted posted = Posted.to(path, type, rows);
        assertEquals(200, posted.status(), posted.body());
        return posted.body().split("\r?\n");
    }
}
