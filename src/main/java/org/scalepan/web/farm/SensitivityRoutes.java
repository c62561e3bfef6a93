package org.scalepan.web.farm;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.farm.Sensitivity;
import org.scalepan.exchange.read.CommonBasis;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.SideReading;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** Which inputs the uncertainty of a figure comes from, and how it responds to its records: {@code POST /v1/sensitivity}. */
public final class SensitivityRoutes {
    private static final double USUAL_PERCENT = 10;
    private static final double MOST_PERCENT = 90;
    private static final double LEAST_PERCENT = 0.1;

    private final Library library;

    public SensitivityRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(
                Route.post("/v1/sensitivity", List.of(), this::sensitivity).computing());
    }

    private Answer sensitivity(Request request) {
        InputProblem.refuseIfWrong(request.parameters());
        Input body = Input.body(request.sent().json());
        boolean credit = SideReading.credit(body);
        SideReading sides = new SideReading(library, credit);
        Optional<SideReading.Read> side = sides.read(body, "product", "system");
        Optional<Side> against = body.has("against") || body.has("against_system")
                ? sides.one(body, "against", "against_system")
                : Optional.empty();
        if (side.isPresent() && against.isPresent()) {
            side.get()
                    .side()
                    .obstacleTo(against.get())
                    .ifPresent(why -> body.fault(SideReading.field(against.get(), "against", "against_system"), why));
        }
        CommonBasis one = new CommonBasis(library, body, body.has("system") || body.has("against_system"));
        Indicator indicator = one.indicator();
        double usual = body.number("percent", LEAST_PERCENT, MOST_PERCENT).orElse(USUAL_PERCENT);
        Map<String, Double> percents = percents(body, side.flatMap(SideReading.Read::notebook));
        ComparisonBasisReading reading = one.basis();
        ComparisonBasis basis = reading.basis(indicator);
        Sampling sampling = reading.sampling();
        boolean drawsGiven = body.raw("draws").isPresent();
        Optional<Sensitivity.SensitivityQuestion> read = side.map(found -> new Sensitivity.SensitivityQuestion(
                found.side(), found.notebook(), against, basis, sampling, usual, percents));
        // The number of inputs is known only once the question is valid.
        body.close();
        InputProblem.refuseIfWrong(body);
        Sensitivity.SensitivityQuestion asked = afford(body, read.orElseThrow(), drawsGiven);
        Map<String, Object> question = new LinkedHashMap<>();
        question.put("side", asked.side().written());
        against.ifPresent(found -> question.put("against", found.written()));
        question.put("indicator", indicator.id());
        question.put("credit", credit ? "yes" : "no");
        question.put("percent", usual);
        question.putAll(body.resolved());
        question.put("draws", (long) asked.sampling().draws());
        return Answer.of(Answer.JSON, new SensitivityView(library, Sensitivity.of(library, asked)).json(question));
    }

    /** By default as many draws as the number of inputs allows; more are refused. */
    private Sensitivity.SensitivityQuestion afford(
            Input body, Sensitivity.SensitivityQuestion asked, boolean drawsGiven) {
        int inputs = Math.max(1, Sensitivity.inputs(library, asked).size());
        int most = Sensitivity.MOST_DRAWS_OF_INPUTS / inputs;
        if (asked.sampling().draws() <= most) {
            return asked;
        }
        if (!drawsGiven && most >= Sampling.FEWEST_DRAWS) {
            return asked.drawn(most);
        }
        body.tooMuch(
                "draws",
                most < Sampling.FEWEST_DRAWS
                        ? "this question has " + inputs
                                + " uncertain inputs, too many to take apart: an answer makes at most "
                                + Sensitivity.MOST_DRAWS_OF_INPUTS
                                + " draws of inputs; narrow it, for instance by grade"
                        : "draws may be at most " + most + " for the " + inputs
                                + " uncertain inputs of this question: an answer makes at most "
                                + Sensitivity.MOST_DRAWS_OF_INPUTS + " draws of inputs in all");
        InputProblem.refuseIfWrong(body);
        return asked;
    }

    private Map<String, Double> percents(Input body, Optional<EditableRecords> notebook) {
        Map<String, Double> percents = new LinkedHashMap<>();
        for (Input given : body.objects("spread", Limits.SPREADS)) {
            Optional<String> name = given.text("input");
            if (!given.has("input")) {
                given.fault("input", "input is missing: an entry of the records");
            }
            double percent = given.needNumber("percent", LEAST_PERCENT, MOST_PERCENT);
            given.close();
            if (name.isPresent() && notebook.isPresent()) {
                BreakEvenRoutes.entry(library, given, "input", name.get(), notebook.get())
                        .ifPresent(entry -> percents.put(entry.id(), percent));
            }
        }
        if (!percents.isEmpty() || !body.has("spread") || body.has("system")) {
            return percents;
        }
        body.fault("spread", "spread is for entries of records; a published product has none");
        return percents;
    }
}
