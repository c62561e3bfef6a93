package org.scalepan.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.Comparison;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Ruler;
import org.scalepan.ask.Sampling;
import org.scalepan.factors.Library;

/** Products beside a reference: {@code GET /v1/comparison}. */
final class ComparisonRoutes {
    static final int MOST_PRODUCTS = 20;
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV, Format.MARKDOWN, Format.XLSX);

    private final Library library;

    ComparisonRoutes(Library library) {
        this.library = library;
    }

    List<Route> routes() {
        List<String> parameters = new ArrayList<>(RulerReading.with("products", "indicator", "against", "format"));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of("/v1/comparison", parameters, this::comparison).computing());
    }

    private Answer comparison(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.Style style = Csv.Style.read(parameters);
        ProductReading products = new ProductReading(library, parameters);
        List<ProductForm> asked = products.some("products", MOST_PRODUCTS);
        RulerReading reading = new RulerReading(library, parameters);
        var indicator = reading.indicator("indicator", "ghg");
        Optional<ProductForm> against = products.one("against");
        Ruler ruler = reading.ruler(indicator);
        Sampling sampling = reading.sampling();
        reading.afford(sampling, asked.size());
        parameters.refuseIfWrong();
        Comparison comparison =
                Comparison.of(library, new Comparison.Question(asked, against.orElseThrow(), ruler, sampling));
        ComparisonView view = new ComparisonView(library, comparison);
        Map<String, Object> question = parameters.resolved();
        return switch (format) {
            case CSV -> view.csv(style);
            case MARKDOWN -> Answer.of(Answer.MARKDOWN, view.markdown(request.path(), question));
            case XLSX -> WorkbookView.of(view.tree(request.path(), question), "scalepan-comparison.xlsx");
            default -> Answer.of(Answer.JSON, view.json(request.path(), question));
        };
    }
}
