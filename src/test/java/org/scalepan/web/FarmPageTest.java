package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page on which a grower's notebook becomes a figure, in a real browser. */
class FarmPageTest {
    private static final String LINK = "/farm#product=mealworm&harvest.kg_per_year=180&feed.1.ingredient=wheat-bran"
            + "&feed.1.kg=400&energy.1.carrier=grid-electricity&energy.1.amount=220";
    private static final String SAME = """
            {"system": {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": 180},
              "feed": [{"ingredient": "wheat-bran", "kg": 400}],
              "energy": [{"carrier": "grid-electricity", "amount": 220}]},
             "per": "kg-protein", "indicators": ["ghg"]}""";
    private static DrivenBrowser browser;

    @BeforeAll
    static void start() {
        browser = new DrivenBrowser();
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    @AfterEach
    void nothing_was_said_on_the_console_and_nobody_else_was_asked() {
        browser.assertQuiet();
        browser.desk().dark(false);
    }

    private static JsonNode answer(String body) {
        return Reply.to(
                        RunningScalepan.uri("/v1/footprint"),
                        Map.of("Content-Type", "application/json"),
                        Optional.of(body))
                .json();
    }

    private static void awaitFigure() {
        browser.await(
                "a figure",
                () -> !browser.all(".own-figure").isEmpty()
                        && !browser.all("#drivers h2").isEmpty());
    }

    @Test
    void three_numbers_by_keyboard_give_the_figure_of_the_service() {
        browser.open("/farm");
        browser.await(
                "a form", () -> !browser.all("#records [name='feed.1.kg']").isEmpty());
        browser.at(".skip").sendKeys(Keys.TAB);
        type("harvest.kg_per_year", "180");
        type("feed.1.kg", "400");
        type("energy.1.amount", "220");
        awaitFigure();
        double median = answer(SAME).at("/footprints/0/footprint/median").asDouble();

        browser.await(
                "the service's figure",
                () -> Math.abs(Double.parseDouble(browser.text(".own-figure strong")) / median - 1) < 0.05);
        assertTrue(browser.text("#figure").contains("kg CO₂e per kg protein"), browser.text("#figure"));
        assertTrue(browser.text("#figure").contains("Beside beef:"), browser.text("#figure"));
    }

    private static void type(String name, String text) {
        for (int i = 0; i < 40; i++) {
            if (name.equals(browser.focused().getAttribute("name"))) {
                browser.press(text);
                return;
            }
            browser.press(Keys.TAB);
        }
        throw new AssertionError("the keyboard does not lead to " + name);
    }

    @Test
    void a_link_carries_the_records_in_its_fragment_and_typing_writes_nothing_into_the_address() {
        browser.open(LINK);
        awaitFigure();
        assertTrue(browser.text("#take-link").endsWith(LINK), browser.text("#take-link"));
        WebElement feed = browser.at("[name='feed.1.kg']");
        feed.clear();
        feed.sendKeys("500");
        browser.await(
                "the new feed in the link to copy",
                () -> browser.text("#take-link").contains("feed.1.kg=500"));

        assertTrue(browser.address().endsWith(LINK), browser.address());
        assertEquals(0L, browser.run("return localStorage.length + sessionStorage.length + document.cookie.length"));
    }

    @Test
    void stages_gaps_what_drives_it_and_what_would_have_to_be_true_stand_beside_the_figure() {
        browser.open(LINK);
        awaitFigure();
        JsonNode answer = answer(SAME);
        browser.await("a break-even", () -> browser.text(".even-said").contains("would equal"));

        assertEquals(
                answer.at("/footprints/0/by_stage").size(),
                browser.all("#chart rect.stage").size());
        assertEquals(4, browser.all("#chart .row").size());
        answer.path("gaps")
                .forEach(gap -> assertTrue(
                        browser.text(".gaps").contains(gap.path("filled_with").asText()), gap::toString));
        assertFalse(browser.all("#drivers meter").isEmpty());
    }

    @Test
    void an_invented_farm_can_be_loaded_and_taken_away_as_picture_and_records() throws Exception {
        browser.open("/farm");
        browser.await("the invented farms", () -> browser.all(".demo").size() == 2);
        browser.all(".demo").get(0).click();
        awaitFigure();
        browser.at("#save-records").click();
        JsonNode saved = new JsonMapper().readTree(browser.download(".json"));
        browser.at("#save-svg").click();
        String svg = new String(browser.download(".svg"), StandardCharsets.UTF_8);
        browser.at("#save-png").click();

        JsonNode shipped = Reply.to("/page/invented-school-superworms.json").json();
        assertEquals(shipped.at("/request/system/feed"), saved.at("/system/feed"));
        assertEquals(shipped.at("/request/system/materials"), saved.at("/system/materials"));
        assertTrue(svg.contains("invented school farm"), svg.substring(0, 300));
        assertTrue(browser.download(".png").length > 10_000);
    }

    @Test
    void what_is_no_number_is_told_at_its_field() {
        browser.open(LINK);
        awaitFigure();
        WebElement feed = browser.at("[name='feed.1.kg']");
        feed.clear();
        feed.sendKeys("much");
        browser.await("a word at the field", () -> "true".equals(feed.getAttribute("aria-invalid")));

        assertTrue(browser.text("#field-feed-1-kg-wrong").contains("12"), "an example of a number");
    }

    @ParameterizedTest
    @CsvSource({"false, false, en", "true, false, fr", "false, true, fr", "true, true, en"})
    void axe_finds_nothing_against_it(boolean dark, boolean phone, String language) {
        if (phone) {
            browser.phone();
        }
        browser.dark(dark);
        browser.open(LINK.replace("/farm", "/farm?lang=" + language));
        awaitFigure();
        browser.all("#records summary, #said > details:not([open]) > summary").forEach(WebElement::click);

        assertEquals(List.of(), browser.accessibilityFaults());
        assertEquals(
                true, browser.run("return document.documentElement.scrollWidth <= innerWidth"), "it fits the width");
    }

    @Test
    void on_paper_it_takes_one_page() {
        browser.open(LINK);
        awaitFigure();

        assertEquals(1, browser.printedPages());
    }
}
