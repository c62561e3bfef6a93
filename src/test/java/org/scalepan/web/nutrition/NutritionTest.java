package org.scalepan.web.nutrition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** Foods and cautions over HTTP. */
class NutritionTest {
    private static JsonNode figure(JsonNode food, String id) {
        for (JsonNode figure : food.path("figures")) {
            if (JsonAt.text(figure, "/id").equals(id)) {
                return figure;
            }
        }
        throw new AssertionError("no figure " + id + " in " + food);
    }

    @Test
    void a_figure_has_its_rows_and_sources_and_grade_beside_it() {
        JsonNode answer = Reply.to("/v1/nutrition?products=mealworm").json();

        JsonNode fat = figure(answer.path("items").path(0), "fat");
        assertEquals("10g-protein", JsonAt.text(answer, "/question/basis"));
        // Finke (2002): 13.4 g fat and 18.7 g protein per 100 g.
        assertEquals(7.165775, JsonAt.number(fat, "/value"), 1e-6);
        assertEquals("secondary", JsonAt.text(fat, "/lowest_grade"));
        assertEquals("finke-2002", JsonAt.text(fat, "/sources/0"));
        assertEquals("finke-2002.mealworm.fresh.fat", JsonAt.text(fat, "/rows/0"));
    }

    @Test
    void the_range_beside_a_content_is_called_what_it_is() {
        JsonNode iron = figure(
                Reply.to("/v1/nutrition?products=beef").json().path("items").path(0), "iron");

        assertTrue(
                JsonAt.text(iron, "/text").matches("[0-9.]+ \\(published rows [0-9.]+ to [0-9.]+\\)"), iron::toString);
    }

    @Test
    void a_missing_figure_has_a_reason_and_no_number() {
        JsonNode beef =
                Reply.to("/v1/nutrition?products=beef").json().path("items").path(0);

        JsonNode b12 = figure(
                Reply.to("/v1/nutrition?products=superworm")
                        .json()
                        .path("items")
                        .path(0),
                "vitamin-b12");
        assertEquals("missing", JsonAt.text(b12, "/status"));
        assertFalse(b12.has("value"));
        assertEquals("not published for superworm in this library", JsonAt.text(b12, "/reason"));
        assertEquals("valine", JsonAt.text(beef, "/amino_acid_score/limiting"));
    }

    @Test
    void fresh_beside_dried_is_refused_per_100_grams_with_the_ways_out() {
        Reply refused = Reply.to("/v1/nutrition?products=mealworm,beans&basis=100g-edible");

        assertEquals(400, refused.status());
        String message = JsonAt.text(refused.json(), "/errors/0/message");
        assertTrue(message.contains("basis=100g-dry-matter, 10g-protein or 100kcal"), message);
        assertTrue(message.contains("mixed_forms=yes"), message);
    }

    @Test
    void fresh_beside_dried_is_compared_on_request_with_a_warning() {
        JsonNode answer = Reply.to("/v1/nutrition?products=mealworm,beans&basis=100g-edible&mixed_forms=yes")
                .json();

        assertEquals("fresh-beside-dried", JsonAt.text(answer, "/warnings/0/code"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "products=mealworm&basis=100g | unknown basis \"100g\"",
                "products=mealworm&pattern=fao-2013 | unknown pattern \"fao-2013\"",
                "products=mealworm&price_per_kg=12 | currency is missing: name that of the price, such as currency=EUR",
                "products=mealworm&price_per_kg=0&currency=EUR | price_per_kg must be a number from 0.000001 to 1000000",
                "products=mealworm&currency=EUR | a currency without a price; give price_per_kg or prices",
                "products=mealworm&price_per_kg=1&currency=euro | currency must be a code of three capital letters, such as EUR (ISO 4217)",
                "products=mealworm,beef&price_per_kg=1&currency=EUR | price_per_kg is for one product; give prices, one for each",
                "products=mealworm,beef&prices=1&currency=EUR | prices has 1 entries for 2 products; give one for each, in their order, and - where there is none",
                "products=mealworm&prices=cheap&currency=EUR | price \"cheap\" must be a number from 0.000001 to 1000000, or - for none",
                "products=mealworm&market=mars | unknown market \"mars\"",
                "products=mealworm&per=kg-protein | unknown parameter \"per\""
            })
    void a_question_that_cannot_be_read_is_refused_in_words(String query, String message) {
        Reply refused = Reply.to("/v1/nutrition?" + query);

        assertEquals(400, refused.status());
        assertEquals(message, JsonAt.text(refused.json(), "/errors/0/message"));
    }

    /** Arithmetic: 12 over 0.187 kg protein (Finke 2002); beef has no price. */
    @Test
    void prices_are_given_with_their_foods() {
        JsonNode items = Reply.to("/v1/nutrition?products=mealworm,beef&prices=12,-&currency=EUR")
                .json()
                .path("items");

        assertEquals(64.17112, JsonAt.number(items, "/0/price/value"), 1e-5);
        assertEquals("EUR/kg protein", JsonAt.text(items, "/0/price/unit"));
        assertFalse(items.path(1).has("price"));
    }

    @Test
    void a_permalink_repeats_the_same_question() {
        String question = "/v1/nutrition?products=mealworm,beef&prices=12,9.5&currency=EUR&basis=100kcal&market=gb";
        String permalink = JsonAt.text(Reply.to(question).json(), "/permalink");

        assertEquals(Reply.to(question).body(), Reply.to(permalink).body());
    }

    @Test
    void as_csv_every_figure_has_a_line_of_its_own() {
        List<String> lines = Reply.to("/v1/nutrition?products=mealworm,beans&format=csv")
                .body()
                .lines()
                .toList();

        assertEquals(String.join(",", NutritionCsv.COLUMNS), lines.get(0));
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("beans,dried,bean,10g-protein,iron,mg,")));
        assertTrue(lines.stream().allMatch(line -> line.split(",", -1).length >= NutritionCsv.COLUMNS.size()));
    }

    @Test
    void as_markdown_it_can_be_pasted_with_references_warnings_and_cautions() {
        String page = Reply.to("/v1/nutrition?products=mealworm,beef&format=md").body();

        assertTrue(page.startsWith("| per 10 g protein | yellow mealworm | beef |\n"));
        List.of("\nReferences\n", "\nWarnings\n", "\nCautions\n")
                .forEach(head -> assertTrue(page.contains(head), head));
    }

    @Test
    void a_market_leaves_out_the_law_of_others_only() {
        List<String> swiss =
                ids(Reply.to("/v1/cautions?product=mealworm&market=ch").json().path("items"));

        assertTrue(swiss.contains("novel-food-ch"));
        assertTrue(swiss.contains("allergy"));
        assertTrue(swiss.stream().noneMatch(id -> id.endsWith("-eu") || id.endsWith("-us")), swiss::toString);
    }

    @Test
    void a_caution_about_some_products_is_not_shown_with_others() {
        assertTrue(ids(Reply.to("/v1/cautions?product=palm-weevil").json().path("items"))
                .contains("novel-food-eu-palm-weevil"));
        assertFalse(ids(Reply.to("/v1/cautions?product=mealworm").json().path("items"))
                .contains("novel-food-eu-palm-weevil"));
        assertEquals(
                List.of("general"),
                ids(Reply.to("/v1/cautions?product=beef").json().path("items")));
    }

    /** Every route that answers about an insect. */
    static List<String> questionsAboutInsects() {
        List<String> questions = new ArrayList<>();
        RunningScalepan.library().products().values().stream()
                .filter(product -> product.group().equals("insect"))
                .forEach(product -> {
                    questions.add("/v1/products/" + product.id());
                    questions.add("/v1/cautions?product=" + product.id() + "&market=us");
                    questions.add("/v1/nutrition?market=gb&products=beef," + product.id());
                    questions.add("/v1/comparison?draws=1000&against=beef&products=" + product.id());
                    questions.add("/v1/comparison?draws=1000&products=beef&against=" + product.id());
                });
        return questions;
    }

    /** Fsa (2022) and the label texts of Regulations (EU) 2021/1975 and 2023/5: crustaceans, house-dust mites, molluscs. */
    @ParameterizedTest
    @MethodSource("questionsAboutInsects")
    void no_answer_about_an_insect_is_without_the_caution_about_allergy(String question) {
        JsonNode answer = Reply.to(question).json();

        boolean listed = question.startsWith("/v1/cautions");
        JsonNode cautions = answer.path(listed ? "items" : "cautions");
        boolean warned = false;
        for (JsonNode caution : cautions) {
            warned |= JsonAt.text(caution, "/topic").equals("allergy")
                    && JsonAt.text(caution, "/text").contains("crustaceans, house-dust mites");
        }
        assertTrue(warned, question);
    }

    private static List<String> ids(JsonNode items) {
        List<String> ids = new ArrayList<>();
        JsonAt.array(items, "").forEach(item -> ids.add(JsonAt.text(item, "/id")));
        return ids;
    }
}
