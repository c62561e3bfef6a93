package org.scalepan.web.library;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scalepan.web.RunningScalepan;

/** Reference farms as they are served, and as questions use them. */
class ReferenceFarmRoutesTest {
    @Test
    void every_number_of_a_farm_has_rows_or_a_reason_and_every_row_a_source() {
        JsonPath answer = RunningScalepan.given()
                .get("/v1/reference-farms/house-cricket-ambient-tropical")
                .jsonPath();

        for (Map<String, Object> input : answer.<Map<String, Object>>getList("farm.inputs")) {
            boolean published = "published".equals(input.get("basis"));
            assertEquals(published, !((List<?>) input.get("rows")).isEmpty() && published, input.toString());
            assertTrue(!input.get("why").toString().isBlank(), input.toString());
        }
        assertTrue(!answer.getList("references").isEmpty());
    }

    /** The system of a farm is a request of its own: somebody may start from it. */
    @Test
    void a_farm_posted_as_records_gives_the_figure_that_is_modelled() {
        JsonPath farm = RunningScalepan.given()
                .get("/v1/reference-farms/village-hens-eggs-tropical")
                .jsonPath();
        String value = RunningScalepan.given()
                .get("/v1/value/ghg/egg?evidence=modelled&system=village-hens-eggs-tropical&region=kenya")
                .asString();

        Float posted = RunningScalepan.given()
                .contentType(ContentType.JSON)
                .body(Map.of("system", farm.getMap("farm.system"), "indicators", List.of("ghg")))
                .post("/v1/footprint")
                .jsonPath()
                .get("footprints[0].footprint.median");
        assertEquals(Double.parseDouble(value), posted.doubleValue(), 0.002 * posted, "kg CO2e per kg protein");
    }

    @Test
    void an_unknown_farm_is_refused_with_the_nearest() {
        RunningScalepan.given()
                .get("/v1/reference-farms/broilers-temperat")
                .then()
                .statusCode(404)
                .body("errors[0].did_you_mean", hasItem("broilers-temperate"));
        RunningScalepan.given()
                .get("/v1/value/ghg/chicken?evidence=modelled&system=broilers-temperat")
                .then()
                .statusCode(400)
                .body(containsString("/v1/reference-farms"));
    }

    @Test
    void a_comparison_shows_the_modelled_figure_of_every_product_beside_what_is_published() {
        RunningScalepan.given()
                .get("/v1/comparison?products=mealworm,field-cricket,salmon&against=chicken&per=kg-live")
                .then()
                .statusCode(200)
                .body("reference.modelled.reference_farm.id", equalTo("broilers-temperate"))
                .body("items[1].status", equalTo("no-evidence"))
                .body("items[1].modelled.status", equalTo("ok"))
                .body("items[1].modelled.sentence", containsString("modelled from published practice, not a study"))
                .body("items[2].modelled.reason", containsString("no reference farm"));
    }

    @Test
    void a_question_for_modelled_figures_has_them_on_both_sides_and_shows_the_studies_beside() {
        RunningScalepan.given()
                .get("/v1/comparison?products=mealworm&against=chicken&evidence=modelled")
                .then()
                .statusCode(200)
                .body("question.evidence", equalTo("modelled"))
                .body("items[0].studies", equalTo(0))
                .body("items[0].published.studies", equalTo(2))
                .body("items[0].times_less.bound", equalTo("at-most"))
                .body("warnings.code", hasItem("modelled"));
    }

    /** A lower bound beside an exact figure decides nothing in its own favour. */
    @Test
    void a_claim_does_not_hold_on_a_farm_whose_heating_nobody_published() {
        RunningScalepan.given()
                .get("/v1/claim?product=mealworm&reference=chicken&indicator=ghg&times_less=1.1&evidence=modelled")
                .then()
                .statusCode(200)
                .body("verdict", not(startsWith("holds")))
                .body("say_instead.sentence", not(containsString("at least")));
    }

    @Test
    void a_plan_gives_the_figure_the_feed_and_what_nobody_has_published() {
        RunningScalepan.given()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "plan",
                        Map.of("system", "house-cricket-ambient-tropical", "harvest_kg", 200),
                        "compare",
                        Map.of("reference_farms", List.of("broilers-temperate"), "products", List.of("beef"))))
                .post("/v1/footprint")
                .then()
                .statusCode(200)
                .body("plan.is", equalTo("modelled from published practice, not a study"))
                .body("plan.amounts.field", hasItem("feed.0.kg"))
                .body("plan.amounts.unit", everyItem(not(equalTo(""))))
                .body("footprints[0].compare[0].origin", equalTo("practice"))
                .body("footprints[0].compare[0].reference_farm", equalTo("broilers-temperate"))
                .body("footprints[0].compare[1].origin", equalTo("publications"));
    }

    @Test
    void a_plan_and_records_together_are_refused() {
        RunningScalepan.given()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "plan",
                        Map.of("system", "broilers-temperate", "harvest_kg", 200),
                        "system",
                        Map.of("kind", "insects")))
                .post("/v1/footprint")
                .then()
                .statusCode(400)
                .body("errors.message", hasItem(containsString("either system")));
    }

    @Test
    void the_table_of_modelled_against_published_is_served_in_four_formats() {
        JsonPath answer =
                RunningScalepan.given().get("/v1/calibration/modelled").jsonPath();
        int pairs = answer.getList("items").size();
        String csv = RunningScalepan.given()
                .get("/v1/calibration/modelled?format=csv")
                .asString();
        String svg = RunningScalepan.given()
                .get("/v1/calibration/modelled?format=svg")
                .asString();
        String markdown = RunningScalepan.given()
                .get("/v1/calibration/modelled?format=md")
                .asString();

        assertEquals(pairs + 1, csv.strip().split("\n").length);
        assertEquals(pairs, svg.split("<circle", -1).length - 1);
        assertTrue(svg.contains("<title>" + answer.getString("text") + "</title>"), svg.substring(0, 400));
        assertTrue(markdown.startsWith(answer.getString("text")), markdown.substring(0, 300));
    }

    /** Printed from Chromium on A4 it is one page; the lines are what a hand can fill. */
    @Test
    void a_recording_sheet_has_what_is_to_be_expected_and_blank_lines() {
        String sheet = RunningScalepan.given()
                .get("/v1/recording-sheets/house-cricket-ambient-tropical?harvest_kg=300&format=html")
                .asString();

        assertTrue(sheet.contains("modelled from published practice, not a study"), sheet);
        // Feed conversion times the harvest: at least 1.5 kg per kg.
        assertTrue(sheet.contains("feed: Maize grain 230 to 510 kg a year"), sheet);
        assertEquals(12, sheet.split("<tr><th scope=\"row\">", -1).length - 1, sheet);
    }
}
