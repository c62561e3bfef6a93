package org.scalepan.web.farm;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.farm.SystemAnswer;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.input.Input;
import org.scalepan.production.Inventory;
import org.scalepan.production.Scope;
import org.scalepan.production.records.SystemReading;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.read.ComparisonBasisReading;
import org.scalepan.web.read.ProductReading;
import org.scalepan.web.read.SideReading;
import org.scalepan.web.render.Json;
import org.scalepan.web.render.WorkbookView;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** A farm or a herd computed from its records: {@code POST /v1/footprint}. Nothing that is sent is stored or logged. */
public final class FootprintRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.XLSX);

    private final Library library;

    public FootprintRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(
                Route.post("/v1/footprint", List.of("format"), this::footprint).computing());
    }

    private Answer footprint(Request request) {
        Format format = request.format(FORMATS);
        InputProblem.refuseIfWrong(request.parameters());
        Input body = Input.body(request.sent().json());
        SystemReading systems = new SystemReading(library);
        Optional<Inventory> system = body.object("system").flatMap(systems::read);
        if (!body.has("system")) {
            body.fault("system", "system is missing: the farm or herd to compute");
        }
        List<Inventory> others = new ArrayList<>();
        List<ProductForm> products = new ArrayList<>();
        body.object("compare").ifPresent(compare -> {
            compare.objects("systems", Limits.SYSTEMS)
                    .forEach(other -> systems.read(other).ifPresent(others::add));
            products.addAll(new ProductReading(library, compare).any("products", Limits.PRODUCTS));
            compare.close();
        });
        boolean credit = SideReading.credit(body);
        List<String> indicators = indicators(body);
        ComparisonBasisReading reading =
                ComparisonBasisReading.ofRecords(library, body).inBody();
        List<ComparisonBasis> bases = bases(body, reading, indicators);
        Sampling sampling = reading.sampling();
        reading.afford(sampling, 1 + others.size() + products.size());
        body.close();
        InputProblem.refuseIfWrong(body);
        SystemAnswer answer = SystemAnswer.of(
                library,
                new SystemAnswer.SystemQuestion(system.orElseThrow(), others, products, bases, credit, sampling));
        Map<String, Object> question = new LinkedHashMap<>();
        question.put("indicators", indicators);
        question.put("products", products.stream().map(ProductForm::written).toList());
        question.put("credit", credit ? "yes" : "no");
        question.putAll(body.resolved());
        ObjectNode tree = new FootprintView(library, answer).tree(question);
        return format == Format.XLSX
                ? WorkbookView.of(tree, "scalepan-footprint.xlsx")
                : Answer.of(Answer.JSON, Json.write(tree));
    }

    private static List<String> indicators(Input body) {
        List<String> asked = body.texts("indicators", Scope.INDICATORS.size());
        asked.stream()
                .filter(name -> !Scope.INDICATORS.contains(name))
                .forEach(name ->
                        body.unknown("indicators", name, Scope.INDICATORS, Nearest.to(name, Scope.INDICATORS, 2)));
        List<String> known =
                asked.stream().filter(Scope.INDICATORS::contains).distinct().toList();
        return known.isEmpty() ? Scope.USUAL_INDICATORS : known;
    }

    private List<ComparisonBasis> bases(Input body, ComparisonBasisReading reading, List<String> indicators) {
        List<ComparisonBasis> bases = indicators.stream()
                .map(id -> reading.basis(
                        Objects.requireNonNull(library.indicators().get(id))))
                .toList();
        // Default unit and boundary belong to an indicator, so several indicators have no common default.
        if (bases.size() > 1 && body.raw("per").isEmpty()) {
            body.unresolve("per");
        }
        if (bases.size() > 1 && !body.has("boundary")) {
            body.unresolve("boundary");
        }
        return bases;
    }
}
