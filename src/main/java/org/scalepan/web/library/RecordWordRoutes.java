package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.factors.table.TableSchema;
import org.scalepan.input.Input;
import org.scalepan.production.EnergyInventory;
import org.scalepan.production.SoldByProducts;
import org.scalepan.production.records.SystemReading;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.RowView;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/**
 * The words that a farm's records may use: regions, feeds, fuels, transport and materials, each with its default library rows, and the terms of
 * the livestock guidelines as records write them.
 */
public final class RecordWordRoutes {
    /** Paths and the tables whose ids records use. */
    public static final Map<String, String> TABLES = tables();

    /** Paths and the parts of the guidelines' vocabulary that records use. */
    public static final Map<String, Guideline> GUIDELINE = guideline();

    static final String STEPS = "/v1/processing-steps";
    static final String REGIONS = "/v1/regions";

    /** Whether a region has a grid factor of its own; the others take that of the nearest place that has. */
    private static final String OWN_GRID = "own_grid";

    private static final String NEEDS_BURDEN = "needs_burden";
    private static final String DEFAULT_ROWS = "default_rows";
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV);
    private static final Map<String, List<Behind>> BEHIND = Map.of(
            "ingredients",
            List.of(
                    new Behind("ingredient_factors", "ingredient", "indicator"),
                    new Behind("ingredient_composition", "ingredient", "quantity"),
                    // The quantity of a yield has no column, because the table holds only one.
                    new Behind("crop_yields", "ingredient", "yield")),
            "energy_carriers",
            List.of(new Behind("energy_factors", "carrier", "quantity")),
            "transport_modes",
            List.of(new Behind("transport_factors", "mode", "quantity")),
            "materials",
            List.of(new Behind("material_factors", "material", "quantity")));
    private static final Behind PROCESSES = new Behind("processing_factors", "process", "quantity");

    private final Library library;

    public RecordWordRoutes(Library library) {
        this.library = library;
    }

    /** A part of the guidelines' vocabulary, and the id prefix that records leave out. */
    public record Guideline(String kind, String prefix) {}

    /** A table of factors: the column of the term and the column of the quantity. */
    private record Behind(String table, String subject, String quantity) {}

    private static Map<String, String> tables() {
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put("/v1/ingredients", "ingredients");
        tables.put("/v1/energy-carriers", "energy_carriers");
        tables.put("/v1/transport-modes", "transport_modes");
        tables.put("/v1/materials", "materials");
        return tables;
    }

    private static Map<String, Guideline> guideline() {
        Map<String, Guideline> parts = new LinkedHashMap<>();
        parts.put("/v1/livestock", new Guideline("category", ""));
        parts.put("/v1/ipcc-regions", new Guideline("ipcc-region", "ipcc."));
        parts.put("/v1/climates", new Guideline("climate", ""));
        parts.put("/v1/manure-systems", new Guideline("manure-system", "mms."));
        return parts;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(List.of("format"));
        parameters.addAll(Csv.PARAMETERS);
        List<Route> routes = new ArrayList<>();
        TABLES.forEach((path, table) -> routes.add(Route.of(path, parameters, request -> inputs(request, table))));
        routes.add(Route.of(STEPS, parameters, this::steps));
        routes.add(Route.of(REGIONS, parameters, this::regions));
        GUIDELINE.forEach((path, part) -> routes.add(Route.of(path, parameters, request -> words(request, part))));
        return routes;
    }

    private Answer inputs(Request request, String name) {
        Table table = library.table(name);
        List<String> columns = new ArrayList<>(
                table.schema().fields().stream().map(TableSchema.Field::name).toList());
        boolean feed = name.equals("ingredients");
        if (feed) {
            columns.add(NEEDS_BURDEN);
        }
        columns.add(DEFAULT_ROWS);
        List<ObjectNode> items = new ArrayList<>();
        for (Row row : table.rows()) {
            ObjectNode item = RowView.json(table, row);
            if (feed) {
                item.put(NEEDS_BURDEN, SoldByProducts.of(library).includes(row.text("id")));
            }
            item.set(DEFAULT_ROWS, behind(BEHIND.getOrDefault(name, List.of()), row.text("id")));
            items.add(item);
        }
        return answer(request, columns, items);
    }

    private Answer regions(Request request) {
        Table table = library.table("regions");
        List<String> columns = new ArrayList<>(
                table.schema().fields().stream().map(TableSchema.Field::name).toList());
        columns.add(OWN_GRID);
        List<ObjectNode> items = new ArrayList<>();
        for (Row row : table.rows()) {
            ObjectNode item = RowView.json(table, row);
            item.put(OWN_GRID, EnergyInventory.hasOwnGrid(library, row.text("id")));
            items.add(item);
        }
        return answer(request, columns, items);
    }

    private Answer steps(Request request) {
        List<ObjectNode> items = new ArrayList<>();
        for (String step : SystemReading.STEPS) {
            ObjectNode item = Json.object();
            item.put("id", step);
            item.set(DEFAULT_ROWS, behind(List.of(PROCESSES), step));
            items.add(item);
        }
        return answer(request, List.of("id", DEFAULT_ROWS), items);
    }

    private Answer words(Request request, Guideline part) {
        List<ObjectNode> items = new ArrayList<>();
        for (Row row : library.table("ipcc_terms").rows()) {
            String term = row.text("id");
            boolean asked = row.text("kind").equals(part.kind());
            // The guidelines' tables have more animals than records of a herd.
            boolean herd = !part.kind().equals("category") || SystemReading.CATEGORIES.contains(term);
            if (asked && herd) {
                ObjectNode item = Json.object();
                item.put("id", term.substring(part.prefix().length()));
                item.put("term", term);
                item.put("name", row.text("name"));
                Json.put(
                        item,
                        "broader",
                        row.optional("broader")
                                .map(broader -> broader.substring(part.prefix().length())));
                item.put("description", row.text("description"));
                items.add(item);
            }
        }
        return answer(request, List.of("id", "term", "name", "broader", "description"), items);
    }

    private ArrayNode behind(List<Behind> tables, String word) {
        ArrayNode rows = Json.array();
        for (Behind behind : tables) {
            Table table = library.table(behind.table());
            for (Row row : table.rows()) {
                if (row.optional(behind.subject()).filter(word::equals).isPresent()
                        && row.text("use").equals("default")) {
                    rows.add(factor(behind, row));
                }
            }
        }
        return rows;
    }

    private static ObjectNode factor(Behind behind, Row row) {
        ObjectNode node = Json.object();
        node.put("id", row.text("id"));
        node.put("quantity", row.optional(behind.quantity()).orElse(behind.quantity()));
        List.of("value", "low", "high").forEach(name -> Json.put(node, name, row.number(name)));
        List.of("spread", "unit", "per", "region").forEach(name -> Json.put(node, name, row.optional(name)));
        Json.put(node, "year", row.integer("year"));
        List.of("luc", "gwp", "allocation", "boundary", "biogenic", "origin", "source", "locator", "check", "note")
                .forEach(name -> Json.put(node, name, row.optional(name)));
        return node;
    }

    private Answer answer(Request request, List<String> columns, List<ObjectNode> items) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        InputProblem.refuseIfWrong(parameters);
        if (format == Format.CSV) {
            Csv csv = new Csv(style, columns);
            for (ObjectNode item : items) {
                Csv.CsvLine line = csv.line();
                columns.forEach(column -> cell(line, item, column));
                line.end();
            }
            return Answer.of(Answer.CSV, csv.text());
        }
        ObjectNode node = Envelope.open(library, request.path(), parameters.resolved());
        ArrayNode array = node.putArray("items");
        items.forEach(array::add);
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node));
    }

    /** Lists are joined by semicolons, as in the dataset; a library row is given by its id. */
    private static void cell(Csv.CsvLine line, ObjectNode item, String column) {
        if (item.path(column).isArray()) {
            List<String> texts = new ArrayList<>();
            item.path(column)
                    .forEach(entry ->
                            texts.add(entry.isObject() ? entry.path("id").asText() : entry.asText()));
            line.text(String.join(";", texts));
            return;
        }
        Optional.of(item.path(column).asText())
                .filter(text -> !text.isEmpty())
                .ifPresentOrElse(line::text, () -> line.empty(1));
    }
}
