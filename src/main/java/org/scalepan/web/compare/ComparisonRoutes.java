package org.scalepan.web.compare;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.read.ComparisonBasisReading;
import org.scalepan.web.read.ProductReading;
import org.scalepan.web.render.Csv;
import org.scalepan.web.render.Json;
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
        List<String> parameters =
                new ArrayList<>(ComparisonBasisReading.with("products", "indicator", "against", "format"));
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
        ProductReading products = new ProductReading(library, parameters);
        List<ProductForm> asked = products.some("products", Limits.PRODUCTS);
        ComparisonBasisReading reading = new ComparisonBasisReading(library, parameters);
        var indicator = reading.indicator("indicator", "ghg");
        Optional<ProductForm> against = products.one("against");
        ComparisonBasis basis = reading.basis(indicator);
        Sampling sampling = reading.sampling();
        reading.afford(sampling, asked.size());
        InputProblem.refuseIfWrong(parameters);
        Comparison comparison = Comparison.of(
                library, new Comparison.ComparisonQuestion(asked, against.orElseThrow(), basis, sampling));
        Map<String, Object> question = parameters.resolved();
        return switch (format) {
            case CSV -> new ComparisonCsv(library, comparison).answer(style);
            case MARKDOWN ->
                MarkdownRenderer.answer(new ComparisonDocument(library, comparison)
                                .document(Permalink.of(library, request.path(), question)))
                        .in(Language.ENGLISH);
            case XLSX ->
                ComparisonWorkbook.of(tree(comparison, request, question, language), basis)
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
