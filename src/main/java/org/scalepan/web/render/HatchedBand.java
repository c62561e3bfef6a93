package org.scalepan.web.render;

import org.scalepan.footprint.Bound;
import org.scalepan.web.render.SvgDrawing.Stroke;

/**
 * The interval of a modelled figure in a picture: hatched, so that it is told from the filled band of studies without colour. Where the
 * figure is a bound the band has no end on the side on which the true figure lies, but two broken lines to the edge. The hatching is drawn
 * line by line, because not every program that shows such pictures knows patterns.
 */
final class HatchedBand {
    private static final int STEP = 6;
    private static final Stroke EDGE = new Stroke(SvgDrawing.INK, 1, "");
    private static final Stroke HATCH = Stroke.thin(SvgDrawing.QUIET);
    private static final Stroke OPEN = new Stroke(SvgDrawing.QUIET, 1, "3 3");

    private final SvgDrawing drawing;
    private final double top;
    private final double height;

    HatchedBand(SvgDrawing drawing, double top, double height) {
        this.drawing = drawing;
        this.top = top;
        this.height = height;
    }

    /**
     * Draws the interval.
     *
     * @param least left edge of the plot, where an upper bound goes on to
     * @param most right edge, where a lower bound does
     */
    void draw(double from, double to, Bound bound, double least, double most) {
        for (double foot = from - height + STEP; foot < to; foot += STEP) {
            double start = Math.max(foot, from);
            double end = Math.min(foot + height, to);
            drawing.line(start, top + height - (start - foot), end, top + height - (end - foot), HATCH);
        }
        both(from, to, EDGE);
        if (bound == Bound.AT_LEAST) {
            both(to, most, OPEN);
        } else {
            upright(to);
        }
        if (bound == Bound.AT_MOST) {
            both(least, from, OPEN);
        } else {
            upright(from);
        }
    }

    private void both(double from, double to, Stroke stroke) {
        drawing.line(from, top, to, top, stroke);
        drawing.line(from, top + height, to, top + height, stroke);
    }

    private void upright(double x) {
        drawing.line(x, top, x, top + height, EDGE);
    }
}
