package org.scalepan.web.render;

import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.web.http.Answer;

/** Writes a document as Markdown: CommonMark with the tables of GitHub. One empty line separates two blocks. */
public final class MarkdownRenderer {
    private static final int SHORTEST_FENCE = 3;

    private MarkdownRenderer() {}

    public static Answer answer(Document document) {
        return Answer.of(Answer.MARKDOWN, render(document));
    }

    static String render(Document document) {
        String title = document.title()
                .map(text -> "# " + MarkdownText.line(text) + "\n\n")
                .orElse("");
        return title + document.blocks().stream().map(MarkdownRenderer::block).collect(Collectors.joining("\n"));
    }

    private static String block(Block block) {
        if (block instanceof Block.Heading heading) {
            return "## " + MarkdownText.line(heading.text()) + "\n";
        }
        if (block instanceof Block.Paragraph paragraph) {
            return lines("", paragraph.lines());
        }
        if (block instanceof Block.Bullets bullets) {
            return lines("- ", bullets.items());
        }
        if (block instanceof Block.TextTable table) {
            return row(table.header()) + "|" + "---|".repeat(table.header().size()) + "\n"
                    + table.rows().stream().map(MarkdownRenderer::row).collect(Collectors.joining());
        }
        if (block instanceof Block.Picture picture) {
            // Many editors drop pictures that are part of a text: the words stand in, and the address where the picture
            // is.
            return MarkdownText.line(picture.words())
                    + picture.address().map(at -> " [The picture](" + at + ")").orElse("")
                    + "\n";
        }
        return fenced(((Block.Code) block).text().strip());
    }

    private static String lines(String mark, List<TextLine> lines) {
        return lines.stream().map(line -> mark + MarkdownText.line(line) + "\n").collect(Collectors.joining());
    }

    private static String row(List<String> cells) {
        return cells.stream().map(MarkdownText::line).collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    /** The fence is longer than any run of its sign in the text, which would end it. */
    private static String fenced(String text) {
        int longest = 0;
        int run = 0;
        for (int i = 0; i < text.length(); i++) {
            run = text.charAt(i) == '`' ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        String fence = "`".repeat(Math.max(SHORTEST_FENCE, longest + 1));
        return fence + "\n" + text + "\n" + fence + "\n";
    }
}
