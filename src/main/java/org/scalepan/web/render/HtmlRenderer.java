package org.scalepan.web.render;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.scalepan.web.http.Answer;

/** Writes a document as a whole HTML page without script, so that text copied from it carries none. */
public final class HtmlRenderer {
    /** Addresses of other schemes, such as {@code javascript:}, are shown but not linked. */
    private static final Pattern OPENED = Pattern.compile("(?:https?://|/(?!/)).*", Pattern.DOTALL);

    private HtmlRenderer() {}

    public static Answer answer(Document document) {
        return Answer.of(Answer.HTML, render(document));
    }

    static String render(Document document) {
        StringBuilder out = new StringBuilder("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width\">\n<title>")
                .append(Markup.text(document.title().orElse("Scalepan")))
                .append("</title>\n<link rel=\"icon\" href=\"/page/mark.svg\">\n")
                .append(
                        "<link rel=\"stylesheet\" href=\"/page/scalepan.css\">\n</head>\n<body class=\"plain\">\n<main>\n");
        document.title().ifPresent(title -> out.append(element("h1", Markup.text(title))));
        document.blocks().forEach(block -> out.append(block(block)));
        return out.append("</main>\n</body>\n</html>\n").toString();
    }

    private static String block(Block block) {
        if (block instanceof Block.Heading heading) {
            return element("h2", Markup.text(heading.text()));
        }
        if (block instanceof Block.Paragraph paragraph) {
            return element(
                    "p", paragraph.lines().stream().map(HtmlRenderer::line).collect(Collectors.joining("\n")));
        }
        if (block instanceof Block.Bullets bullets) {
            return bullets.items().stream()
                    .map(item -> element("li", line(item)))
                    .collect(Collectors.joining("", "<ul>\n", "</ul>\n"));
        }
        if (block instanceof Block.TextTable table) {
            return table(table);
        }
        if (block instanceof Block.Picture picture) {
            return "<figure>\n" + picture.svg() + "</figure>\n";
        }
        return element("pre", Markup.text(((Block.Code) block).text().strip()));
    }

    private static String table(Block.TextTable table) {
        StringBuilder out = new StringBuilder("<table>\n<thead>\n<tr>");
        table.header()
                .forEach(cell -> out.append("<th scope=\"col\">")
                        .append(Markup.text(cell))
                        .append("</th>"));
        out.append("</tr>\n</thead>\n<tbody>\n");
        for (List<String> cells : table.rows()) {
            out.append("<tr><th scope=\"row\">")
                    .append(Markup.text(cells.get(0)))
                    .append("</th>");
            cells.stream()
                    .skip(1)
                    .forEach(
                            cell -> out.append("<td>").append(Markup.text(cell)).append("</td>"));
            out.append("</tr>\n");
        }
        return out.append("</tbody>\n</table>\n").toString();
    }

    private static String line(TextLine line) {
        return line.runs().stream().map(HtmlRenderer::run).collect(Collectors.joining());
    }

    private static String run(TextLine.Run run) {
        if (run instanceof TextLine.Run.Strong strong) {
            return "<strong>" + Markup.text(strong.text()) + "</strong>";
        }
        if (run instanceof TextLine.Run.Address link) {
            String address = Markup.text(link.address());
            return OPENED.matcher(link.address()).matches()
                    ? "<a href=\"" + address + "\">" + address + "</a>"
                    : address;
        }
        return Markup.text(((TextLine.Run.Plain) run).text());
    }

    private static String element(String name, String content) {
        return "<" + name + ">" + content + "</" + name + ">\n";
    }
}
