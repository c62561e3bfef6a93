package org.scalepan.web.render;

import static org.scalepan.web.render.SheetColumn.figure;
import static org.scalepan.web.render.SheetColumn.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.sheet.CellRange;
import org.scalepan.sheet.DotChart;
import org.scalepan.sheet.Sheet;

/**
 * A sheet with a picture of each group of figures that have a unit in common: the medians as dots, their intervals as whiskers. The cells
 * beside the pictures hold what they show, since a whisker is drawn by its length.
 */
public final class ChartSheet {
    private static final Columns COLUMNS = Columns.of(
            text("Name", "label"),
            figure("Median", "/footprint/median"),
            figure("Above it", "above"),
            figure("Below it", "below"),
            text("Unit", "/footprint/unit"));

    private static final int MOST_PICTURES = 8;
    private static final int ROWS_OF_A_PICTURE = 26;

    private ChartSheet() {}

    /** The sheet of figures as {@link FigureSheets} has them; empty where nothing can be drawn on a scale of powers of ten. */
    public static Optional<Sheet> of(List<JsonNode> figures) {
        Map<String, List<JsonNode>> groups = new LinkedHashMap<>();
        figures.stream()
                .filter(figure -> figure.at("/footprint/low").asDouble() > 0)
                .forEach(figure -> groups.computeIfAbsent(title(figure), unknown -> new ArrayList<>())
                        .add(drawn(figure)));
        List<JsonNode> rows = new ArrayList<>();
        List<DotChart> charts = new ArrayList<>();
        groups.forEach((title, group) -> {
            if (charts.size() < MOST_PICTURES) {
                int first = rows.size() + 1;
                rows.addAll(group);
                charts.add(new DotChart(
                        title,
                        group.get(0).at("/footprint/unit").asText(),
                        new CellRange(0, first, group.size()),
                        new CellRange(1, first, group.size()),
                        new CellRange(2, first, group.size()),
                        new CellRange(3, first, group.size()),
                        group.stream()
                                .mapToDouble(
                                        figure -> figure.at("/footprint/low").asDouble())
                                .min()
                                .orElseThrow(),
                        group.stream()
                                .mapToDouble(
                                        figure -> figure.at("/footprint/high").asDouble())
                                .max()
                                .orElseThrow(),
                        1 + charts.size() * ROWS_OF_A_PICTURE,
                        COLUMNS.columns().size() + 1));
            }
        });
        return charts.isEmpty()
                ? Optional.empty()
                : Optional.of(COLUMNS.sheet("Chart", rows).withCharts(charts));
    }

    private static String title(JsonNode figure) {
        return figure.path("indicator_name").asText() + " "
                + figure.path("per_words").asText() + ", "
                + figure.path("boundary_words").asText() + ": medians and intervals";
    }

    private static ObjectNode drawn(JsonNode figure) {
        ObjectNode node = figure.deepCopy();
        double median = figure.at("/footprint/median").asDouble();
        node.put("above", figure.at("/footprint/high").asDouble() - median);
        node.put("below", median - figure.at("/footprint/low").asDouble());
        return node;
    }
}
