package org.scalepan.web.render;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.scalepan.exchange.text.Json;
import org.scalepan.sheet.ExcelFile;
import org.scalepan.sheet.Sheet;
import org.scalepan.web.http.Answer;

/**
 * Renders an answer as a workbook: figures, the studies and records behind them, warnings and cautions, references and the question. It
 * is derived from the JSON answer, so that both agree.
 */
public final class WorkbookView {
    private static final Columns RESULTS = Columns.of(
            "indicator",
            "product",
            "form",
            "system",
            "name",
            "status",
            "per",
            "boundary",
            "gwp",
            "median=/footprint/median",
            "low=/footprint/low",
            "high=/footprint/high",
            "mean=/footprint/mean",
            "coverage=/footprint/coverage",
            "unit=/footprint/unit",
            "studies",
            "results",
            "region_used",
            "times_less=/times_less/median",
            "times_less_low=/times_less/low",
            "times_less_high=/times_less/high",
            "share_of_draws_less=/share_of_draws_less/value",
            "sentence",
            "against_sentence",
            "reason",
            "bound",
            "times_less_bound=/times_less/bound",
            "not_counted",
            "contradictions");

    private static final Columns STUDIES = Columns.of(
            "indicator",
            "product",
            "form",
            "study",
            "result",
            "weight",
            "value=/published/value",
            "low=/published/low",
            "high=/published/high",
            "spread=/published/spread",
            "unit=/published/unit",
            "published_basis=/published/basis",
            "boundary=/published/boundary",
            "luc=/published/luc",
            "gwp=/published/gwp",
            "region",
            "substrate",
            "allocation",
            "scale",
            "source",
            "locator",
            "check",
            "harmonised_median",
            "conversions",
            "notes",
            "note");

    private static final Columns PARTS = Columns.of(
            "indicator", "per", "boundary", "part", "stage", "gas", "what", "flux", "value", "share", "gwp", "rows");
    private static final Columns GAPS = Columns.of("field", "kind", "indicators", "filled_with", "rows");
    private static final Columns REMARKS = Columns.of("code", "text");
    private static final Columns WARNINGS = Columns.of("code", "text", "about");
    private static final Columns CAUTIONS = Columns.of("id", "topic", "text", "sources", "check");
    private static final Columns REFERENCES = Columns.of("id", "label", "text", "doi", "check");
    private static final Columns QUESTION = Columns.of("name", "value");

    private final ObjectNode answer;

    private WorkbookView(ObjectNode answer) {
        this.answer = answer;
    }

    /** The workbook of a comparison or of a computed farm or herd. */
    public static Answer of(ObjectNode answer, String fileName) {
        return new Answer(ExcelFile.MEDIA_TYPE, ExcelFile.of(new WorkbookView(answer).sheets())).named(fileName);
    }

    private List<Sheet> sheets() {
        List<JsonNode> results = new ArrayList<>();
        List<JsonNode> studies = new ArrayList<>();
        List<JsonNode> parts = new ArrayList<>();
        if (answer.has("items")) {
            String indicator = answer.path("question").path("indicator").asText();
            figure(answer.path("reference"), indicator, results, studies);
            answer.path("items").forEach(item -> figure(item, indicator, results, studies));
        }
        for (JsonNode footprint : answer.path("footprints")) {
            String indicator = footprint.path("indicator").asText();
            ObjectNode own = footprint.deepCopy();
            own.put("system", answer.path("system").path("name").asText());
            figure(own, indicator, results, studies);
            footprint.path("compare").forEach(other -> figure(other, indicator, results, studies));
            parts(footprint, parts);
        }
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(RESULTS.sheet("Results", results));
        sheets.add(STUDIES.sheet("Studies", studies));
        if (answer.has("footprints")) {
            sheets.add(PARTS.sheet("Parts", parts));
            sheets.add(GAPS.sheet("Gaps", list(answer.path("gaps"))));
            sheets.add(REMARKS.sheet("Remarks", list(answer.path("remarks"))));
        }
        sheets.add(WARNINGS.sheet("Warnings", list(answer.path("warnings"))));
        sheets.add(CAUTIONS.sheet("Cautions", list(answer.path("cautions"))));
        sheets.add(REFERENCES.sheet("References", list(answer.path("references"))));
        sheets.add(QUESTION.sheet("Question", question()));
        return sheets;
    }

    private static void figure(JsonNode figure, String indicator, List<JsonNode> results, List<JsonNode> studies) {
        ObjectNode result = figure.deepCopy();
        result.put("indicator", indicator);
        results.add(result);
        for (JsonNode study : figure.path("evidence")) {
            for (JsonNode finding : study.path("findings")) {
                ObjectNode row = finding.deepCopy();
                row.put("indicator", indicator);
                row.set("product", figure.path("product"));
                row.set("form", figure.path("form"));
                row.set("study", study.path("study"));
                row.put("conversions", conversions(finding.path("steps")));
                row.set("notes", Json.texts(texts(finding.path("notes"), "text")));
                studies.add(row);
            }
        }
    }

    /** Each conversion with its library row, as in {@code kg-edible to kg-protein by c01}. */
    private static String conversions(JsonNode steps) {
        return String.join(
                "; ",
                list(steps).stream()
                        .map(step -> step.has("from")
                                ? step.path("from").asText() + " to "
                                        + step.path("to").asText()
                                        + (step.has("row")
                                                ? " by " + step.path("row").asText()
                                                : "")
                                : step.path("kind").asText() + " kept: " + String.join(" ", texts(step.path("kept"))))
                        .toList());
    }

    private static void parts(JsonNode footprint, List<JsonNode> parts) {
        List.of("by_stage", "by_gas", "lines")
                .forEach(part -> footprint.path(part).forEach(line -> {
                    ObjectNode row = line.deepCopy();
                    row.put("part", part.replace("by_", "").replace("lines", "line"));
                    List.of("indicator", "per", "boundary").forEach(name -> row.set(name, footprint.path(name)));
                    parts.add(row);
                }));
    }

    private List<JsonNode> question() {
        List<JsonNode> rows = new ArrayList<>();
        answer.path("question").properties().forEach(field -> rows.add(row(field.getKey(), field.getValue())));
        answer.path("library")
                .properties()
                .forEach(field -> rows.add(row("library_" + field.getKey(), field.getValue())));
        if (answer.has("permalink")) {
            rows.add(row("permalink", answer.path("permalink")));
        }
        return rows;
    }

    private static ObjectNode row(String name, JsonNode value) {
        ObjectNode row = Json.object().put("name", name);
        row.set("value", value);
        return row;
    }

    private static List<JsonNode> list(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }

    private static List<String> texts(JsonNode array) {
        return list(array).stream().map(JsonNode::asText).toList();
    }

    private static List<String> texts(JsonNode array, String field) {
        return list(array).stream().map(entry -> entry.path(field).asText()).toList();
    }
}
