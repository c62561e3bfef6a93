package org.scalepan.web.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.factors.Library;
import org.scalepan.web.compare.ComparisonDocument;

/** Documents as HTML. */
class HtmlRendererTest {
    private static String body(Document document) {
        String page = HtmlRenderer.render(document);
        return page.substring(page.indexOf("<main>\n") + 7, page.indexOf("</main>"));
    }

    @Test
    void every_block_has_its_element() {
        assertEquals(
                """
                <h1>Land</h1>
                <h2>Figures</h2>
                <p>one
                two</p>
                <p><strong>Verdict:</strong> fails</p>
                <ul>
                <li>a</li>
                </ul>
                <table>
                <thead>
                <tr><th scope="col">product</th><th scope="col">ha*yr</th></tr>
                </thead>
                <tbody>
                <tr><th scope="row">beef</th><td>13</td></tr>
                </tbody>
                </table>
                <figure>
                <svg/></figure>
                <pre>@misc{a}</pre>
                """,
                body(new Document.Builder()
                        .heading("Figures")
                        .add(new Block.Paragraph(List.of(TextLine.of("one"), TextLine.of("two"))))
                        .labelled("Verdict", "fails")
                        .bullets(List.of("a"))
                        .add(new Block.TextTable(List.of("product", "ha*yr"), List.of(List.of("beef", "13"))))
                        .add(new Block.Picture("<svg/>", "a picture", Optional.empty()))
                        .add(new Block.Code("@misc{a}\n"))
                        .titled("Land")));
    }

    @Test
    void given_a_name_with_tags_the_page_shows_the_name() {
        String name = "<script>alert(\"1\")</script> & 'co'";
        String page = HtmlRenderer.render(new Document.Builder()
                .heading(name)
                .paragraph(name)
                .labelled("Claim", name)
                .bullets(List.of(name))
                .add(new Block.TextTable(List.of(name), List.of(List.of(name), List.of(name))))
                .add(new Block.Code(name))
                .titled(name));

        assertFalse(page.contains("<script"), page);
        String shown = "&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;co&#39;";
        assertEquals(10, page.split(Pattern.quote(shown), -1).length - 1, page);
    }

    @ParameterizedTest
    @CsvSource({
        "https://doi.org/10.3390/su4123279, https://doi.org/10.3390/su4123279",
        "/v1/claim?a=b&c=d, /v1/claim?a=b&amp;c=d"
    })
    void an_address_can_be_opened(String address, String written) {
        assertEquals(
                "<p><a href=\"" + written + "\">" + written + "</a></p>\n",
                body(new Document.Builder().link(address).untitled()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"javascript:alert(1)", "data:text/html,x", "//example.org/a", "mealworm"})
    void an_address_of_another_kind_is_shown_and_not_linked(String address) {
        assertFalse(body(new Document.Builder().link(address).untitled()).contains("href"));
    }

    @Test
    void given_the_document_of_a_comparison_the_page_has_the_table_and_references_of_the_markdown() {
        Library library = Libraries.bundled();
        Asked asked = Asked.of(library).indicator("land");
        Comparison comparison = Comparison.of(
                library,
                new Comparison.ComparisonQuestion(
                        List.of(asked.item("mealworm")),
                        asked.item("beef"),
                        asked.basis(),
                        new Sampling(0.9, 1000, 1)));
        String page = body(new ComparisonDocument(library, comparison).document("/v1/comparison?products=mealworm"));

        assertTrue(page.contains("<th scope=\"col\">m2*yr per kg protein</th>"), page);
        assertTrue(page.contains("<tr><th scope=\"row\">yellow mealworm</th><td>"), page);
        assertTrue(page.contains("<a href=\"https://doi.org/10.1371/journal.pone.0051145\">"), page);
        assertTrue(page.endsWith(
                "<a href=\"/v1/comparison?products=mealworm\">/v1/comparison?products=mealworm</a></p>\n"));
    }
}
