package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;
import org.scalepan.web.RunningScalepan;

/** Farm records over HTTP: POST /v1/footprint. */
class FootprintTest {
    private static final String NOTEBOOK = """
            {"system": {"kind": "insects", "product": "superworm", "name": "three sheds", "region": "peru",
              "harvest": {"containers": 40, "kg_per_container": 2.5, "cycles_per_year": 12},
              "cycle_days": 26, "pairs_stocked": 4,
              "feed": [{"ingredient": "wheat-bran", "kg": 3600, "burden": "mass"},
                       {"ingredient": "cassava-peel", "kg": 2400, "moisture": 0.7, "burden": "burden-free"}],
              "energy": [{"carrier": "grid-electricity", "amount": 150}],
              "water_m3": 15, "transport": [{"mode": "truck-average", "tonne_km": 90}]},
             "per": "kg-protein", "indicators": ["ghg", "land", "feed"],
             "compare": {"products": ["beef"],
               "systems": [{"kind": "herd", "name": "village hens", "animals": "layers", "heads": 10, "breeding_stock": "included",
                            "region": "peru", "yield": {"eggs_kg": 40}}]}}
            """;
    private static final String THREE_FIELDS = """
            {"system": {"kind": "insects", "product": "palm-weevil", "harvest": {"kg_per_year": 500},
              "feed": [{"ingredient": "wheat-bran", "kg": 2000, "burden": "mass"}],
              "energy": [{"carrier": "grid-electricity", "amount": 100}]}%s}
            """;

    private static List<String> texts(JsonNode list, String field) {
        List<String> texts = new ArrayList<>();
        JsonAt.array(list, "").forEach(item -> texts.add(JsonAt.text(item, "/" + field)));
        return texts;
    }

    @Test
    void a_notebook_gets_a_figure_with_interval_stages_gases_lines_and_gaps() {
        JsonNode answer = Posted.answer(NOTEBOOK);
        JsonNode ghg = answer.path("footprints").path(0);
        JsonNode footprint = ghg.path("footprint");

        assertEquals(1200, JsonAt.number(answer, "/system/output"), 1e-9);
        assertEquals("ok", JsonAt.text(ghg, "/status"));
        assertEquals("kg CO2e per kg protein", JsonAt.text(footprint, "/unit"));
        assertTrue(JsonAt.number(footprint, "/low") < JsonAt.number(footprint, "/median"));
        assertTrue(JsonAt.number(footprint, "/median") < JsonAt.number(footprint, "/high"));
        assertTrue(JsonAt.text(footprint, "/text").matches(".* \\(.* to .*\\) kg CO2e per kg protein"));
        assertEquals(List.of("feed", "animals", "manure", "energy", "transport"), texts(ghg.path("by_stage"), "stage"));
        double shares = 0;
        for (JsonNode stage : ghg.path("by_stage")) {
            // Something required is not counted here, so that these are shares of what is.
            shares += JsonAt.number(stage, "/share_of_counted");
        }
        assertEquals(1, shares, 1e-5, "the stages are the whole");
        assertTrue(texts(ghg.path("by_gas"), "gas").contains("n2o"));
        ghg.path("lines")
                .forEach(line -> assertTrue(
                        line.path("rows").isArray() && !line.path("rows").isEmpty(), line::toString));
        assertTrue(texts(answer.path("gaps"), "field").contains("direct gases of superworm"));
        assertEquals(List.of("ghg", "land", "feed"), texts(answer.path("footprints"), "indicator"));
        assertFalse(JsonAt.text(answer, "/library/digest").isEmpty());
        assertTrue(answer.path("references").size() > 3, "every row is cited");
    }

    @Test
    void it_is_compared_with_a_computed_flock_and_published_beef() {
        JsonNode compare = Posted.answer(NOTEBOOK).path("footprints").path(0).path("compare");

        assertEquals("village hens", JsonAt.text(compare, "/0/system"));
        assertEquals("beef", JsonAt.text(compare, "/1/product"));
        // The nitrogen of cassava peel is not held, and the flock ate what nobody wrote down: both are lower bounds.
        assertEquals("at-least", JsonAt.text(compare, "/0/bound"));
        assertFalse(compare.path(0).has("times_less"), "two lower bounds have no ratio");
        JsonNode times = compare.path(1).path("times_less");
        assertTrue(JsonAt.number(times, "/low") < JsonAt.number(times, "/high"), times::toString);
        assertEquals("at-most", JsonAt.text(times, "/bound"));
        assertTrue(JsonAt.text(times, "/text").startsWith("at most "), times::toString);
        assertFalse(compare.path(1).has("share_of_draws_less"), "no share of draws rests on a bound");
    }

    @Test
    void three_fields_are_enough() {
        JsonNode answer = Posted.answer(THREE_FIELDS.formatted(""));

        assertEquals(List.of("ghg", "land", "feed", "energy", "water"), texts(answer.path("footprints"), "indicator"));
        assertEquals("ok", JsonAt.text(answer, "/footprints/0/status"));
        // Water was not recorded: there is no figure, and not a figure of zero.
        assertEquals("not-computed", JsonAt.text(answer, "/footprints/4/status"));
        assertTrue(texts(answer.path("warnings"), "code").contains("lower-bound"), answer.path("warnings")::toString);
    }

    /** For carrots only land has data at retail only: the warning is with land and not with gases. */
    @Test
    void feed_counted_up_to_retail_gives_a_warning_for_indicators_it_enters() {
        String carrots = """
                {"system": {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": 100},
                  "feed": [{"ingredient": "carrot", "kg": 200}]}, "indicators": ["%s"]}
                """;
        JsonNode land = Posted.answer(carrots.formatted("land"));
        JsonNode gases = Posted.answer(carrots.formatted("ghg"));

        JsonNode warning = StreamSupport.stream(land.path("warnings").spliterator(), false)
                .filter(one -> JsonAt.text(one, "/code").equals("retail-feed-factor"))
                .findFirst()
                .orElseThrow();
        assertEquals("poore-nemecek-2018.carrot.land", JsonAt.text(warning, "/about/0"));
        assertTrue(JsonAt.text(warning, "/text").contains("too high"), warning::toString);
        assertFalse(texts(gases.path("warnings"), "code").contains("retail-feed-factor"));
    }

    @Test
    void ten_hens_with_their_eggs_alone_are_enough() {
        JsonNode answer = Posted.answer("""
                {"system": {"kind": "herd", "animals": "layers", "heads": 10, "breeding_stock": "included", "yield": {"eggs_kg": 40}},
                 "indicators": ["ghg"]}
                """);

        assertEquals("egg", JsonAt.text(answer, "/system/product"));
        assertTrue(JsonAt.number(answer, "/footprints/0/footprint/median") > 0);
        assertTrue(texts(answer.path("gaps"), "field").containsAll(List.of("feed", "energy", "ipcc_region")));
    }

    @Test
    void with_feed_alone_the_figure_is_feed_over_harvest_worked_by_hand() {
        // 2 kg of feed at 0.5 kg CO2e make 1 kg CO2e per kg live; gases of the larvae (1.57 to 121.86 g) are added.
        JsonNode answer = Posted.answer("""
                {"system": {"kind": "insects", "product": "palm-weevil", "harvest": {"kg_per_year": 100},
                  "feed": [{"ingredient": "artificial-diet", "kg": 200, "ghg_per_kg": 0.5}], "energy": []},
                 "indicators": ["ghg"], "per": "kg-live"}
                """);
        double median = JsonAt.number(answer, "/footprints/0/footprint/median");

        assertTrue(median > 1.00157 && median < 1.12186, "kg CO2e per kg live: " + median);
    }

    @Test
    void at_the_boundary_of_the_animal_neither_feed_nor_energy_counts() {
        JsonNode answer =
                Posted.answer(THREE_FIELDS.formatted(", \"boundary\": \"animal\", \"indicators\": [\"ghg\"]"));

        assertEquals(
                List.of("animals", "manure"),
                texts(answer.path("footprints").path(0).path("by_stage"), "stage"));
    }

    @Test
    void the_same_records_get_the_same_bytes_and_no_store() {
        assertEquals(Posted.json(NOTEBOOK).body(), Posted.json(NOTEBOOK).body());
        RunningScalepan.given()
                .contentType("application/json")
                .body(NOTEBOOK)
                .post("/v1/footprint")
                .then()
                .statusCode(200)
                .header("Cache-Control", "no-store");
    }

    @Test
    void legality_and_practice_give_remarks_and_no_errors() {
        JsonNode answer = Posted.answer("""
                {"system": {"kind": "insects", "product": "palm-weevil", "cycle_days": 60,
                  "harvest": {"containers": 10, "kg_per_container": 9, "cycles_per_year": 10},
                  "feed": [{"ingredient": "kitchen-waste", "kg": 500}], "energy": []}, "indicators": ["ghg"]}
                """);

        assertTrue(texts(answer.path("remarks"), "code")
                .containsAll(List.of("legality", "unusual-practice", "against-physics")));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 1e12})
    void the_smallest_and_the_largest_harvest_have_a_finite_ordered_interval(double kilograms) {
        JsonNode footprint = Posted.answer("""
                        {"system": {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": %s},
                          "feed": [{"ingredient": "wheat-bran", "kg": %s, "burden": "mass"}], "energy": []},
                         "indicators": ["ghg"], "draws": 1000}
                        """.formatted(kilograms, kilograms))
                .path("footprints")
                .path(0)
                .path("footprint");

        double median = JsonAt.number(footprint, "/median");
        assertTrue(JsonAt.number(footprint, "/low") < median && median < JsonAt.number(footprint, "/high"));
        assertTrue(Double.isFinite(JsonAt.number(footprint, "/high")) && JsonAt.number(footprint, "/low") > 0);
    }

    /** Factors of an inventory are counted whatever their grade, and the figure says the worst of them. */
    @Test
    void a_figure_of_records_tells_the_worst_grade_among_its_factors() {
        JsonNode farm = Posted.answer("""
                        {"system": {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": 1000},
                         "feed": [{"ingredient": "wheat-bran", "kg": 2000, "burden": "mass"}], "energy": []}, "indicators": ["land"], "draws": 1000}""").path("footprints").path(0);
        // Land of wheat bran follows from yields that were seen quoted; the protein of mealworm was seen quoted too.
        assertEquals("secondary", JsonAt.text(farm, "/lowest_grade"), farm.toString());
    }
}
