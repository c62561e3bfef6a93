package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.scalepan.ask.Warnings;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.literature.Calibration;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.Finding;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.HeldOut;
import org.scalepan.uncertainty.hierarchy.LeaveOneOut.Remaining;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;
import org.scalepan.web.render.Envelope;

/** Renders the calibration of a library. */
final class CalibrationView {
    /** What stands for the indicator in the rows of all indicators together. */
    static final String ALL = "all";

    /** The coverage that is spoken of in words, and at which a library may fail. */
    private static final double SPOKEN = 0.9;

    private static final List<String> COLUMNS = List.of(
            "indicator", "studies_remaining", "coverage", "cases", "held", "share_held", "fewest", "most", "finding");

    private final Library library;
    private final Calibration calibration;

    CalibrationView(Library library, Calibration calibration) {
        this.library = library;
        this.calibration = calibration;
    }

    /** The rows of all indicators together. */
    List<HeldOut> all() {
        return calibration.tables().get(0).rows();
    }

    /** {@code Intervals of 90 % hold, of the studies left out, 36 of 38 where one other remains, …} */
    String text() {
        List<HeldOut> spoken =
                all().stream().filter(row -> row.coverage() == SPOKEN).toList();
        boolean narrow = spoken.stream().anyMatch(HeldOut::isTooNarrow);
        boolean wide = spoken.stream().anyMatch(HeldOut::isWide);
        return "Intervals of 90 % hold, of the studies left out, "
                + spoken.stream()
                        .map(row -> row.held() + " of " + row.cases() + " where " + remain(row.remaining()))
                        .collect(Collectors.joining(", "))
                + ": "
                + (narrow
                        ? "fewer than chance allows, so that they promise too much"
                        : wide ? "more than chance allows, so that they are wide" : "within what chance allows")
                + ".";
    }

    private static String remain(Remaining remaining) {
        return switch (remaining) {
            case ONE -> "one other remains";
            case TWO -> "two remain";
            case THREE_OR_MORE -> "three or more remain";
        };
    }

    /** How many studies remain, as a cell. */
    static String remaining(Remaining remaining) {
        return switch (remaining) {
            case ONE -> "1";
            case TWO -> "2";
            case THREE_OR_MORE -> "3-or-more";
        };
    }

    private static String word(Finding finding) {
        return finding.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String indicator(Calibration.CalibrationTable table) {
        return table.indicator().map(found -> found.id()).orElse(ALL);
    }

    Answer csv(Csv.CsvStyle style) {
        Csv csv = new Csv(style, COLUMNS);
        for (Calibration.CalibrationTable table : calibration.tables()) {
            for (HeldOut row : table.rows()) {
                csv.line()
                        .text(indicator(table))
                        .text(remaining(row.remaining()))
                        .number(row.coverage())
                        .number(row.cases())
                        .number(row.held())
                        .number(row.share())
                        .number(row.fewest())
                        .number(row.most())
                        .text(word(row.finding()))
                        .end();
            }
        }
        return Answer.of(Answer.CSV, csv.text());
    }

    ObjectNode json(String path, Map<String, Object> question) {
        ObjectNode node = Envelope.open(library, path, question);
        node.put("text", text());
        node.put("pools", calibration.pools());
        node.put("prior_scale", library.spreadDefaults().betweenStudies());
        ArrayNode items = node.putArray("items");
        for (Calibration.CalibrationTable table : calibration.tables()) {
            table.rows().forEach(row -> items.add(item(indicator(table), row)));
        }
        ArrayNode each = node.putArray("left_out");
        calibration.leftOut().forEach(one -> each.add(leftOut(one)));
        Envelope.close(
                node,
                Warnings.ownLibrary(library).stream().toList(),
                library,
                List.of(),
                calibration.leftOut().stream()
                        .map(Calibration.StudyLeftOut::study)
                        .distinct()
                        .sorted()
                        .flatMap(study -> library.reference(study).stream())
                        .toList());
        return node;
    }

    private static ObjectNode item(String indicator, HeldOut row) {
        ObjectNode node = Json.object();
        node.put("indicator", indicator);
        node.put("studies_remaining", remaining(row.remaining()));
        node.put("coverage", row.coverage());
        node.put("cases", row.cases());
        node.put("held", row.held());
        row.share().ifPresent(share -> node.put("share_held", SevenDigits.rounded(share)));
        node.put("fewest", row.fewest());
        node.put("most", row.most());
        node.put("finding", word(row.finding()));
        return node;
    }

    private static ObjectNode leftOut(Calibration.StudyLeftOut one) {
        ObjectNode node = Json.object();
        node.put("study", one.study());
        node.put("product", one.question().product().id());
        node.put("form", one.question().form());
        node.put("indicator", one.question().indicator().id());
        node.put("per", one.question().per().id());
        node.put("boundary", one.question().boundary().id());
        node.put("studies_remaining", remaining(one.place().remaining()));
        node.put("share_below", SevenDigits.rounded(one.place().place()));
        return node;
    }

    Document document(String permalink) {
        return new Document.Builder()
                .paragraph(text())
                .add(new Block.TextTable(
                        List.of("indicator", "studies that remain", "promised", "held", "chance allows", "finding"),
                        calibration.tables().stream()
                                .flatMap(table -> table.rows().stream().map(row -> cells(indicator(table), row)))
                                .toList()))
                .link(permalink)
                .untitled();
    }

    private static List<String> cells(String indicator, HeldOut row) {
        return List.of(
                indicator,
                remaining(row.remaining()).replace('-', ' '),
                percent(row.coverage()),
                row.held() + " of " + row.cases(),
                row.fewest() + " to " + row.most(),
                word(row.finding()).replace('-', ' '));
    }

    static String percent(double share) {
        return Math.round(share * 100) + " %";
    }
}
