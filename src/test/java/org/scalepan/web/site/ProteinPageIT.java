package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.support.ui.Select;
import org.scalepan.JsonAt;
import org.scalepan.quantity.Print;
import org.scalepan.web.Reply;

/** The page of what foods hold and what their protein costs, in a real browser. */
class ProteinPageIT extends PageTest {
    private static final String THREE = "/protein?products=mealworm:dried,chicken,beef";

    private static void open(String address) {
        browser.open(address);
        browser.await(
                "a figure",
                () -> !browser.all("#said .headline").isEmpty()
                        && !browser.all("#chart .row").isEmpty()
                        && !browser.all("#take-sentence").isEmpty());
    }

    @Test
    void sentence_picture_and_table_say_what_the_service_says() {
        open(THREE + "&nutrient=iron&basis=10g-protein");
        var answer = Reply.to("/v1/nutrition?products=mealworm:dried,chicken,beef&basis=10g-protein")
                .json();
        String beef = JsonAt.text(answer, "/items/2/figures/5/text").replaceFirst(" .*", "");

        assertEquals("iron", JsonAt.text(answer, "/items/2/figures/5/id"));
        assertTrue(browser.text("#said").contains("beef holds most iron, " + beef + " mg"), browser.text("#said"));
        assertTrue(
                browser.text("#said").contains("Not published here: yellow mealworm (dried)"), browser.text("#said"));
        assertTrue(browser.text("#chart").contains("not published"), browser.text("#chart"));
        assertTrue(browser.text("#contents-table").contains(beef));
        assertTrue(browser.at("#chart svg").getAttribute("aria-label").contains("Beef " + beef));
    }

    @Test
    void a_typed_price_gives_the_price_of_a_kilogram_of_protein() {
        open(THREE);
        assertFalse(browser.at("#price-section").isDisplayed());
        browser.at("#price-1").sendKeys("7");
        browser.at("#price-2").sendKeys("15");
        browser.await(
                "prices",
                () -> browser.text("#said").contains("A kilogram of protein costs")
                        && browser.address().contains("prices=-,7,15"));
        var answer = Reply.to(
                        "/v1/nutrition?products=mealworm:dried,chicken,beef&prices=-,7,15&currency=EUR&basis=100g-dry-matter")
                .json();
        browser.await(
                "both",
                () -> browser.text("#said")
                        .contains(Print.footprint(JsonAt.number(answer, "/items/2/price/value")) + " in beef"));

        assertTrue(browser.at("#price-section").isDisplayed());
        assertTrue(browser.text("#contents-table").contains("EUR per kg protein"));
        assertEquals("15", browser.at("#price-2").getAttribute("value"));
    }

    @Test
    void fresh_beside_dried_as_eaten_is_shown_with_a_warning() {
        open(THREE);
        new Select(browser.at("#basis")).selectByValue("100g-edible");
        browser.await("the warning", () -> browser.text("#said").contains("may only be drier"));

        assertTrue(browser.address().contains("basis=100g-edible"), browser.address());
    }

    @Test
    void the_answer_of_the_front_page_leads_here() {
        browser.open("/?text=insects+have+more+iron+than+beef");
        browser.await(
                "the way",
                () -> browser.all("#answer a.button").stream()
                        .anyMatch(link -> link.getText().equals("See the foods side by side")));
        browser.at("#answer .downloads a.button").click();
        browser.await("the foods", () -> !browser.all("#chart .row").isEmpty());

        assertTrue(browser.text("#chart").contains("Beef"), browser.text("#chart"));
        assertEquals("iron", browser.at("#nutrient").getAttribute("value"));
    }

    @Test
    void picture_and_table_can_be_taken_away() {
        open(THREE);
        browser.at("#save-svg").click();
        assertTrue(new String(browser.download(".svg"), StandardCharsets.UTF_8).contains("Crude protein"));
        browser.at("#save-csv").click();

        assertTrue(new String(browser.download(".csv"), StandardCharsets.UTF_8).contains("mealworm"));
        browser.at("#save-workbook").click();
        assertEquals("504b0304", java.util.HexFormat.of().formatHex(browser.download(".xlsx"), 0, 4));
    }

    @Test
    void by_keyboard_from_the_question_to_a_price_and_a_file() {
        open(THREE);
        browser.run("document.querySelector('.skip').focus()");
        tabUntil("nutrient");
        tabUntil("basis");
        tabUntil("price-2");
        browser.press("15");
        browser.await("the price", () -> browser.text("#said").contains("EUR in beef"));

        assertEquals("price-2", browser.focused().getAttribute("id"), "the focus stays where one types");
        tabUntil("save-svg");
    }

    @ParameterizedTest
    @CsvSource({"false, false, fr", "true, true, en", "false, true, fr", "true, false, en"})
    void axe_finds_nothing_against_it(boolean dark, boolean phone, String language) {
        if (phone) {
            browser.phone();
        }
        browser.dark(dark);
        open(THREE + "&prices=30,7,15&lang=" + language);
        browser.all("#others summary, #tables summary, #notes summary").forEach(summary -> summary.click());

        assertEquals(List.of(), browser.accessibilityFaults());
        assertEquals(
                true, browser.run("return document.documentElement.scrollWidth <= innerWidth"), "it fits the width");
    }
}
