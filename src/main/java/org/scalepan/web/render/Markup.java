package org.scalepan.web.render;

import org.scalepan.sheet.XmlText;

/** Escapes plain text for HTML and SVG, between tags or in a quoted attribute. */
public final class Markup {
    private Markup() {}

    public static String text(String plain) {
        StringBuilder out = new StringBuilder(plain.length() + 16);
        XmlText.allowed(plain).codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(c == '\r' ? ' ' : c);
            }
        });
        return out.toString();
    }
}
