package org.scalepan.web.library;

import java.util.List;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.HeldOut;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.Remaining;
import org.scalepan.web.render.SvgDrawing;
import org.scalepan.web.render.SvgDrawing.Anchor;
import org.scalepan.web.render.SvgDrawing.Stroke;

/**
 * What intervals promise against what they hold, as a picture: for each number of remaining studies a square, the promised share to the right
 * and the held share upwards. On the diagonal both are equal; a bar is what chance allows.
 */
final class CalibrationSvg {
    private static final int SIDE = 190;
    private static final int GAP = 52;
    private static final int LEFT = 52;
    private static final int TOP = 62;
    private static final int WIDTH = LEFT + 3 * SIDE + 2 * GAP + 14;
    private static final int HEIGHT = TOP + SIDE + 66;
    private static final double FROM = 0.2;

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
        SvgDrawing drawing = new SvgDrawing(WIDTH, HEIGHT, words);
        drawing.text(
                0,
                18,
                SvgDrawing.INK,
                Anchor.START,
                "Studies held by the interval of the others, against what the interval promises");
        int panel = 0;
        for (Remaining remaining : Remaining.values()) {
            panel(drawing, remaining, LEFT + panel++ * (SIDE + GAP));
        }
        drawing.text(
                LEFT,
                HEIGHT - 10,
                SvgDrawing.QUIET,
                Anchor.START,
                "upwards: held; bar: what chance allows; line: as promised");
        return drawing.svg();
    }

    private void panel(SvgDrawing drawing, Remaining remaining, int left) {
        List<HeldOut> own =
                rows.stream().filter(row -> row.remaining() == remaining).toList();
        int cases = own.stream().mapToInt(HeldOut::cases).max().orElse(0);
        drawing.text(left, TOP - 14, SvgDrawing.INK, Anchor.START, head(remaining) + ", " + cases + " cases");
        drawing.square(left, TOP, SIDE, SvgDrawing.NONE, Stroke.thin(SvgDrawing.GRID));
        drawing.line(across(left, FROM), up(FROM), across(left, 1), up(1), new Stroke(SvgDrawing.QUIET, 1, "4 3"));
        for (int tenth = 2; tenth <= 10; tenth += 2) {
            drawing.text(
                    left - 6,
                    up(tenth / 10.0) + 4,
                    SvgDrawing.QUIET,
                    Anchor.END,
                    CalibrationView.percent(tenth / 10.0));
        }
        for (HeldOut row : own) {
            double x = across(left, row.coverage());
            if (row.coverage() != 0.9) {
                drawing.text(
                        x, TOP + SIDE + 18, SvgDrawing.QUIET, Anchor.MIDDLE, CalibrationView.percent(row.coverage()));
            }
            row.share().ifPresent(share -> {
                drawing.line(x, up(row.fewestShare()), x, up(row.mostShare()), new Stroke(SvgDrawing.BAND, 7, ""));
                drawing.circle(x, up(share), 4.5, SvgDrawing.MARK, Stroke.thin(SvgDrawing.MARK));
            });
        }
        drawing.text(left + SIDE, TOP + SIDE + 36, SvgDrawing.QUIET, Anchor.END, "promised");
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
}
