package org.scalepan.web.compare;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.exchange.read.ComparisonReading;
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

/** Products beside a reference: {@code GET /v1/comparison}. */
public final class ComparisonRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV, Format.MARKDOWN, Format.XLSX);

    private final Library library;

    public ComparisonRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(ComparisonReading.PARAMETERS);
        parameters.add("format");
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of("/v1/comparison", parameters, this::comparison)
                .computing()
                .speaking());
    }

    private Answer comparison(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Language language = request.language();
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        Optional<Comparison.ComparisonQuestion> asked = ComparisonReading.read(library, parameters);
        InputProblem.refuseIfWrong(parameters);
        Comparison comparison = Comparison.of(library, asked.orElseThrow());
        Map<String, Object> question = parameters.resolved();
        return switch (format) {
            case CSV -> new ComparisonCsv(library, comparison).answer(style);
            case MARKDOWN ->
                MarkdownRenderer.answer(new ComparisonDocument(library, comparison)
                                .document(Permalink.of(library, request.path(), question)))
                        .in(Language.ENGLISH);
            case XLSX ->
                ComparisonWorkbook.of(
                                tree(comparison, request, question, language),
                                asked.orElseThrow().basis())
                        .in(language);
            default ->
                Answer.of(Answer.JSON, Json.write(tree(comparison, request, question, language)))
                        .in(language);
        };
    }

    private ObjectNode tree(Comparison comparison, Request request, Map<String, Object> question, Language language) {
        return new ComparisonJson(library, comparison, language).tree(request.path(), question);
    }
}
