package org.scalepan.web.farm;

import static org.scalepan.web.render.SheetColumn.figure;
import static org.scalepan.web.render.SheetColumn.sentence;
import static org.scalepan.web.render.SheetColumn.share;
import static org.scalepan.web.render.SheetColumn.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.Columns;
import org.scalepan.web.render.FigureSheets;
import org.scalepan.web.render.Workbook;

/** A computed farm or herd as a workbook: its figures and those beside it, their parts, what was filled in and what looks odd. */
final class FootprintWorkbook {
    private static final Columns PARTS = Columns.of(
            text("Indicator", "indicator"),
            text("Per", "per"),
            text("Up to", "boundary"),
            text("Part", "part"),
            text("Stage", "stage"),
            text("Gas", "gas"),
            text("What", "what"),
            text("Flux", "flux"),
            figure("Amount", "value", "unit"),
            share("Share of the figure", "share"),
            text("Warming set", "gwp"),
            text("Library rows", "rows"));
    private static final Columns GAPS = Columns.of(
            text("Field", "field"),
            text("Kind", "kind"),
            text("Indicators touched", "indicators"),
            sentence("Filled with, or what is not counted", "filled_with"),
            text("Library rows", "rows"));
    private static final Columns REMARKS = Columns.of(text("Code", "code"), sentence("Remark", "text"));

    private FootprintWorkbook() {}

    /**
     * The workbook of an answer.
     *
     * @param bases in the order of the answer's footprints
     */
    static Answer of(ObjectNode answer, List<ComparisonBasis> bases) {
        FigureSheets figures = new FigureSheets();
        List<JsonNode> parts = new ArrayList<>();
        List<JsonNode> footprints = Workbook.rows(answer.path("footprints"));
        for (int i = 0; i < footprints.size(); i++) {
            JsonNode footprint = footprints.get(i);
            ComparisonBasis basis = bases.get(i);
            ObjectNode own = footprint.deepCopy();
            own.set("system", answer.at("/system/name"));
            figures.add(own, basis);
            footprint.path("compare").forEach(other -> figures.add(other, basis));
            parts(footprint, parts);
        }
        return figures.into(new Workbook(answer))
                .with(PARTS.sheet("Parts", parts))
                .with(GAPS.sheet("Gaps", Workbook.rows(answer.path("gaps"))))
                .with(REMARKS.sheet("Remarks", Workbook.rows(answer.path("remarks"))))
                .answer("scalepan-footprint.xlsx");
    }

    private static void parts(JsonNode footprint, List<JsonNode> parts) {
        List.of("by_stage", "by_gas", "lines")
                .forEach(part -> footprint.path(part).forEach(line -> {
                    ObjectNode row = line.deepCopy();
                    row.put("part", part.replace("by_", "").replace("lines", "line"));
                    row.set("unit", footprint.at("/footprint/unit"));
                    List.of("indicator", "per", "boundary").forEach(name -> row.set(name, footprint.path(name)));
                    parts.add(row);
                }));
    }
}
