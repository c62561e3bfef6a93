package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.literature.Coverage;
import org.scalepan.production.MemoryFactors;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** What the library lacks: the cells of the coverage table, and the factors from memory that inventories still use. */
public final class CoverageRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV);
    private static final List<String> CELL =
            List.of("product", "form", "indicator", "per", "boundary", "studies", "worst_grade", "reason");
    private static final List<String> FACTOR = List.of("id", "table", "about", "quantity", "used_by");

    private final Library library;

    public CoverageRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> style = new ArrayList<>(List.of("format"));
        style.addAll(Csv.PARAMETERS);
        List<String> cells = new ArrayList<>(List.of("product", "indicator", "boundary"));
        cells.addAll(style);
        return List.of(
                Route.of("/v1/library/coverage", cells, this::coverage),
                Route.of("/v1/library/memory-factors", style, this::memory));
    }

    private Answer coverage(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        Optional<String> product =
                filter(parameters, "product", library.products().keySet());
        Optional<String> indicator =
                filter(parameters, "indicator", library.indicators().keySet());
        Optional<String> boundary = filter(parameters, "boundary", Boundary.ids());
        InputProblem.refuseIfWrong(parameters);
        List<Coverage.CoverageCell> cells = Coverage.of(library).cells().stream()
                .filter(cell -> product.map(cell.product().id()::equals).orElse(true))
                .filter(cell -> indicator.map(cell.indicator().id()::equals).orElse(true))
                .filter(cell -> boundary.map(cell.boundary().id()::equals).orElse(true))
                .toList();
        if (format == Format.CSV) {
            Csv csv = new Csv(style, CELL);
            cells.forEach(cell -> line(csv, cell));
            return Answer.of(Answer.CSV, csv.text());
        }
        ObjectNode node = Envelope.open(library, request.path(), parameters.resolved());
        node.put("count", cells.size());
        node.put("filled", (int)
                cells.stream().filter(Coverage.CoverageCell::isFilled).count());
        ArrayNode items = node.putArray("items");
        cells.forEach(cell -> items.add(json(cell)));
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private static Optional<String> filter(Input parameters, String name, java.util.Collection<String> allowed) {
        return parameters.raw(name).map(value -> parameters.oneOf(name, allowed, value));
    }

    private static ObjectNode json(Coverage.CoverageCell cell) {
        ObjectNode node = Json.object();
        node.put("product", cell.product().id());
        node.put("form", cell.product().defaultForm());
        node.put("indicator", cell.indicator().id());
        node.put("per", cell.indicator().defaultPer());
        node.put("boundary", cell.boundary().id());
        node.put("studies", cell.studies());
        Json.put(node, "worst_grade", cell.worstGrade().map(Grade::id));
        Json.put(node, "reason", cell.reason());
        return node;
    }

    private static void line(Csv csv, Coverage.CoverageCell cell) {
        csv.line()
                .text(cell.product().id())
                .text(cell.product().defaultForm())
                .text(cell.indicator().id())
                .text(cell.indicator().defaultPer())
                .text(cell.boundary().id())
                .number(cell.studies())
                .text(cell.worstGrade().map(Grade::id).orElse(""))
                .text(cell.reason().orElse(""))
                .end();
    }

    private Answer memory(Request request) {
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(request.parameters());
        InputProblem.refuseIfWrong(request.parameters());
        List<MemoryFactors.MemoryFactor> factors = MemoryFactors.of(library);
        if (format == Format.CSV) {
            Csv csv = new Csv(style, FACTOR);
            factors.forEach(factor -> csv.line()
                    .text(factor.id())
                    .text(factor.table())
                    .text(factor.about())
                    .text(factor.quantity())
                    .text(String.join("; ", factor.usedBy()))
                    .end());
            return Answer.of(Answer.CSV, csv.text());
        }
        ObjectNode node =
                Envelope.open(library, request.path(), request.parameters().resolved());
        node.put("count", factors.size());
        ArrayNode tables = node.putArray("by_table");
        MemoryFactors.byTable(factors)
                .forEach(
                        (table, count) -> tables.addObject().put("table", table).put("count", count));
        ArrayNode items = node.putArray("items");
        for (MemoryFactors.MemoryFactor factor : factors) {
            ObjectNode item = items.addObject();
            item.put("id", factor.id());
            item.put("table", factor.table());
            item.put("about", factor.about());
            item.put("quantity", factor.quantity());
            item.set("used_by", Json.texts(factor.usedBy()));
        }
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node));
    }
}
