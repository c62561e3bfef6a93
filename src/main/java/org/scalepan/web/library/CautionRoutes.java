package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.scalepan.exchange.read.MarketReading;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Caution;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.RowView;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;
import org.scalepan.words.Language;

/** Cautions about practice and law: all, or those about a product or in a market. */
public final class CautionRoutes {
    static final String PATH = "/v1/cautions";

    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV);

    private final Library library;

    public CautionRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(List.of("product", "market", "format"));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of(PATH, parameters, this::cautions).speaking());
    }

    private Answer cautions(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        Language language = format == Format.CSV ? Language.ENGLISH : request.language();
        Optional<Product> product = parameters.raw("product").isEmpty()
                ? Optional.empty()
                : new ProductReading(library, parameters).one("product").map(item -> item.product());
        Optional<String> market = MarketReading.market(library, parameters);
        InputProblem.refuseIfWrong(parameters);
        Set<String> wanted = library.cautions().stream()
                .filter(caution -> product.map(caution::concerns).orElse(true))
                .filter(caution -> market.map(caution::holdsIn).orElse(true))
                .map(Caution::id)
                .collect(Collectors.toUnmodifiableSet());
        Table table = library.table("cautions");
        List<Row> rows = table.rows().stream()
                .filter(row -> wanted.contains(row.text("id")))
                .toList();
        if (format == Format.CSV) {
            return RowView.csv(table, rows, style).in(language);
        }
        ObjectNode node = Envelope.open(library, request.path(), parameters.resolved());
        ArrayNode items = node.putArray("items");
        rows.forEach(row -> {
            ObjectNode item = RowView.json(table, row);
            item.put("text", language.sayOr("caution." + row.text("id"), row.text("text")));
            items.add(item);
        });
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node)).in(language);
    }
}
