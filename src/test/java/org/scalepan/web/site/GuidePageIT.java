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

    @Test
    void a_link_to_a_section_goes_there() {
        open("/guide/operating#limits");

        assertEquals(
                true,
                browser.run("const top = document.getElementById('limits').getBoundingClientRect().top;"
                        + " return top >= 0 && top < innerHeight"));
    }
}
