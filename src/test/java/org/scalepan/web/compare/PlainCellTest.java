package org.scalepan.web.compare;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.RunningScalepan;

/** Single figures for spreadsheet cells. A line end, a byte-order mark or a unit would make a spreadsheet show an error instead. */
class PlainCellTest {
    private static final String DIGITS = "\\d+(\\.\\d+)?";

    private static String cell(String question) {
        return new String(RunningScalepan.given().get(question).asByteArray(), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/value/ghg/mealworm?per=kg-protein",
                "/v1/value/ghg/mealworm?per=kg-protein&stat=mean",
                "/v1/value/land/beef?stat=low",
                "/v1/value/land/beef?stat=high&boundary=retail",
                "/v1/value/ghg/house-cricket?boundary=animal&per=kg-live",
                "/v1/value/ghg/mealworm?stat=studies",
                "/v1/value/ghg/mealworm?stat=results",
                "/v1/ratio/ghg/mealworm/beef",
                "/v1/ratio/ghg/mealworm/beef?stat=share_of_draws",
                "/v1/ratio/land/mealworm/beef?stat=studies"
            })
    void a_cell_holds_the_digits_alone(String question) {
        String cell = cell(question);

        assertTrue(cell.matches(DIGITS), () -> question + " shows \"" + cell + "\"");
        assertEquals(
                Integer.toString(cell.length()),
                RunningScalepan.given().get(question).header("Content-Length"));
    }

    @ParameterizedTest
    @CsvSource({
        "/v1/value/Ghg/Mealworm?per=Kg-protein&stat=Text, /v1/value/ghg/mealworm?per=kg-protein&stat=text",
        "/v1/value/land/BEEF?boundary=Retail, /v1/value/land/beef?boundary=retail",
        "/v1/ratio/ghg/House-cricket:Fresh/Beef?boundary=animal, /v1/ratio/ghg/house-cricket:fresh/beef?boundary=animal"
    })
    void names_are_read_whatever_their_capitals(String corrected, String meant) {
        assertEquals(cell(meant), cell(corrected));
    }

    @Test
    void a_table_and_a_comparison_accept_capitals_too_and_answer_with_the_ids_of_the_library() {
        assertEquals(
                cell("/v1/table?products=mealworm,beef&indicators=land"),
                cell("/v1/table?products=Mealworm,Beef&indicators=Land"));
        assertEquals(
                "beef",
                RunningScalepan.given()
                        .get("/v1/comparison?products=Mealworm&against=Beef")
                        .jsonPath()
                        .getString("question.against"));
    }

    @Test
    void a_cell_is_plain_text_in_utf_8() {
        RunningScalepan.given().get("/v1/value/ghg/mealworm").then().contentType(equalTo("text/plain;charset=utf-8"));
    }

    @Test
    void a_cell_shows_the_figure_that_the_table_and_the_comparison_show() {
        Response comparison = RunningScalepan.given().get("/v1/comparison?products=mealworm&against=beef");

        for (String stat : new String[] {"median", "mean", "low", "high"}) {
            assertEquals(
                    new BigDecimal(comparison.jsonPath().getString("items[0].footprint." + stat)),
                    new BigDecimal(cell("/v1/value/ghg/mealworm?stat=" + stat)),
                    stat);
            assertEquals(
                    new BigDecimal(comparison.jsonPath().getString("items[0].times_less." + stat)),
                    new BigDecimal(cell("/v1/ratio/ghg/mealworm/beef?stat=" + stat)),
                    stat);
        }
        assertEquals(
                comparison.jsonPath().getString("items[0].footprint.unit"), cell("/v1/value/ghg/mealworm?stat=unit"));
    }

    @Test
    void the_headers_of_a_cell_name_permalink_and_library() {
        RunningScalepan.given()
                .get("/v1/value/ghg/mealworm")
                .then()
                .header(
                        "Library-Version",
                        equalTo(RunningScalepan.library().version().version()))
                .header("Library-Digest", equalTo(RunningScalepan.digest()))
                .header("Content-Location", startsWith("/v1/value/ghg/mealworm?per=kg-protein&boundary=farm-gate&"));
    }

    @ParameterizedTest
    @CsvSource({
        "/v1/value/ghg/mealwrm, 404, '#unknown product \"mealwrm\": did you mean mealworm?'",
        "/v1/value/ghgs/mealworm, 404, '#unknown indicator \"ghgs\": did you mean ghg?'",
        "/v1/ratio/ghg/mealworm/beeef, 404, '#unknown reference \"beeef\": did you mean beef?'",
        "/v1/value/ghg/mealworm?per=kg-protien, 400, '#unknown per \"kg-protien\": did you mean kg-protein?'",
        "/v1/value/ghg/mealworm?stat=modus, 400, '#unknown stat \"modus\": one of median, mean, low, high, studies, results, grade, region, unit, text, sources, references'",
        "/v1/value/ghg/mealworm?draws=1, 400, '#draws must be a whole number from 1000 to 200000'",
        "/v1/value/ghg/duck, 404, '#no evidence: no published ghg result of duck is in this library'",
    })
    void a_refusal_is_one_short_line_that_a_cell_can_show(String question, int status, String line) {
        Response reply = RunningScalepan.given().get(question);

        assertEquals(status, reply.statusCode());
        assertEquals(line, reply.asString());
        assertEquals("text/plain;charset=utf-8", reply.contentType());
        assertFalse(reply.asString().contains("\n"));
    }

    @Test
    void a_problem_may_be_requested_with_status_200_for_clients_that_drop_error_bodies() {
        RunningScalepan.given()
                .get("/v1/value/ghg/mealwrm?on_error=200")
                .then()
                .statusCode(200)
                .header("Cache-Control", equalTo("no-store"))
                .body(equalTo("#unknown product \"mealwrm\": did you mean mealworm?"));
        RunningScalepan.given()
                .get("/v1/value/ghg/mealworm?on_error=200&per=nonsense")
                .then()
                .statusCode(200)
                .body(startsWith("#unknown per"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "201", "yes", "404"})
    void another_value_of_on_error_is_refused(String wish) {
        RunningScalepan.given()
                .get("/v1/value/ghg/mealworm?on_error=" + wish)
                .then()
                .statusCode(400)
                .body(startsWith("#unknown on_error"));
    }

    @Test
    void a_figure_does_not_depend_on_on_error() {
        assertEquals(cell("/v1/value/ghg/mealworm"), cell("/v1/value/ghg/mealworm?on_error=200"));
    }

    @Test
    void a_client_that_accepts_problem_json_gets_the_whole_problem() {
        RunningScalepan.given()
                .accept("application/problem+json")
                .get("/v1/value/ghg/mealwrm?on_error=200")
                .then()
                .statusCode(404)
                .contentType("application/problem+json")
                .body("errors[0].did_you_mean[0]", equalTo("mealworm"));
    }

    @Test
    void a_text_cell_carries_unit_boundary_interval_and_number_of_studies() {
        RunningScalepan.given()
                .get("/v1/value/ghg/mealworm?stat=text")
                .then()
                .body(containsString("kg CO2e per kg protein"))
                .body(containsString("farm gate"))
                .body(containsString("90 % interval"))
                .body(containsString("studies"));
    }

    /** Of goat milk at retail only assessments with land-use change are held: without it the figure is at most theirs. */
    @Test
    void a_bound_is_no_number_of_a_cell_unless_bounds_are_asked_for() {
        String figure = "/v1/value/ghg/goat-milk?boundary=retail";
        String ratio = "/v1/ratio/ghg/goat-milk/beef?boundary=retail";

        assertEquals(404, RunningScalepan.given().get(figure).statusCode());
        assertTrue(cell(figure).startsWith("#at most "), cell(figure));
        assertTrue(cell(figure).endsWith("; bounds=yes gives the number"), cell(figure));
        assertTrue(cell(ratio).startsWith("#at least "), cell(ratio));
        assertTrue(cell(figure + "&bounds=yes").matches(DIGITS), cell(figure + "&bounds=yes"));
        assertTrue(cell(ratio + "&bounds=yes").matches(DIGITS), cell(ratio + "&bounds=yes"));
        assertTrue(cell(figure + "&luc=include").matches(DIGITS), cell(figure + "&luc=include"));
        assertTrue(cell(figure + "&stat=text").contains(": at most "), cell(figure + "&stat=text"));
    }

    @Test
    void a_bound_leaves_the_numbers_of_a_table_empty_unless_bounds_are_asked_for() {
        String table = "/v1/table?products=goat-milk&boundary=retail&stats=median";

        assertTrue(cell(table).lines().toList().get(1).contains("retail,,"), cell(table));
        assertTrue(cell(table).lines().toList().get(1).endsWith(",at-most,study,,"), cell(table));
        assertTrue(
                cell(table + "&bounds=yes").lines().toList().get(1).matches(".*retail,\\d.*"),
                cell(table + "&bounds=yes"));
    }

    @Test
    void a_sentence_says_shortly_what_land_use_change_does() {
        String text = cell("/v1/ratio/ghg/mealworm/chicken?stat=text");

        assertTrue(text.matches(".* With land-use change counted: [0-9.]+ \\([0-9.]+ to [0-9.]+\\)\\."), text);
    }

    @Test
    void given_a_region_without_results_of_its_own_then_the_text_says_whose_results_speak() {
        assertTrue(
                cell("/v1/value/ghg/beef?stat=text&region=kenya")
                        .endsWith(" No result of beef is held for Kenya: results of the world speak."),
                cell("/v1/value/ghg/beef?stat=text&region=kenya"));
        assertFalse(cell("/v1/value/ghg/milk?stat=text&region=kenya").contains("speak"), "milk has results of Kenya");
        assertTrue(
                cell("/v1/value/ghg/milk?stat=text&region=senegal").contains("Africa speak."),
                "the continent speaks before the world");
        assertTrue(cell("/v1/ratio/ghg/mealworm/beef?stat=text&region=brazil").contains("No result of beef is held for")
                || cell("/v1/value/ghg/beef?stat=region&region=brazil").equals("brazil"));
    }
}
