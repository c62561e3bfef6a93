package org.scalepan.web.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.brief.Brief;
import org.scalepan.factors.Grade;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Harmonised;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.Summary;

/**
 * The picture of a brief, for print: a logarithmic scale, one row for each product and the reference, the interval a band, the median a
 * stroke, every published result a mark whose shape shows how its number was checked. Colours are inline, because style sheets do not
 * travel with a picture.
 */
public final class ChartSvg {
    private static final int WIDTH = 760;
    private static final int LABELS = 190;
    private static final int RIGHT = 24;
    private static final int TOP = 46;
    private static final int ROW = 44;
    private static final int FOOT = 74;
    private static final String INK = "#1d2a26";
    private static final String QUIET = "#5f6f69";
    private static final String BAND = "#b9cfc4";
    private static final String MARK = "#7a3b12";

    private final Brief brief;
    private final Sentences sentences;
    private final String source;
    private final List<Estimate> rows;
    private final double low;
    private final double high;

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
                .flatMapToDouble(row -> java.util.stream.DoubleStream.concat(
                        row.summary().stream()
                                .flatMapToDouble(all -> java.util.stream.DoubleStream.of(all.low(), all.high())),
                        findings(row).stream().mapToDouble(Harmonised::central)))
                .filter(value -> value > 0)
                .toArray();
        double least = java.util.Arrays.stream(shown).min().orElse(1);
        double most = java.util.Arrays.stream(shown).max().orElse(10);
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
                                                .map(sentences::footprint)
                                                .orElse("no evidence"))
                                .toList())
                + ".";
    }

    public String svg() {
        int height = TOP + ROW * rows.size() + FOOT;
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                        Locale.ROOT,
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\"",
                        WIDTH,
                        height,
                        Markup.text(words())))
                .append(" font-family=\"system-ui, sans-serif\" font-size=\"13\">\n");
        out.append("<title>").append(Markup.text(words())).append("</title>\n<desc>");
        out.append(Markup.text(source)).append("</desc>\n");
        out.append(String.format(Locale.ROOT, "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>\n", WIDTH, height));
        text(
                out,
                0,
                18,
                INK,
                "start",
                sentences.capitalIndicator() + ", " + sentences.unit() + ", " + sentences.boundary());
        axis(out);
        brief.reference().summary().ifPresent(summary -> line(out, at(summary.median()), INK, "4 3"));
        for (int i = 0; i < rows.size(); i++) {
            row(out, rows.get(i), TOP + ROW * i + ROW / 2);
        }
        legend(out, height);
        return out.append("</svg>\n").toString();
    }

    private void axis(StringBuilder out) {
        int bottom = TOP + ROW * rows.size();
        for (double decade = low; decade <= high * 1.001; decade *= 10) {
            line(out, at(decade), "#d9dfdc", "");
            text(out, at(decade), bottom + 18, QUIET, "middle", SevenDigits.plain(SevenDigits.rounded(decade)));
            for (int part : List.of(2, 5)) {
                if (decade * part < high * 0.999) {
                    text(
                            out,
                            at(decade * part),
                            bottom + 18,
                            QUIET,
                            "middle",
                            SevenDigits.plain(SevenDigits.rounded(decade * part)));
                }
            }
        }
    }

    private void row(StringBuilder out, Estimate row, int middle) {
        boolean reference = row.equals(brief.reference());
        text(out, LABELS - 12, middle + 4, INK, "end", row.words() + (reference ? " (reference)" : ""));
        Optional<Summary> summary = row.summary().filter(all -> all.low() > 0);
        if (summary.isEmpty()) {
            text(
                    out,
                    LABELS + 8,
                    middle + 4,
                    QUIET,
                    "start",
                    row.summary().isPresent()
                            ? "not above zero throughout: see the table"
                            : "no evidence on this basis");
            return;
        }
        Summary all = summary.get();
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%s\" y=\"%d\" width=\"%s\" height=\"14\" rx=\"3\" fill=\"%s\"/>\n",
                n(at(all.low())),
                middle - 7,
                n(at(all.high()) - at(all.low())),
                BAND));
        out.append(String.format(
                Locale.ROOT,
                "<rect x=\"%s\" y=\"%d\" width=\"3\" height=\"22\" fill=\"%s\"/>\n",
                n(at(all.median()) - 1.5),
                middle - 11,
                INK));
        for (Harmonised finding : findings(row)) {
            if (finding.central() > 0) {
                mark(
                        out,
                        at(finding.central()),
                        middle,
                        finding.result().cited().check());
            }
        }
    }

    /** Full for a number seen in the text, half-open for an abstract or a second hand, open and broken for one from memory. */
    private static void mark(StringBuilder out, double x, int y, Grade grade) {
        String fill = grade == Grade.FULLTEXT ? MARK : "#ffffff";
        String dash = grade == Grade.MEMORY ? " stroke-dasharray=\"2 2\"" : "";
        out.append(
                grade == Grade.SECONDARY
                        ? String.format(
                                Locale.ROOT,
                                "<rect x=\"%s\" y=\"%s\" width=\"8\" height=\"8\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.6\"/>\n",
                                n(x - 4),
                                n(y - 4),
                                fill,
                                MARK)
                        : String.format(
                                Locale.ROOT,
                                "<circle cx=\"%s\" cy=\"%d\" r=\"4.5\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.6\"%s/>\n",
                                n(x),
                                y,
                                fill,
                                MARK,
                                dash));
    }

    private void legend(StringBuilder out, int height) {
        int y = height - 36;
        double x = 6;
        for (Grade grade : Grade.values()) {
            mark(out, x, y - 4, grade);
            text(out, x + 10, y, QUIET, "start", grade.id());
            x += 34 + 7.2 * grade.id().length();
        }
        text(
                out,
                x + 4,
                y,
                QUIET,
                "start",
                "band: " + Math.round(100 * brief.question().sampling().coverage()) + " % interval, stroke: median");
        text(out, 0, height - 12, QUIET, "start", source);
    }

    private void line(StringBuilder out, double x, String colour, String dash) {
        out.append(String.format(
                Locale.ROOT,
                "<line x1=\"%s\" x2=\"%s\" y1=\"%d\" y2=\"%d\" stroke=\"%s\"%s/>\n",
                n(x),
                n(x),
                TOP - 8,
                TOP + ROW * rows.size(),
                colour,
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

    private double at(double value) {
        double share = Math.log(value / low) / Math.log(high / low);
        return LABELS + share * (WIDTH - LABELS - RIGHT);
    }

    /** A coordinate: a tenth of a pixel is finer than any screen, and the same on every machine. */
    private static String n(double coordinate) {
        return String.format(Locale.ROOT, "%.1f", coordinate);
    }

    private static List<Harmonised> findings(Estimate row) {
        return row instanceof PublishedEstimate estimate && estimate.evidence() instanceof Evidence.PooledEvidence some
                ? new ArrayList<>(some.findings().toList())
                : List.of();
    }
}
