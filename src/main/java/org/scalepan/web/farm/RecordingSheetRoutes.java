package org.scalepan.web.farm;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.farm.FarmPlan;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.production.RecordField;
import org.scalepan.production.practice.ModelledFarm;
import org.scalepan.production.practice.ModelledFarms;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;
import org.scalepan.web.render.HtmlRenderer;
import org.scalepan.web.render.MarkdownRenderer;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/**
 * A sheet to print and hang up on a farm that has no records yet: what is to be expected by a reference farm, and what to write down from the
 * first day, so that the figure of the farm can be computed after a year. One page of A4.
 */
public final class RecordingSheetRoutes {
    private static final List<Format> FORMATS = List.of(Format.HTML, Format.MARKDOWN);
    private static final double USUAL_HARVEST = 1000;
    /** So many lines fit on the page below what is to be expected. */
    private static final int LINES = 12;

    private static final String BLANK = "\u00a0";

    private final Library library;

    public RecordingSheetRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(Route.of("/v1/recording-sheets/{id}", List.of("harvest_kg", "format"), this::sheet));
    }

    private Answer sheet(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        double harvest = parameters.number(
                "harvest_kg", RecordField.HARVEST_KG.least(), RecordField.HARVEST_KG.most(), USUAL_HARVEST);
        InputProblem.refuseIfWrong(parameters);
        String id = request.variable("id");
        ModelledFarm farm = ModelledFarms.of(library).find(id).orElseThrow(() -> unknown(id));
        Document sheet = document(
                FarmPlan.of(library, farm, harvest), Permalink.of(library, request.path(), parameters.resolved()));
        return format == Format.HTML ? HtmlRenderer.answer(sheet) : MarkdownRenderer.answer(sheet);
    }

    private ProblemException unknown(String id) {
        List<String> known =
                library.referenceFarms().stream().map(ReferenceFarm::id).toList();
        return new ProblemException(Problem.notFound(
                "no reference farm has the id given",
                List.of(FieldError.of("id", "unknown reference farm", List.of(), Nearest.to(id, known, 3)))));
    }

    private static Document document(FarmPlan plan, String permalink) {
        EditableRecords records = plan.farm().records();
        List<String> columns = columns(records);
        return new Document.Builder()
                .paragraph("To be expected in a year of " + plan.farm().farm().name() + " ("
                        + ModelledEstimate.MESSAGE.english()
                        + "): "
                        + plan.amounts().stream()
                                .map(amount -> amount.words() + " " + FarmPlanJson.text(amount))
                                .collect(Collectors.joining("; "))
                        + ".")
                .paragraph(
                        "Write down from the first day; nobody remembers it after a year. Feed as it is fed, with its water.")
                .add(new Block.TextTable(
                        columns, Collections.nCopies(LINES, Collections.nCopies(columns.size(), BLANK))))
                .paragraph(
                        "Once: "
                                + (records instanceof EditableRecords.Fish
                                        ? "the area of water in m2 and what it is; fertiliser and lime"
                                        : "floor of the building and yard in m2; containers, their material and mass")
                                + "; how far feed is brought, and how;"
                                + " what the feed would have been used for otherwise; region. Ask the veterinary authority which feed is lawful.")
                .link(permalink)
                .titled("Recording sheet");
    }

    private static List<String> columns(EditableRecords records) {
        if (records instanceof EditableRecords.Insects) {
            return List.of(
                    "date",
                    "feed, which and kg",
                    "harvest, kg live",
                    "dead or lost",
                    "energy, meter",
                    "water, litres",
                    "frass out, kg");
        }
        if (records instanceof EditableRecords.Fish) {
            return List.of(
                    "date",
                    "feed, which and kg",
                    "harvest, kg live",
                    "put in, fish and kg",
                    "dead or lost",
                    "energy, meter",
                    "water, m3",
                    "fertiliser, manure, lime");
        }
        return List.of(
                "date",
                "feed, which and kg",
                "milk, eggs, live weight",
                "born, bought, dead",
                "energy, meter",
                "water, litres",
                "manure, where to");
    }
}
