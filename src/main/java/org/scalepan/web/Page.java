package org.scalepan.web;

import java.util.List;

/** A page to paste from, as the parts it is made of: written down once, rendered as Markdown or HTML. */
record Page(String title, List<Block> blocks) {
    Page {
        blocks = List.copyOf(blocks);
    }

    /** One part of a page. All texts are plain: what they hold is never read as markup. */
    sealed interface Block {
        /** A heading of the second level. */
        record Heading(String text) implements Block {}

        record Paragraph(String text) implements Block {}

        record Bullets(List<String> items) implements Block {
            public Bullets {
                items = List.copyOf(items);
            }
        }

        record Table(List<String> header, List<List<String>> rows) implements Block {
            public Table {
                header = List.copyOf(header);
                rows = rows.stream().map(List::copyOf).toList();
            }
        }

        /**
         * A picture.
         *
         * @param svg made by this service, which escapes every text in it
         * @param words what the picture shows, for those who do not see it
         */
        record Picture(String svg, String words) implements Block {}

        /** Text to be taken as it is, such as BibTeX. */
        record Verbatim(String text) implements Block {}
    }

    String markdown() {
        StringBuilder out = new StringBuilder("# ").append(plain(title)).append("\n");
        blocks.forEach(block -> out.append('\n').append(markdown(block)));
        return out.toString();
    }

    private static String markdown(Block block) {
        if (block instanceof Block.Heading heading) {
            return "## " + plain(heading.text()) + "\n";
        }
        if (block instanceof Block.Paragraph paragraph) {
            return plain(paragraph.text()) + "\n";
        }
        if (block instanceof Block.Bullets bullets) {
            StringBuilder out = new StringBuilder();
            bullets.items().forEach(item -> out.append("- ").append(plain(item)).append('\n'));
            return out.toString();
        }
        if (block instanceof Block.Table table) {
            StringBuilder out = new StringBuilder(row(table.header()));
            out.append("|").append(" --- |".repeat(table.header().size())).append('\n');
            table.rows().forEach(cells -> out.append(row(cells)));
            return out.toString();
        }
        if (block instanceof Block.Picture picture) {
            String data = java.util.Base64.getEncoder()
                    .encodeToString(picture.svg().getBytes(java.nio.charset.StandardCharsets.UTF_8));
            return "![" + plain(picture.words()) + "](data:image/svg+xml;base64," + data + ")\n";
        }
        return "```\n" + ((Block.Verbatim) block).text().strip().replace("```", "'''") + "\n```\n";
    }

    private static String row(List<String> cells) {
        return "| " + String.join(" | ", cells.stream().map(Page::plain).toList()) + " |\n";
    }

    private static String plain(String text) {
        return ComparisonView.markdownText(text);
    }

    /** A whole document without style or script, so that what is copied out of it brings none along. */
    String html() {
        StringBuilder out = new StringBuilder("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width\">\n<title>")
                .append(Markup.text(title))
                .append(
                        "</title>\n<link rel=\"icon\" href=\"/page/mark.svg\">\n<link rel=\"stylesheet\" href=\"/page/scalepan.css\">\n</head>\n<body class=\"plain\">\n<main>\n<h1>")
                .append(Markup.text(title))
                .append("</h1>\n");
        blocks.forEach(block -> out.append(html(block)));
        return out.append("</main>\n</body>\n</html>\n").toString();
    }

    private static String html(Block block) {
        if (block instanceof Block.Heading heading) {
            return "<h2>" + Markup.text(heading.text()) + "</h2>\n";
        }
        if (block instanceof Block.Paragraph paragraph) {
            return "<p>" + Markup.text(paragraph.text()) + "</p>\n";
        }
        if (block instanceof Block.Bullets bullets) {
            StringBuilder out = new StringBuilder("<ul>\n");
            bullets.items()
                    .forEach(
                            item -> out.append("<li>").append(Markup.text(item)).append("</li>\n"));
            return out.append("</ul>\n").toString();
        }
        if (block instanceof Block.Table table) {
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
                        .forEach(cell ->
                                out.append("<td>").append(Markup.text(cell)).append("</td>"));
                out.append("</tr>\n");
            }
            return out.append("</tbody>\n</table>\n").toString();
        }
        if (block instanceof Block.Picture picture) {
            return "<figure>\n" + picture.svg() + "</figure>\n";
        }
        return "<pre>" + Markup.text(((Block.Verbatim) block).text().strip()) + "</pre>\n";
    }
}
