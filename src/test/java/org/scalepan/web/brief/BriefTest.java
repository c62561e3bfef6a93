package org.scalepan.web.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jbibtex.BibTeXParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.route.Route;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Briefs over HTTP. */
class BriefTest {
    private static final String PAGE =
            "/v1/brief?products=mealworm,chicken,palm-weevil&against=beef&accessed=2026-11-02&draws=2000";
    private static final String FARM = """
            {"system": {"kind": "insects", "name": "three invented sheds", "product": "palm-weevil",
              "harvest": {"kg_per_year": 600}, "feed": [{"ingredient": "wheat-bran", "kg": 1500, "burden": "mass"}]},
             "products": ["mealworm"], "draws": 2000, "accessed": "2026-11-02",
            """;

    private static String text(String question) {
        Reply reply = Reply.to(question);
        assertEquals(200, reply.status(), reply.body());
        return reply.body();
    }

    private static Reply sent(String body, String query) {
        return Reply.to("/v1/brief" + query, Map.of("Content-Type", "application/json"), Optional.of(body));
    }

    private static Document xml(String text) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void it_has_sentence_table_picture_method_disclosure_references_cautions_address_and_day() {
        String page = text(PAGE);

        assertTrue(page.contains("yellow mealworm emits at least"), page);
        assertTrue(page.contains("in 90 % of the draws"));
        assertTrue(page.contains("Of palm weevil nothing can be said"));
        assertTrue(page.contains("| product | median (interval), kg CO2e per kg protein | times less than beef |"));
        assertFalse(page.contains("data:image"), "many editors drop pictures that are part of a text");
        assertTrue(page.contains("[The picture](/v1/brief?"), page);
        assertTrue(page.contains("2000 Monte Carlo draws (seed 1)"));
        assertTrue(page.contains("allergic to crustaceans"));
        assertTrue(page.contains("accessed 2026-11-02"));
        assertTrue(page.contains("Environmental life cycle assessment of yellow mealworm"));
        assertTrue(page.contains("library=" + RunningScalepan.digest()));
    }

    /** Five lines under Method, the length of a methods box. */
    @Test
    void the_method_is_described_in_five_lines() {
        String page = text(PAGE);
        String method = page.substring(page.indexOf("## Method"), page.indexOf("## To be disclosed"));

        assertEquals(5, method.lines().filter(line -> line.startsWith("- ")).count());
    }

    private static final String MODELLED =
            "/v1/brief?products=mealworm,chicken,migratory-locust&against=beef&evidence=modelled&accessed=2026-11-02&draws=2000";

    @Test
    void a_brief_of_reference_farms_says_what_they_are_and_do_not_count() {
        String page = text(MODELLED);

        assertTrue(page.contains("## The reference farms"), page);
        assertTrue(page.contains("- chicken: Broilers in a heated house"), page);
        assertTrue(page.contains("Not counted: heating and all other energy"), page);
        assertTrue(page.contains("Every figure is modelled from published practice, not a study"), page);
        assertTrue(page.contains("| migratory locust | no modelled figure |"), page);
        assertTrue(page.contains("| beef | at least "), page);
        String method = page.substring(page.indexOf("## Method"), page.indexOf("## To be disclosed"));
        assertEquals(5, method.lines().filter(line -> line.startsWith("- ")).count());
        String said = page.substring(0, page.indexOf("## Warnings"));
        assertFalse(said.contains("studies of") || said.contains("0 studies") || said.contains("is thin"), said);
    }

    /** The publications behind the inputs of practice, not those of results. */
    @Test
    void the_references_of_reference_farms_are_those_of_their_practice() {
        String published = text(MODELLED.replace("&evidence=modelled", ""));
        String references = text(MODELLED);
        references = references.substring(references.indexOf("## References"));

        assertTrue(references.contains("Scalepan, library"), references);
        for (String row : List.of("mealworm-heated-small-temperate", "broilers-temperate")) {
            for (com.fasterxml.jackson.databind.JsonNode reference :
                    Reply.to("/v1/reference-farms/" + row).json().path("references")) {
                String title = JsonAt.text(reference, "/text");
                assertTrue(references.contains(title.substring(0, 20)), title + " of " + row);
            }
        }
        assertFalse(published.contains("## The reference farms"));
    }

    @Test
    void the_picture_of_reference_farms_is_hatched_and_says_modelled() throws Exception {
        String drawn = text(MODELLED + "&format=svg");

        assertTrue(drawn.contains("modelled from published practice, not a study: 90 % interval"), drawn);
        assertTrue(drawn.contains("open end: something required is not counted"), drawn);
        assertTrue(
                xml(drawn).getDocumentElement().getAttribute("aria-label").contains("not a study"),
                "the text alternative says it");
        assertFalse(drawn.contains("fulltext"), "no marks of studies");
        assertTrue(drawn.split("<line").length > 40, "hatched");
    }

    /** What ISO 14044, 14067 and 14021 require with a public comparison. */
    @Test
    void all_required_disclosures_are_present() {
        String page = text(PAGE);

        for (String heading : List.of(
                "Functional unit",
                "System boundary",
                "Regions and scale",
                "Years of the data",
                "Warming set",
                "Allocation",
                "Land-use change",
                "Figures and studies",
                "What is displaced",
                "Review",
                "Preference")) {
            assertTrue(page.contains("| " + heading + " | "), heading);
        }
        assertTrue(page.contains("not reviewed by a panel"));
        assertTrue(page.contains("not a claim that either is preferable overall"));
    }

    @Test
    void the_permalink_gives_the_same_page() {
        String page = text(PAGE);
        String link = page.lines()
                .filter(line -> line.startsWith("/v1/brief?"))
                .findFirst()
                .orElseThrow();

        assertEquals(page, text(link));
    }

    @Test
    void without_a_date_of_access_it_is_today_and_the_page_is_not_cached() {
        String page = text("/v1/brief?products=mealworm&against=beef&draws=1000");
        String link = page.lines()
                .filter(line -> line.startsWith("/v1/brief?"))
                .findFirst()
                .orElseThrow();

        assertTrue(link.matches(".*accessed=20\\d\\d-\\d\\d-\\d\\d.*"), link);
        assertTrue(RunningScalepan.routes().stream()
                .filter(route -> route.path().equals("/v1/brief"))
                .noneMatch(Route::isCacheable));
    }

    @Test
    void a_claim_is_judged_on_the_page() {
        String page = text(PAGE + "&times_less=100");

        assertTrue(page.contains("Is it at least 100 times less than beef?"), page);
        assertTrue(page.contains("yellow mealworm: not as asked; it holds on another basis only."), page);
        assertTrue(page.contains("from the animals and their manure or frass only"));
    }

    @Test
    void the_picture_is_well_formed_self_contained_and_has_a_mark_for_each_result() throws Exception {
        String svg = text(PAGE + "&format=svg");
        Document picture = xml(svg);

        assertEquals("svg", picture.getDocumentElement().getTagName());
        assertTrue(picture.getDocumentElement().getAttribute("aria-label").contains("yellow mealworm"));
        assertTrue(picture.getElementsByTagName("desc").item(0).getTextContent().contains("accessed 2026-11-02"));
        // Mealworm has two results on this basis; four marks are the legend of grades.
        assertTrue(picture.getElementsByTagName("circle").getLength() > 5, svg);
        assertFalse(svg.contains("style="), "a strict policy forbids it");
        assertFalse(svg.contains("NaN"));
    }

    @Test
    void the_band_of_the_average_of_such_studies_lies_within_that_of_the_next_study() throws Exception {
        String svg = text(PAGE + "&format=svg");
        List<Element> wide = rectangles(svg, "#d4e4e2");
        List<Element> inner = rectangles(svg, "#99c0ba");

        assertTrue(wide.size() > 1, svg);
        assertEquals(wide.size(), inner.size(), "one for each row with evidence, and one in the legend");
        for (int i = 0; i < wide.size() - 1; i++) {
            assertTrue(left(wide.get(i)) < left(inner.get(i)), svg);
            assertTrue(
                    left(wide.get(i)) + width(wide.get(i)) > left(inner.get(i)) + width(inner.get(i)),
                    "the next study adds how studies differ: " + svg);
        }
        assertTrue(svg.contains(">90 % interval for what the next study would find<"), svg);
        assertTrue(svg.contains(">for the average of such studies<"), svg);
    }

    @Test
    void asked_for_the_average_the_picture_has_one_band() throws Exception {
        String svg = text(PAGE + "&format=svg&of=mean");

        assertEquals(List.of(), rectangles(svg, "#99c0ba"));
        assertTrue(svg.contains(">90 % interval for the average of such studies<"), svg);
    }

    private static List<Element> rectangles(String svg, String colour) throws Exception {
        NodeList all = xml(svg).getElementsByTagName("rect");
        return IntStream.range(0, all.getLength())
                .mapToObj(i -> (Element) all.item(i))
                .filter(one -> one.getAttribute("fill").equals(colour))
                .toList();
    }

    private static double left(Element rectangle) {
        return Double.parseDouble(rectangle.getAttribute("x"));
    }

    private static double width(Element rectangle) {
        return Double.parseDouble(rectangle.getAttribute("width"));
    }

    @Test
    void the_address_of_the_picture_in_the_markdown_gives_the_picture() {
        Matcher address = Pattern.compile("\\[The picture\\]\\(([^)]+)\\)").matcher(text(PAGE));

        assertTrue(address.find());
        assertEquals(text(PAGE + "&format=svg"), text(address.group(1)));
    }

    @Test
    void it_begins_with_one_sentence_to_quote_that_says_a_part_and_not_a_multiple() {
        String page = text(PAGE);

        assertTrue(
                page.matches(
                        "(?s).*## In one sentence\n\n[A-Z][a-z ]+ emits at least \\d+ % less greenhouse gas than beef for each kg"
                                + " protein, up to the farm gate, in nine of ten draws\\..*"),
                page);
    }

    @Test
    void every_study_is_listed_with_what_it_printed_and_the_number_of_its_reference() {
        String page = text(PAGE);

        assertTrue(
                page.replace('\u00a0', ' ')
                        .contains(
                                "| yellow mealworm | Dreyer et al. 2021 \\[1\\] | 20.4 kg CO2e per kg protein | 20 | "),
                page);
        assertTrue(page.contains("- \\[1\\] Dreyer M"), page);
    }

    @Test
    void only_what_the_page_shows_is_among_its_references() {
        String page = text(PAGE + "&also=none");
        String references = page.substring(page.indexOf("## References"));

        for (String elsewhere : List.of("Oonincx", "Gerber", "Clune")) {
            assertFalse(references.contains(elsewhere), elsewhere + " speaks on bases that the page does not show");
        }
    }

    @Test
    void it_says_how_its_figures_differ_from_those_often_quoted_and_which_corrections_there_are() {
        String page = text(PAGE);

        assertTrue(page.contains("beef: the median here is "), page);
        assertTrue(page.contains("beef from beef herds alone "), page);
        assertTrue(page.contains("up to retail with land-use change "), page);
        assertTrue(page.contains("erratum of February 2019"), page);
    }

    @Test
    void further_indicators_and_references_stand_side_by_side() {
        String page = text(PAGE + "&also_against=pork,egg");

        assertTrue(page.contains("| product | land, m2\\*yr per kg protein, up to the farm gate | feed, "), page);
        assertTrue(page.contains("| product | times less than pork | times less than hen's egg |"), page);
        assertFalse(text(PAGE + "&also=none").contains("## Other indicators"));
    }

    @Test
    void a_market_keeps_its_own_cautions() {
        String page = text(PAGE + "&market=us");

        assertTrue(page.contains("## Cautions: United States"), page);
        assertFalse(page.contains("In Switzerland"), page);
    }

    @Test
    void a_reference_without_evidence_has_no_ratio_to_itself() {
        String page = text("/v1/brief?products=mealworm&against=silkworm-pupae&draws=1000");

        assertTrue(page.contains("| silkworm pupa | no evidence |  |  | 0 studies |"), page);
    }

    @Test
    void every_line_of_the_picture_is_explained() {
        String svg = text(PAGE + "&format=svg");

        assertTrue(svg.contains("dashed, and red: beef, the reference, at its median"), svg);
        assertTrue(svg.contains("kg CO\u2082e per kg protein"), svg);
        assertTrue(svg.contains("abstract read"), "the words of the pages for the marks");
    }

    @Test
    void as_html_it_is_a_page_with_headings_and_tables_and_nothing_that_runs() throws Exception {
        String html = text(PAGE + "&format=html");

        Document page = xml(html.replace("<!doctype html>", "").replaceAll("<(meta|link)([^>]*)>", "<$1$2/>"));
        assertEquals(1, page.getElementsByTagName("h1").getLength());
        assertTrue(page.getElementsByTagName("table").getLength() >= 2);
        assertFalse(html.contains("<script") || html.contains("style=\""));
    }

    @Test
    void references_come_in_the_formats_of_reference_managers() throws Exception {
        String page = text(PAGE + "&style=bibtex");
        String bibtex = page.substring(page.indexOf("```\n@") + 4, page.indexOf("\n```", page.indexOf("```\n@")));

        assertTrue(
                new BibTeXParser().parse(new StringReader(bibtex)).getEntries().size() > 3);
        assertTrue(text(PAGE + "&style=ris").contains("TY  - JOUR"));
        assertTrue(text(PAGE + "&style=csl").contains("\"DOI\""));
    }

    @Test
    void a_farm_stands_on_the_page_beside_published_products() {
        String whole = FARM.replace("\"feed\"", "\"energy\": [], \"feed\"");

        String page = sent(whole + "\"against\": \"beef\"}", "").body();

        assertTrue(page.contains("three invented sheds emits at least"), page);
        assertTrue(page.contains("computed from records"));
        assertTrue(page.contains("The farm was computed from its own records"));
        assertFalse(page.contains("This page again"), "records are not stored");
    }

    @Test
    void the_name_of_a_farm_is_never_markup() {
        String body =
                FARM.replace("three invented sheds", "<script>alert(1)</script> | [x](y)") + "\"against\": \"beef\"}";

        for (String format : List.of("?format=html", "?format=svg")) {
            String page = sent(body, format).body();
            assertFalse(page.contains("<script"), page);
            assertTrue(page.contains("&lt;script&gt;"));
        }
        assertFalse(sent(body, "").body().contains("| [x](y)"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/brief",
                "/v1/brief?products=mealworm",
                "/v1/brief?products=mealworm&against=beeef",
                "/v1/brief?products=mealworm&against=beef&accessed=yesterday",
                "/v1/brief?products=mealworm&against=beef&style=footnotes",
                "/v1/brief?products=mealworm&against=beef&times_less=0",
                "/v1/brief?products=mealworm&against=beef&format=pdf"
            })
    void a_wrong_question_is_refused(String question) {
        Reply reply = Reply.to(question);

        assertEquals(400, reply.status(), reply.body());
        assertFalse(reply.json().path("errors").isEmpty());
    }

    @Test
    void more_products_than_a_page_holds_are_refused_with_the_limit() {
        Reply reply =
                Reply.to("/v1/brief?products=mealworm,turkey,pork,egg,milk,tofu,chicken,pulses,lamb&against=beef");

        assertEquals(422, reply.status(), reply.body());
        assertEquals("products has 9 entries; at most 8 are allowed", JsonAt.text(reply.json(), "/detail"));
    }

    /** The records have no energy, water or transport. */
    @Test
    void the_ratio_of_a_farm_that_leaves_energy_open_is_at_most_and_nothing_is_offered_to_be_said() {
        String page = sent(FARM + "\"against\": \"beef\"}", "").body();

        assertTrue(page.contains("| at most "), page);
        assertTrue(page.contains("before these are recorded or have a factor: "), page);
        assertTrue(page.contains("energy"), page);
        assertFalse(page.matches("(?s).*three invented sheds emits at least [0-9.]+ % less.*"), page);
        assertFalse(page.contains("% probability ("), page);
    }

    @Test
    void records_without_a_reference_are_refused_with_both_ways_to_give_one() {
        Reply reply = sent(FARM.strip().replaceAll(",$", "}"), "");

        assertEquals(400, reply.status());
        assertTrue(reply.body().contains("against_system"), reply.body());
    }
}
