package org.scalepan.web.render;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Escapes plain text for Markdown so that a renderer shows exactly that text: no character becomes emphasis, a table, a tag, a character
 * reference, code, a link, a heading, a quotation or a list. A backslash makes an ASCII punctuation character literal (<a
 * href="https://spec.commonmark.org/0.31.2/#backslash-escapes">CommonMark 2.4</a>).
 *
 * <p>An address may hold no backslash, because a renderer that links bare addresses would include it. There the same characters are
 * percent-encoded where they would be markup.
 */
final class MarkdownText {
    /** Line ends and other controls; a line end would begin a new block. */
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}\\u2028\\u2029]+");

    private static final Pattern MARK = Pattern.compile(
            // Emphasis, deletion, code, links, tags, cells of a table, and the backslash itself.
            "[\\\\`*_~\\[\\]<|]"
                    // A character reference, such as &lt; or &#60;.
                    + "|&(?=#?[A-Za-z0-9]+;)"
                    // Addresses that a renderer would link: web and mail.
                    + "|(?<=\\b(?i:https?|ftp)):(?=//)"
                    + "|(?<=\\b(?i:www))\\."
                    + "|(?<=[\\w.+-])@(?=\\w)"
                    // Characters around a heading.
                    + "|(?<![^ #])#");

    /** What opens a block at the start of a line only: quotations, lists, underlines of headings and of the head of a table. */
    private static final Pattern OPENING = Pattern.compile("^(?=>|[-+=:](?![A-Za-z0-9.]))|^\\d{1,9}(?=[.)](?: |$))");

    private static final Pattern MARK_IN_ADDRESS = Pattern.compile(
            "[^A-Za-z0-9/:.,?=&%#+@;()!$'_-]|(?<![A-Za-z0-9])_|_(?![A-Za-z0-9])|(?<=&#?[A-Za-z0-9]{1,32});");

    private MarkdownText() {}

    /** A text that is a whole line, list item or table cell. */
    static String line(String plain) {
        return withoutOpening(escaped(plain));
    }

    /** A line of running text. */
    static String line(TextLine line) {
        return withoutOpening(line.runs().stream().map(MarkdownText::run).collect(Collectors.joining()));
    }

    private static String run(TextLine.Run run) {
        if (run instanceof TextLine.Run.Strong strong) {
            return "**" + escaped(strong.text()) + "**";
        }
        if (run instanceof TextLine.Run.Address link) {
            return address(link.address());
        }
        return escaped(((TextLine.Run.Plain) run).text());
    }

    private static String escaped(String plain) {
        return MARK.matcher(CONTROL.matcher(plain).replaceAll(" ")).replaceAll("\\\\$0");
    }

    /** Spaces at the start of a line can make it code, and at its end a forced line break. */
    private static String withoutOpening(String escaped) {
        return OPENING.matcher(escaped.strip()).replaceFirst("$0\\\\");
    }

    private static String address(String address) {
        return MARK_IN_ADDRESS.matcher(address).replaceAll(found -> percentEncoded(found.group()));
    }

    private static String percentEncoded(String signs) {
        StringBuilder out = new StringBuilder();
        for (byte octet : signs.getBytes(StandardCharsets.UTF_8)) {
            out.append('%').append(String.format(java.util.Locale.ROOT, "%02X", octet & 0xff));
        }
        return out.toString();
    }
}
