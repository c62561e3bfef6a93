package org.scalepan.web.library;

import java.util.List;
import org.scalepan.ask.ModelledAgainstPublished.ComparedFarm;
import org.scalepan.footprint.Bound;
import org.scalepan.uncertainty.Summary;
import org.scalepan.web.render.SvgDrawing;
import org.scalepan.web.render.SvgDrawing.Anchor;
import org.scalepan.web.render.SvgDrawing.Stroke;

/**
 * Reference farms beside studies, as a picture: one line a farm and indicator, all over the median of the studies, on a logarithmic
 * axis. A band is the interval of the next study, a line with a disc the model, a line with an arrow's open end a lower bound.
 */
final class ModelledCalibrationSvg {
    private static final int LEFT = 430;
    private static final int PLOT = 420;
    private static final int WIDTH = LEFT + PLOT + 30;
    private static final int TOP = 56;
    private static final int LINE = 19;
    private static final double LEAST = 0.01;
    private static final double MOST = 100;

    private final List<ComparedFarm> pairs;
    private final String words;

    /**
     * The picture of a table.
     *
     * @param words the text alternative
     */
    ModelledCalibrationSvg(List<ComparedFarm> pairs, String words) {
        this.pairs = List.copyOf(pairs);
        this.words = words;
    }

    String svg() {
        int height = TOP + pairs.size() * LINE + 58;
        SvgDrawing drawing = new SvgDrawing(WIDTH, height, words);
        drawing.text(
                0,
                18,
                SvgDrawing.INK,
                Anchor.START,
                "Reference farms, as multiples of the median of the studies of their product");
        for (double tick : new double[] {0.01, 0.1, 1, 10, 100}) {
            double x = across(tick);
            drawing.line(x, TOP - 10, x, height - 48, Stroke.thin(tick == 1 ? SvgDrawing.QUIET : SvgDrawing.GRID));
            drawing.text(
                    x,
                    TOP - 16,
                    SvgDrawing.QUIET,
                    Anchor.MIDDLE,
                    tick >= 1 ? Integer.toString((int) tick) : Double.toString(tick));
        }
        int line = 0;
        for (ComparedFarm pair : pairs) {
            row(drawing, pair, TOP + LINE * line++ + 8);
        }
        drawing.text(
                0,
                height - 12,
                SvgDrawing.QUIET,
                Anchor.START,
                "band: the next study, 90 %; line and disc: the model, 90 %; hollow disc: a lower bound, so the truth lies to the right");
        return drawing.svg();
    }

    private void row(SvgDrawing drawing, ComparedFarm pair, double y) {
        Summary model = pair.modelled().summary().orElseThrow();
        Summary studies = pair.published().summary().orElseThrow();
        double unit = studies.median();
        boolean exact = pair.modelled().bound() == Bound.EXACT;
        drawing.text(
                0,
                y + 4,
                SvgDrawing.INK,
                Anchor.START,
                pair.farm().farm().name() + ", " + pair.basis().indicator().id());
        double from = across(studies.low() / unit);
        drawing.bar(from, y - 6, across(studies.high() / unit) - from, 12, 2, SvgDrawing.BAND);
        drawing.line(
                across(model.low() / unit),
                y,
                across(exact ? model.high() / unit : MOST),
                y,
                new Stroke(SvgDrawing.MARK, 2, exact ? "" : "2 4"));
        drawing.circle(
                across(model.median() / unit),
                y,
                4,
                exact ? SvgDrawing.MARK : SvgDrawing.GROUND,
                Stroke.thin(SvgDrawing.MARK));
    }

    /** What lies beyond an end of the axis is drawn on it. */
    private static double across(double ratio) {
        double bounded = Math.min(MOST, Math.max(LEAST, ratio));
        return LEFT + StrictMath.log(bounded / LEAST) / StrictMath.log(MOST / LEAST) * PLOT;
    }
}
