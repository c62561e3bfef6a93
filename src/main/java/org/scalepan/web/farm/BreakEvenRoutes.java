package org.scalepan.web.farm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.farm.BreakEven;
import org.scalepan.ask.farm.RecordInput;
import org.scalepan.ask.farm.RecordInputs;
import org.scalepan.exchange.read.CommonBasis;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.SideReading;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.input.Input;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.production.records.SystemReading;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;
import org.scalepan.words.Language;

/** Which value of one entry of a farm's records makes it equal to another: {@code POST /v1/break-even}. */
public final class BreakEvenRoutes {
    /** The farm is computed once for each value tried; this is the assumed cost relative to one comparison. */
    private static final int WORK_OF_FOOTPRINTS = 20;

    private final Library library;

    public BreakEvenRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(Route.post("/v1/break-even", List.of(), this::breakEven)
                .computing()
                .speaking());
    }

    private Answer breakEven(Request request) {
        Language language = request.language();
        InputProblem.refuseIfWrong(request.parameters());
        Input body = Input.body(request.sent().json());
        if (body.has("product")) {
            body.fault(
                    "product",
                    "a published product has no records that could be changed: break-even asks for a system of your own; a"
                            + " product can be what it is held against");
        }
        Optional<EditableRecords> notebook = body.object("system").flatMap(new SystemReading(library)::notebook);
        if (!body.has("system")) {
            body.fault("system", "system is missing: the farm or herd whose records are changed");
        }
        Optional<RecordInput> input = input(body, notebook);
        boolean credit = SideReading.credit(body);
        Optional<Side> against = new SideReading(library, credit).one(body, "against", "against_system");
        if (notebook.isPresent() && against.isPresent()) {
            new Side.Recorded(notebook.get().inventory(library), credit)
                    .obstacleTo(against.get())
                    .ifPresent(why -> body.fault("against_system", why));
        }
        CommonBasis one = new CommonBasis(library, body, true);
        Indicator indicator = one.indicator();
        ComparisonBasisReading reading = one.basis();
        ComparisonBasis basis = reading.basis(indicator);
        Sampling sampling = reading.sampling();
        reading.afford(sampling, WORK_OF_FOOTPRINTS);
        body.close();
        InputProblem.refuseIfWrong(body);
        BreakEven answer = BreakEven.of(
                library,
                new BreakEven.BreakEvenQuestion(
                        notebook.orElseThrow(), credit, against.orElseThrow(), input.orElseThrow(), basis, sampling));
        Map<String, Object> question = new LinkedHashMap<>();
        question.put("input", input.get().id());
        question.put("against", against.get().written());
        question.put("indicator", indicator.id());
        question.put("credit", credit ? "yes" : "no");
        question.putAll(body.resolved());
        return Answer.of(Answer.JSON, new BreakEvenView(library, answer, language).json(question))
                .in(language);
    }

    private Optional<RecordInput> input(Input body, Optional<EditableRecords> notebook) {
        Optional<String> name = body.text("input");
        if (!body.has("input")) {
            body.fault("input", "input is missing: the entry of the records that is looked for", RecordInputs.NAMES);
        }
        if (name.isEmpty() || notebook.isEmpty()) {
            return Optional.empty();
        }
        return entry(library, body, "input", name.get(), notebook.get());
    }

    /** The record input of a name; an error lists the inputs of these records and says why this one is not among them. */
    static Optional<RecordInput> entry(
            Library library, Input body, String field, String name, EditableRecords notebook) {
        Map<String, RecordInput> entries = RecordInputs.of(library, notebook);
        RecordInput entry = entries.get(name);
        if (entry == null) {
            RecordInputs.missing(name)
                    .ifPresentOrElse(
                            why -> body.fault(field, "the records have no \"" + name + "\": " + why, entries.keySet()),
                            () -> body.unknown(field, name, entries.keySet(), Nearest.to(name, entries.keySet(), 3)));
        }
        return Optional.ofNullable(entry);
    }
}
