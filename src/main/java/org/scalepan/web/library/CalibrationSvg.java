package org.scalepan.web.library;

import java.util.List;
import java.util.Locale;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.HeldOut;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.Remaining;
import org.scalepan.web.render.Markup;

/**
 * What intervals promise against what they hold, as a picture: for each number of remaining studies a square, the promised share to the right
 * and the held share upwards. On the diagonal both are equal; a bar is what chance allows. Colours are inline, because style sheets do not
 * travel with a picture.
 */
final class CalibrationSvg {
    private static final int SIDE = 190;
    private static final int GAP = 52;
    private static final int LEFT = 52;
    private static final int TOP = 62;
    private static final int WIDTH = LEFT + 3 * SIDE + 2 * GAP + 14;
    private static final int HEIGHT = TOP + SIDE + 66;
    private static final double FROM = 0.2;
    private static final String INK = "#1d2a26";
    private static final String QUIET = "#5f6f69";
    private static final String BAND = "#b9cfc4";
    private static final String MARK = "#7a3b12";

    private final List<HeldOut> rows;
    private final String words;

    /**
     * @param rows those of all indicators
     * @param words the text alternative
     */
    CalibrationSvg(List<HeldOut> rows, String words) {
        this.rows = List.copyOf(rows);
        this.words = words;
    }

    String svg() {
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\""
                        + " font-family=\"system-ui, sans-serif\" font-size=\"13\">\n",
                WIDTH,
                HEIGHT,
                Markup.text(words)));
        out.append("<title>").append(Markup.text(words)).append("</title>\n");
        out.append(String.format(Locale.ROOT, "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>\n", WIDTH, HEIGHT));
        text(
                out,
                0,
                18,
                INK,
                "start",
                "Studies held by the interval of the others, against what the interval promises");
        int panel = 0;
        for (Remaining remaining : Remaining.values()) {
            panel(out, remaining, LEFT + panel++ * (SIDE + GAP));
        }
        text(out, LEFT, HEIGHT - 10, QUIET, "start", "upwards: held; bar: what chance allows; line: as promised");
        return out.append("</svg>\n").toString();
    }

    private void panel(StringBuilder out, Remaining remaining, int left) {
        List<HeldOut> own =
                rows.stream().filter(row -> row.remaining() == remaining).toList();
        int cases = own.stream().mapToInt(HeldOut::cases).max().orElse(0);
        text(out, left, TOP - 14, INK, "start", head(remaining) + ", " + cases + " cases");
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"none\" stroke=\"#d9dfdc\"/>\n",
                left,
                TOP,
                SIDE,
                SIDE));
        line(out, across(left, FROM), up(FROM), across(left, 1), up(1), QUIET, "4 3", 1);
        for (int tenth = 2; tenth <= 10; tenth += 2) {
            text(out, left - 6, (int) up(tenth / 10.0) + 4, QUIET, "end", CalibrationView.percent(tenth / 10.0));
        }
        for (HeldOut row : own) {
            double x = across(left, row.coverage());
            if (row.coverage() != 0.9) {
                text(out, x, TOP + SIDE + 18, QUIET, "middle", CalibrationView.percent(row.coverage()));
            }
            row.share().ifPresent(share -> {
                line(out, x, up(row.fewestShare()), x, up(row.mostShare()), BAND, "", 7);
                out.append(String.format(
                        Locale.ROOT,
                        "<circle cx=\"%s\" cy=\"%s\" r=\"4.5\" fill=\"%s\"/>\n",
                        n(x),
                        n(up(share)),
                        MARK));
            });
        }
        text(out, left + SIDE, TOP + SIDE + 36, QUIET, "end", "promised");
    }

    private static String head(Remaining remaining) {
        return switch (remaining) {
            case ONE -> "one study remains";
            case TWO -> "two remain";
            case THREE_OR_MORE -> "three or more remain";
        };
    }

    private static double across(int left, double share) {
        return left + (share - FROM) / (1 - FROM) * SIDE;
    }

    /** Shares below the square are drawn on its lower edge. */
    private static double up(double share) {
        return TOP + SIDE - (Math.max(share, FROM) - FROM) / (1 - FROM) * SIDE;
    }

    private static void line(
            StringBuilder out, double x1, double y1, double x2, double y2, String colour, String dash, int width) {
        out.append(String.format(
                Locale.ROOT,
                "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"%s\" stroke-width=\"%d\"%s/>\n",
                n(x1),
                n(y1),
                n(x2),
                n(y2),
                colour,
                width,
                dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\""));
    }

    private static void text(StringBuilder out, double x, int y, String colour, String anchor, String words) {
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%s\" y=\"%d\" fill=\"%s\" text-anchor=\"%s\">%s</text>\n",
                n(x),
                y,
                colour,
                anchor,
                Markup.text(words)));
    }

    private static String n(double coordinate) {
        return String.format(Locale.ROOT, "%.1f", coordinate);
    }
}
