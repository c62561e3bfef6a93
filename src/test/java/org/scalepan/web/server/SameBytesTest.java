package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.restassured.RestAssured;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.web.Reply;

/** An answer is a function of question, library and seed, and of nothing else. */
class SameBytesTest {
    private static WebServer another;

    @BeforeAll
    static void startAnother() {
        another = new WebServer(((LibraryLoad.Loaded) LibraryLoader.bundled()).library()).start("127.0.0.1", 0);
    }

    @AfterAll
    static void stopAnother() {
        another.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/comparison?products=mealworm,chicken&against=beef",
                "/v1/comparison?products=mealworm&against=beef&format=md",
                "/v1/table?products=mealworm,beef&indicators=ghg,land&format=xml",
                "/v1/ratio/ghg/mealworm/beef?stat=text",
                "/v1/products",
                "/v1/sources?format=bibtex"
            })
    void the_same_question_gives_the_same_bytes_also_from_another_start_of_the_service(String question) {
        Reply first = Reply.to(question);

        assertEquals(first.body(), Reply.to(question).body());
        assertEquals(
                first.body(),
                RestAssured.given()
                        .baseUri("http://127.0.0.1")
                        .port(another.port())
                        .urlEncodingEnabled(false)
                        .accept("*/*")
                        .get(question)
                        .asString());
    }

    @Test
    void an_explicit_default_changes_only_the_resolved_question() {
        assertEquals(
                Reply.to("/v1/value/ghg/mealworm").body(),
                Reply.to(
                                "/v1/value/ghg/mealworm?per=kg-protein&boundary=farm-gate&gwp=ar6-100&coverage=0.90&draws=10000"
                                        + "&seed=1")
                        .body());
    }

    @Test
    void the_figure_of_a_product_does_not_depend_on_the_other_products() {
        assertEquals(
                JsonAt.node(
                        Reply.to("/v1/comparison?products=mealworm&against=beef")
                                .json(),
                        "/items/0/footprint"),
                JsonAt.node(
                        Reply.to("/v1/comparison?products=chicken,mealworm&against=pork")
                                .json(),
                        "/items/1/footprint"));
    }

    @Test
    void another_seed_gives_another_draw() {
        assertNotEquals(
                Reply.to("/v1/value/ghg/mealworm?stat=high").body(),
                Reply.to("/v1/value/ghg/mealworm?stat=high&seed=2").body());
    }
}
