package org.scalepan.web.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** Tables for spreadsheets: every number equals that of the cell route, and every column names its unit. */
class TableTest {
    private static List<String> lines(String question) {
        Reply reply = Reply.to(question);
        assertEquals(200, reply.status(), reply.body());
        return reply.body().lines().toList();
    }

    @Test
    void several_units_are_rows_of_one_table() {
        List<String> lines =
                lines("/v1/table?products=mealworm,beef&indicators=ghg,land&per=kg-protein,kg-edible&stats=median");

        assertEquals(1 + 2 * 2 * 2, lines.size());
        assertTrue(
                lines.get(2)
                        .startsWith("mealworm,fresh,ghg,kg CO2e,kg-edible,farm-gate,"
                                + Reply.to("/v1/value/ghg/mealworm?per=kg-edible")
                                        .body() + ","),
                lines.get(2));
        assertTrue(
                lines.get(8)
                        .startsWith("beef,fresh,land,m2*yr,kg-edible,farm-gate,"
                                + Reply.to("/v1/value/land/beef?per=kg-edible").body() + ","),
                lines.get(8));
    }

    @Test
    void a_wide_table_has_a_row_for_each_product_and_the_unit_in_the_name_of_each_column() {
        List<String> lines =
                lines("/v1/table?products=mealworm,palm-weevil&indicators=ghg,land&per=kg-protein,100g-protein"
                        + "&stats=median,studies&layout=wide");

        assertEquals(
                "product,form,ghg_median_kg_co2e_per_kg_protein,ghg_studies_per_kg_protein,"
                        + "ghg_median_kg_co2e_per_100g_protein,ghg_studies_per_100g_protein,"
                        + "land_median_m2_yr_per_kg_protein,land_studies_per_kg_protein,"
                        + "land_median_m2_yr_per_100g_protein,land_studies_per_100g_protein",
                numbers(lines.get(0)));
        assertEquals(3, lines.size());
        assertEquals(
                String.join(
                        ",",
                        "mealworm,fresh",
                        Reply.to("/v1/value/ghg/mealworm").body(),
                        "2",
                        Reply.to("/v1/value/ghg/mealworm?per=100g-protein").body(),
                        "2",
                        Reply.to("/v1/value/land/mealworm").body(),
                        "1",
                        Reply.to("/v1/value/land/mealworm?per=100g-protein").body(),
                        "1"),
                String.join(",", List.of(lines.get(1).split(",", -1)).subList(0, 10)));
        assertTrue(lines.get(2).startsWith("palm-weevil,fresh,,0,,0,,0,,0,"), lines.get(2));
    }

    /** The head of a wide table without what stands behind its numbers. */
    private static String numbers(String head) {
        return head.replaceFirst(",[a-z]+_boundary_per_.*", "");
    }

    @Test
    void given_a_wide_table_then_boundary_status_grade_and_sources_of_each_number_stand_behind_the_numbers() {
        List<String> lines = lines("/v1/table?products=mealworm,palm-weevil&indicators=ghg&stats=median&layout=wide");

        assertEquals(
                "product,form,ghg_median_kg_co2e_per_kg_protein,ghg_boundary_per_kg_protein,ghg_status_per_kg_protein,"
                        + "ghg_lowest_grade_per_kg_protein,ghg_sources_per_kg_protein",
                lines.get(0));
        assertTrue(lines.get(1).endsWith(",farm-gate,ok,abstract,dreyer-2021 paris-2024"), lines.get(1));
        assertEquals("palm-weevil,fresh,,farm-gate,no-evidence,,", lines.get(2));
    }

    @Test
    void given_cells_without_a_figure_then_the_table_says_why_and_what_to_ask_and_that_question_has_an_answer() {
        List<String> lines = lines("/v1/table?products=house-cricket,milk,beans&indicators=ghg&per=kg-live&format=csv");

        assertTrue(lines.get(0).endsWith(",reason,ask_instead"), lines.get(0));
        assertTrue(
                lines.get(1).endsWith(",elsewhere,/v1/value/ghg/house-cricket?per=kg-live&boundary=processing-gate"),
                lines.get(1));
        assertTrue(
                lines.get(2).endsWith(",not-applicable,/v1/value/ghg/milk?per=kg-protein&boundary=farm-gate"),
                lines.get(2));
        assertTrue(lines.get(3).contains(",not-applicable,"), "a bean has no live weight");
        String unknown = lines("/v1/table?products=sun-beetle&indicators=water").get(1);
        assertTrue(unknown.endsWith(",none,"), unknown);
        List.of(1, 2).forEach(line -> {
            String address = lines.get(line).substring(lines.get(line).lastIndexOf(',') + 1);
            assertTrue(Reply.to(address).body().matches("[0-9.]+"), address);
        });
    }

    @Test
    void an_indicator_has_its_default_unit_where_none_is_given() {
        List<String> lines = lines("/v1/table?products=chicken&indicators=ghg,feed&stats=median&layout=wide");

        assertEquals(
                "product,form,ghg_median_kg_co2e_per_kg_protein,feed_median_kg_feed_per_kg_live",
                numbers(lines.get(0)));
    }

    @Test
    void columns_keep_the_order_of_the_request() {
        assertEquals(
                "product,form,land_high_m2_yr_per_kg_edible,land_low_m2_yr_per_kg_edible,"
                        + "ghg_high_kg_co2e_per_kg_edible,ghg_low_kg_co2e_per_kg_edible,"
                        + "land_interval_of_per_kg_edible,ghg_interval_of_per_kg_edible",
                numbers(lines("/v1/table?products=beef&indicators=land,ghg&stats=high,low&per=kg-edible&layout=wide")
                        .get(0)));
    }

    @Test
    void a_wide_table_says_behind_its_numbers_of_what_each_interval_speaks() {
        String question = "/v1/table?products=beef,palm-weevil&indicators=ghg,land&stats=low,median&layout=wide";

        assertEquals(
                List.of("study", "study"),
                ends(lines(question).get(1)),
                "by default an interval is for what the next study would find");
        assertEquals(List.of("mean", "mean"), ends(lines(question + "&of=mean").get(1)));
        assertEquals(List.of("", ""), ends(lines(question).get(2)), "without evidence there is no interval");
    }

    private static List<String> ends(String line) {
        List<String> cells = List.of(line.split(",", -1));
        return cells.subList(6, 8);
    }

    @Test
    void a_wide_table_supports_decimal_commas_a_byte_order_mark_and_the_cache_buster() {
        String question = "/v1/table?products=beef&stats=median&layout=wide&delim=;&decimal=,&bom=1";
        String body = Reply.to(question).body();

        assertTrue(body.startsWith("\uFEFFproduct;form;ghg_median_kg_co2e_per_kg_protein;"), body);
        assertTrue(
                body.contains("\r\nbeef;fresh;"
                        + Reply.to("/v1/value/ghg/beef").body().replace('.', ',') + ";farm-gate;ok;"),
                body);
        assertEquals(body, Reply.to(question + "&nocache=17").body());
    }

    @Test
    void a_wide_table_is_a_csv_and_the_limit_of_rows_counts_units_too() {
        assertEquals(
                400, Reply.to("/v1/table?products=beef&layout=wide&format=xml").status());
        String products = String.join(
                ",",
                RunningScalepan.library().products().keySet().stream().limit(30).toList());
        Reply refused = Reply.to(
                "/v1/table?products=" + products + "&indicators=ghg,land,energy,water&per=kg-protein,kg-edible");
        assertEquals(422, refused.status());
        assertTrue(refused.body().contains("the table would have 240 rows; at most 200 are allowed"), refused.body());
    }

    @Test
    void a_problem_may_be_requested_as_one_line_for_a_cell() {
        Reply shown = Reply.to("/v1/table?products=beeef&format=xml&on_error=200");
        assertEquals(200, shown.status());
        assertEquals("text/plain", shown.mediaType());
        assertEquals("#unknown product \"beeef\": did you mean beef?", shown.body());
        assertEquals("no-store", shown.header("Cache-Control").orElse(""));
        assertEquals(400, Reply.to("/v1/table?products=beeef").status());
        assertEquals(400, Reply.to("/v1/table?products=beef&on_error=yes").status());
    }
}
