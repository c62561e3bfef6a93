package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.RowView;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** The vocabularies of questions, and each row of the library by its id. */
public final class VocabularyRoutes {
    /** Paths and their tables. */
    public static final Map<String, String> TABLES = tables();

    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV);

    private final Library library;

    public VocabularyRoutes(Library library) {
        this.library = library;
    }

    private static Map<String, String> tables() {
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put("/v1/indicators", "indicators");
        tables.put("/v1/units", "functional_units");
        tables.put("/v1/units-of-measure", "units");
        tables.put("/v1/boundaries", "boundaries");
        tables.put("/v1/forms", "forms");
        tables.put("/v1/grades", "grades");
        tables.put("/v1/spread-kinds", "spread_kinds");
        tables.put("/v1/allocations", "allocations");
        tables.put("/v1/scales", "scales");
        tables.put("/v1/warming-sets", "warming_sets");
        tables.put("/v1/warming-potentials", "warming_potentials");
        tables.put("/v1/gas-shares", "gas_shares");
        tables.put("/v1/stage-splits", "stage_splits");
        tables.put("/v1/paired-ratios", "paired_ratios");
        tables.put("/v1/outliers", "outliers");
        tables.put("/v1/included-results", "included_results");
        tables.put("/v1/composition", "composition");
        tables.put("/v1/claims", "claims");
        tables.put("/v1/amino-acids", "amino_acids");
        tables.put("/v1/amino-acid-patterns", "amino_acid_patterns");
        tables.put("/v1/amino-acid-requirements", "amino_acid_requirements");
        tables.put("/v1/amino-acid-contents", "amino_acid_contents");
        tables.put("/v1/protein-quality", "protein_quality");
        tables.put("/v1/nitrogen-factors", "nitrogen_factors");
        tables.put("/v1/food-energy-factors", "food_energy_factors");
        tables.put("/v1/markets", "markets");
        return tables;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(List.of("format"));
        parameters.addAll(Csv.PARAMETERS);
        List<Route> routes = new ArrayList<>();
        TABLES.forEach((path, table) -> routes.add(Route.of(path, parameters, request -> vocabulary(request, table))));
        routes.add(Route.of("/v1/rows/{id}", List.of(), this::row));
        return routes;
    }

    private Answer vocabulary(Request request, String name) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        InputProblem.refuseIfWrong(parameters);
        Table table = library.table(name);
        if (format == Format.CSV) {
            return RowView.csv(table, table.rows(), style);
        }
        ObjectNode node = Envelope.open(library, request.path(), parameters.resolved());
        ArrayNode items = node.putArray("items");
        table.rows().forEach(row -> items.add(item(table, row)));
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private ObjectNode item(Table table, Row row) {
        ObjectNode node = RowView.json(table, row);
        if (table.schema().name().equals("warming_sets")) {
            Table potentials = library.table("warming_potentials");
            ArrayNode own = node.putArray("potentials");
            potentials.rows().stream()
                    .filter(potential -> potential.text("set").equals(row.text("id")))
                    .forEach(potential -> own.add(RowView.json(potentials, potential)));
        }
        return node;
    }

    /** The row of any id that an answer names, with its publication. */
    private Answer row(Request request) {
        InputProblem.refuseIfWrong(request.parameters());
        String id = request.variable("id");
        Optional<Answer> found =
                find(request, id, row -> row.optional("source").isPresent()).or(() -> find(request, id, row -> true));
        if (found.isPresent()) {
            return found.get();
        }
        List<String> ids = library.tables().stream()
                .flatMap(table -> table.rows().stream())
                .flatMap(row -> row.optional("id").stream())
                .toList();
        throw new ProblemException(Problem.notFound(
                "no row has the id given",
                List.of(FieldError.of("id", "unknown row", List.of(), Nearest.to(id, ids, 3)))));
    }

    /** A row with a source takes precedence over a vocabulary term of the same id. */
    private Optional<Answer> find(Request request, String id, Predicate<Row> wanted) {
        for (Table table : library.tables()) {
            for (Row row : table.rows()) {
                if (row.optional("id").filter(id::equals).isPresent() && wanted.test(row)) {
                    return Optional.of(Answer.of(Answer.JSON, Json.write(row(request, table, row))));
                }
            }
        }
        return Optional.empty();
    }

    private ObjectNode row(Request request, Table table, Row row) {
        ObjectNode node =
                Envelope.open(library, request.path(), request.parameters().resolved());
        node.put("table", table.schema().path());
        node.put("line", row.place().line());
        node.set("row", RowView.json(table, row));
        ArrayNode references = node.putArray("references");
        row.list("source").stream()
                .flatMap(source -> library.reference(source).stream())
                .forEach(reference -> references.add(SourceRoutes.json(reference)));
        Envelope.close(node);
        return node;
    }
}
