package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/**
 * Farms that rear what no study covers: an insect by its own name, what its larvae hold, residues by their own names. The farm is
 * invented: rhinoceros beetles on leaf compost in 60 tubs of 0.9 kg, three times a year, so that 162 kg live are harvested.
 */
class OwnSpeciesTest {
    private static final String BEETLE = """
            {"name": "rhinoceros beetle", "group": "insect", "dry_matter": 0.35, "protein": 0.2}""";

    private static String farm(String product, String more) {
        return """
                {"kind": "insects", "name": "tub shed", "product": %s, "region": "portugal",
                 "harvest": {"containers": 60, "kg_per_container": 0.9, "cycles_per_year": 3},
                 "feed": [{"name": "leaf compost", "kg": 4000, "moisture": 0.6, "nitrogen": 0.015, "burden": "burden-free"}],
                 "energy": [], "building_m2": 12%s}""".formatted(product, more);
    }

    private static String farm(String product) {
        return farm(product, "");
    }

    private static JsonNode answer(String path, String body) {
        Posted posted = Posted.to(path, "application/json", body);
        assertEquals(200, posted.status(), posted.body());
        return posted.tree();
    }

    private static JsonNode footprint(String system, String more) {
        return answer("/v1/footprint", "{\"system\": " + system + more + "}");
    }

    private static Posted refused(String system) {
        Posted posted = Posted.to("/v1/footprint", "application/json", "{\"system\": " + system + "}");
        assertEquals(400, posted.status(), posted.body());
        return posted;
    }

    private static List<JsonNode> among(JsonNode answer, String list, String field, String value) {
        return StreamSupport.stream(answer.path(list).spliterator(), false)
                .filter(node -> JsonAt.text(node, "/" + field).equals(value))
                .toList();
    }

    private static double median(JsonNode answer) {
        return JsonAt.number(answer, "/footprints/0/footprint/median");
    }

    /** 12 m2 under roof for 162 kg a year are 0.0741 m2·yr per kg live, and five times that per kg protein where a fifth is protein. */
    @Test
    void a_figure_per_kg_protein_is_that_per_kg_live_over_the_protein_stated() {
        String land = ", \"indicators\": [\"land\"], \"per\": \"";

        assertEquals(12.0 / 162, median(footprint(farm(BEETLE), land + "kg-live\"")), 1e-6, "m2·yr per kg live");
        assertEquals(
                12.0 / 162 / 0.2, median(footprint(farm(BEETLE), land + "kg-protein\"")), 1e-6, "m2·yr per kg protein");
        assertEquals(
                12.0 / 162 / 0.35,
                median(footprint(farm(BEETLE), land + "kg-dry-matter\"")),
                1e-6,
                "m2·yr per kg dry matter");
        assertEquals(
                12.0 / 162 / 2,
                median(footprint(farm(BEETLE), land + "100g-protein\"")),
                1e-6,
                "m2·yr per 100 g protein");
    }

    /** Between 15 and 25 % protein, each as likely: the 5 and 95 % quantiles are 15.5 and 24.5 %. */
    @Test
    void protein_that_is_known_as_a_range_is_drawn_and_named_as_a_cause_of_the_spread() {
        String beetle = "{\"name\": \"rhinoceros beetle\", \"protein\": [0.15, 0.25]}";
        JsonNode figure = footprint(
                        farm(beetle), ", \"indicators\": [\"land\"], \"per\": \"kg-protein\", \"coverage\": 0.9")
                .at("/footprints/0");
        JsonNode sensitivity = answer(
                "/v1/sensitivity",
                "{\"system\": " + farm(beetle) + ", \"indicator\": \"land\", \"per\": \"kg-protein\"}");

        assertEquals(12.0 / 162 / 0.245, JsonAt.number(figure, "/footprint/low"), 0.001, "m2·yr per kg protein");
        assertEquals(12.0 / 162 / 0.155, JsonAt.number(figure, "/footprint/high"), 0.002, "m2·yr per kg protein");
        assertTrue(JsonAt.number(figure, "/first_order/high") > 1.1 * 12.0 / 162 / 0.2, "first order knows it too");
        assertEquals("records/tub shed/product.protein", JsonAt.text(sensitivity, "/inputs/0/id"));
        assertEquals("protein of product in the records of tub shed", JsonAt.text(sensitivity, "/inputs/0/name"));
    }

    /** N × 6.25 (Regulation (EU) 1169/2011): 3.2 % nitrogen are 20 % crude protein. */
    @Test
    void nitrogen_alone_says_how_much_crude_protein_there_is() {
        JsonNode answer = footprint(
                farm("{\"name\": \"rhinoceros beetle\", \"nitrogen\": 0.032}"),
                ", \"indicators\": [\"land\"], \"per\": \"kg-protein\"");

        assertEquals(12.0 / 162 / 0.2, median(answer), 1e-6, "m2·yr per kg protein");
    }

    @Test
    void it_stands_beside_beef_and_chicken_with_what_is_assumed_of_it() {
        for (String per : List.of("kg-live", "kg-protein")) {
            JsonNode answer = footprint(
                    farm(BEETLE),
                    ", \"per\": \"" + per
                            + "\", \"indicators\": [\"ghg\"], \"compare\": {\"products\": [\"beef\", \"chicken\"]}");
            JsonNode beside = answer.at("/footprints/0/compare");

            assertEquals(2, beside.size(), per);
            beside.forEach(side -> assertTrue(JsonAt.number(side, "/times_less/median") > 1, per));
            assertEquals("own:rhinoceros-beetle", JsonAt.text(answer, "/system/product"));
            assertEquals("rhinoceros beetle", JsonAt.text(answer, "/system/product_name"));
            JsonNode gases = among(answer, "gaps", "field", "direct gases of rhinoceros beetle")
                    .get(0);
            assertTrue(JsonAt.text(gases, "/filled_with").contains("between the lowest and the highest insect"));
            assertEquals(
                    1,
                    among(answer, "cautions", "id", "allergy").size(),
                    "insects can be allergens, whatever the species");
            assertEquals(1, among(answer, "remarks", "code", "own-species").size());
            assertEquals(1, among(answer, "remarks", "code", "legality").size(), "the feed is unknown");
        }
    }

    /** 4000 kg with 40 % dry matter and 1.5 % N in it hold 24 kg N; 162 kg larvae with 20 % protein hold 5.184 kg N. */
    @Test
    void a_residue_of_known_moisture_and_nitrogen_gives_feed_conversion_on_dry_matter_and_balances() {
        JsonNode answer = footprint(farm(BEETLE), "");
        JsonNode nitrogen = among(answer, "balances", "kind", "nitrogen").get(0);
        JsonNode dry = among(answer, "balances", "kind", "dry-matter").get(0);

        assertEquals(
                1600.0 / 162, JsonAt.number(answer, "/key_figures/feed_dry_matter_kg_per_kg_live"), 1e-4, "kg per kg");
        assertEquals(24, JsonAt.number(nitrogen, "/in"), 1e-9, "kg N a year");
        assertEquals(5.184, JsonAt.number(nitrogen, "/out"), 1e-9, "kg N a year");
        assertEquals("possible", JsonAt.text(nitrogen, "/verdict"));
        assertEquals(1600, JsonAt.number(dry, "/in"), 1e-9, "kg a year");
        assertEquals(0.35 * 162, JsonAt.number(dry, "/out"), 1e-9, "kg a year");
        assertTrue(JsonAt.text(among(answer, "balances", "kind", "gross-energy").get(0), "/reason")
                .contains("the fat of rhinoceros beetle is not stated"));
        assertEquals(
                "filled",
                JsonAt.text(among(answer, "gaps", "field", "frass").get(0), "/kind"),
                "the nitrogen of the frass is worked out and not left out");
    }

    /** 40 kg of dry compost cannot make 56.7 kg of dry larvae. */
    @Test
    void more_dry_larvae_than_dry_feed_are_impossible_and_bear_no_ratio() {
        JsonNode answer = footprint(
                farm(BEETLE).replace("4000", "100"), ", \"per\": \"kg-live\", \"compare\": {\"products\": [\"beef\"]}");

        assertEquals(
                "impossible",
                JsonAt.text(among(answer, "balances", "kind", "dry-matter").get(0), "/verdict"));
        assertFalse(answer.at("/footprints/0/compare/0").has("times_less"), "nothing can be said with it");
    }

    @Test
    void per_kg_live_always_works_and_is_offered_where_protein_is_not_known() {
        String unknown = farm("{\"name\": \"rhinoceros beetle\"}");
        String none = JsonAt.text(
                footprint(unknown, ", \"indicators\": [\"ghg\"], \"per\": \"kg-protein\""), "/footprints/0/reason");
        String sunBeetle = JsonAt.text(
                footprint(farm("\"sun-beetle\""), ", \"indicators\": [\"ghg\"], \"per\": \"kg-protein\""),
                "/footprints/0/reason");

        assertTrue(
                none.endsWith("give product.protein, the share of it in the fresh animals, or ask per=kg-live"), none);
        assertTrue(
                sunBeetle.endsWith(
                        "give composition.protein, the share of it in the fresh animals, or ask per=kg-live"),
                sunBeetle);
        assertTrue(median(footprint(unknown, ", \"indicators\": [\"ghg\"], \"per\": \"kg-live\"")) > 0);
    }

    /** The library has no protein of sun beetles and one of mealworms; what a farm analysed goes before either. */
    @ParameterizedTest
    @ValueSource(strings = {"sun-beetle", "mealworm"})
    void what_a_farm_analysed_itself_goes_before_the_library(String product) {
        JsonNode answer = footprint(
                farm("\"" + product + "\"", ", \"composition\": {\"protein\": 0.25, \"dry_matter\": 0.4}"),
                ", \"indicators\": [\"land\"], \"per\": \"kg-protein\"");

        assertEquals(12.0 / 162 / 0.25, median(answer), 1e-6, "m2·yr per kg protein");
        assertEquals(
                162 * 0.25 / 6.25,
                JsonAt.number(among(answer, "balances", "kind", "nitrogen").get(0), "/out"),
                1e-9,
                "kg N a year");
        assertEquals(product, JsonAt.text(answer, "/system/product"));
    }

    @Test
    void a_claim_of_it_is_checked_and_can_be_said_per_kg_live() {
        JsonNode claim = answer(
                "/v1/claim",
                "{\"system\": " + farm(BEETLE)
                        + ", \"reference\": \"beef\", \"times_less\": 10, \"per\": \"kg-live\"}");

        assertTrue(List.of("holds", "holds-only-for").contains(JsonAt.text(claim, "/verdict")), claim.toString());
    }

    @Test
    void other_questions_about_farms_take_it_too() {
        answer(
                "/v1/break-even",
                "{\"system\": " + farm(BEETLE)
                        + ", \"against\": \"chicken\", \"input\": \"mortality\", \"per\": \"kg-protein\"}");
        answer(
                "/v1/substitution",
                "{\"system\": " + farm(BEETLE)
                        + ", \"kg_per_year\": 100, \"unit\": \"kg-live\", \"displacement_rate\": 0.5, \"draws\": 1000,"
                        + " \"baseline\": [{\"product\": \"beef\"}]}");
        Posted brief =
                Posted.to("/v1/brief", "application/json", "{\"system\": " + farm(BEETLE) + ", \"against\": \"beef\"}");
        assertEquals(200, brief.status(), brief.body());
        assertTrue(brief.body().contains("tub shed"), brief.body());
    }

    @Test
    void a_name_close_to_one_that_the_library_knows_is_asked_about() {
        JsonNode answer = footprint(farm("{\"name\": \"yellow mealworms\"}"), ", \"per\": \"kg-live\"");

        assertTrue(
                JsonAt.text(among(answer, "remarks", "code", "own-species").get(0), "/text")
                        .endsWith("did you mean mealworm? Then give that id as product"),
                answer.path("remarks").toString());
    }

    /** A name that is the very id of the library is still an insect of its own: nothing published is taken for it in silence. */
    @Test
    void a_name_that_is_an_id_takes_nothing_published() {
        JsonNode answer = footprint(farm("{\"name\": \"mealworm\"}"), ", \"per\": \"kg-protein\"");

        assertEquals("own:mealworm", JsonAt.text(answer, "/system/product"));
        assertFalse(answer.at("/footprints/0").has("footprint"), "the protein of mealworms is not taken");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"rhinoceros beetle\" | /system/product | an insect that this library does not know is an object",
                "{\"group\": \"insect\"} | /system/product/name | name is missing",
                "{\"name\": \" \\u0007\\n\"} | /system/product/name | must be a text",
                "{\"name\": \"beetle\", \"group\": \"fish\"} | /system/product/group | unknown group",
                "{\"name\": \"beetle\", \"protein\": 20} | /system/product/protein | from 0.001 to 1",
                "{\"name\": \"beetle\", \"protein\": 0.4, \"dry_matter\": 0.3} | /system/product/protein | more than the dry matter",
                "{\"name\": \"beetle\", \"iron\": 0.4} | /system/product/iron | unknown",
            })
    void what_cannot_be_is_refused_where_it_stands(String product, String pointer, String words) {
        Posted posted = refused(farm(product));

        assertEquals(pointer, JsonAt.text(posted.tree(), "/errors/0/pointer"), posted.body());
        assertTrue(JsonAt.text(posted.tree(), "/errors/0/message").contains(words), posted.body());
    }

    @Test
    void composition_stands_beside_an_id_only_and_feed_has_an_id_or_a_name() {
        assertTrue(refused(farm(BEETLE, ", \"composition\": {\"protein\": 0.2}"))
                .body()
                .contains("composition goes with an id"));
        assertTrue(refused(farm(BEETLE)
                        .replace(
                                "\"name\": \"leaf compost\"",
                                "\"name\": \"leaf compost\", \"ingredient\": \"wheat-bran\""))
                .body()
                .contains("not both"));
        assertTrue(refused(farm(BEETLE).replace("leaf compost", "Wheat bran"))
                .body()
                .contains("give its id as ingredient, wheat-bran"));
        assertTrue(refused(farm(BEETLE).replace("\"moisture\": 0.6, ", ""))
                .body()
                .contains("nitrogen is per kg dry matter"));
    }

    @Test
    void a_table_of_farms_has_columns_for_it() {
        String header = "kind,name,product,product.name,product.dry_matter,product.protein,harvest.kg_per_year,"
                + "feed.1.name,feed.1.kg,feed.1.moisture,feed.1.nitrogen,feed.1.burden,building_m2,composition.protein\n";
        Posted posted = Posted.to(
                "/v1/footprints?indicators=land&per=kg-protein",
                "text/csv",
                header
                        + "insects,tubs,,\"rhinoceros beetle, big\",0.35,0.15..0.25,162,leaf compost,4000,0.6,0.015,burden-free,12,\n"
                        + "insects,trays,sun-beetle,,,,162,leaf compost,4000,0.6,0.015,burden-free,12,0.2\n"
                        + "insects,both,mealworm,beetle,0.3,0.2,162,leaf compost,4000,0.6,0.015,burden-free,12,\n");

        assertEquals(200, posted.status(), posted.body());
        String[] lines = posted.body().split("\n");
        assertTrue(posted.body().contains("own:rhinoceros-beetle-big"), posted.body());
        assertTrue(posted.body().contains("not both"), lines[lines.length - 1]);
    }
}
