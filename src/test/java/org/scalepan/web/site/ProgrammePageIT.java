package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.support.ui.Select;
import org.scalepan.JsonAt;
import org.scalepan.quantity.Print;
import org.scalepan.web.Reply;

/** The page of a programme, in a real browser. */
class ProgrammePageIT extends PageTest {
    private static final String BODY = """
            {"product": "mealworm", "kg_per_year": 5000, "baseline": [{"product": "beef"}],
             "displacement_rate": 0.5, "households": 300, "women": 400, "men": 200, "indicators": ["ghg"]}
            """;
    private static final String LINK =
            "#product=mealworm&kg_per_year=5000&baseline.1.product=beef&displacement_rate=0.5"
                    + "&households=300&women=400&men=200";

    private static void awaitFigure() {
        browser.await(
                "a figure",
                () -> !browser.all("#said .headline").isEmpty()
                        && !browser.all("#swings .row").isEmpty()
                        && !browser.all("#take-paragraph").isEmpty());
    }

    private static JsonNode answer() {
        return Reply.to("/v1/substitution", Map.of(), Optional.of(BODY)).json();
    }

    @Test
    void three_entries_give_a_figure_that_can_be_quoted() {
        browser.open("/programme");
        browser.await("the form", () -> !browser.all("[name='kg_per_year']").isEmpty());
        browser.at("[name='kg_per_year']").sendKeys("5000");
        new Select(browser.at("[name='baseline.1.product']")).selectByValue("beef");
        assertTrue(browser.all("#swings .row").isEmpty(), "the share that displaces has no default");
        browser.at("[name='displacement_rate']").sendKeys("50");
        awaitFigure();
        double least = JsonAt.number(answer(), "/indicators/0/conservative/value");

        assertTrue(
                browser.text("#said .headline")
                        .matches("(?s).*At least [\\d.]+ t CO₂e of greenhouse gas is avoided a year.*"),
                browser.text("#said"));
        double said =
                Double.parseDouble(browser.text("#said .headline").replaceAll("(?s).*At least ([\\d.]+) .*", "$1"));
        assertTrue(said <= least && said > least * 0.9, said + " for " + least);
    }

    @Test
    void the_three_inputs_that_decide_are_named_with_the_most_decisive_first() {
        browser.open("/programme" + LINK);
        awaitFigure();
        int swings = answer().at("/indicators/0/sensitivity").size();

        assertTrue(
                browser.text("#drivers-said").startsWith("First the share that displaces"),
                browser.text("#drivers-said"));
        assertEquals(swings, browser.all("#swings .row").size());
        assertEquals(swings, browser.all("#drivers-table tbody tr").size());
    }

    @Test
    void what_falls_to_each_household_and_group_is_a_table() {
        browser.open("/programme" + LINK);
        awaitFigure();
        String reach = browser.text("#reach-table");

        assertTrue(
                reach.contains(Print.footprint(JsonAt.number(answer(), "/indicators/0/per_household/median"))), reach);
        assertTrue(reach.contains("Women 400 (67%)") && reach.contains("Men 200 (33%)"), reach);
    }

    @Test
    void feed_for_hens_is_counted_as_a_share_of_their_diet() {
        browser.open("/programme");
        browser.await("the demos", () -> !browser.all("#demo-hens").isEmpty());
        browser.at("#demo-hens").click();
        awaitFigure();

        assertEquals("poultry", browser.at("[name='use']").getAttribute("value"));
        assertEquals("mealworm:meal", browser.at("[name='product']").getAttribute("value"));
        assertTrue(browser.text("#said .headline").contains("No saving"), browser.text("#said"));
        assertFalse(browser.at("[name='kg_per_year']").isEnabled(), "the diet says how much");
    }

    @Test
    void a_link_carries_the_programme_and_nothing_of_it_reaches_an_address_that_is_sent() {
        browser.open("/programme" + LINK);
        awaitFigure();
        String link = browser.text("#take-link");

        assertTrue(link.contains("#") && !link.substring(0, link.indexOf('#')).contains("5000"), link);
        browser.open(link.replaceFirst("^https?://[^/]+", ""));
        awaitFigure();
        assertEquals("5000", browser.at("[name='kg_per_year']").getAttribute("value"));
        assertEquals("400", browser.at("[name='women']").getAttribute("value"));
    }

    @Test
    void money_is_shown_where_prices_are_given_and_the_text_can_be_saved() {
        browser.open("/programme" + LINK + "&cost_per_year=40000&currency=EUR");
        awaitFigure();

        assertTrue(browser.text("#money-table").contains("Cost of a tonne CO₂e avoided"), browser.text("#tables"));
        assertEquals(
                JsonAt.text(answer(), "/paragraph").substring(0, 60),
                browser.text("#take-paragraph").substring(0, 60));
        browser.at("#save-text").click();
        assertTrue(new String(browser.download(".md"), StandardCharsets.UTF_8).contains("mealworm"));
    }

    @Test
    void a_suggestion_of_the_front_page_opens_with_its_invented_programme() {
        browser.open("/?text=insects+could+replace+imported+meat");
        browser.await(
                "the way", () -> !browser.all("#answer a[href*='/programme#']").isEmpty());
        browser.driver().manage().logs().get("browser");
        browser.at("#answer a[href*='/programme#']").click();
        awaitFigure();

        assertEquals("1000", browser.at("[name='kg_per_year']").getAttribute("value"));
    }

    @Test
    void in_french_the_paragraph_is_french_and_the_workbook_can_be_saved() {
        browser.open("/programme?lang=fr" + LINK);
        awaitFigure();

        assertTrue(browser.text("#take-paragraph").contains("supposés remplacer le bœuf"));
        assertTrue(browser.text("#swings").contains("Porc"), browser.text("#swings"));
        browser.at("#save-workbook").click();
        // A workbook is a zip file: APPNOTE, section 4.3.7.
        assertEquals("504b0304", java.util.HexFormat.of().formatHex(browser.download(".xlsx"), 0, 4));
    }

    @Test
    void by_keyboard_from_the_sentence_to_a_file() {
        browser.open("/programme" + LINK);
        awaitFigure();
        browser.run("document.querySelector('.skip').focus()");
        tabUntilField("kg_per_year");
        browser.typeOver("9000");
        tabUntilField("displacement_rate");
        tabUntil("save-programme");
        browser.press(org.openqa.selenium.Keys.ENTER);

        assertTrue(new String(browser.download(".json"), StandardCharsets.UTF_8).contains("9000"));
    }

    @ParameterizedTest
    @CsvSource({"false, false, fr", "true, true, en", "false, true, fr", "true, false, en"})
    void axe_finds_nothing_against_it(boolean dark, boolean phone, String language) {
        if (phone) {
            browser.phone();
        }
        browser.dark(dark);
        browser.open("/programme?lang=" + language + LINK
                + "&cost_per_year=40000&currency=EUR&baseline.2.product=pork&baseline.1.share=0.6");
        awaitFigure();
        browser.all("#more summary, #notes summary").forEach(summary -> summary.click());

        assertEquals(List.of(), browser.accessibilityFaults());
        assertEquals(
                true, browser.run("return document.documentElement.scrollWidth <= innerWidth"), "it fits the width");
    }
}
