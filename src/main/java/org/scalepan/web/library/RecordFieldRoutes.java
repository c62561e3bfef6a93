package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.production.FieldDefinition;
import org.scalepan.production.RecordField;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** The fields that a farm's records may have: {@code GET /v1/record-fields}. The form of the page for farms is made from it. */
public final class RecordFieldRoutes {
    private static final String PATH = "/v1/record-fields";
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.CSV);
    private static final List<String> COLUMNS =
            List.of("path", "kind", "unit", "least", "most", "systems", "words", "list", "usual", "description");

    private final Library library;

    public RecordFieldRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(List.of("format"));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of(PATH, parameters, this::fields));
    }

    private Answer fields(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        InputProblem.refuseIfWrong(parameters);
        if (format == Format.CSV) {
            Csv csv = new Csv(style, COLUMNS);
            for (RecordField field : RecordField.values()) {
                line(csv, field.definition());
            }
            return Answer.of(Answer.CSV, csv.text());
        }
        ObjectNode node = Envelope.open(library, request.path(), parameters.resolved());
        ArrayNode items = node.putArray("items");
        for (RecordField field : RecordField.values()) {
            items.add(json(field.definition()));
        }
        Envelope.close(node);
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private static ObjectNode json(FieldDefinition field) {
        ObjectNode node = Json.object();
        node.put("path", field.path());
        node.put("kind", kind(field));
        if (field.kind().isNumber()) {
            node.put("unit", field.unit());
            node.put("least", SevenDigits.rounded(field.least()));
            node.put("most", SevenDigits.rounded(field.most()));
        }
        if (!field.systems().isEmpty()) {
            node.set("systems", Json.texts(systems(field)));
        }
        if (!field.words().isEmpty()) {
            node.set("words", Json.texts(field.words()));
        }
        Json.put(node, "list", field.list());
        Json.put(node, "usual", field.usual());
        Json.put(node, "description", field.description());
        return node;
    }

    private static void line(Csv csv, FieldDefinition field) {
        Csv.CsvLine line = csv.line();
        line.text(field.path());
        line.text(kind(field));
        if (field.kind().isNumber()) {
            line.text(field.unit());
            line.number(field.least());
            line.number(field.most());
        } else {
            line.empty(3);
        }
        line.text(String.join(";", systems(field)));
        line.text(String.join(";", field.words()));
        optional(line, field.list());
        optional(line, field.usual());
        optional(line, field.description());
        line.end();
    }

    private static void optional(Csv.CsvLine line, Optional<String> text) {
        text.ifPresentOrElse(line::text, () -> line.empty(1));
    }

    private static String kind(FieldDefinition field) {
        return field.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static List<String> systems(FieldDefinition field) {
        return field.systems().stream().map(FieldDefinition.SystemKind::id).toList();
    }
}
