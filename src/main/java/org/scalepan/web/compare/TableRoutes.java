package org.scalepan.web.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Statistic;
import org.scalepan.ask.compare.EstimateTable;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** Many cells at once: products × indicators × units, one row each, with the statistics asked for as columns; or one row per product. */
public final class TableRoutes {
    private static final List<String> STATS =
            Stream.of(Statistic.values()).map(Statistic::id).toList();
    private static final String LONG = "long";
    private static final String WIDE = "wide";
    private static final List<String> LAYOUTS = List.of(LONG, WIDE);
    private static final List<Format> FORMATS = List.of(Format.CSV, Format.JSON, Format.XML, Format.XLSX);

    private final Library library;

    public TableRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(ComparisonBasisReading.with(
                "products", "indicators", "stats", "layout", "format", CellRoutes.BOUNDS, CellRoutes.ON_ERROR));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of("/v1/table", parameters, this::table).computing());
    }

    private Answer table(Request request) {
        Input parameters = request.parameters();
        CellRoutes.checkOnError(parameters);
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        List<ProductForm> products = new ProductReading(library, parameters).some("products", Limits.PRODUCTS_OF_TABLE);
        List<String> ids = parameters.someOf(
                "indicators", library.indicators().keySet(), List.of("ghg"), Limits.INDICATORS_OF_TABLE);
        List<String> stats =
                parameters.someOf("stats", STATS, List.of("median", "low", "high", "studies"), STATS.size());
        ComparisonBasisReading reading = new ComparisonBasisReading(library, parameters);
        List<ComparisonBasis> bases = ids.stream()
                .flatMap(id ->
                        Optional.<Indicator>ofNullable(library.indicators().get(id)).stream())
                .flatMap(indicator -> reading.bases(indicator).stream())
                .toList();
        boolean wide = parameters.oneOf("layout", LAYOUTS, LONG).equals(WIDE);
        if (wide && format != Format.CSV) {
            parameters.fault("layout", "layout=wide is a CSV; the rows of JSON and XML name their unit in a field");
        }
        boolean bounds = CellRoutes.readBounds(parameters);
        Sampling sampling = reading.sampling();
        if (products.size() * bases.size() > Limits.ROWS_OF_TABLE) {
            parameters.tooMuch(
                    "products",
                    "the table would have " + products.size() * bases.size() + " rows; at most " + Limits.ROWS_OF_TABLE
                            + " are allowed");
        } else {
            reading.afford(sampling, products.size() * bases.size());
        }
        InputProblem.refuseIfWrong(parameters);
        if (bases.size() > 1) {
            // Each indicator has its own default boundary and unit; parameters that were not given stay unset in the
            // resolved question.
            List.of("per", "boundary").stream()
                    .filter(name -> parameters.raw(name).isEmpty())
                    .forEach(parameters::unresolve);
        }
        EstimateTable table = EstimateTable.of(
                library,
                products,
                bases,
                sampling,
                stats.stream().flatMap(id -> Statistic.of(id).stream()).toList(),
                bounds);
        return switch (format) {
            case JSON ->
                Answer.of(
                        Answer.JSON, Json.write(TableJson.tree(library, table, request.path(), parameters.resolved())));
            case XLSX -> TableWorkbook.of(TableJson.tree(library, table, request.path(), parameters.resolved()), table);
            case XML -> TableXml.of(library, table);
            default -> wide ? WideTableCsv.of(table, style) : LongTableCsv.of(table, style);
        };
    }
}
