package org.scalepan.web.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.commonmark.ext.gfm.strikethrough.StrikethroughExtension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** Documents as an independent parser reads their Markdown: commonmark-java with GitHub's tables and strikethrough. */
class MarkdownRendererTest {
    private static final Parser READER = Parser.builder()
            .extensions(List.of(TablesExtension.create(), StrikethroughExtension.create()))
            .build();

    /** Possible names of a farm, a feed or a source, each with Markdown syntax. */
    static List<String> names() {
        return List.of(
                "beef | pork",
                "a *lean* diet",
                "m2*yr and ha*yr",
                "the _old_ shed, shed_2, __init__",
                "~old~ and ~~older~~",
                "`bran`",
                "R&amp;D &lt;b&gt; &#42; & co.",
                "<b>shed</b>",
                "<https://example.org>",
                "[shed](https://example.org)",
                "![shed](https://example.org/a.png)",
                "[shed]: https://example.org",
                "# shed",
                "shed ##",
                "#",
                "> shed",
                ">shed",
                "- shed",
                "-",
                "---",
                "- - -",
                "+ shed",
                "* shed",
                "***",
                "1. shed",
                "12) shed",
                "1.",
                "===",
                "=",
                ":--",
                "-:",
                ":-- | --:",
                "~~~",
                "```",
                "    shed",
                "\tshed",
                "two\nlines",
                "two\r\n\r\n# lines",
                "a line separator\u2028and a next line\u0085here",
                "bell\u0007 and null\u0000",
                "ends in a backslash\\",
                "C:\\farm\\shed | \\| |",
                "two spaces at the end  ",
                "larvae, 5 % of 3.2 kg (dry) at -0.5 °C: \"good\" & 'cheap'!");
    }

    /** The expected text: a line end or another control is a space. */
    private static String shown(String name) {
        return name.replaceAll("[\\p{Cc}\u2028\u2029]+", " ").strip();
    }

    @ParameterizedTest
    @MethodSource("names")
    void given_a_name_with_markdown_syntax_a_renderer_shows_that_name_literally(String name) {
        assertShown(name);
    }

    @Test
    void given_two_thousand_random_names_of_punctuation_a_renderer_shows_each_literally() {
        Random random = new Random(1);
        String signs = "\\`*_~[](){}<>|&;#!+-=.:1a \n\t";
        for (int i = 0; i < 2000; i++) {
            StringBuilder name = new StringBuilder("x".repeat(random.nextInt(2)));
            int length = 1 + random.nextInt(12);
            for (int j = 0; j < length; j++) {
                name.append(signs.charAt(random.nextInt(signs.length())));
            }
            if (!name.toString().isBlank()) {
                assertShown(name.toString());
            }
        }
    }

    private static void assertShown(String name) {
        String written = MarkdownRenderer.render(new Document.Builder()
                .heading(name)
                .paragraph(name)
                .add(new Block.Paragraph(List.of(TextLine.of("Above."), TextLine.of(name))))
                .bullets(List.of(name, name))
                .add(new Block.TextTable(List.of(name, "kg"), List.of(List.of(name, name))))
                .labelled("Claim", name)
                .add(new Block.Picture("<svg/>", name, Optional.empty()))
                .titled(name));
        List<Node> blocks = children(READER.parse(written));
        String shown = shown(name);

        assertEquals(8, blocks.size(), () -> "blocks of\n" + written);
        assertEquals(shown, text(blocks.get(0)), written);
        assertEquals(shown, text(blocks.get(1)), written);
        assertEquals(shown, text(blocks.get(2)), written);
        assertEquals("Above.\n" + shown, text(blocks.get(3)), written);
        List<Node> items = children(assertInstanceOf(BulletList.class, blocks.get(4), written));
        assertEquals(
                List.of(shown, shown),
                items.stream().map(item -> text(only(item))).toList(),
                written);
        assertEquals(List.of(List.of(shown, "kg"), List.of(shown, shown)), cells(blocks.get(5)), written);
        List<Node> labelled = children(blocks.get(6));
        assertEquals("Claim:", text(assertInstanceOf(StrongEmphasis.class, labelled.get(0))), written);
        assertEquals(shown, text(blocks.get(7)), "a picture is its words: " + written);
    }

    /** GitHub links bare addresses; escaping must prevent it. */
    @ParameterizedTest
    @CsvSource({
        "https://example.org, https\\://example.org",
        "see http://example.org, see http\\://example.org",
        "www.example.org, www\\.example.org",
        "WWW.example.org, WWW\\.example.org",
        "ask@example.org, ask\\@example.org",
        "beef @ 5 %, beef @ 5 %",
        "ratio 3:1, ratio 3:1"
    })
    void given_an_address_in_a_name_it_is_not_linked(String name, String written) {
        assertEquals(written, MarkdownText.line(name));
        assertEquals(name, text(only(READER.parse(written))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ' ',
            value = {
                "https://doi.org/10.1371/journal.pone.0051145 https://doi.org/10.1371/journal.pone.0051145",
                "https://doi.org/10.1016/S0140-6736(10)60093-X https://doi.org/10.1016/S0140-6736(10)60093-X",
                "/v1/claim?times_less=10&gwp=ar6-100 /v1/claim?times_less=10&gwp=ar6-100",
                "/v1/claim?a=_x_&b=*y*~z~ /v1/claim?a=%5Fx%5F&b=%2Ay%2A%7Ez%7E",
                "https://example.org/?a&lt;b https://example.org/?a&lt%3Bb",
                "https://example.org/<é>|[\\] https://example.org/%3C%C3%A9%3E%7C%5B%5C%5D"
            })
    void an_address_of_the_service_or_of_a_source_stays_one_that_can_be_copied(String address, String written) {
        String line = MarkdownText.line(TextLine.link(address));

        assertEquals(written, line);
        assertEquals(written, text(only(READER.parse(line))));
    }

    @Test
    void preformatted_text_keeps_its_own_fences() {
        String bibTex = "@misc{a,\n  note = {```` and ```}\n}";
        Node block = only(READER.parse(MarkdownRenderer.render(
                new Document.Builder().add(new Block.Code(bibTex)).untitled())));

        assertEquals(
                bibTex + "\n", assertInstanceOf(FencedCodeBlock.class, block).getLiteral());
    }

    @Test
    void blocks_are_separated_by_one_empty_line_and_tables_have_the_short_delimiter_row() {
        assertEquals(
                "# Land\n\nmedian\n\n| product | ha\\*yr |\n|---|---|\n| beef | 13 (11 to 17) |\n\n- one\n- two\n",
                MarkdownRenderer.render(new Document.Builder()
                        .paragraph("median")
                        .add(new Block.TextTable(
                                List.of("product", "ha*yr"), List.of(List.of("beef", "13 (11 to 17)"))))
                        .bullets(List.of("one", "two"))
                        .titled("Land")));
    }

    /** An area-time unit has an asterisk, and two of them in a sentence once made the text between them emphasis. */
    @Test
    void the_claim_about_land_reads_as_the_text_of_the_json_answer() {
        String claim = "/v1/claim?product=mealworm&reference=beef&indicator=land&times_less=10&draws=1000";
        Reply markdown = Reply.to(claim + "&format=md");
        List<Node> blocks = children(READER.parse(markdown.body()));

        assertEquals(JsonAt.text(Reply.to(claim).json(), "/reason"), text(blocks.get(2)));
        assertInstanceOf(Paragraph.class, blocks.get(2));
        assertTrue(text(blocks.get(4)).contains("ISO 14044"), markdown.body());
        assertInstanceOf(TableBlock.class, blocks.get(5));
    }

    private static Node only(Node parent) {
        List<Node> children = children(parent);
        assertEquals(1, children.size());
        return children.get(0);
    }

    private static List<Node> children(Node parent) {
        List<Node> children = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            children.add(child);
        }
        return children;
    }

    private static List<List<String>> cells(Node table) {
        assertInstanceOf(TableBlock.class, table);
        List<List<String>> rows = new ArrayList<>();
        for (Node part : children(table)) {
            assertTrue(part instanceof TableHead || part instanceof TableBody);
            for (Node row : children(part)) {
                rows.add(children(row).stream()
                        .map(cell -> text(assertInstanceOf(TableCell.class, cell)))
                        .toList());
            }
        }
        return rows;
    }

    /** The text of a block that must hold text alone. */
    private static String text(Node block) {
        StringBuilder text = new StringBuilder();
        for (Node inline : children(block)) {
            if (inline instanceof Text plain) {
                text.append(plain.getLiteral());
            } else if (inline instanceof SoftLineBreak) {
                text.append('\n');
            } else {
                fail("read as markup: " + inline);
            }
        }
        return text.toString();
    }
}
