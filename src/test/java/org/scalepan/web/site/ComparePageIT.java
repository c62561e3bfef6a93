package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;
import org.scalepan.JsonAt;
import org.scalepan.quantity.Print;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** The page that compares a claim with the evidence, in a real browser. */
class ComparePageIT extends PageTest {
    private static final String BASIS = "&indicator=ghg&per=kg-protein&boundary=farm-gate";

    private static void openFirst(String address) {
        browser.open(address);
        awaitVerdict();
    }

    private static void awaitVerdict() {
        browser.await(
                "a verdict",
                () -> "said".equals(browser.at("#verdict").getAttribute("data-state"))
                        && !browser.all("#verdict .headline").isEmpty()
                        && browser.all("#chart .row").size() > 1);
    }

    private static void awaitVerdict(String words) {
        browser.await("the verdict " + words, () -> browser.text("#verdict").contains(words));
    }

    @Test
    void the_first_view_refutes_a_hundred_times_and_shows_what_may_be_written_instead() {
        openFirst("/");
        String defended = JsonAt.text(
                Reply.to("/v1/claim?product=mealworm&reference=beef&times_less=100" + BASIS)
                        .json(),
                "/say_instead/sentence");

        assertTrue(browser.text("#verdict .headline").contains("100 times less: Fails"), browser.text("#verdict"));
        assertEquals(
                "Yellow mealworm emits at least 76 % less greenhouse gas than beef (4.3 times less), per kg protein, up to the farm gate.",
                browser.text("#instead blockquote"));
        assertEquals(
                "In 90 % of the draws; " + defended.replaceFirst("^.*?\\(", "").replace(").", ".")
                        + " This is no comparative assertion in the sense of ISO 14044, which takes a critical review by a panel of interested parties.",
                browser.text("#footnote"),
                "the footnote is the rest of the service's sentence");
        assertTrue(
                (boolean) browser.run("const box = document.querySelector('#instead .copy').getBoundingClientRect();"
                        + "return box.bottom < innerHeight"),
                "the sentence can be copied without scrolling");
    }

    @Test
    void every_published_result_of_the_answer_is_a_mark_and_a_row_of_the_table() {
        openFirst("/");
        var answer = Reply.to("/v1/comparison?products=mealworm,house-cricket,chicken,pork,tofu&against=beef" + BASIS)
                .json();
        int findings = answer.findValues("harmonised_median").size();

        assertTrue(findings > 20, "findings " + findings);
        assertEquals(findings, browser.all("#chart g.mark").size());
        assertEquals(findings, browser.all("#tables .results tbody tr").size());
        assertEquals(6, browser.all("#products-table tbody tr").size());
        assertTrue(
                browser.text("#chart").contains("No study up to the farm gate."),
                "house cricket has no result at this gate");
        assertFalse(browser.all("#chart a[href='/farm#product=house-cricket']").isEmpty());
    }

    @Test
    void the_shape_of_a_mark_shows_the_check_grade_of_its_result() {
        openFirst("/?grade=memory");
        for (Map.Entry<String, String> grade : Map.of(
                        "publication read", "mark-full", "abstract read", "mark-half", "from memory", "mark-cross")
                .entrySet()) {
            List<WebElement> marks = browser.all("#chart g.mark").stream()
                    .filter(mark -> mark.getAttribute("aria-label")
                            .toLowerCase(java.util.Locale.ROOT)
                            .contains(grade.getKey()))
                    .toList();
            assertFalse(marks.isEmpty(), grade.getKey());
            marks.forEach(mark -> assertEquals(
                    1,
                    mark.findElements(org.openqa.selenium.By.className(grade.getValue()))
                            .size(),
                    grade.getKey()));
        }
    }

    @Test
    void a_typed_number_changes_flag_address_and_verdict() {
        openFirst("/");
        WebElement times = browser.at("#times");
        times.clear();
        times.sendKeys("3");
        awaitVerdict("3 times less: Holds");

        assertTrue(browser.address().contains("times_less=3"), browser.address());
        assertEquals("3", browser.at(".flag").getAttribute("aria-valuenow"));
    }

    @Test
    void ninety_per_cent_less_is_read_as_ten_times_less_and_what_is_no_number_is_said_above_the_verdict() {
        openFirst("/");
        WebElement times = browser.at("#times");
        times.clear();
        times.sendKeys("90%");
        awaitVerdict("10 times less:");
        times.sendKeys(Keys.TAB);
        assertEquals("10", times.getAttribute("value"), "it is read back");
        times.clear();
        times.sendKeys("many");
        browser.await("a word about it", () -> browser.at("#fault").isDisplayed());

        assertEquals(
                true,
                browser.run("return document.getElementById('fault').getBoundingClientRect().top"
                        + " < document.getElementById('verdict').getBoundingClientRect().top"));
        times.clear();
        times.sendKeys("10");
        browser.await("nothing to say", () -> !browser.at("#fault").isDisplayed());
    }

    @Test
    void a_dragged_flag_changes_number_address_and_verdict() {
        openFirst("/");
        double before = Double.parseDouble(browser.at(".flag").getAttribute("aria-valuenow"));
        new Actions(browser.driver())
                .moveToElement(browser.at(".flag .cloth"))
                .clickAndHold()
                .moveByOffset(60, 0)
                .moveByOffset(60, 0)
                .release()
                .perform();
        double after = Double.parseDouble(browser.at(".flag").getAttribute("aria-valuenow"));

        assertTrue(after < before, before + " -> " + after);
        assertEquals(after, Double.parseDouble(browser.at("#times").getAttribute("value")), 1e-9);
        awaitVerdict(browser.at("#times").getAttribute("value") + " times less:");
        assertTrue(
                browser.address().contains("times_less=" + browser.at("#times").getAttribute("value")));
    }

    @Test
    void by_keyboard_alone_from_the_claim_to_a_study_and_a_file() {
        openFirst("/");
        browser.run("document.querySelector('.skip').focus()");
        tabUntil("times");
        browser.typeOver("20");
        awaitVerdict("20 times less:");
        tabUntilClass("mark");
        String first = browser.focused().getAttribute("aria-label");
        browser.press(Keys.ARROW_DOWN);
        String second = browser.focused().getAttribute("aria-label");
        assertNotEquals(first, second);
        browser.press(Keys.ENTER);
        assertEquals("true", browser.focused().getAttribute("aria-pressed"));
        assertTrue(
                second.startsWith(browser.text("#study h3")), () -> second + " is shown as " + browser.text("#study"));
        assertTrue(browser.text("#study").contains("doi:"), browser.text("#study"));
        tabUntilClass("flag");
        double before = Double.parseDouble(browser.focused().getAttribute("aria-valuenow"));
        browser.press(Keys.ARROW_RIGHT);
        double after = Double.parseDouble(browser.focused().getAttribute("aria-valuenow"));
        assertTrue(after < before, before + " -> " + after);
        awaitVerdict(browser.at("#times").getAttribute("value") + " times less:");
        tabUntil("save-svg");
        browser.press(Keys.ENTER);

        assertTrue(new String(browser.download(".svg"), StandardCharsets.UTF_8).contains("kg CO₂e per kg protein"));
    }

    @Test
    void where_there_is_no_evidence_a_link_to_the_farm_view_is_shown() {
        openFirst("/?products=silkworm-pupae&against=beef&times_less=10");
        assertTrue(browser.text("#verdict").contains("No evidence"), browser.text("#verdict"));
        assertTrue(
                browser.text("#verdict").contains("No published result of silkworm pupa"),
                "called as the service calls it: " + browser.text("#verdict"));
        browser.at("#verdict a").click();
        browser.await("the farm view", () -> !browser.all("#said-year select").isEmpty());

        assertEquals("silkworm-pupae", browser.at("[name='product']").getAttribute("value"));
    }

    @Test
    void every_product_with_a_reference_farm_shows_its_figure_hatched_beside_the_studies() {
        openFirst("/");
        var answer = Reply.to("/v1/comparison?products=mealworm,house-cricket,chicken,pork,tofu&against=beef" + BASIS)
                .json();
        long modelled = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(answer.path("reference")),
                        java.util.stream.StreamSupport.stream(
                                answer.path("items").spliterator(), false))
                .filter(side -> side.path("modelled").has("footprint"))
                .count();

        assertEquals(5, modelled);
        assertEquals(modelled, browser.all("#chart g.modelled").size());
        browser.all("#chart g.modelled")
                .forEach(drawn -> assertTrue(
                        drawn.getAttribute("aria-label").contains("modelled from published practice, not a study"),
                        drawn.getAttribute("aria-label")));
        assertTrue(browser.text("#chart").contains("Hatched: modelled from published practice, not a study"));
        assertTrue(browser.text("#products-table").contains("Modelled from published practice, not a study"));
        assertTrue(
                browser.text("#products-table")
                        .contains(Print.footprint(JsonAt.number(answer, "/items/1/modelled/footprint/median"))),
                "house cricket has no study at this gate, and its modelled figure is in the table");
    }

    @Test
    void the_choice_of_evidence_is_in_address_requests_link_and_cell() {
        openFirst("/?products=chicken,pork&against=beef&times_less=5");
        browser.at("#evidence-modelled").click();
        awaitVerdict("5 times less: Holds");

        assertTrue(browser.address().contains("evidence=modelled"), browser.address());
        assertTrue(browser.text("#verdict").contains("Reference farms say at least"), browser.text("#verdict"));
        assertFalse(browser.text("#verdict").contains("studies"), browser.text("#verdict"));
        assertTrue(browser.text("#instead blockquote").contains("By reference farms, not studies"));
        assertTrue(browser.text("#footnote").contains("modelled from published practice, not a study"));
        assertTrue(browser.text("#formula").contains("evidence=modelled"), browser.text("#formula"));
        assertTrue(browser.text("#take-link").contains("evidence=modelled"), browser.text("#take-link"));
        assertTrue(browser.at("#brief").getAttribute("href").contains("evidence=modelled"));
        assertTrue(browser.at("#save-csv").getAttribute("href").contains("evidence=modelled"));
        assertEquals(0, browser.all("#chart g.mark").size(), "no marks of studies");
        browser.at("#evidence-published").click();
        browser.await("studies", () -> !browser.all("#chart g.mark").isEmpty());

        assertFalse(browser.address().contains("evidence="), browser.address());
    }

    @Test
    void another_reference_farm_of_a_product_can_be_chosen() {
        openFirst("/?products=chicken&against=pork&times_less=2&evidence=modelled");
        String before = browser.text("#products-table");
        new Select(browser.at("#farm-of-pork")).selectByValue("pigs-backyard-tropical");
        browser.await("another figure", () -> !browser.text("#products-table").equals(before));

        assertTrue(browser.address().contains("system=pigs-backyard-tropical"), browser.address());
        assertTrue(browser.text("#farms").contains("A few pigs of smallholders"), browser.text("#farms"));
    }

    @Test
    void two_lower_bounds_are_undecided_and_say_what_is_not_counted() {
        openFirst("/?products=mealworm&against=beef&times_less=5&evidence=modelled");

        assertTrue(browser.text("#verdict .headline").contains("Undecided"), browser.text("#verdict"));
        assertTrue(browser.text("#verdict").contains("two bounds have no ratio"), browser.text("#verdict"));
        assertTrue(browser.text("#verdict").contains("Not counted: energy"), browser.text("#verdict"));
    }

    @Test
    void where_no_study_is_a_button_asks_for_reference_farms() {
        openFirst("/?products=superworm&against=chicken&times_less=2");
        assertTrue(browser.text("#verdict").contains("No evidence"), browser.text("#verdict"));
        browser.at("#other-evidence").click();
        awaitVerdict("2 times less: Fails");

        assertTrue(browser.address().contains("evidence=modelled"), browser.address());
    }

    @Test
    void a_reference_farm_is_reached_by_keyboard_and_says_what_it_leaves_out() {
        openFirst("/?products=mealworm&against=chicken&times_less=2&evidence=modelled");
        browser.run("document.querySelector('#times').focus()");
        tabUntilClass("modelled");
        browser.press(Keys.ARROW_DOWN);
        assertTrue(browser.focused().getAttribute("aria-label").startsWith("Yellow mealworm, modelled"));
        browser.press(Keys.ENTER);

        assertEquals("true", browser.focused().getAttribute("aria-pressed"));
        assertTrue(browser.text("#study").contains("Yellow mealworms in trays"), browser.text("#study"));
        assertTrue(
                browser.text("#study").contains("energy: Energy per kg of heated insect farms"),
                browser.text("#study"));
    }

    @Test
    void a_choice_is_a_history_entry() {
        openFirst("/");
        new Select(browser.at("#boundary")).selectByValue("animal");
        awaitVerdict("100 times less: Holds");
        assertTrue(browser.address().contains("boundary=animal"), browser.address());
        browser.driver().navigate().back();
        awaitVerdict("100 times less: Fails");

        assertEquals("farm-gate", browser.at("#boundary").getAttribute("value"));
    }

    @Test
    void the_links_to_other_bases_lead_there() {
        openFirst("/");
        browser.all("#grid button.footing.is-holds").get(0).click();
        awaitVerdict("100 times less: Holds");

        assertTrue(browser.address().contains("boundary=animal"), browser.address());
    }

    @Test
    void a_link_of_a_view_opens_that_view_despite_foreign_parameters() {
        openFirst("/?products=chicken,mealworm&against=pork&times_less=1.5&indicator=land&lang=en&utm_source=letter");

        assertTrue(browser.text("#verdict .headline").contains("1.5 times less"));
        assertEquals("chicken", browser.at("#product").getAttribute("value"));
        assertEquals("pork", browser.at("#against").getAttribute("value"));
        assertTrue(browser.text("#picture-title").contains("m²·yr"), browser.text("#picture-title"));
    }

    @Test
    void an_unknown_word_in_a_link_is_refused_with_the_nearest_known() {
        browser.open("/?products=mealwurm&against=beef&times_less=100");
        browser.await("a refusal", () -> browser.at("#fault").isDisplayed());

        assertTrue(browser.text("#fault").contains("mealworm"), browser.text("#fault"));
        browser.driver().manage().logs().get("browser");
    }

    @Test
    void the_cell_the_link_and_the_citation_lead_back_to_the_same_numbers() {
        openFirst("/");
        String formula = browser.text("#formula");
        String cell = formula.replaceAll("^.*\"(http[^\"]+)\".*$", "$1");
        String origin = RunningScalepan.uri("").toString();
        double ratio =
                Double.parseDouble(Reply.to(cell.substring(origin.length())).body());
        String citation = browser.text("#take-citation");

        assertTrue(browser.text("#verdict").contains(Print.ratio(ratio)), formula);
        assertTrue(citation.contains(RunningScalepan.digest()), citation);
        String permalink = citation.replaceAll("^.*(/v1/comparison\\S*[^,\\s]),.*$", "$1");
        assertEquals(200, Reply.to(permalink).status(), permalink);
    }

    @Test
    void picture_and_table_can_be_downloaded() {
        openFirst("/");
        browser.at("#save-svg").click();
        String svg = new String(browser.download(".svg"), StandardCharsets.UTF_8);
        browser.at("#save-png").click();
        byte[] png = browser.download(".png");
        browser.at("#save-csv").click();
        String csv = new String(browser.download(".csv"), StandardCharsets.UTF_8);

        assertTrue(
                svg.startsWith("<svg") && !svg.contains("var(--") && !svg.contains("class="),
                "looks travel with the file");
        assertTrue(svg.contains("In 90 % of the draws"), "the sentence stands under the picture");
        // PNG, third edition, section 5.2: the first bytes of every file.
        assertEquals("89504e470d0a1a0a", java.util.HexFormat.of().formatHex(png, 0, 8));
        assertTrue(png.length > 20_000, "a picture of " + png.length + " bytes");
        assertTrue(csv.contains("mealworm"), csv);
        browser.at("#save-workbook").click();
        // A workbook is a zip file: APPNOTE, section 4.3.7.
        assertEquals("504b0304", java.util.HexFormat.of().formatHex(browser.download(".xlsx"), 0, 4));
        browser.at("#brief").click();
        browser.await("the page to paste from", () -> browser.address().contains("/v1/brief"));
        assertTrue(browser.text("main").contains("76 % less"), browser.text("main"));
    }

    @ParameterizedTest
    @CsvSource({"false, false, fr", "true, false, en", "false, true, en", "true, true, fr"})
    void axe_finds_nothing_against_it(boolean dark, boolean phone, String language) {
        if (phone) {
            browser.phone();
        }
        browser.dark(dark);
        openFirst("/?lang=" + language);
        browser.all("#basis summary, #others summary, #tables summary, #notes summary")
                .forEach(WebElement::click);
        browser.run("document.querySelector('#chart .mark').focus()");

        assertEquals(List.of(), browser.accessibilityFaults());
        assertEquals(
                true, browser.run("return document.documentElement.scrollWidth <= innerWidth"), "it fits the width");
    }

    @Test
    void the_switch_turns_light_and_dark_and_links_keep_it() {
        openFirst("/");
        Object light = browser.run("return getComputedStyle(document.body).backgroundColor");
        browser.at("#theme").click();

        assertNotEquals(light, browser.run("return getComputedStyle(document.body).backgroundColor"));
        assertTrue(browser.at("nav a[href*='/farm']").getAttribute("href").contains("theme=dark"));
    }

    @Test
    void in_french_the_verdict_the_sentence_and_the_numbers_are_french() {
        openFirst("/?lang=fr");

        assertTrue(
                browser.text("#verdict .headline").contains("100 fois moins : ne tient pas"), browser.text("#verdict"));
        assertTrue(browser.text("#verdict").contains("9,0 fois moins"), browser.text("#verdict"));
        assertEquals(
                "Le ver de farine : au moins 76 % de moins en gaz à effet de serre que le bœuf (4,3 fois moins), par kg de protéines, jusqu’à la sortie de la ferme.",
                browser.text("#instead blockquote").replace('\u00a0', ' '));
        String sentence = browser.text("#footnote").replaceAll("[\u00a0\u202f]", " ");
        assertTrue(sentence.startsWith("Dans 90 % des tirages"), sentence);
        assertFalse(sentence.contains("mémoire"), "no number by default that nobody has seen: " + sentence);
        assertTrue(sentence.contains("les données sont minces."), sentence);
        assertTrue(sentence.endsWith("par un comité de parties intéressées."), sentence);
        assertEquals("fr", browser.run("return document.documentElement.lang"));
        assertEquals(
                Reply.to("/v1/products").json().path("items").size(),
                browser.all("#product option").size());
    }

    @Test
    void a_value_that_a_log_scale_cannot_show_is_noted_in_picture_and_table() {
        openFirst("/?products=mealworm,chicken&against=beef&times_less=2");
        int drawn = browser.all("#chart g.mark").size();
        // No result of the library is at or below zero today; a result with a credit larger than its burden would be.
        browser.run("const ask = fetch; globalThis.fetch = async (path, options) => {"
                + " const answer = await ask(path, options); if (!String(path).startsWith('/v1/comparison')) return answer;"
                + " const json = await answer.json(), side = json.items[0];"
                + " side.evidence[0].findings[0].harmonised_median = -2.5; side.footprint.low = -3; side.times_less.low = -8;"
                + " return new Response(JSON.stringify(json), {headers: {'Content-Type': 'application/json'}}); };");
        browser.run("document.getElementById('basis').open = true");
        new Select(browser.at("#gwp")).selectByValue("ar5-100");
        browser.await(
                "what is not drawn", () -> !browser.all("#chart .off-scale").isEmpty());

        assertTrue(
                browser.text("#chart .off-scale").startsWith("1 result at or below zero has no place on a log scale"),
                browser.text("#chart .off-scale"));
        assertTrue(browser.text("#chart .off-scale").contains("its left end is not drawn"));
        assertTrue(browser.all("#chart g.mark").size() < drawn, "it is no mark");
        assertTrue(browser.text("#products-table").contains("no ratio at or below zero"));
        browser.at("#tables .results summary").click();
        assertTrue(browser.text("#tables .results").contains("−2.5 (at or below zero, not drawn)")
                || browser.text("#tables .results").contains("-2.5 (at or below zero, not drawn)"));
    }

    @Test
    void a_brief_is_limited_in_products_and_the_page_says_so() {
        openFirst("/?against=beef&times_less=2"
                + "&products=mealworm,chicken,pork,tofu,egg,milk,cheese,salmon,lamb,house-cricket");
        WebElement brief = browser.at("#brief");

        assertEquals("Brief (first 8 products)", brief.getText());
        assertEquals(
                200,
                Reply.to(brief.getAttribute("href")
                                .substring(RunningScalepan.uri("").toString().length()))
                        .status());
    }

    @Test
    void numbers_are_read_as_they_are_written() {
        openFirst("/");
        Object read = browser.driver()
                .executeAsyncScript("const done = arguments[0]; import('/page/i18n.js').then(({entered}) => done("
                        + "['2.5', '2,5', '1 200', '1,200', '1,200.5', '1.200,5', '60,000', '1,234,567', '-5', '12a', '']"
                        + ".map(text => String(entered(text).value))));");

        assertEquals(
                List.of("2.5", "2.5", "1200", "1200", "1200.5", "1200.5", "60000", "1234567", "-5", "NaN", "NaN"),
                read);
    }

    @Test
    void on_paper_it_takes_one_page() {
        openFirst("/");

        assertEquals(1, browser.printedPages());
    }
}
