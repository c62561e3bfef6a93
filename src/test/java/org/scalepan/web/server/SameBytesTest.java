package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.restassured.RestAssured;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** A picture, sentences with numbers, and gaps with defaults. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "-Duser.language=ar -Duser.country=EG",
                "-Duser.language=de -Duser.country=DE -Duser.timezone=Pacific/Apia -Dfile.encoding=ISO-8859-1"
            })
    void the_locale_and_the_time_zone_of_the_machine_change_no_byte(String language) {
        String brief = "/v1/brief?products=mealworm,house-cricket&against=beef&draws=1000&format=";
        List<String> questions = List.of(
                brief + "svg",
                brief + "md",
                brief + "html",
                "/v1/comparison?products=mealworm,chicken&against=beef&draws=1000",
                "/v1/comparison?products=mealworm&against=beef&draws=1000&format=md",
                "/v1/comparison?products=mealworm&against=beef&draws=1000&format=xlsx",
                "/v1/library.zip",
                "/v1/claim?text=insects%20emit%20a%20hundred%20times%20less%20than%20beef&draws=1000");
        List<String> records = List.of("""
                {"system": {"kind": "insects", "product": "palm-weevil", "harvest": {"kg_per_year": 500},
                  "feed": [{"ingredient": "wheat-bran", "kg": 2000, "burden": "mass"}, {"ingredient": "carrot", "kg": 300}]}, "draws": 1000}
                """, """
                {"system": {"kind": "herd", "animals": "dairy-cattle", "heads": 10, "breeding_stock": "included",
                  "yield": {"milk_kg": 20000, "live_kg": 900},
                  "cattle": {"weight_kg": 400, "milk_kg_per_day": 12, "digestibility_percent": 60}}, "draws": 1000}
                """);

        try (SecondProcess elsewhere = new SecondProcess(language.split(" "))) {
            for (String question : questions) {
                assertEquals(
                        Reply.to(question).body(),
                        Reply.to(elsewhere.uri(question), Map.of()).body());
            }
            for (String farm : records) {
                assertEquals(
                        Reply.to("/v1/footprint", Map.of(), Optional.of(farm)).body(),
                        Reply.to(elsewhere.uri("/v1/footprint"), Map.of(), Optional.of(farm))
                                .body());
            }
        }
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
