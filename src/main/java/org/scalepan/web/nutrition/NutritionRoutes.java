package org.scalepan.web.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.nutrition.NutritionQuestion;
import org.scalepan.ask.nutrition.NutritionTable;
import org.scalepan.exchange.read.MarketReading;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.MarkdownRenderer;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;
import org.scalepan.words.Language;

/** Foods side by side: {@code GET /v1/nutrition}. */
public final class NutritionRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV, Format.MARKDOWN, Format.XLSX);

    private final Library library;

    public NutritionRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(NutritionReading.PARAMETERS);
        parameters.addAll(List.of("market", "format"));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of("/v1/nutrition", parameters, this::nutrition).speaking());
    }

    private Answer nutrition(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Language language = request.language();
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        NutritionQuestion question = new NutritionReading(library, parameters).question();
        Optional<String> market = MarketReading.market(library, parameters);
        InputProblem.refuseIfWrong(parameters);
        NutritionTable table = NutritionTable.of(library, question);
        Map<String, Object> resolved = parameters.resolved();
        return switch (format) {
            case CSV -> NutritionCsv.of(table, style);
            case MARKDOWN ->
                MarkdownRenderer.answer(new NutritionDocument(table, market)
                                .document(Permalink.of(library, request.path(), resolved)))
                        .in(Language.ENGLISH);
            case XLSX ->
                NutritionWorkbook.of(new NutritionView(table, market, language).json(request.path(), resolved))
                        .in(language);
            default ->
                Answer.of(
                                Answer.JSON,
                                Json.write(new NutritionView(table, market, language).json(request.path(), resolved)))
                        .in(language);
        };
    }
}
