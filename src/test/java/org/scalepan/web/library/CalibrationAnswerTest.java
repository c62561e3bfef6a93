package org.scalepan.web.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.scalepan.web.RunningScalepan;

/** The calibration as it is served. */
class CalibrationAnswerTest {
    private static final String PATH = "/v1/calibration";

    /** Every case is listed, so that a reader can count again what the table says. */
    @Test
    void what_the_table_counts_is_what_the_cases_say() {
        JsonPath answer = RunningScalepan.given().get(PATH).jsonPath();
        List<Map<String, Object>> items = answer.getList("items");
        List<Map<String, Object>> cases = answer.getList("left_out");

        for (Map<String, Object> row : items) {
            double coverage = number(row, "coverage");
            List<Map<String, Object>> own = cases.stream()
                    .filter(one -> one.get("studies_remaining").equals(row.get("studies_remaining")))
                    .filter(one -> row.get("indicator").equals("all")
                            || row.get("indicator").equals(one.get("indicator")))
                    .toList();
            assertEquals(own.size(), number(row, "cases"), "cases of " + row);
            assertEquals(
                    own.stream()
                            .filter(one -> Math.abs(number(one, "share_below") - 0.5) <= coverage / 2)
                            .count(),
                    number(row, "held"),
                    "held of " + row);
        }
    }

    @Test
    void the_sentence_says_what_ninety_per_cent_hold() {
        String text = RunningScalepan.given().get(PATH).jsonPath().getString("text");

        assertTrue(
                text.matches(
                        "Intervals of 90 % hold, of the studies left out, [0-9]+ of [0-9]+ where one other remains, [0-9]+ of"
                                + " [0-9]+ where two remain, [0-9]+ of [0-9]+ where three or more remain: within what chance allows\\."),
                text);
    }

    @Test
    void the_picture_has_a_mark_for_each_coverage_and_number_of_studies_and_the_sentence_as_its_name() {
        String svg = RunningScalepan.given().get(PATH + "?format=svg").asString();
        String text = RunningScalepan.given().get(PATH).jsonPath().getString("text");

        assertEquals(12, svg.split("<circle", -1).length - 1, svg);
        assertTrue(svg.contains("<title>" + text + "</title>"), svg);
    }

    private static double number(Map<String, Object> row, String name) {
        return ((Number) row.get(name)).doubleValue();
    }
}
