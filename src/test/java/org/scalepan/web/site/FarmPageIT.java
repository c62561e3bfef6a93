package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import org.scalepan.JsonAt;
import org.scalepan.quantity.Print;
import org.scalepan.web.RecordsSent;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;

/** The page that computes a grower's records, in a real browser. */
class FarmPageIT extends PageTest {
    private static final String LINK = "/farm#product=mealworm&harvest.kg_per_year=180&feed.1.ingredient=wheat-bran"
            + "&feed.1.kg=400&feed.1.burden=mass&energy.1.carrier=grid-electricity&energy.1.amount=220";
    private static final String SAME = """
            {"system": {"kind": "insects", "product": "mealworm", "harvest": {"kg_per_year": 180},
              "feed": [{"ingredient": "wheat-bran", "kg": 400, "burden": "mass"}],
              "energy": [{"carrier": "grid-electricity", "amount": 220}]},
             "per": "kg-protein", "indicators": ["ghg"], "compare": {"products": ["egg", "chicken", "beef"]}}""";
    private static final JsonMapper JSON = new JsonMapper();

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

    private static void openWith(String link) {
        browser.open(link);
        awaitFigure();
    }

    private static void awaitForm() {
        browser.await(
                "a form", () -> !browser.all("#records [name='feed.1.kg']").isEmpty());
    }

    private static JsonNode saved() throws Exception {
        browser.at("#save-records").click();
        return JSON.readTree(browser.download(".json"));
    }

    @Test
    void three_numbers_give_the_figure_of_the_service_with_hens_and_beef_beside_it() {
        browser.open("/farm");
        awaitForm();
        browser.at("[name='harvest.kg_per_year']").sendKeys("180");
        browser.at("[name='feed.1.kg']").sendKeys("400");
        new Select(browser.at("[name='feed.1.burden']")).selectByValue("mass");
        browser.at("[name='energy.1.amount']").sendKeys("220");
        awaitFigure();
        JsonNode own = answer(SAME).at("/footprints/0");

        browser.await(
                "the service's figure",
                () -> Math.abs(Double.parseDouble(browser.text(".own-figure strong"))
                                        / JsonAt.number(own, "/footprint/median")
                                - 1)
                        < 0.05);
        assertTrue(browser.text("#figure").contains("kg CO₂e per kg protein"), browser.text("#figure"));
        assertTrue(browser.text("#figure").contains("than beef"), browser.text("#figure"));
        assertTrue(
                browser.text("#figure")
                        .contains("published, " + JsonAt.integer(own, "/compare/0/studies") + " studies"),
                "eggs are said to be as published: " + browser.text("#figure"));
    }

    /** Invented: larvae of an insect that is on no list, on a residue that is on none either. */
    @Test
    void an_insect_that_is_on_no_list_is_asked_for_its_name_and_what_it_holds() throws Exception {
        openWith(LINK);
        assertFalse(browser.at("[name='product.name']").isDisplayed());

        new Select(browser.at("[name='product']")).selectByValue("another");
        browser.await(
                "a field for its name",
                () -> browser.at("[name='product.name']").isDisplayed());
        browser.await(
                "a word that its name is needed",
                () -> browser.text("#field-product-name-wrong").contains("Still needed"));
        browser.at("[name='product.name']").sendKeys("rhinoceros beetle");
        browser.at("[name='product.dry_matter']").sendKeys("35");
        browser.at("[name='product.protein']").sendKeys("15..20");
        browser.await(
                "what is said of it", () -> browser.text("#said").contains("rhinoceros beetle is not in this library"));
        JsonNode product = saved().at("/system/product");

        assertEquals("rhinoceros beetle", JsonAt.text(product, "/name"));
        assertEquals(0.35, JsonAt.number(product, "/dry_matter"));
        assertEquals(0.15, JsonAt.number(product, "/protein/0"));
        assertEquals(0.2, JsonAt.number(product, "/protein/1"));
    }

    @Test
    void places_without_a_grid_figure_of_their_own_are_marked() {
        browser.open("/farm");
        awaitForm();
        Select regions = new Select(browser.at("[name='region']"));

        assertTrue(regions.getOptions().stream()
                .anyMatch(option -> option.getText().equals("Melanesia (no grid figure of its own)")));
        assertTrue(regions.getOptions().stream()
                .anyMatch(option -> option.getText().equals("Peru")));
    }

    @Test
    void by_keyboard_alone_from_first_load_to_a_file() {
        browser.open("/farm");
        awaitForm();
        browser.press(Keys.TAB);
        assertEquals("skip", browser.focused().getAttribute("class"));
        browser.press(Keys.ENTER);
        tabUntilField("harvest.kg_per_year");
        browser.press("180");
        tabUntilField("feed.1.kg");
        browser.press("400");
        tabUntilField("energy.1.amount");
        browser.press("220");
        tabUntilField("feed.1.burden");
        browser.press("a share by mass");
        browser.await(
                "a figure with all three numbers",
                () -> browser.text("#take-link").contains("=220")
                        && browser.text(".even-said").contains("would equal"));
        String without = browser.text(".own-figure strong");
        tabUntil(
                "the group of materials",
                focused -> focused.getTagName().equals("summary")
                        && focused.getText().startsWith("Containers"));
        browser.press(Keys.ENTER);
        tabUntil("a way to add a material", focused -> "materials".equals(focused.getAttribute("data-add")));
        browser.press(Keys.ENTER);
        assertEquals("materials.1.material", browser.focused().getAttribute("name"));
        browser.press("steel");
        tabUntilField("materials.1.kg");
        browser.press("800");
        browser.await(
                "another figure", () -> !browser.text(".own-figure strong").equals(without));
        tabUntil("save-csv");
        browser.press(Keys.ENTER);

        String csv = new String(browser.download(".csv"), StandardCharsets.UTF_8);
        assertTrue(csv.contains("line,ghg,materials: "), csv);
    }

    @Test
    void an_updated_figure_keeps_the_keyboard_focus() {
        openWith(LINK);
        browser.run("document.getElementById('save-png').focus();"
                + "document.getElementById('save-png').dataset.old = '1';"
                + "const feed = document.querySelector(\"[name='feed.1.kg']\"); feed.value = '500';"
                + "feed.dispatchEvent(new Event('input', {bubbles: true}));");
        browser.await("the updated figure", () -> browser.text("#take-link").contains("feed.1.kg=500"));

        assertEquals("save-png", browser.focused().getAttribute("id"));
        assertEquals(null, browser.focused().getAttribute("data-old"), "it is another button");
    }

    @Test
    void a_link_carries_the_records_in_its_fragment_and_typing_writes_nothing_into_the_address() {
        openWith(LINK);
        assertEquals(parts(LINK), parts(browser.text("#take-link")));
        WebElement feed = browser.at("[name='feed.1.kg']");
        feed.clear();
        feed.sendKeys("500");
        browser.await(
                "the new feed in the link to copy",
                () -> browser.text("#take-link").contains("feed.1.kg=500"));

        assertTrue(browser.address().endsWith(LINK), browser.address());
        assertEquals(0L, browser.run("return localStorage.length + sessionStorage.length + document.cookie.length"));
    }

    private static Set<String> parts(String link) {
        return Stream.of(link.substring(link.indexOf('#') + 1).split("&"))
                .map(part -> URLDecoder.decode(part, StandardCharsets.UTF_8))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void a_link_brings_back_what_is_shown_as_well() {
        openWith(LINK);
        new Select(browser.at("#indicator")).selectByValue("land");
        new Select(browser.at("#per")).selectByValue("kg-live");
        browser.at("#besides summary").click();
        browser.at("#choices input[value='egg']").click();
        browser.await(
                "land per kg live",
                () -> browser.text("#take-sentence").contains("m²·yr per kg live weight")
                        && !browser.text("#take-sentence").contains("egg"));
        String link = browser.text("#take-link");
        String sentence = browser.text("#take-sentence");
        openWith(link.substring(RunningScalepan.uri("").toString().length()));

        assertEquals(sentence, browser.text("#take-sentence"));
        assertEquals(link, browser.text("#take-link"));
    }

    @Test
    void stages_gaps_sensitivity_and_break_even_are_shown_with_the_figure() {
        openWith(LINK);
        JsonNode answer = answer(SAME);
        browser.await("a break-even", () -> browser.text(".even-said").contains("would equal"));

        assertEquals(
                answer.at("/footprints/0/by_stage").size(),
                browser.all("#chart rect.stage").size());
        assertEquals(4, browser.all("#chart .row").size());
        answer.path("gaps")
                .forEach(gap ->
                        assertTrue(browser.text(".gaps").contains(JsonAt.text(gap, "/filled_with")), gap::toString));
        assertFalse(browser.all("#drivers meter").isEmpty());
    }

    @Test
    void gaps_are_named_in_words_and_what_is_not_counted_comes_first() {
        openWith(LINK + "&feed.2.ingredient=pineapple-residue&feed.2.kg=100");

        assertTrue(browser.text(".gaps").contains("Feed, wheat bran: water in it"), browser.text(".gaps"));
        assertTrue(browser.text(".gaps").contains("Feed, pineapple residue: greenhouse gas"), browser.text(".gaps"));
        List<String> kinds = browser.all(".gaps li").stream()
                .map(gap -> gap.getAttribute("class"))
                .toList();
        assertTrue(kinds.indexOf("filled") > kinds.lastIndexOf("not-counted"), kinds.toString());
        assertTrue(browser.text("#figure .lower").contains("feed (pineapple residue, greenhouse gas)"));
    }

    @Test
    void a_lower_bound_has_an_open_end_in_the_picture_and_says_at_least_in_the_table() {
        openWith(LINK + "&feed.2.ingredient=pineapple-residue&feed.2.kg=100");

        assertFalse(browser.all("#chart .own-row .bound-arrow").isEmpty());
        assertTrue(browser.text("#beside-table").contains("Your farm at least"), browser.text("#beside-table"));
        openWith(LINK);
        assertTrue(browser.all("#chart .bound-arrow").isEmpty(), "a whole figure has two ends");
    }

    @Test
    void a_price_of_the_farm_gives_the_price_of_a_kilogram_of_protein() {
        openWith(LINK + "&price_per_kg=12");
        JsonNode price = Reply.to("/v1/nutrition?products=mealworm&price_per_kg=12&currency=EUR")
                .json()
                .at("/items/0/price");
        browser.await(
                "the price",
                () -> browser.text("#price-of-protein")
                        .contains("costs " + Print.footprint(JsonAt.number(price, "/value"))));

        openWith(LINK + "&price_per_kg=12&composition.protein=0.2");
        browser.await(
                "by the own analysis", () -> browser.text("#price-of-protein").contains("costs 60,"));
    }

    @Test
    void fields_beside_each_other_stand_on_one_line() {
        openWith(LINK);
        browser.at("[data-group='harvest'] summary").click();
        browser.await(
                "the fields", () -> browser.at("[name='harvest.containers']").isDisplayed());

        assertEquals(
                true,
                browser.run(
                        "const top = (name) => document.querySelector(`[name='${name}']`).getBoundingClientRect().top;"
                                + "return Math.abs(top('harvest.containers') - top('harvest.kg_per_container')) < 1"
                                + " && Math.abs(top('harvest.pairs') - top('harvest.eggs_per_pair')) < 1"));
    }

    @Test
    void the_sentence_has_the_interval_of_every_number_and_marks_published_ones() {
        openWith(LINK);
        JsonNode beef = answer(SAME).at("/footprints/0/compare/2");
        String sentence = browser.text("#take-sentence");

        assertTrue(sentence.startsWith("Your farm, by its own records: "), sentence);
        assertTrue(
                sentence.contains("times less than beef ("
                        + JsonAt.text(beef, "/times_less/text").replaceAll("^.*\\(|\\)$", "") + "; published, "
                        + JsonAt.integer(beef, "/studies") + " studies)"),
                sentence);
        assertFalse(sentence.contains("lower bound"), "its energy is one, and its gases are not: " + sentence);
        assertTrue(sentence.contains(RunningScalepan.library().version().version()), sentence);
        assertTrue(browser.text("#take-citation").contains(RunningScalepan.digest()));
    }

    @Test
    void the_cells_to_paste_are_the_figures_of_the_answer_with_the_chosen_decimal_sign() {
        openWith(LINK);
        JsonNode own = answer(SAME).at("/footprints/0");
        List<List<String>> cells = cells();

        assertEquals(1 + 1 + own.path("compare").size(), cells.size());
        assertEquals(
                JsonAt.number(own, "/footprint/median"),
                Double.parseDouble(cells.get(1).get(5)),
                1e-9);
        assertEquals(
                JsonAt.number(own, "/compare/2/footprint/high"),
                Double.parseDouble(cells.get(4).get(7)),
                1e-9);
        new Select(browser.at("#decimal")).selectByValue("comma");
        assertEquals(cells.get(1).get(5).replace('.', ','), cells().get(1).get(5));
    }

    private static List<List<String>> cells() {
        Object text = browser.run("return document.getElementById('cells').textContent");
        return String.valueOf(text)
                .lines()
                .map(row -> List.of(row.split("\t", -1)))
                .toList();
    }

    @Test
    void a_farm_can_be_downloaded_as_picture_table_workbook_brief_and_records() throws Exception {
        openWith(LINK);
        browser.at("#save-svg").click();
        String svg = new String(browser.download(".svg"), StandardCharsets.UTF_8);
        browser.at("#save-png").click();
        byte[] png = browser.download(".png");
        browser.at("#save-csv").click();
        List<String> csv = new String(browser.download(".csv"), StandardCharsets.UTF_8)
                .lines()
                .toList();
        browser.at("#save-workbook").click();
        byte[] workbook = browser.download(".xlsx");
        browser.at("#save-brief").click();
        String brief = new String(browser.download(".html"), StandardCharsets.UTF_8);

        assertTrue(svg.contains("by its own records"), "the sentence stands under the picture");
        assertTrue(png.length > 10_000, "a picture of " + png.length + " bytes");
        assertTrue(csv.get(0).startsWith("part,indicator,name,basis,studies,value,low,high"), csv.get(0));
        for (String part :
                List.of("figure,ghg", "figure,land", "beside,ghg,beef,published", "stage,ghg,feed", "line,ghg")) {
            assertTrue(csv.stream().anyMatch(row -> row.startsWith(part)), part);
        }
        // A workbook is a zip file: APPNOTE, section 4.3.7.
        assertEquals("504b0304", java.util.HexFormat.of().formatHex(workbook, 0, 4));
        assertTrue(brief.contains("Your farm emits at least"), brief);
        assertTrue(brief.contains("<style>") && !brief.contains("/page/scalepan.css"), "its looks are in it");
        assertEquals(JSON.readTree(SAME).at("/system/feed"), saved().at("/system/feed"));
    }

    @ParameterizedTest
    @CsvSource({
        "invented-school-superworms, #demo-superworms, as the indicator has it",
        "invented-brewery-black-soldier-flies, #demo-flies, processing-gate"
    })
    void an_invented_farm_is_loaded_whole(String farm, String button, String boundary) throws Exception {
        browser.open("/farm");
        browser.await("the invented farms", () -> browser.all(".demo").size() == 3);
        browser.at(button).click();
        awaitFigure();
        JsonNode shipped = Reply.to("/page/" + farm + ".json").json().path("request");
        JsonNode saved = saved();

        for (String part : List.of("/system", "/per", "/compare/products")) {
            assertEquals(JsonAt.node(shipped, part), JsonAt.node(saved, part), part);
        }
        for (JsonNode request : List.of(shipped, saved)) {
            assertEquals(boundary, request.path("boundary").asText("as the indicator has it"));
        }
    }

    private static Stream<ObjectNode> recordsOfInsects() {
        return RecordsSent.all().stream()
                .filter(sent -> sent.has("system"))
                .filter(sent -> JsonAt.text(sent, "/system/kind").equals("insects")
                        && sent.at("/system").has("feed"));
    }

    @ParameterizedTest
    @MethodSource("recordsOfInsects")
    void every_field_of_the_records_is_in_the_form(ObjectNode sent) throws Exception {
        ObjectNode system = (ObjectNode) sent.path("system");
        openWith("/farm#per=kg-product&" + flat("", system));
        ObjectNode saved = (ObjectNode) saved().path("system");
        if (!system.has("name")) {
            assertEquals("Your farm", JsonAt.text(saved.remove("name"), ""));
        }

        assertEquals(system, saved);
    }

    private static String flat(String before, JsonNode node) {
        Stream<Map.Entry<String, JsonNode>> fields = node.isObject()
                ? node.properties().stream()
                : Stream.iterate(0, i -> i < node.size(), i -> i + 1)
                        .map(i -> Map.entry(String.valueOf(i + 1), node.path(i)));
        return fields.filter(field -> !field.getKey().equals("kind"))
                .map(field -> field.getValue().isContainerNode()
                        ? flat(before + field.getKey() + ".", field.getValue())
                        : before + field.getKey() + "="
                                + URLEncoder.encode(JsonAt.scalar(field.getValue(), ""), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    @Test
    void a_line_is_added_counted_removed_and_no_longer_counted() throws Exception {
        openWith(LINK);
        String before = browser.text(".own-figure strong");
        browser.at("[data-group='feed'] summary").click();
        browser.at("[data-add='feed']").click();
        new Select(browser.at("[name='feed.2.ingredient']")).selectByValue("carrot");
        browser.await(
                "a word that the amount is missing",
                () -> browser.text("#field-feed-2-kg-wrong").contains("the amount is missing"));
        browser.at("[name='feed.2.kg']").sendKeys("900");
        browser.await(
                "a higher figure", () -> !browser.text(".own-figure strong").equals(before));
        browser.at("[data-add='feed']").click();
        browser.at("[data-line='feed.2'] .remove").click();
        assertEquals("feed", browser.focused().getAttribute("data-add"), "the focus stays at the list");
        browser.await(
                "the figure without it",
                () -> browser.text(".own-figure strong").equals(before));

        assertEquals(1, saved().at("/system/feed").size());
        assertEquals("Remove feed 3", browser.at("[data-line='feed.3'] .remove").getAttribute("aria-label"));
    }

    @Test
    void fields_of_a_displaced_burden_are_shown_only_with_one() throws Exception {
        openWith(LINK);
        browser.at("[data-group='feed'] summary").click();
        assertFalse(browser.at("[name='feed.1.displaces']").isDisplayed());
        new Select(browser.at("[name='feed.1.burden']")).selectByValue("displaced");

        assertTrue(browser.at("[name='feed.1.displaces']").isDisplayed());
        browser.await(
                "a word that it is needed",
                () -> browser.text("#field-feed-1-displaces-wrong").equals("Still needed."));
        assertTrue(browser.text("#fault").startsWith("The figure below is of before"), browser.text("#fault"));
        new Select(browser.at("[name='feed.1.displaces']")).selectByValue("maize");
        browser.await("nothing amiss", () -> !browser.at("#fault").isDisplayed());
        assertEquals("maize", JsonAt.text(saved(), "/system/feed/0/displaces"));
    }

    @Test
    void a_by_product_that_is_sold_is_asked_about_in_the_sentence_and_carrying_nothing_gives_a_second_figure() {
        browser.open("/farm");
        awaitForm();
        browser.at("[name='harvest.kg_per_year']").sendKeys("180");
        browser.at("[name='feed.1.kg']").sendKeys("400");
        browser.at("[name='energy.1.amount']").sendKeys("220");
        browser.await(
                "a word that bran needs an answer",
                () -> browser.text("#field-feed-1-burden-wrong").equals("Still needed."));
        assertTrue(browser.at("[name='feed.1.burden']").isDisplayed());
        assertTrue(browser.all(".own-figure").isEmpty(), "no figure before it is answered");

        new Select(browser.at("[name='feed.1.burden']")).selectByValue("burden-free");
        browser.await(
                "what is not known",
                () -> browser.text("#figure").contains("What replaces wheat bran elsewhere is not known"));
        new Select(browser.at("[name='feed.1.ingredient']")).selectByValue("maize");
        browser.await(
                "no question about a crop",
                () -> !browser.at("[name='feed.1.burden']").isDisplayed());
    }

    @Test
    void an_error_of_the_service_is_shown_at_its_field() {
        openWith(LINK);
        browser.at("[data-group='site'] summary").click();
        browser.at("[name='water_m3']").sendKeys("-3");
        browser.await(
                "the service's word",
                () -> browser.text("#field-water_m3-wrong").contains("water_m3"));

        assertEquals("true", browser.at("[name='water_m3']").getAttribute("aria-invalid"));
        // The browser itself logs the 4xx response.
        browser.driver().manage().logs().get("browser");
    }

    @Test
    void hens_computed_from_records_are_compared_and_distinguished_from_published_ones() throws Exception {
        openWith(LINK);
        assertTrue(browser.text("#beside-table").contains("published, "), browser.text("#beside-table"));
        browser.at("#demo-hens").click();
        browser.await("the hens", () -> browser.text("#figure").contains("invented allotment"));
        JsonNode sent = saved();
        JsonNode shipped = Reply.to("/page/invented-allotment-hens.json").json();

        assertEquals(shipped.at("/request/system"), sent.at("/compare/systems/0"));
        assertEquals(1, browser.all("#chart .computed-row").size());
        assertTrue(browser.text("#beside-table").contains("invented allotment"), browser.text("#beside-table"));
        browser.await(
                "what was filled in for the hens",
                () -> browser.text("#said").contains("What was filled in or left out of invented allotment"));
        assertTrue(browser.text("#take-link").contains("hens.heads=12"), browser.text("#take-link"));
    }

    @Test
    void reference_farms_stand_hatched_beside_the_farm_and_are_called_no_study() {
        openWith(LINK + "&farms=mealworm-ambient-tropical,broilers-temperate");
        browser.await("both farms", () -> browser.all("#chart .practice-row").size() == 2);

        assertTrue(browser.text("#beside-table").contains("broilers in a heated house"), browser.text("#beside-table"));
        assertTrue(
                browser.text("#beside-table").contains("modelled from published practice, not a study"),
                browser.text("#beside-table"));
        assertTrue(
                browser.text("#take-sentence").contains("modelled from published practice, not a study"),
                browser.text("#take-sentence"));
        assertTrue(String.valueOf(
                        browser.run("return getComputedStyle(document.querySelector('.practice-row .band')).fill"))
                .contains("hatching"));
        browser.run("document.getElementById('besides').open = true; document.getElementById('practice').open = true");
        browser.at("#farm-choices input[value='broilers-temperate']").click();
        browser.await("one farm", () -> browser.all("#chart .practice-row").size() == 1);

        assertTrue(browser.text("#take-link").contains("farms=mealworm-ambient-tropical"), browser.text("#take-link"));
    }

    @Test
    void hens_with_feed_without_a_footprint_are_a_lower_bound() {
        openWith(
                LINK
                        + "&hens.heads=12&hens.yield.eggs_kg=150&hens.feed.1.ingredient=compound-poultry-feed&hens.feed.1.kg=500");

        browser.await(
                "a word on the hens",
                () -> browser.text("#figure").contains("Nor is everything counted for Your hens"));
    }

    @Test
    void hens_without_a_yield_are_left_out_with_a_note() {
        openWith(LINK + "&hens.heads=12");

        Object said = browser.run("return document.getElementById('field-hens-heads-wrong').textContent");
        assertTrue(String.valueOf(said).contains("eggs or live weight"), String.valueOf(said));
        assertTrue(browser.all("#chart .computed-row").isEmpty());
    }

    @Test
    void a_figure_below_zero_is_noted_as_not_shown_on_a_log_scale() {
        // A factor of the grower's own: an invented feed that replaces something with a larger footprint.
        openWith(LINK + "&feed.1.ghg_per_kg=-5");

        assertTrue(browser.text(".own-figure").contains("-"), browser.text(".own-figure"));
        assertTrue(browser.text("#chart .own-row").contains("At or below zero: no place on a log scale."));
        assertTrue(browser.text("#beside-table").contains("(at or below zero, not drawn)"));
        assertTrue(browser.text("#figure").contains("no ratio, because a figure may be zero or below"));
        assertFalse(String.valueOf(browser.run("return document.getElementById('chart').innerHTML"))
                .contains("NaN"));
    }

    @Test
    void an_invalid_number_is_reported_at_its_field_and_an_ambiguous_one_is_read_back() {
        openWith(LINK);
        WebElement feed = browser.at("[name='feed.1.kg']");
        feed.clear();
        feed.sendKeys("much");
        browser.await("a word at the field", () -> "true".equals(feed.getAttribute("aria-invalid")));
        assertTrue(browser.text("#field-feed-1-kg-wrong").contains("12"), "an example of a number");
        feed.clear();
        feed.sendKeys("1,200");

        browser.await(
                "the number read back",
                () -> browser.text("#field-feed-1-kg-wrong").equals("Read as 1200."));
        assertEquals("false", feed.getAttribute("aria-invalid"));
    }

    /** "Between 500 and 800 kg": the range is sent as it is written, stands in the link, and comes back from it. */
    @Test
    void a_range_is_computed_and_carried_by_the_link() {
        openWith(LINK);
        awaitFigure();
        WebElement feed = browser.at("[name='feed.1.kg']");
        feed.clear();
        feed.sendKeys("500..800");
        browser.await(
                "a range in the link",
                () -> browser.run("return document.querySelector('#take').innerHTML")
                        .toString()
                        .contains("feed.1.kg=500..800"));
        assertEquals("false", feed.getAttribute("aria-invalid"));
        browser.await(
                "the record among the shares of variance",
                () -> browser.text("#said").contains("in the records of"));

        openWith(LINK.replaceAll("feed\\.1\\.kg=[^&]*", "feed.1.kg=500..600..800") + "&mortality=0.1..0.2");
        awaitFigure();
        assertEquals("500..600..800", browser.at("[name='feed.1.kg']").getAttribute("value"));
        assertEquals("10..20", browser.at("[name='mortality']").getAttribute("value"), "percent");
    }

    @Test
    void a_range_that_falls_is_reported_at_its_field() {
        openWith(LINK);
        WebElement feed = browser.at("[name='feed.1.kg']");
        feed.clear();
        feed.sendKeys("800..500");

        browser.await("a word at the field", () -> "true".equals(feed.getAttribute("aria-invalid")));
        assertTrue(browser.text("#field-feed-1-kg-wrong").contains("400..600"), "an example of a range");
    }

    @ParameterizedTest
    @CsvSource({
        "false, false, en",
        "true, false, fr",
        "false, true, fr",
        "true, true, en",
    })
    void axe_finds_nothing_against_it(boolean dark, boolean phone, String language) {
        if (phone) {
            browser.phone();
        }
        browser.dark(dark);
        browser.open("/farm?lang=" + language);
        awaitForm();
        assertEquals(List.of(), browser.accessibilityFaults(), "empty");
        openWith(LINK.replace("/farm", "/farm?lang=" + language) + "&feed.2.ingredient=carrot&feed.2.kg=20"
                + "&hens.heads=12&hens.yield.eggs_kg=150&hens.feed.1.ingredient=maize&hens.feed.1.kg=500");
        browser.all("summary").stream()
                .filter(summary ->
                        summary.findElement(By.xpath("..")).getAttribute("open") == null && summary.isDisplayed())
                .forEach(WebElement::click);

        assertEquals(List.of(), browser.accessibilityFaults(), "filled in");
        assertEquals(
                true, browser.run("return document.documentElement.scrollWidth <= innerWidth"), "it fits the width");
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "fr"})
    void on_paper_it_takes_one_page(String language) {
        openWith(LINK.replace("/farm", "/farm?lang=" + language));

        assertEquals(1, browser.printedPages());
    }
}
