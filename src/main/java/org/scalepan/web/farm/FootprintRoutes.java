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
import org.scalepan.ask.farm.FarmPlan;
import org.scalepan.ask.farm.SystemAnswer;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.exchange.read.SideReading;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.input.Excerpt;
import org.scalepan.input.Input;
import org.scalepan.production.Inventory;
import org.scalepan.production.RecordField;
import org.scalepan.production.Scope;
import org.scalepan.production.practice.ModelledFarm;
import org.scalepan.production.practice.ModelledFarms;
import org.scalepan.production.records.SystemReading;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;
import org.scalepan.words.Language;

/** A farm or a herd computed from its records: {@code POST /v1/footprint}. Nothing that is sent is stored or logged. */
public final class FootprintRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.XLSX);

    private final Library library;

    public FootprintRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(Route.post("/v1/footprint", List.of("format"), this::footprint)
                .computing()
                .speaking());
    }

    private Answer footprint(Request request) {
        Format format = request.format(FORMATS);
        Language language = request.language();
        InputProblem.refuseIfWrong(request.parameters());
        Input body = Input.body(request.sent().json());
        SystemReading systems = new SystemReading(library);
        Optional<FarmPlan> plan = body.object("plan").flatMap(this::plan);
        Optional<Inventory> system = body.has("plan")
                ? plan.map(planned -> planned.farm().inventory())
                : body.object("system").flatMap(systems::read);
        if (body.has("system") == body.has("plan")) {
            body.fault(
                    "system",
                    body.has("plan")
                            ? "give either system, the records of a farm or herd, or plan, a reference farm and the harvest wished for"
                            : "system is missing: the farm or herd to compute, or plan, a reference farm and the harvest wished for");
        }
        List<Inventory> others = new ArrayList<>();
        List<ProductForm> products = new ArrayList<>();
        List<ModelledFarm> farms = new ArrayList<>();
        body.object("compare").ifPresent(compare -> {
            compare.texts("reference_farms", Limits.SYSTEMS)
                    .forEach(id -> farm(compare, "reference_farms", id).ifPresent(farms::add));
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
        reading.afford(sampling, 1 + others.size() + farms.size() + products.size());
        body.close();
        InputProblem.refuseIfWrong(body);
        SystemAnswer answer = SystemAnswer.of(
                library,
                new SystemAnswer.SystemQuestion(
                        system.orElseThrow(), others, farms, products, bases, credit, sampling));
        Map<String, Object> question = new LinkedHashMap<>();
        question.put("indicators", indicators);
        question.put("products", products.stream().map(ProductForm::written).toList());
        if (!farms.isEmpty()) {
            question.put(
                    "reference_farms",
                    farms.stream().map(farm -> farm.farm().id()).toList());
        }
        plan.ifPresent(planned -> {
            question.put("plan", planned.farm().farm().id());
            question.put("harvest_kg", planned.harvest());
        });
        question.put("credit", credit ? "yes" : "no");
        question.putAll(body.resolved());
        ObjectNode tree = new FootprintView(library, answer, language).tree(question);
        plan.ifPresent(planned -> tree.set("plan", FarmPlanJson.of(planned, language)));
        Answer rendered = format == Format.XLSX
                ? FootprintWorkbook.of(
                        tree,
                        answer.bases().stream()
                                .map(SystemAnswer.IndicatorAnswer::basis)
                                .toList())
                : Answer.of(Answer.JSON, Json.write(tree));
        return rendered.in(language);
    }

    private Optional<FarmPlan> plan(Input given) {
        Optional<ModelledFarm> farm = given.text("system").flatMap(id -> farm(given, "system", id));
        if (!given.has("system")) {
            given.fault("system", "system is missing: a reference farm; /v1/reference-farms lists them");
        }
        double harvest = given.needNumber("harvest_kg", RecordField.HARVEST_KG.least(), RecordField.HARVEST_KG.most());
        given.close();
        return farm.map(found -> FarmPlan.of(library, found, harvest));
    }

    private Optional<ModelledFarm> farm(Input given, String field, String id) {
        Optional<ModelledFarm> farm = ModelledFarms.of(library).find(id);
        if (farm.isEmpty()) {
            List<String> known =
                    library.referenceFarms().stream().map(ReferenceFarm::id).toList();
            given.unclear(
                    field,
                    "unknown reference farm \"" + Excerpt.of(id) + "\"; /v1/reference-farms lists them",
                    Nearest.to(id, known, 3));
        }
        return farm;
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
