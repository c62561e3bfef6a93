package org.scalepan.web.render;

import java.util.Locale;

/**
 * A picture for print, put together from lines, rectangles, circles and text on white. Its text alternative is its name and its title. Colours
 * are inline, because style sheets do not travel with a picture; coordinates are in pixels.
 */
public final class SvgDrawing {
    // The colours of the pages on white; their washes are mixed here, since not every program that shows a picture
    // knows transparency.
    public static final String INK = "#16211d";
    public static final String QUIET = "#50605a";
    public static final String GRID = "#cbd4ce";
    public static final String BAND = "#d4e4e2";
    public static final String INNER_BAND = "#99c0ba";
    public static final String MEDIAN = "#0f6b5c";
    public static final String REFERENCE = "#a3331d";
    public static final String REFERENCE_BAND = "#efdcd9";
    public static final String REFERENCE_INNER_BAND = "#e2bfb9";
    public static final String MARK = INK;
    public static final String GROUND = "#ffffff";
    public static final String NONE = "none";

    private final StringBuilder out = new StringBuilder();

    /** Where a text stands about its place. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    /**
     * How a line or the edge of a shape is drawn.
     *
     * @param dash lengths of strokes and gaps; empty for an unbroken line
     */
    public record Stroke(String colour, double width, String dash) {
        public static Stroke thin(String colour) {
            return new Stroke(colour, 1, "");
        }

        private String attributes() {
            return " stroke=\"" + colour + "\"" + (width == 1 ? "" : " stroke-width=\"" + number(width) + "\"")
                    + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"");
        }
    }

    /**
     * An empty picture.
     *
     * @param words the text alternative of the picture
     */
    public SvgDrawing(int width, int height, String words) {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\""
                        + " font-family=\"system-ui, sans-serif\" font-size=\"13\">",
                width, height, Markup.text(words));
        add("<title>%s</title>", Markup.text(words));
        add("<rect width=\"%d\" height=\"%d\" fill=\"%s\"/>", width, height, GROUND);
    }

    /** A longer description for those who do not see the picture. */
    public void description(String words) {
        add("<desc>%s</desc>", Markup.text(words));
    }

    public void line(double x1, double y1, double x2, double y2, Stroke stroke) {
        add(
                "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"%s/>",
                number(x1), number(y1), number(x2), number(y2), stroke.attributes());
    }

    /**
     * A filled rectangle.
     *
     * @param round radius of the corners
     */
    public void bar(double x, double y, double width, double height, int round, String fill) {
        add(
                "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"%s fill=\"%s\"/>",
                number(x), number(y), number(width), number(height), round == 0 ? "" : " rx=\"" + round + "\"", fill);
    }

    public void square(double x, double y, double side, String fill, Stroke stroke) {
        add(
                "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\"%s/>",
                number(x), number(y), number(side), number(side), fill, stroke.attributes());
    }

    /** A square that stands on a corner. */
    public void diamond(double x, double y, double half, String fill, Stroke stroke) {
        add(
                "<path d=\"M%s %sL%s %sL%s %sL%s %sZ\" fill=\"%s\"%s/>",
                number(x),
                number(y - half),
                number(x + half),
                number(y),
                number(x),
                number(y + half),
                number(x - half),
                number(y),
                fill,
                stroke.attributes());
    }

    /** The left half of a disc. */
    public void halfDisc(double x, double y, double radius, String fill) {
        add(
                "<path d=\"M%s %sA%s %s 0 0 0 %s %sZ\" fill=\"%s\"/>",
                number(x), number(y - radius), number(radius), number(radius), number(x), number(y + radius), fill);
    }

    public void circle(double x, double y, double radius, String fill, Stroke stroke) {
        add(
                "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\"%s/>",
                number(x), number(y), number(radius), fill, stroke.attributes());
    }

    /**
     * A text on one line.
     *
     * @param y of the line on which the letters stand
     */
    public void text(double x, double y, String colour, Anchor anchor, String words) {
        add(
                "<text x=\"%s\" y=\"%s\" fill=\"%s\" text-anchor=\"%s\">%s</text>",
                number(x), number(y), colour, anchor.name().toLowerCase(Locale.ROOT), Markup.text(set(words)));
    }

    /** Units as they are printed, with low and high digits. */
    private static String set(String words) {
        return words.replace("CO2", "CO\u2082").replace("m2*yr", "m\u00b2\u00b7yr");
    }

    /** The picture as a document of its own. */
    public String svg() {
        return out + "</svg>\n";
    }

    private void add(String element, Object... values) {
        out.append(String.format(Locale.ROOT, element, values)).append('\n');
    }

    /** A coordinate: a tenth of a pixel is finer than any screen, and the same on every machine. */
    private static String number(double coordinate) {
        return String.format(Locale.ROOT, "%.1f", coordinate);
    }
}
