package org.scalepan.web.library;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.Citations;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.Product;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.production.practice.ModelledFarm;
import org.scalepan.production.practice.ModelledFarms;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** Reference farms: what they are, what stands behind each of their numbers, and what they leave out. */
public final class ReferenceFarmRoutes {
    private static final String PATH = "/v1/reference-farms";
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV);
    private static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "product",
            "climate",
            "region",
            "scale",
            "lowest_grade",
            "default_for",
            "not_counted",
            "sentence");

    private static final ObjectMapper READER = new ObjectMapper();

    private final Library library;

    public ReferenceFarmRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(List.of("format"));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of(PATH, parameters, this::all), Route.of(PATH + "/{id}", List.of(), this::one));
    }

    private Answer all(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        InputProblem.refuseIfWrong(parameters);
        List<ModelledFarm> farms = ModelledFarms.of(library).all();
        if (format == Format.CSV) {
            Csv csv = new Csv(style, COLUMNS);
            farms.forEach(farm -> line(csv, farm));
            return Answer.of(Answer.CSV, csv.text());
        }
        ObjectNode node = Envelope.open(library, request.path(), parameters.resolved());
        ArrayNode items = node.putArray("items");
        farms.forEach(farm -> items.add(summary(farm)));
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private Answer one(Request request) {
        Input parameters = request.parameters();
        InputProblem.refuseIfWrong(parameters);
        String id = request.variable("id");
        ModelledFarm farm = ModelledFarms.of(library).find(id).orElseThrow(() -> unknown(id));
        ObjectNode node = Envelope.open(library, request.path(), parameters.resolved());
        node.set("farm", whole(farm));
        Product product = farm.inventory().output().product();
        Citations citations = new Citations();
        rows(farm).values().forEach(row -> row.list("source").forEach(citations::addSource));
        Envelope.close(node, List.of(), library, List.of(product), citations.references(library));
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private ProblemException unknown(String id) {
        List<String> known =
                library.referenceFarms().stream().map(ReferenceFarm::id).toList();
        return new ProblemException(Problem.notFound(
                "no reference farm has the id given",
                List.of(FieldError.of("id", "unknown reference farm", List.of(), Nearest.to(id, known, 3)))));
    }

    private static ObjectNode summary(ModelledFarm farm) {
        ReferenceFarm of = farm.farm();
        ObjectNode node = Json.object();
        node.put("id", of.id());
        node.put("name", of.name());
        node.put("sentence", of.sentence());
        node.put("product", of.product());
        node.put("climate", of.climate());
        Json.put(node, "region", of.region());
        node.put("scale", of.scale());
        Json.put(node, "lowest_grade", farm.lowestGrade().map(Grade::id));
        ArrayNode defaults = node.putArray("default_for");
        of.defaults()
                .forEach(place ->
                        defaults.addObject().put("product", place.product()).put("climate", place.climate()));
        ArrayNode uncounted = node.putArray("uncounted");
        of.uncounted()
                .forEach(input -> uncounted
                        .addObject()
                        .put("field", input.field())
                        .put("why", input.why())
                        .set("bounds", Json.texts(input.bounds())));
        return node;
    }

    private ObjectNode whole(ModelledFarm farm) {
        ObjectNode node = summary(farm);
        Map<String, Row> rows = rows(farm);
        ArrayNode inputs = node.putArray("inputs");
        for (ReferenceFarm.PracticeInput input : farm.farm().inputs()) {
            ObjectNode one = inputs.addObject();
            one.put("field", input.field());
            one.put("basis", input.basis().id());
            Json.put(one, "grade", input.grade().map(Grade::id));
            one.put("why", input.why());
            ArrayNode behind = one.putArray("rows");
            input.rowIds().forEach(id -> Optional.ofNullable(rows.get(id)).ifPresent(row -> behind.add(row(id, row))));
        }
        node.set("system", system(farm.farm()));
        return node;
    }

    private static ObjectNode row(String id, Row row) {
        ObjectNode node = Json.object();
        node.put("id", id);
        List.of("value", "low", "high").forEach(name -> Json.put(node, name, row.number(name)));
        List.of("unit", "source", "locator", "check").forEach(name -> Json.put(node, name, row.optional(name)));
        return node;
    }

    private static JsonNode system(ReferenceFarm farm) {
        try {
            return READER.readTree(farm.system());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(farm.id() + " was read as JSON when the library was loaded", e);
        }
    }

    private Map<String, Row> rows(ModelledFarm farm) {
        List<String> wanted = farm.rows();
        Map<String, Row> found = new LinkedHashMap<>();
        for (Table table : library.tables()) {
            for (Row row : table.rows()) {
                row.optional("id").filter(wanted::contains).ifPresent(id -> found.put(id, row));
            }
        }
        return found;
    }

    private static void line(Csv csv, ModelledFarm farm) {
        ReferenceFarm of = farm.farm();
        csv.line()
                .text(of.id())
                .text(of.name())
                .text(of.product())
                .text(of.climate())
                .text(of.region().orElse(""))
                .text(of.scale())
                .text(farm.lowestGrade().map(Grade::id).orElse(""))
                .text(String.join(
                        ";",
                        of.defaults().stream()
                                .map(place -> place.product() + " " + place.climate())
                                .toList()))
                .text(String.join(
                        ";",
                        of.uncounted().stream()
                                .map(ReferenceFarm.UncountedInput::field)
                                .toList()))
                .text(of.sentence())
                .end();
    }
}
