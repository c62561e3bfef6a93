package org.scalepan.web.render;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.brief.Brief;
import org.scalepan.factors.Grade;
import org.scalepan.footprint.Bound;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Harmonised;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.Study;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.Summary;
import org.scalepan.web.render.SvgDrawing.Anchor;
import org.scalepan.web.render.SvgDrawing.Stroke;

/**
 * The picture of a brief, for print, with the marks and colours of the pages: a logarithmic scale, one row for each product and the
 * reference, which is red. The interval is a band, that of the average of such studies a darker one within it, the median a stroke; every
 * published result is a mark whose shape shows how its number was checked and whose size shows what it weighs.
 */
public final class ChartSvg {
    private static final int WIDTH = 760;
    private static final int LABELS = 190;
    private static final int RIGHT = 24;
    private static final int TOP = 46;
    private static final int ROW = 44;
    private static final int FOOT = 120;
    private static final double LANE = 11;

    private static final Stroke DASHES = new Stroke(SvgDrawing.REFERENCE, 1.5, "5 4");

    private final Brief brief;
    private final Sentences sentences;
    private final String source;
    private final List<Estimate> rows;
    private final double low;
    private final double high;

    /** A published result on the scale, and its part of the pool. */
    private record WeighedMark(double value, Grade check, double weight) {}

    /**
     * @param source the line below the picture: where its figures come from
     */
    public ChartSvg(Brief brief, String source) {
        this.brief = brief;
        this.sentences = new Sentences(
                brief.question().basis(), brief.question().sampling().coverage());
        this.source = source;
        this.rows = brief.estimates().stream().distinct().toList();
        double[] shown = rows.stream()
                .flatMapToDouble(row -> DoubleStream.concat(
                        row.summary().stream().flatMapToDouble(all -> DoubleStream.of(all.low(), all.high())),
                        marks(row).mapToDouble(WeighedMark::value)))
                .filter(value -> value > 0)
                .toArray();
        double least = Arrays.stream(shown).min().orElse(1);
        double most = Arrays.stream(shown).max().orElse(10);
        this.low = ScaleSteps.below(least * 0.97);
        this.high = ScaleSteps.above(most * 1.03);
    }

    /** The text alternative of the picture, one sentence. */
    public String words() {
        return sentences.capitalIndicator() + " per "
                + brief.question().basis().per().words() + ", "
                + sentences.boundary() + ": "
                + String.join(
                        "; ",
                        rows.stream()
                                .map(row -> row.words() + " "
                                        + row.summary()
                                                .map(figure -> row.bound().words() + sentences.footprint(figure))
                                                .orElse(
                                                        row instanceof ModelledEstimate
                                                                ? "no modelled figure"
                                                                : "no evidence"))
                                .toList())
                + (hasModelled() ? "; " + ModelledEstimate.MESSAGE.english() : "") + ".";
    }

    private boolean hasModelled() {
        return rows.stream().anyMatch(ModelledEstimate.class::isInstance);
    }

    public String svg() {
        int height = TOP + ROW * rows.size() + FOOT;
        SvgDrawing drawing = new SvgDrawing(WIDTH, height, words());
        drawing.description(source);
        drawing.text(
                0,
                18,
                SvgDrawing.INK,
                Anchor.START,
                sentences.capitalIndicator() + ", " + sentences.unit() + ", " + sentences.boundary());
        axis(drawing);
        brief.reference().summary().ifPresent(summary -> upright(drawing, summary.median(), DASHES));
        for (int i = 0; i < rows.size(); i++) {
            row(drawing, rows.get(i), TOP + ROW * i + ROW / 2);
        }
        legend(drawing, height);
        return drawing.svg();
    }

    private void axis(SvgDrawing drawing) {
        List<Double> steps = ScaleSteps.between(low, high);
        for (double step : steps) {
            upright(drawing, step, Stroke.thin(SvgDrawing.GRID));
            drawing.text(
                    at(step),
                    TOP + ROW * rows.size() + 18,
                    SvgDrawing.QUIET,
                    Anchor.MIDDLE,
                    SevenDigits.plain(SevenDigits.rounded(step)));
        }
    }

    private void row(SvgDrawing drawing, Estimate row, int middle) {
        boolean reference = row.equals(brief.reference());
        drawing.text(
                LABELS - 12,
                middle + 4,
                reference ? SvgDrawing.REFERENCE : SvgDrawing.INK,
                Anchor.END,
                row.words() + (reference ? " (reference)" : ""));
        Optional<Summary> summary = row.summary().filter(all -> all.low() > 0);
        if (summary.isEmpty()) {
            drawing.text(
                    LABELS + 8,
                    middle + 4,
                    SvgDrawing.QUIET,
                    Anchor.START,
                    row.summary().isPresent()
                            ? "not above zero throughout: see the table"
                            : row instanceof ModelledEstimate ? "no modelled figure" : "no evidence on this basis");
            return;
        }
        Summary all = summary.get();
        if (row instanceof ModelledEstimate) {
            new HatchedBand(drawing, middle - 7, 14)
                    .draw(at(all.low()), at(all.high()), row.bound(), LABELS, WIDTH - RIGHT);
        } else {
            band(drawing, all, middle, reference ? SvgDrawing.REFERENCE_BAND : SvgDrawing.BAND);
        }
        inner(row)
                .ifPresent(mean -> band(
                        drawing, mean, middle, reference ? SvgDrawing.REFERENCE_INNER_BAND : SvgDrawing.INNER_BAND));
        drawing.bar(
                at(all.median()) - 1.5, middle - 11, 3, 22, 0, reference ? SvgDrawing.REFERENCE : SvgDrawing.MEDIAN);
        marks(drawing, row, middle);
    }

    private void band(SvgDrawing drawing, Summary summary, int middle, String colour) {
        drawing.bar(at(summary.low()), middle - 7, at(summary.high()) - at(summary.low()), 14, 3, colour);
    }

    /** The interval of the average of such studies, where the band speaks of more than it. */
    private static Optional<Summary> inner(Estimate row) {
        return row instanceof PublishedEstimate estimate
                        && estimate.speaksOf()
                                .filter(of -> of != IntervalOf.MEAN)
                                .isPresent()
                ? estimate.meanOfStudies().filter(mean -> mean.low() > 0)
                : Optional.empty();
    }

    /** The marks of a row, in lanes above and below its middle where they would lie upon each other. */
    private void marks(SvgDrawing drawing, Estimate row, int middle) {
        double[] ends = {-LANE, -LANE, -LANE};
        marks(row)
                .filter(mark -> mark.value() > 0)
                .sorted(Comparator.comparingDouble(WeighedMark::value))
                .forEach(mark -> {
                    double x = at(mark.value());
                    int lane = 0;
                    for (int i = 1; i < ends.length && x - ends[lane] < LANE; i++) {
                        lane = x - ends[i] >= LANE || ends[i] < ends[lane] ? i : lane;
                    }
                    ends[lane] = x;
                    mark(drawing, mark, x, middle + (lane == 0 ? 0 : lane == 1 ? -LANE : LANE));
                });
    }

    /** As on the pages: a disc for a number seen in the text, half a disc for an abstract, a diamond for second hand, a cross for memory. */
    private static void mark(SvgDrawing drawing, WeighedMark mark, double x, double y) {
        // The area grows with the weight, and the least is still seen.
        double radius = 4.5 * (0.7 + 0.8 * Math.sqrt(mark.weight()));
        Stroke edge = new Stroke(SvgDrawing.MARK, 1.6, "");
        switch (mark.check()) {
            case FULLTEXT -> drawing.circle(x, y, radius, SvgDrawing.MARK, Stroke.thin(SvgDrawing.GROUND));
            case ABSTRACT -> {
                drawing.circle(x, y, radius, SvgDrawing.GROUND, edge);
                drawing.halfDisc(x, y, radius, SvgDrawing.MARK);
            }
            case SECONDARY -> drawing.diamond(x, y, radius * 1.25, SvgDrawing.GROUND, edge);
            case MEMORY -> {
                double arm = radius * 0.8;
                Stroke stroke = new Stroke(SvgDrawing.MARK, 2, "");
                drawing.line(x - arm, y - arm, x + arm, y + arm, stroke);
                drawing.line(x - arm, y + arm, x + arm, y - arm, stroke);
            }
        }
    }

    private static String seen(Grade grade) {
        return switch (grade) {
            case FULLTEXT -> "publication read";
            case ABSTRACT -> "abstract read";
            case SECONDARY -> "quoted elsewhere";
            case MEMORY -> "from memory";
        };
    }

    private void legend(SvgDrawing drawing, int height) {
        if (hasModelled()) {
            legendOfModelled(drawing, height);
            return;
        }
        int y = height - 80;
        double x = 6;
        for (Grade grade : Grade.values()) {
            mark(drawing, new WeighedMark(1, grade, 0.14), x, y - 4);
            drawing.text(x + 10, y, SvgDrawing.QUIET, Anchor.START, seen(grade));
            x += 34 + 7.2 * seen(grade).length();
        }
        drawing.text(x, y, SvgDrawing.QUIET, Anchor.START, "size: its weight");
        String interval = Math.round(100 * brief.question().sampling().coverage()) + " % interval";
        List<String> speaks = rows.stream()
                .flatMap(row -> row.speaksOf().stream())
                .distinct()
                .map(of -> " for " + of.message().english())
                .toList();
        double after = key(drawing, 0, height - 58, SvgDrawing.BAND, interval + String.join("", speaks));
        if (rows.stream().anyMatch(row -> inner(row).isPresent())) {
            key(
                    drawing,
                    after,
                    height - 58,
                    SvgDrawing.INNER_BAND,
                    "for " + IntervalOf.MEAN.message().english());
        }
        drawing.bar(10, height - 49, 3, 16, 0, SvgDrawing.MEDIAN);
        drawing.text(28, height - 36, SvgDrawing.QUIET, Anchor.START, "median");
        lineOfTheReference(drawing, 120, height - 36);
        drawing.text(0, height - 12, SvgDrawing.QUIET, Anchor.START, source);
    }

    /** What the dashed line is, where there is one. */
    private void lineOfTheReference(SvgDrawing drawing, double x, int y) {
        if (brief.reference().summary().isPresent()) {
            drawing.line(x + 8, y - 12, x + 8, y + 4, DASHES);
            drawing.text(
                    x + 20,
                    y,
                    SvgDrawing.QUIET,
                    Anchor.START,
                    "dashed, and red: " + brief.reference().words() + ", the reference, at its median");
        }
    }

    private void legendOfModelled(SvgDrawing drawing, int height) {
        int y = height - 80;
        new HatchedBand(drawing, y - 11, 14).draw(0, 22, Bound.EXACT, 0, 22);
        drawing.text(
                28,
                y,
                SvgDrawing.QUIET,
                Anchor.START,
                ModelledEstimate.MESSAGE.english() + ": "
                        + Math.round(100 * brief.question().sampling().coverage()) + " % interval; stroke: median");
        if (rows.stream().anyMatch(row -> row.bound() != Bound.EXACT)) {
            int below = height - 58;
            new HatchedBand(drawing, below - 11, 14).draw(0, 11, Bound.AT_LEAST, 0, 22);
            drawing.text(
                    28,
                    below,
                    SvgDrawing.QUIET,
                    Anchor.START,
                    "open end: something required is not counted, and the true figure lies on that side");
        }
        lineOfTheReference(drawing, 0, height - 36);
        drawing.text(0, height - 12, SvgDrawing.QUIET, Anchor.START, source);
    }

    /** A piece of a band with its words; gives where the next may begin. */
    private static double key(SvgDrawing drawing, double x, int y, String colour, String words) {
        drawing.bar(x, y - 11, 22, 14, 3, colour);
        drawing.text(x + 28, y, SvgDrawing.QUIET, Anchor.START, words);
        return x + 28 + 7.2 * words.length();
    }

    private void upright(SvgDrawing drawing, double value, Stroke stroke) {
        drawing.line(at(value), TOP - 8, at(value), TOP + ROW * rows.size(), stroke);
    }

    private double at(double value) {
        double share = Math.log(value / low) / Math.log(high / low);
        return LABELS + share * (WIDTH - LABELS - RIGHT);
    }

    private static Stream<WeighedMark> marks(Estimate row) {
        return row instanceof PublishedEstimate estimate && estimate.evidence() instanceof Evidence.PooledEvidence some
                ? some.studies().stream().flatMap(study -> marks(some, study))
                : Stream.empty();
    }

    private static Stream<WeighedMark> marks(Evidence.PooledEvidence some, Study study) {
        return study.findings().stream().map(finding -> mark(some, study, finding));
    }

    private static WeighedMark mark(Evidence.PooledEvidence some, Study study, Harmonised finding) {
        return new WeighedMark(finding.central(), finding.result().cited().check(), some.weight(study, finding));
    }
}
