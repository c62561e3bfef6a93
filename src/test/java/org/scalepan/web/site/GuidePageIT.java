package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The guides in a real browser: wide, narrow and dark, with accessibility checks. */
class GuidePageIT extends PageTest {
    private static void open(String address) {
        browser.open(address);
        browser.await("the languages", () -> !browser.all("#languages a").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "/guide, false, false",
        "/guide, true, true",
        "/guide/tour, false, true",
        "/guide/questions, true, true",
        "/guide/operating, true, false",
        "/guide/methods, false, true",
        "/guide/speed, false, true"
    })
    void a_guide_fits_the_width_and_axe_finds_nothing_against_it(String address, boolean dark, boolean phone) {
        if (phone) {
            browser.phone();
        }
        browser.dark(dark);
        open(address);

        assertEquals(true, browser.run("return document.documentElement.scrollWidth <= innerWidth"), "it fits");
        assertEquals(List.of(), browser.accessibilityFaults());
    }

    @Test
    void the_head_leads_to_the_guides_in_both_languages_and_keeps_the_theme() {
        browser.open("/?lang=fr&theme=dark");
        browser.await("the page", () -> !browser.all("#languages a").isEmpty());
        assertEquals("Guide", browser.text(".top nav a[data-t='frame.guide']"));

        browser.at(".top nav a[data-t='frame.guide']").click();
        browser.await(
                "the guides",
                () -> !browser.all(".guide-list a").isEmpty()
                        && browser.all("#languages a").size() == 2);
        browser.at(".guide-list a").click();
        browser.await(
                "the tour",
                () -> browser.text("h1").equals("A tour")
                        && browser.all("#languages a").size() == 2);

        assertTrue(browser.address().contains("/guide/tour?lang=fr&theme=dark"), browser.address());
        assertEquals("Votre élevage", browser.text(".top nav a[data-t='frame.farm']"));
        assertEquals("en", browser.at("article").getAttribute("lang"));
        assertEquals("page", browser.at(".top nav a[data-t='frame.guide']").getAttribute("aria-current"));
    }

    @ParameterizedTest
    @CsvSource({"/examples, true, false, fr", "/examples, false, true, en", "/docs, true, false, fr"})
    void other_pages_of_text_have_the_same_head_in_language_and_theme(
            String address, boolean dark, boolean phone, String language) {
        if (phone) {
            browser.phone();
        }
        open(address + "?lang=" + language + (dark ? "&theme=dark" : ""));

        assertEquals("page", browser.at(".top nav a[href^='" + address + "']").getAttribute("aria-current"));
        assertTrue(browser.at(".top nav a").getAttribute("href").contains("lang=" + language), "the way back keeps it");
        assertEquals(language, browser.run("return document.documentElement.lang"));
        assertEquals(dark, browser.run("return document.documentElement.classList.contains('dark-mode')"));
        if (address.equals("/examples")) {
            assertEquals(List.of(), browser.accessibilityFaults());
            assertEquals(true, browser.run("return document.documentElement.scrollWidth <= innerWidth"), "it fits");
        }
    }

    @Test
    void formulas_follow_the_menus_and_the_fragment_of_the_address() {
        open("/examples#product=pork&indicator=land");
        browser.await("the menus", () -> browser.all("[name='product'] option").size() > 20);
        assertTrue(
                browser.text("[data-cell='number']").contains("/v1/value/land/pork?per=kg-protein"),
                browser.text("[data-cell='number']"));
        new org.openqa.selenium.support.ui.Select(browser.at("[name='against']")).selectByValue("chicken");

        browser.await("the ratio", () -> browser.text("[data-cell='ratio']").contains("/v1/ratio/land/pork/chicken"));
        assertEquals("pork", browser.at("[name='product']").getAttribute("value"), "the menus keep the question");
    }

    @Test
    void a_link_to_a_section_goes_there() {
        open("/guide/operating#limits");

        assertEquals(
                true,
                browser.run("const top = document.getElementById('limits').getBoundingClientRect().top;"
                        + " return top >= 0 && top < innerHeight"));
    }
}
