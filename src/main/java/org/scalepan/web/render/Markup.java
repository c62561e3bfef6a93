package org.scalepan.web.render;

/** Escapes plain text for HTML and SVG, between tags or in a quoted attribute. */
public final class Markup {
    private Markup() {}

    public static String text(String plain) {
        StringBuilder out = new StringBuilder(plain.length() + 16);
        plain.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                // Characters that XML forbids would make the picture invalid.
                default -> out.appendCodePoint(c < ' ' && c != '\t' && c != '\n' ? ' ' : c);
            }
        });
        return out.toString();
    }
}
