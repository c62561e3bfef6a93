package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.scalepan.web.Reply;

/** A sentence that somebody heard, pasted on the front page. */
class AskPageIT extends PageTest {
    private static final int MOST_WORDS = 25;

    private static void open(String address) {
        browser.open(address);
        browser.await(
                "the verdict of the menus",
                () -> "said".equals(browser.at("#verdict").getAttribute("data-state"))
                        && !browser.all("#circulating button").isEmpty());
    }

    private static void ask(String sentence) {
        open("/");
        browser.at("#asked").sendKeys(sentence);
        browser.press(Keys.ENTER);
        answered();
    }

    /** A refused question is answered 400, which browsers write to their console. */
    private static void askInVain(String sentence) {
        ask(sentence);
        browser.driver().manage().logs().get("browser");
    }

    private static void answered() {
        browser.await(
                "an answer",
                () -> browser.at("#answer").isDisplayed()
                        && !browser.text("#answer").isEmpty());
    }

    private static int words(String sentence) {
        return sentence.trim().split("\\s+").length;
    }

    @Test
    void several_claims_are_answered_one_below_the_other() {
        ask("Insects need less land and feed and emit far less than cattle. They cure anaemia.");

        assertEquals(4, browser.all("#answer .one-claim").size());
        assertEquals(4, browser.all("#answer .one-claim .headline").size());
        assertTrue(browser.text("#answer").contains("The text makes 4 claims"), browser.text("#answer"));
        assertTrue(
                browser.text("#answer .one-claim:last-child").contains("cannot be checked"), browser.text("#answer"));
        assertEquals(List.of(), browser.accessibilityFaults());
    }

    @Test
    void is_it_true_that_they_have_more_iron_than_beef() {
        ask("is it true that they have more iron than beef?");

        assertTrue(browser.text("#answer .headline").contains("Holds only in part"), browser.text("#answer"));
        String said = browser.text("#answer blockquote");
        assertTrue(said.contains("times as much iron as beef"), said);
        assertTrue(words(said) <= MOST_WORDS, said);
        assertTrue(browser.address().contains("text=is"), browser.address());
        assertTrue((boolean) browser.run(
                "return document.querySelector('#answer blockquote').getBoundingClientRect().bottom < innerHeight"));
    }

    @Test
    void on_the_french_page_the_answer_is_french() {
        open("/?lang=fr&text=les+insectes+ont+plus+de+fer+que+le+boeuf");
        answered();

        assertTrue(
                browser.text("#answer").contains("les insectes contiennent plus de fer que le bœuf"),
                browser.text("#answer"));
        assertTrue(browser.text("#answer blockquote").contains("fois autant en fer que le bœuf"));
    }

    @Test
    void the_button_pressed_first_asks_the_example() {
        open("/");
        browser.at("#ask button").click();
        answered();

        assertTrue(browser.text("#answer blockquote").contains("iron"), browser.text("#answer"));
    }

    @Test
    void a_claim_of_a_footprint_goes_to_the_menus_and_the_picture() {
        ask("mealworms need 10 times less land than beef");
        browser.await("the verdict", () -> browser.text("#verdict").contains("10 times less: Open"));

        assertEquals("land", browser.at("#indicator").getAttribute("value"));
        assertEquals("mealworm", browser.at("#product").getAttribute("value"));
        assertEquals("needs", browser.text("#verb"));
        assertTrue(browser.text("#answer").contains("yellow mealworm needs at least 10 times less land"));
        assertTrue(browser.text("#sentence").startsWith("Yellow mealworm needs at least"), browser.text("#sentence"));
    }

    @Test
    void a_claim_of_all_insects_has_a_row_for_each_that_leads_to_its_studies() {
        ask("insects emit a hundred times less than beef");
        assertTrue(browser.all("#answer tbody tr").size() > 3, browser.text("#answer"));
        WebElement row = browser.all("#answer tbody button").stream()
                .filter(button -> button.getText().startsWith("House cricket"))
                .findFirst()
                .orElseThrow();
        row.click();
        browser.await(
                "its menus", () -> "house-cricket".equals(browser.at("#product").getAttribute("value")));
    }

    @Test
    void a_sentence_that_cannot_be_checked_leads_on_by_links_that_work() {
        askInVain("these larvae are good for the planet");
        List<WebElement> links = browser.all("#answer .steps-on a");

        assertTrue(browser.text("#answer").contains("cannot be checked as it stands"), browser.text("#answer"));
        assertTrue(links.size() >= 3, browser.text("#answer"));
        for (WebElement link : links) {
            String address = link.getAttribute("href")
                    .replaceFirst("^https?://[^/]+", "")
                    .replaceFirst("#.*$", "");
            assertEquals(200, Reply.to(address).status(), address);
        }
        String own = links.stream()
                .map(link -> link.getAttribute("href"))
                .filter(address -> address.contains("/farm#"))
                .findFirst()
                .orElseThrow();
        browser.open(own.replaceFirst("^https?://[^/]+", ""));
        browser.await(
                "the figure of the invented farm",
                () -> !browser.all("#figure .headline strong").isEmpty());
    }

    @Test
    void a_suggested_reading_is_a_button_that_checks_it() {
        askInVain("mealwurms need 10 times less land than beef");
        browser.at("#answer .steps-on button").click();
        browser.await("its verdict", () -> browser.text("#verdict").contains("10 times less: Open"));

        assertEquals("land", browser.at("#indicator").getAttribute("value"));
        assertTrue(browser.address().contains("asked="), browser.address());
    }

    @Test
    void all_circulating_claims_stand_under_their_topic_and_can_be_clicked() {
        open("/");
        assertEquals(
                Reply.to("/v1/claims").json().path("items").size(),
                browser.all("#circulating button").size());
        browser.at("#circulating [data-topic='contents'] summary").click();
        browser.at("#circulating [data-claim='c29']").click();
        answered();

        assertTrue(browser.text("#answer").contains("Crickets have more iron than beef"), browser.text("#answer"));
        assertTrue(browser.text("#answer").contains("absorption evidence is mixed"), browser.text("#answer"));
        assertEquals("Crickets have more iron than beef", browser.at("#asked").getAttribute("value"));
    }

    @Test
    void a_choice_in_the_menus_takes_the_answer_away() {
        open("/?text=mealworms+need+10+times+less+land+than+beef");
        answered();
        new org.openqa.selenium.support.ui.Select(browser.at("#against")).selectByValue("pork");

        assertFalse(browser.at("#answer").isDisplayed());
        assertFalse(browser.address().contains("text="), browser.address());
    }

    @Test
    void a_word_of_the_trade_says_what_it_means_by_keyboard() {
        open("/");
        tabUntil("the word draws", focused -> "draws".equals(focused.getText()));
        browser.press(Keys.ENTER);
        browser.await(
                "its meaning",
                () -> browser.all(".meaning").stream()
                        .anyMatch(note -> note.isDisplayed() && note.getText().contains("ten thousand times")));
        browser.press(Keys.ESCAPE);
        browser.await("no meaning", () -> browser.all(".meaning").stream().noneMatch(WebElement::isDisplayed));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/?products=mealworm&against=beef&times_less=100&indicator=land",
                "/?products=eri-silkworm-pupae&against=buffalo-milk&times_less=3",
                "/?products=mealworm&against=chicken&times_less=2",
                "/?products=mealworm&against=beef&times_less=2&indicator=feed&per=kg-live&boundary=animal",
                "/?products=chicken&against=pork&times_less=2&evidence=modelled"
            })
    void a_spoken_sentence_has_at_most_25_words(String address) {
        open(address);

        assertTrue(words(browser.text("#sentence")) <= MOST_WORDS, browser.text("#sentence"));
        assertFalse(browser.text("#footnote").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "false, false, fr, is it true that they have more iron than beef?",
        "true, true, en, insects emit a hundred times less than beef",
        "true, false, en, crickets have more protein than beef"
    })
    void axe_finds_nothing_against_an_answer(boolean dark, boolean phone, String language, String sentence) {
        if (phone) {
            browser.phone();
        }
        browser.dark(dark);
        open("/?lang=" + language + "&text=" + sentence.replace(" ", "+").replace("?", "%3F"));
        answered();
        browser.at("#circulating summary").click();

        assertEquals(List.of(), browser.accessibilityFaults());
        assertEquals(
                true, browser.run("return document.documentElement.scrollWidth <= innerWidth"), "it fits the width");
    }
}
