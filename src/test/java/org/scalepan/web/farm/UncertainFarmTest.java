package org.scalepan.web.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Posted;

/** Farms whose records are remembered as ranges. All farms are invented. */
class UncertainFarmTest {
    private static String farm(String feed, String harvest) {
        return """
                {"kind": "insects", "name": "hill trays", "product": "mealworm", "region": "portugal",
                 "harvest": {"kg_per_year": %s}, "energy": [],
                 "feed": [{"ingredient": "wheat-bran", "kg": %s, "burden": "economic"}]}""".formatted(harvest, feed);
    }

    private static JsonNode answer(String path, String body) {
        Posted posted = Posted.to(path, "application/json", body);
        assertEquals(200, posted.status(), posted.body());
        return posted.tree();
    }

    private static JsonNode footprint(String system, String more) {
        return answer("/v1/footprint", "{\"system\": " + system + more + "}");
    }

    private static JsonNode balance(JsonNode answer, String kind) {
        return StreamSupport.stream(answer.path("balances").spliterator(), false)
                .filter(balance -> JsonAt.text(balance, "/kind").equals(kind))
                .findFirst()
                .orElseThrow();
    }

    /**
     * "Between 400 and 900 kg of bran for 200 kg of larvae": feed per kg is log-uniform from 2 to 4.5, of which the p-quantile is
     * 2 · 2.25^p (definition of the log-uniform distribution): 2.0827, 3 and 4.3212 at 5, 50 and 95 %.
     */
    @Test
    void feed_that_is_remembered_as_a_range_gives_the_quantiles_of_the_log_uniform_distribution() {
        JsonNode answer = footprint(
                farm("[400, 900]", "200"), ", \"indicators\": [\"feed\"], \"per\": \"kg-live\", \"coverage\": 0.9");
        JsonNode figure = answer.at("/footprints/0/footprint");

        assertEquals(3, JsonAt.number(figure, "/median"), 0.001, "kg feed per kg live");
        assertEquals(2 * Math.pow(2.25, 0.05), JsonAt.number(figure, "/low"), 0.001, "kg feed per kg live");
        assertEquals(2 * Math.pow(2.25, 0.95), JsonAt.number(figure, "/high"), 0.001, "kg feed per kg live");
        assertEquals((4.5 - 2) / Math.log(2.25), JsonAt.number(figure, "/mean"), 0.001, "kg feed per kg live");
        assertEquals(3, JsonAt.number(answer, "/footprints/0/first_order/value"), 1e-6, "kg feed per kg live");
        assertEquals(
                3 * Math.exp(1.6448536 * Math.log(2.25) / Math.sqrt(12)),
                JsonAt.number(answer, "/footprints/0/first_order/high"),
                1e-5,
                "lognormal with the same standard deviation of the logarithm");
    }

    /** Triangular from 300 to 900 kg, most likely 300: P(X ≤ x) = 1 − ((900 − x)/600)², so that 5, 50 and 95 % are 315.2, 475.7 and 765.8. */
    @Test
    void with_a_most_likely_value_the_figure_is_triangular() {
        JsonNode figure = footprint(
                        farm("[300, 300, 900]", "100"), ", \"indicators\": [\"feed\"], \"per\": \"kg-live\"")
                .at("/footprints/0/footprint");

        assertEquals(9 - 6 * Math.sqrt(0.95), JsonAt.number(figure, "/low"), 0.002, "kg feed per kg live");
        assertEquals(9 - 6 * Math.sqrt(0.5), JsonAt.number(figure, "/median"), 0.002, "kg feed per kg live");
        assertEquals(9 - 6 * Math.sqrt(0.05), JsonAt.number(figure, "/high"), 0.002, "kg feed per kg live");
    }

    @Test
    void the_same_question_gives_the_same_bytes() {
        String body = "{\"system\": " + farm("[400, 900]", "[150, 200, 260]") + "}";

        assertEquals(
                Posted.to("/v1/footprint", "application/json", body).body(),
                Posted.to("/v1/footprint", "application/json", body).body());
    }

    /** Half the harvest under the same name: what is remembered of the feed is the same in every draw, and cancels. */
    @Test
    void two_farms_of_one_name_share_what_is_uncertain_in_their_records() {
        JsonNode ratio = footprint(
                        farm("[400, 900]", "200"),
                        ", \"indicators\": [\"feed\"], \"per\": \"kg-live\", \"compare\": {\"systems\": ["
                                + farm("[400, 900]", "100") + "]}")
                .at("/footprints/0/compare/0/times_less");

        assertEquals(2, JsonAt.number(ratio, "/low"), 1e-6);
        assertEquals(2, JsonAt.number(ratio, "/high"), 1e-6);
    }

    /** Of feed per kg nothing else is uncertain, so that the two records share all of the variance. */
    @Test
    void shares_of_variance_name_the_records() {
        JsonNode answer = answer(
                "/v1/sensitivity",
                "{\"system\": " + farm("[400, 900]", "[180, 220]")
                        + ", \"indicator\": \"feed\", \"per\": \"kg-live\"}");
        JsonNode first = answer.at("/inputs/0");

        assertEquals(2, JsonAt.array(answer, "/inputs").size());
        assertEquals("record", JsonAt.text(first, "/kind"));
        assertEquals("records/hill trays/feed.0.kg", JsonAt.text(first, "/id"));
        assertEquals("feed.0.kg", JsonAt.text(first, "/field"));
        assertEquals("kg of wheat-bran in the records of hill trays", JsonAt.text(first, "/name"));
        assertEquals("kg per year of harvest in the records of hill trays", JsonAt.text(answer, "/inputs/1/name"));
        double feed = Math.pow(Math.log(2.25), 2);
        double harvest = Math.pow(Math.log(220.0 / 180), 2);
        assertEquals(feed / (feed + harvest), JsonAt.number(first, "/total/share"), 0.03, "variances of ln, roughly");
        assertTrue(
                JsonAt.text(answer, "/warnings/0/text").startsWith("Records given as one number are taken as exact"));
    }

    /** The entry in question becomes a number; what else is a range stays one. */
    @Test
    void a_break_even_starts_from_the_middle_of_a_range() {
        JsonNode answer = answer(
                "/v1/break-even",
                "{\"system\": " + farm("[400, 900]", "200")
                        + ", \"input\": \"feed\", \"indicator\": \"feed\", \"per\": \"kg-live\", \"against_system\": "
                        + farm("500", "200").replace("hill trays", "valley trays") + "}");

        assertEquals(600, JsonAt.number(answer, "/input/present"), 1e-6, "kg");
        assertEquals(500, JsonAt.number(answer, "/break_even/value"), 0.01, "kg");
    }

    /**
     * Larvae of 1 000 kg hold 29.9 kg N and 900 kg of frass 28.6; maize holds 11.84 kg N a tonne, and 58.5 kg exceed 110 % of what is in less
     * than 4 496 kg. From x to 8 000 kg of maize ln(4496/x)/ln(8000/x) of the draws contradict: 95 % at x = 4 361 · … none with one number below.
     */
    @ParameterizedTest
    @CsvSource({
        "4400, impossible",
        "'[4000, 4400]', impossible",
        "'[2000, 4600]', impossible",
        "'[2000, 5000]', unusual",
        "'[3000, 6000]', unusual"
    })
    void ranges_contradict_themselves_only_where_almost_all_draws_do(String maize, String verdict) {
        JsonNode answer = footprint("""
                {"kind": "insects", "name": "attic trays", "product": "mealworm", "region": "netherlands",
                 "harvest": {"kg_per_year": 1000}, "feed": [{"ingredient": "maize", "kg": %s}],
                 "energy": [], "frass": {"kg": 900}}""".formatted(maize), ", \"draws\": 1000, \"indicators\": [\"ghg\"]");

        JsonNode nitrogen = balance(answer, "nitrogen");
        assertEquals(verdict, JsonAt.text(nitrogen, "/verdict"), nitrogen::toString);
        assertEquals(
                verdict.equals("impossible") ? "none" : "exact",
                verdict.equals("impossible")
                        ? JsonAt.text(answer, "/footprints/0/bound")
                        : JsonAt.text(answer, "/footprints/0/bound").replace("at-least", "exact"));
        assertEquals(maize.contains("["), JsonAt.text(nitrogen, "/reason").contains("in the middle of the ranges"));
    }

    /** Between nothing and 80 kWh: the line counts, and no bound is made of it. */
    @Test
    void a_record_that_may_be_nothing_counts() {
        String system = farm("600", "200")
                .replace("\"energy\": []", "\"energy\": [{\"carrier\": \"grid-electricity\", \"amount\": [0, 80]}]");
        JsonNode figure = footprint(system, ", \"indicators\": [\"energy-on-farm\"], \"per\": \"kg-live\"")
                .at("/footprints/0");

        assertEquals("exact", JsonAt.text(figure, "/bound"));
        assertEquals(40 * 3.6 / 200, JsonAt.number(figure, "/footprint/median"), 1e-3, "MJ per kg live");
        assertEquals(0.95 * 80 * 3.6 / 200, JsonAt.number(figure, "/footprint/high"), 1e-3, "MJ per kg live");
    }

    @Test
    void a_wrong_range_is_refused_at_its_place() {
        Posted refused = Posted.json("{\"system\": " + farm("[900, 400]", "200") + "}");

        assertEquals(400, refused.status());
        assertEquals("/system/feed/0/kg", JsonAt.text(refused.tree(), "/errors/0/pointer"));
        assertTrue(JsonAt.text(refused.tree(), "/errors/0/message")
                .contains("must rise from low to high: [low, high] or [low, best guess, high]"));
        assertEquals(1, JsonAt.array(refused.tree(), "/errors").size());
    }

    @Test
    void figures_of_the_farm_are_those_in_the_middle() {
        JsonNode figures = footprint(farm("[400, 900]", "200"), "").path("key_figures");

        assertEquals(3, JsonAt.number(figures, "/feed_as_fed_kg_per_kg_live"), 1e-6);
    }
}
