package org.scalepan.web.library;

import java.util.ArrayList;
import java.util.List;
import org.scalepan.ask.ModelledAgainstPublished;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.literature.Calibration;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.MarkdownRenderer;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/**
 * Whether the intervals of the library hold what they promise ({@code GET /v1/calibration}), and whether reference farms and studies
 * agree ({@code GET /v1/calibration/modelled}).
 */
public final class CalibrationRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV, Format.MARKDOWN, Format.SVG);

    private final Library library;

    public CalibrationRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(List.of("format"));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(
                Route.of("/v1/calibration", parameters, this::calibration).computing(),
                Route.of("/v1/calibration/modelled", parameters, this::modelled).computing());
    }

    private Answer calibration(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        InputProblem.refuseIfWrong(parameters);
        CalibrationView view = new CalibrationView(library, Calibration.of(library));
        return switch (format) {
            case CSV -> view.csv(style);
            case MARKDOWN ->
                MarkdownRenderer.answer(view.document(Permalink.of(library, request.path(), parameters.resolved())));
            case SVG -> Answer.of(Answer.SVG, new CalibrationSvg(view.all(), view.text()).svg());
            default -> Answer.of(Answer.JSON, Json.write(view.json(request.path(), parameters.resolved())));
        };
    }

    private Answer modelled(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        InputProblem.refuseIfWrong(parameters);
        ModelledAgainstPublished table = ModelledAgainstPublished.of(library);
        ModelledCalibrationView view = new ModelledCalibrationView(library, table);
        return switch (format) {
            case CSV -> view.csv(style);
            case MARKDOWN ->
                MarkdownRenderer.answer(view.document(Permalink.of(library, request.path(), parameters.resolved())));
            case SVG -> Answer.of(Answer.SVG, new ModelledCalibrationSvg(table.pairs(), view.text()).svg());
            default -> Answer.of(Answer.JSON, Json.write(view.json(request.path(), parameters.resolved())));
        };
    }
}
