package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.Region;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.ResultView;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** The published results, as in the library. */
public final class ResultRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV);

    private final Library library;

    public ResultRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(
                List.of("product", "form", "indicator", "boundary", "region", "grade", "source", "format"));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of("/v1/results", parameters, this::results));
    }

    private Answer results(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        Optional<String> product =
                filter(parameters, "product", library.products().keySet());
        Optional<String> form = filter(parameters, "form", library.ids("forms"));
        Optional<String> indicator =
                filter(parameters, "indicator", library.indicators().keySet());
        Optional<String> boundary = filter(parameters, "boundary", Boundary.ids());
        Optional<String> region = filter(
                parameters,
                "region",
                library.regions().all().stream().map(Region::id).toList());
        Optional<String> grade = filter(parameters, "grade", library.ids("grades"));
        Optional<String> source =
                filter(parameters, "source", library.references().keySet());
        InputProblem.refuseIfWrong(parameters);
        Optional<Set<String>> products = product.map(this::withNarrower);
        List<PublishedResult> results = library.results().stream()
                .filter(result ->
                        products.map(ids -> ids.contains(result.product())).orElse(true))
                .filter(result -> form.map(result.form()::equals).orElse(true))
                .filter(result -> indicator.map(result.indicator()::equals).orElse(true))
                .filter(result -> boundary.map(result.boundary().id()::equals).orElse(true))
                .filter(result -> region.map(outer -> library.regions().contains(outer, result.region()))
                        .orElse(true))
                .filter(result -> grade.flatMap(Grade::of)
                        .map(lowest -> result.cited().check().isAtLeast(lowest))
                        .orElse(true))
                .filter(result -> source.map(result.cited().source()::equals).orElse(true))
                .toList();
        return format == Format.CSV ? csv(results, style) : json(request, results);
    }

    private Optional<String> filter(Input parameters, String name, java.util.Collection<String> allowed) {
        return parameters.raw(name).isEmpty()
                ? Optional.empty()
                : Optional.of(
                        parameters.oneOf(name, allowed, parameters.raw(name).orElse("")));
    }

    private Set<String> withNarrower(String id) {
        Product product = library.products().get(id);
        return product == null
                ? Set.of()
                : library.withNarrower(product).stream().map(Product::id).collect(Collectors.toUnmodifiableSet());
    }

    private static Answer csv(List<PublishedResult> results, Csv.CsvStyle style) {
        Csv csv = new Csv(style, ResultView.COLUMNS);
        results.forEach(result -> ResultView.csv(csv, result));
        return Answer.of(Answer.CSV, csv.text());
    }

    private Answer json(Request request, List<PublishedResult> results) {
        ObjectNode node =
                Envelope.open(library, request.path(), request.parameters().resolved());
        node.put("count", results.size());
        ArrayNode items = node.putArray("items");
        results.forEach(result -> items.add(ResultView.json(result)));
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node));
    }
}
