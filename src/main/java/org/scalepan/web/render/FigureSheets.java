package org.scalepan.web.render;

import static org.scalepan.web.render.SheetColumn.asPublished;
import static org.scalepan.web.render.SheetColumn.draws;
import static org.scalepan.web.render.SheetColumn.figure;
import static org.scalepan.web.render.SheetColumn.sentence;
import static org.scalepan.web.render.SheetColumn.share;
import static org.scalepan.web.render.SheetColumn.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.IndicatorWording;
import org.scalepan.exchange.text.Json;

/** Sheets of footprints: the figures, a picture of them, what is said of them in words, and the published results behind them. */
public final class FigureSheets {
    private static final String UNIT = "/footprint/unit";

    /** Names and figures first, so that they stand together on the first page; then the basis, and on what they rest. */
    private static final Columns RESULTS = Columns.of(
                    text("Name", "label"),
                    text("Indicator", "indicator"),
                    figure("Median", "/footprint/median", UNIT),
                    figure("Low", "/footprint/low", UNIT),
                    figure("High", "/footprint/high", UNIT),
                    text("Unit", UNIT),
                    text("Bound", "bound"),
                    figure("Times less than the reference (median)", "/times_less/median"),
                    figure("Times less (low)", "/times_less/low"),
                    figure("Times less (high)", "/times_less/high"),
                    text("Times less: bound", "/times_less/bound"),
                    draws("Share of draws with less", "/share_of_draws_less/value"),
                    asPublished("Studies", "studies"),
                    asPublished("Published results", "results"),
                    text("Lowest grade", "lowest_grade"),
                    text("Status", "status"),
                    text("Per", "per"),
                    text("Up to", "boundary"),
                    text("Warming set", "gwp"),
                    text("Land-use change", "luc"),
                    text("Region used", "region_used"),
                    figure("Mean", "/footprint/mean", UNIT),
                    share("Share of draws between low and high", "/footprint/coverage"),
                    text("Interval of", "interval_of"),
                    text("Product", "product"),
                    text("Form", "form"),
                    text("System", "system"),
                    sentence("Sources", "sources"))
            .named(1);

    private static final Columns WORDS = Columns.of(
                    text("Name", "label"),
                    sentence("The figure in words", "sentence"),
                    sentence("Beside the reference", "against_sentence"),
                    sentence("Why there is no figure", "reason"),
                    sentence("What answers instead", "/known_instead/question"),
                    text("Not counted", "not_counted"),
                    sentence("Contradictions", "contradictions"))
            .named(1);

    private static final Columns STUDIES = Columns.of(
                    text("Product", "product"),
                    text("Study", "study"),
                    text("Indicator", "indicator"),
                    text("Form", "form"),
                    share("Weight", "weight"),
                    figure("To this basis, median", "harmonised_median", "unit_here"),
                    asPublished("Printed value", "/published/value"),
                    asPublished("Printed low", "/published/low"),
                    asPublished("Printed high", "/published/high"),
                    text("Printed spread", "/published/spread"),
                    text("Printed unit", "/published/unit"),
                    text("Printed basis", "/published/basis"),
                    text("Printed up to", "/published/boundary"),
                    text("Land-use change as printed", "/published/luc"),
                    text("Warming set as printed", "/published/gwp"),
                    asPublished("Data year", "data_year"),
                    text("Region", "region"),
                    text("Allocation", "allocation"),
                    text("Scale", "scale"),
                    text("Substrate", "substrate"),
                    text("Source", "source"),
                    sentence("Place in the source", "locator"),
                    text("How it was seen", "check"),
                    text("Result", "result"),
                    sentence("Conversions", "conversions"),
                    sentence("Notes on the conversion", "notes"),
                    sentence("Note", "note"))
            .named(2);

    private final List<JsonNode> results = new ArrayList<>();
    private final List<JsonNode> studies = new ArrayList<>();

    /** Adds a figure on a basis, with the results behind it. */
    public void add(JsonNode figure, ComparisonBasis basis) {
        results.add(described(figure, basis));
        for (JsonNode study : figure.path("evidence")) {
            for (JsonNode finding : study.path("findings")) {
                ObjectNode row = finding.deepCopy();
                row.put("indicator", basis.indicator().id());
                row.set("product", figure.path("product"));
                row.set("form", figure.path("form"));
                row.set("study", study.path("study"));
                row.set("unit_here", figure.at(UNIT));
                row.put("conversions", conversions(finding.path("steps")));
                row.set(
                        "notes",
                        Json.texts(Workbook.rows(finding.path("notes")).stream()
                                .map(note -> note.path("text").asText())
                                .toList()));
                studies.add(row);
            }
        }
    }

    /** A figure with its basis, as ids and in words. */
    public static ObjectNode described(JsonNode figure, ComparisonBasis basis) {
        ObjectNode result = figure.deepCopy();
        result.put("indicator", basis.indicator().id());
        result.put("indicator_name", capital(IndicatorWording.of(basis).quantity()));
        result.put("per", basis.per().id());
        result.put("per_words", "per " + basis.per().words());
        result.put("boundary", basis.boundary().id());
        result.put("boundary_words", basis.boundary().words(basis.indicator()));
        if (basis.indicator().isWarming()) {
            result.put("gwp", basis.gwp().id());
            result.put("luc", basis.luc().id());
        }
        result.put("label", label(figure));
        return result;
    }

    /** Puts the sheets into a workbook. */
    public Workbook into(Workbook workbook) {
        return workbook.with(RESULTS.sheet("Results", results))
                .with(ChartSheet.of(results))
                .with(WORDS.sheet("In words", results))
                .with(STUDIES.sheet("Studies", studies));
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String label(JsonNode figure) {
        String name = figure.path("name").asText(figure.path("system").asText());
        String form = figure.path("form").asText();
        return form.isEmpty() || form.equals("fresh") ? name : name + " (" + form + ")";
    }

    /** Each conversion with its library row, as in {@code kg-edible to kg-protein by c01}. */
    private static String conversions(JsonNode steps) {
        return Workbook.rows(steps).stream()
                .map(step -> step.has("from")
                        ? step.path("from").asText() + " to " + step.path("to").asText()
                                + (step.has("row") ? " by " + step.path("row").asText() : "")
                        : step.path("kind").asText() + " kept: "
                                + Workbook.rows(step.path("kept")).stream()
                                        .map(JsonNode::asText)
                                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining("; "));
    }
}
