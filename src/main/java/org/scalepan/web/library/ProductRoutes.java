package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
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

/** The products, their composition, and the indicators and boundaries with evidence. */
public final class ProductRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV);

    private final Library library;

    public ProductRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(List.of("format"));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(
                Route.of("/v1/products", parameters, this::products),
                Route.of("/v1/products/{id}", List.of(), this::product));
    }

    private Answer products(Request request) {
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(request.parameters());
        InputProblem.refuseIfWrong(request.parameters());
        if (format == Format.CSV) {
            return RowView.csv(
                    library.table("products"), library.table("products").rows(), style);
        }
        ObjectNode node =
                Envelope.open(library, request.path(), request.parameters().resolved());
        ArrayNode items = node.putArray("items");
        library.products().values().forEach(product -> items.add(summary(product)));
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private Answer product(Request request) {
        Input parameters = request.parameters();
        // An invalid parameter must give 400, not 404.
        InputProblem.refuseIfWrong(parameters);
        String id = request.variable("id");
        new ProductReading(library, parameters).written("id", id);
        if (!parameters.faults().isEmpty()) {
            throw new ProblemException(Problem.notFound("no product has the id given", parameters.faults()));
        }
        Product product = java.util.Objects.requireNonNull(library.products().get(withoutForm(id)));
        ObjectNode node = Envelope.open(library, request.path(), parameters.resolved());
        node.set("product", summary(product));
        ArrayNode composition = node.putArray("composition");
        library.composition().stream()
                .filter(row -> row.product().equals(product.id()))
                .forEach(row -> composition.add(RowView.composition(row)));
        node.set("warnings", Json.array());
        node.set("cautions", Envelope.cautions(library, List.of(product)));
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private static String withoutForm(String id) {
        int colon = id.indexOf(':');
        return colon < 0 ? id : id.substring(0, colon);
    }

    private ObjectNode summary(Product product) {
        ObjectNode node = Json.object();
        node.put("id", product.id());
        node.put("name", product.name());
        node.put("group", product.group());
        Json.put(node, "taxon", product.taxon());
        Json.put(node, "stage_eaten", product.stageEaten());
        Json.put(node, "broader", product.broader());
        node.put("default_form", product.defaultForm());
        Json.put(node, "sold_as", product.soldAs());
        node.set("aliases", Json.texts(product.aliases()));
        Json.put(node, "note", product.note());
        node.set("evidence", evidence(product));
        return node;
    }

    /** Which indicators have published results, in which form and at which boundary, and from how many sources. */
    private ArrayNode evidence(Product product) {
        Set<String> ids =
                library.withNarrower(product).stream().map(Product::id).collect(Collectors.toUnmodifiableSet());
        Map<List<String>, List<PublishedResult>> groups = library.results().stream()
                .filter(result -> ids.contains(result.product()))
                .collect(Collectors.groupingBy(
                        result -> List.of(
                                result.indicator(),
                                result.form(),
                                result.boundary().id()),
                        () -> new TreeMap<>(java.util.Comparator.comparing(key -> String.join("/", key))),
                        Collectors.toList()));
        ArrayNode array = Json.array();
        groups.forEach((key, results) -> {
            ObjectNode node = array.addObject();
            node.put("indicator", key.get(0));
            node.put("form", key.get(1));
            node.put("boundary", key.get(2));
            node.put("results", results.size());
            node.put("sources", (int) results.stream()
                    .map(result -> result.cited().source())
                    .distinct()
                    .count());
        });
        return array;
    }
}
