package org.scalepan.web.render;

import java.util.Arrays;
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
 * The picture of a brief, for print: a logarithmic scale, one row for each product and the reference. The interval is a band, that of the
 * average of such studies a darker one within it, the median a stroke; every published result is a mark whose shape shows how its number was
 * checked and whose size shows what it weighs.
 */
public final class ChartSvg {
    private static final int WIDTH = 760;
    private static final int LABELS = 190;
    private static final int RIGHT = 24;
    private static final int TOP = 46;
    private static final int ROW = 44;
    private static final int FOOT = 96;

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
        this.low = Math.pow(10, Math.floor(Math.log10(least * 0.95)));
        this.high = Math.max(10 * low, Math.pow(10, Math.ceil(Math.log10(most * 1.05))));
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
        brief.reference()
                .summary()
                .ifPresent(summary -> upright(drawing, summary.median(), new Stroke(SvgDrawing.INK, 1, "4 3")));
        for (int i = 0; i < rows.size(); i++) {
            row(drawing, rows.get(i), TOP + ROW * i + ROW / 2);
        }
        legend(drawing, height);
        return drawing.svg();
    }

    private void axis(SvgDrawing drawing) {
        for (double decade = low; decade <= high * 1.001; decade *= 10) {
            upright(drawing, decade, Stroke.thin(SvgDrawing.GRID));
            for (int part : List.of(1, 2, 5)) {
                if (part == 1 || decade * part < high * 0.999) {
                    drawing.text(
                            at(decade * part),
                            TOP + ROW * rows.size() + 18,
                            SvgDrawing.QUIET,
                            Anchor.MIDDLE,
                            SevenDigits.plain(SevenDigits.rounded(decade * part)));
                }
            }
        }
    }

    private void row(SvgDrawing drawing, Estimate row, int middle) {
        boolean reference = row.equals(brief.reference());
        drawing.text(
                LABELS - 12, middle + 4, SvgDrawing.INK, Anchor.END, row.words() + (reference ? " (reference)" : ""));
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
            band(drawing, all, middle, SvgDrawing.BAND);
        }
        inner(row).ifPresent(mean -> band(drawing, mean, middle, SvgDrawing.INNER_BAND));
        drawing.bar(at(all.median()) - 1.5, middle - 11, 3, 22, 0, SvgDrawing.INK);
        marks(row).filter(mark -> mark.value() > 0).forEach(mark -> mark(drawing, mark, at(mark.value()), middle));
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

    /** Full for a number seen in the text, half-open for an abstract or a second hand, open and broken for one from memory. */
    private static void mark(SvgDrawing drawing, WeighedMark mark, double x, double y) {
        // The area grows with the weight, and the least is still seen.
        double radius = 4.5 * (0.7 + 0.8 * Math.sqrt(mark.weight()));
        String fill = mark.check() == Grade.FULLTEXT ? SvgDrawing.MARK : SvgDrawing.GROUND;
        Stroke stroke = new Stroke(SvgDrawing.MARK, 1.6, mark.check() == Grade.MEMORY ? "2 2" : "");
        if (mark.check() == Grade.SECONDARY) {
            double side = radius * 16 / 9;
            drawing.square(x - side / 2, y - side / 2, side, fill, stroke);
        } else {
            drawing.circle(x, y, radius, fill, stroke);
        }
    }

    private void legend(SvgDrawing drawing, int height) {
        if (hasModelled()) {
            legendOfModelled(drawing, height);
            return;
        }
        int y = height - 58;
        double x = 6;
        for (Grade grade : Grade.values()) {
            mark(drawing, new WeighedMark(1, grade, 0.14), x, y - 4);
            drawing.text(x + 10, y, SvgDrawing.QUIET, Anchor.START, grade.id());
            x += 34 + 7.2 * grade.id().length();
        }
        drawing.text(x + 4, y, SvgDrawing.QUIET, Anchor.START, "the larger, the more the study weighs; stroke: median");
        String interval = Math.round(100 * brief.question().sampling().coverage()) + " % interval";
        List<String> speaks = rows.stream()
                .flatMap(row -> row.speaksOf().stream())
                .distinct()
                .map(of -> " for " + of.message().english())
                .toList();
        double after = key(drawing, 0, height - 36, SvgDrawing.BAND, interval + String.join("", speaks));
        if (rows.stream().anyMatch(row -> inner(row).isPresent())) {
            key(
                    drawing,
                    after,
                    height - 36,
                    SvgDrawing.INNER_BAND,
                    "for " + IntervalOf.MEAN.message().english());
        }
        drawing.text(0, height - 12, SvgDrawing.QUIET, Anchor.START, source);
    }

    private void legendOfModelled(SvgDrawing drawing, int height) {
        int y = height - 58;
        new HatchedBand(drawing, y - 11, 14).draw(0, 22, Bound.EXACT, 0, 22);
        drawing.text(
                28,
                y,
                SvgDrawing.QUIET,
                Anchor.START,
                ModelledEstimate.MESSAGE.english() + ": "
                        + Math.round(100 * brief.question().sampling().coverage()) + " % interval; stroke: median");
        if (rows.stream().anyMatch(row -> row.bound() != Bound.EXACT)) {
            int below = height - 36;
            new HatchedBand(drawing, below - 11, 14).draw(0, 11, Bound.AT_LEAST, 0, 22);
            drawing.text(
                    28,
                    below,
                    SvgDrawing.QUIET,
                    Anchor.START,
                    "open end: something required is not counted, and the true figure lies on that side");
        }
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
