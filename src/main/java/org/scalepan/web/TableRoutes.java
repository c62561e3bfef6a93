package org.scalepan.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Quote;
import org.scalepan.ask.Quoting;
import org.scalepan.ask.Ruler;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Warnings;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.uncertainty.Summary;

/** Many cells at once: products × indicators × units, one row each, with the statistics asked for as columns; or one row a product. */
final class TableRoutes {
    static final int MOST_ROWS = 200;
    private static final List<String> STATS = List.of("median", "mean", "low", "high", "studies", "results");
    private static final String LONG = "long";
    private static final String WIDE = "wide";
    private static final List<String> LAYOUTS = List.of(LONG, WIDE);
    private static final List<Format> FORMATS = List.of(Format.CSV, Format.JSON, Format.XML);

    private final Library library;

    TableRoutes(Library library) {
        this.library = library;
    }

    List<Route> routes() {
        List<String> parameters = new ArrayList<>(
                RulerReading.with("products", "indicators", "stats", "layout", "format", CellRoutes.ON_ERROR));
        parameters.addAll(Csv.PARAMETERS);
        return List.of(Route.of("/v1/table", parameters, this::table).computing());
    }

    /** One row: a product under an indicator, per a unit. */
    record Row(Ruler ruler, Quote quote) {
        Optional<Double> number(String stat) {
            return quote.summary().map(summary -> pick(summary, stat));
        }

        /** A statistic as the next cell of a line. */
        void write(String stat, Csv.Line line) {
            switch (stat) {
                case "studies" -> line.number(quote.studies());
                case "results" -> line.number(quote.results());
                default -> number(stat).ifPresentOrElse(line::number, () -> line.empty(1));
            }
        }

        private static double pick(Summary summary, String stat) {
            return switch (stat) {
                case "mean" -> summary.mean();
                case "low" -> summary.low();
                case "high" -> summary.high();
                default -> summary.median();
            };
        }

        String sources() {
            return String.join(" ", quote.evidence().sources());
        }
    }

    private Answer table(Request request) {
        Input parameters = request.parameters();
        CellRoutes.checkOnError(parameters);
        Format format = request.format(FORMATS);
        Csv.Style style = Csv.Style.read(parameters);
        List<ProductForm> products = new ProductReading(library, parameters).some("products", 60);
        List<String> ids = parameters.someOf("indicators", library.indicators().keySet(), List.of("ghg"), 10);
        List<String> stats =
                parameters.someOf("stats", STATS, List.of("median", "low", "high", "studies"), STATS.size());
        RulerReading reading = new RulerReading(library, parameters);
        List<Ruler> rulers = ids.stream()
                .flatMap(id ->
                        Optional.<Indicator>ofNullable(library.indicators().get(id)).stream())
                .flatMap(indicator -> reading.rulers(indicator).stream())
                .toList();
        boolean wide = parameters.oneOf("layout", LAYOUTS, LONG).equals(WIDE);
        if (wide && format != Format.CSV) {
            parameters.fault("layout", "layout=wide is a CSV; the rows of JSON and XML name their unit in a field");
        }
        Sampling sampling = reading.sampling();
        if (products.size() * rulers.size() > MOST_ROWS) {
            parameters.tooMuch(
                    "products",
                    "the table would have " + products.size() * rulers.size() + " rows; at most " + MOST_ROWS
                            + " are allowed");
        } else {
            reading.afford(sampling, products.size() * rulers.size());
        }
        parameters.refuseIfWrong();
        if (rulers.size() > 1) {
            // Each indicator has its own default boundary and unit; what was not given stays open in the question.
            List.of("per", "boundary").stream()
                    .filter(name -> parameters.raw(name).isEmpty())
                    .forEach(parameters::unresolve);
        }
        List<Row> rows = new ArrayList<>();
        for (ProductForm product : products) {
            for (Ruler ruler : rulers) {
                rows.add(new Row(ruler, Quoting.quote(library, product, ruler, sampling)));
            }
        }
        return switch (format) {
            case JSON -> json(request, rows, stats);
            case XML -> xml(rows, stats);
            default -> wide ? WideTable.csv(products, rulers, rows, stats, style) : csv(rows, stats, style);
        };
    }

    private Answer csv(List<Row> rows, List<String> stats, Csv.Style style) {
        List<String> header = new ArrayList<>(List.of("product", "form", "indicator", "unit", "per", "boundary"));
        header.addAll(stats);
        header.addAll(List.of("lowest_grade", "region_used", "status", "sources"));
        Csv csv = new Csv(style, header);
        for (Row row : rows) {
            Csv.Line line = csv.line();
            line.text(row.quote().item().product().id())
                    .text(row.quote().item().form())
                    .text(row.ruler().indicator().id())
                    .text(row.ruler().indicator().unit())
                    .text(row.ruler().per().id())
                    .text(row.ruler().boundary().id());
            stats.forEach(stat -> row.write(stat, line));
            line.text(grade(row))
                    .text(region(row))
                    .text(status(row))
                    .text(row.sources())
                    .end();
        }
        return csv.answer();
    }

    private Answer json(Request request, List<Row> rows, List<String> stats) {
        ObjectNode node =
                Envelope.open(library, request.path(), request.parameters().resolved());
        ArrayNode array = node.putArray("rows");
        for (Row row : rows) {
            ObjectNode one = array.addObject();
            one.put("product", row.quote().item().product().id());
            one.put("form", row.quote().item().form());
            one.put("indicator", row.ruler().indicator().id());
            one.put("unit", row.ruler().indicator().unit());
            one.put("per", row.ruler().per().id());
            one.put("boundary", row.ruler().boundary().id());
            for (String stat : stats) {
                switch (stat) {
                    case "studies" -> one.put("studies", row.quote().studies());
                    case "results" -> one.put("results", row.quote().results());
                    default -> row.number(stat).ifPresent(value -> one.put(stat, Numbers.rounded(value)));
                }
            }
            Json.put(one, "lowest_grade", row.quote().lowestGrade().map(Grade::id));
            Json.put(one, "region_used", row.quote().regionUsed());
            one.put("status", status(row));
            one.set("sources", Json.texts(row.quote().evidence().sources()));
        }
        List<Quote> quotes = rows.stream().map(Row::quote).toList();
        List<Product> products =
                quotes.stream().map(quote -> quote.item().product()).distinct().toList();
        org.scalepan.ask.Citations citations = new org.scalepan.ask.Citations();
        quotes.forEach(citations::add);
        Envelope.close(node, Warnings.of(library, quotes), library, products, citations.references(library));
        return Answer.of(Answer.JSON, Json.write(node));
    }

    /** Small XML without namespaces, because the spreadsheet functions that read XML stumble over them. */
    private Answer xml(List<Row> rows, List<String> stats) {
        StringWriter out = new StringWriter();
        try {
            XMLStreamWriter writer = XMLOutputFactory.newFactory().createXMLStreamWriter(out);
            writer.writeStartDocument("UTF-8", "1.0");
            writer.writeStartElement("table");
            writer.writeAttribute("library", library.version().digest());
            for (Row row : rows) {
                writer.writeStartElement("row");
                element(writer, "product", row.quote().item().product().id());
                element(writer, "form", row.quote().item().form());
                element(writer, "indicator", row.ruler().indicator().id());
                element(writer, "unit", row.ruler().indicator().unit());
                element(writer, "per", row.ruler().per().id());
                element(writer, "boundary", row.ruler().boundary().id());
                for (String stat : stats) {
                    String number = switch (stat) {
                        case "studies" -> Integer.toString(row.quote().studies());
                        case "results" -> Integer.toString(row.quote().results());
                        default -> row.number(stat).map(Numbers::plain).orElse("");
                    };
                    element(writer, stat, number);
                }
                element(writer, "lowest_grade", grade(row));
                element(writer, "region_used", region(row));
                element(writer, "status", status(row));
                element(writer, "sources", row.sources());
                writer.writeEndElement();
            }
            writer.writeEndElement();
            writer.writeEndDocument();
            writer.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("plain text can always be written as XML", e);
        }
        return Answer.of(Answer.XML, out.toString());
    }

    private static void element(XMLStreamWriter writer, String name, String text) throws XMLStreamException {
        writer.writeStartElement(name);
        writer.writeCharacters(text);
        writer.writeEndElement();
    }

    private static String grade(Row row) {
        return row.quote().lowestGrade().map(Grade::id).orElse("");
    }

    private static String region(Row row) {
        return row.quote().regionUsed().orElse("");
    }

    private static String status(Row row) {
        return row.quote().summary().isPresent() ? "ok" : "no-evidence";
    }
}
