package org.scalepan.web.compare;

import static org.scalepan.web.render.SheetColumn.asPublished;
import static org.scalepan.web.render.SheetColumn.figure;
import static org.scalepan.web.render.SheetColumn.sentence;
import static org.scalepan.web.render.SheetColumn.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Statistic;
import org.scalepan.ask.compare.EstimateTable;
import org.scalepan.exchange.text.Json;
import org.scalepan.footprint.Bound;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.ChartSheet;
import org.scalepan.web.render.Columns;
import org.scalepan.web.render.EstimateJson;
import org.scalepan.web.render.FigureSheets;
import org.scalepan.web.render.SheetColumn;
import org.scalepan.web.render.Workbook;

/** A table of estimates as a workbook: one line for each product, indicator and unit. */
final class TableWorkbook {
    private TableWorkbook() {}

    static Answer of(ObjectNode answer, EstimateTable table) {
        List<SheetColumn> columns = new ArrayList<>(List.of(
                text("Product", "product"),
                text("Form", "form"),
                text("Indicator", "indicator"),
                text("Per", "per"),
                text("Up to", "boundary")));
        for (Statistic statistic : table.statistics()) {
            columns.add(
                    statistic.isCount()
                            ? asPublished(capital(statistic.id()), statistic.id())
                            : figure(capital(statistic.id()), statistic.id()));
        }
        columns.addAll(List.of(
                text("Unit", "unit"),
                text("Status", "status"),
                text("Bound", "bound"),
                text("Interval of", "interval_of"),
                text("Lowest grade", "lowest_grade"),
                text("Region used", "region_used"),
                text("Sources", "sources"),
                text("Reason", "reason"),
                sentence("In words", "reason_text"),
                sentence("What answers instead", "ask_instead")));
        return new Workbook(answer)
                .with(new Columns(columns, 2).sheet("Table", Workbook.rows(answer.path("rows"))))
                .with(ChartSheet.of(drawn(table)))
                .answer("scalepan-table.xlsx");
    }

    /** What a picture can show: figures that are no bounds, whether or not the table asks for their ends. */
    private static List<JsonNode> drawn(EstimateTable table) {
        List<JsonNode> figures = new ArrayList<>();
        for (EstimateTable.QuotedRow row : table.rows()) {
            row.estimate()
                    .summary()
                    .filter(summary -> table.bounds() || row.estimate().bound() == Bound.EXACT)
                    .ifPresent(summary -> {
                        ObjectNode node = Json.object();
                        node.put("name", row.estimate().product().name());
                        node.put("form", row.estimate().form());
                        node.set(
                                "footprint",
                                EstimateJson.footprint(summary, new Sentences(row.basis(), summary.coverage())));
                        figures.add(FigureSheets.described(node, row.basis()));
                    });
        }
        return figures;
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
