package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.Reply;

/** The guides as pages: rendering of their Markdown, and links between served pages. */
class GuidePagesTest {
    private static final Pattern LINK = Pattern.compile("<a href=\"([^\"]*)\"");

    static List<String> names() {
        return GuideRoutes.NAMES;
    }

    private static String page(String name) {
        Reply reply = Reply.to("/guide/" + name);
        assertEquals(200, reply.status(), name);
        return reply.body();
    }

    private static Set<String> ids(String page) {
        return Pattern.compile(" id=\"([^\"]+)\"")
                .matcher(page)
                .results()
                .map(id -> id.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void the_list_names_and_describes_every_guide() {
        String list = Reply.to("/guide").body();

        for (String name : names()) {
            assertTrue(list.contains("<dt><a href=\"/guide/" + name + "\" data-carry>"), name);
        }
        assertTrue(Pattern.compile("<dd>[A-Z].{30,}").matcher(list).results().count() == names().size(), list);
    }

    @Test
    void every_guide_on_disk_is_served_and_no_other() {
        try (var files = java.nio.file.Files.list(Documents.GUIDES)) {
            assertEquals(
                    new TreeSet<>(names()),
                    files.map(file -> file.getFileName().toString().replace(".md", ""))
                            .collect(Collectors.toCollection(TreeSet::new)));
        } catch (java.io.IOException e) {
            throw new AssertionError(e);
        }
        assertEquals(404, Reply.to("/guide/no-such-guide").status());
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_guide_has_the_head_of_the_site_one_title_and_its_sections(String name) {
        String html = page(name);

        assertTrue(html.contains("<a class=\"wordmark\" href=\"/\""), "the head");
        assertTrue(html.contains("data-t=\"frame.footer\""), "the foot");
        assertFalse(html.contains("<!--"), "a place that was not filled");
        assertEquals(1, Pattern.compile("<h1 ").matcher(html).results().count());
        assertTrue(html.contains("<a href=\"/guide/" + name + "\" data-carry aria-current=\"page\">"));
    }

    @ParameterizedTest
    @MethodSource("names")
    void every_link_of_a_guide_leads_somewhere(String name) {
        String html = page(name);
        Matcher link = LINK.matcher(html);
        while (link.find()) {
            String target = link.group(1).replace("&amp;", "&");
            String[] parts = target.split("#", 2);
            if (target.startsWith("https://")) {
                continue;
            }
            assertTrue(target.startsWith("/") || target.startsWith("#"), () -> name + " leads astray: " + target);
            String there = parts[0].isEmpty() ? html : Reply.to(parts[0]).body();
            assertTrue(parts[0].isEmpty() || Reply.to(parts[0]).status() == 200, () -> name + ": " + target);
            assertTrue(parts.length < 2 || ids(there).contains(parts[1]), () -> name + ": " + target);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "<img src=x onerror=alert(1)>",
                "text <b onclick=\"x()\">bold</b>",
                "<style>body{}</style>",
                "| a |\n|---|\n| <iframe src=x> |",
                "# <script>x</script>"
            })
    void markup_in_a_guide_is_shown_and_never_run(String markdown) {
        String html = GuideText.of(markdown).html();

        assertFalse(
                Pattern.compile("<(script|img|b|style|iframe)\\b").matcher(html).find(), html);
        assertTrue(html.contains("&lt;"), html);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[x](javascript:alert(1))", "[x](JaVaScRiPt:alert(1))", "[x](data:text/html;base64,eA==)"})
    void a_link_cannot_run_a_script(String markdown) {
        assertTrue(
                GuideText.of(markdown).html().contains("href=\"\""),
                () -> GuideText.of(markdown).html());
    }

    @ParameterizedTest
    @CsvSource({
        "operating.md, /guide/operating",
        "operating.md#limits, /guide/operating#limits",
        "#limits, #limits",
        "http://127.0.0.1:8080/farm, /farm",
        "http://127.0.0.1:8080/v1/products?nocache=1, /v1/products?nocache=1",
        "https://doi.org/10.1000/x, https://doi.org/10.1000/x"
    })
    void a_link_that_works_on_disk_works_where_it_is_served(String onDisk, String served) {
        String html = GuideText.of("[x](" + onDisk + ")").html();

        assertTrue(html.contains("href=\"" + served + "\""), html);
    }

    @Test
    void a_table_has_a_box_that_scrolls_and_code_can_be_reached_by_keyboard() {
        String html = GuideText.of("| a |\n|---|\n| 1 |\n\n```\nx\n```").html();

        assertTrue(
                Pattern.compile("<div class=\"scrolls\" tabindex=\"0\">\\s*<table>.*</table>\\s*</div>", Pattern.DOTALL)
                        .matcher(html)
                        .find(),
                html);
        assertTrue(html.contains("<pre tabindex=\"0\">"), html);
    }

    @Test
    void title_lead_and_sections_are_read_off_the_headings() {
        GuideText guide =
                GuideText.of("# A *fine* `guide`\n\nWhat it is & why.\n\n## One & two\n\n### Deeper\n\n## One & two\n");

        assertEquals("A fine guide", guide.title());
        assertEquals("What it is &amp; why.", guide.lead());
        assertEquals(
                List.of(
                        new GuideText.Section("one--two", "One & two"),
                        new GuideText.Section("one--two-1", "One & two")),
                guide.sections());
    }

    @Test
    void a_guide_is_made_once_and_tagged() {
        Reply first = Reply.to("/guide/tour");
        Reply again = Reply.to(
                "/guide/tour",
                java.util.Map.of("If-None-Match", first.header("ETag").orElseThrow()));

        assertEquals(304, again.status());
    }
}
