package org.scalepan.web.library;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.ModelledAgainstPublished;
import org.scalepan.ask.ModelledAgainstPublished.Agreement;
import org.scalepan.ask.ModelledAgainstPublished.ComparedFarm;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.Sentences;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.quantity.Print;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.Summary;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;
import org.scalepan.web.render.Envelope;
import org.scalepan.words.Language;
import org.scalepan.words.Message;

/** Renders reference farms beside the studies of their products. */
final class ModelledCalibrationView {
    private static final List<String> COLUMNS = List.of(
            "system",
            "product",
            "indicator",
            "per",
            "unit",
            "modelled_median",
            "modelled_low",
            "modelled_high",
            "bound",
            "published_median",
            "published_low",
            "published_high",
            "studies",
            "ratio_of_medians",
            "agreement",
            "model_within_studies",
            "not_counted");

    private final Library library;
    private final ModelledAgainstPublished table;

    ModelledCalibrationView(Library library, ModelledAgainstPublished table) {
        this.library = library;
        this.table = table;
    }

    /** How often studies and models agree, in a sentence. */
    String text() {
        List<ComparedFarm> exact = table.exact();
        long within = exact.stream()
                .filter(pair -> pair.agreement() == Agreement.WITHIN)
                .count();
        long reached = exact.stream().filter(ComparedFarm::modelWithinStudies).count();
        int bounds = table.pairs().size() - exact.size();
        return "Of " + exact.size()
                + " reference farms and indicators that count all that is required, the median of the studies lies in the"
                + " 90 % interval of the model in " + within
                + ", and the median of the model in the 90 % interval of the next study in "
                + reached + "; " + bounds
                + " more are lower bounds. The interval of a model holds what practice and factors leave open, not what"
                + " studies differ by.";
    }

    Answer csv(Csv.CsvStyle style) {
        Csv csv = new Csv(style, COLUMNS);
        for (ComparedFarm pair : table.pairs()) {
            Summary modelled = pair.modelled().summary().orElseThrow();
            Summary published = pair.published().summary().orElseThrow();
            csv.line()
                    .text(pair.farm().farm().id())
                    .text(pair.modelled().product().id())
                    .text(pair.basis().indicator().id())
                    .text(pair.basis().per().id())
                    .text(pair.basis().indicator().unit())
                    .number(modelled.median())
                    .number(modelled.low())
                    .number(modelled.high())
                    .text(pair.modelled().bound().id())
                    .number(published.median())
                    .number(published.low())
                    .number(published.high())
                    .number(pair.published().studies())
                    .number(pair.ratio())
                    .text(pair.agreement().id())
                    .text(pair.modelWithinStudies() ? "yes" : "no")
                    .text(pair.modelled().uncounted().stream()
                            .map(Message::english)
                            .collect(Collectors.joining("; ")))
                    .end();
        }
        return Answer.of(Answer.CSV, csv.text());
    }

    ObjectNode json(String path, Map<String, Object> question) {
        ObjectNode node = Envelope.open(library, path, question);
        node.put("text", text());
        ArrayNode items = node.putArray("items");
        table.pairs().forEach(pair -> items.add(item(pair)));
        List<Estimate> estimates = table.pairs().stream()
                .flatMap(pair -> Stream.<Estimate>of(pair.modelled(), pair.published()))
                .toList();
        Envelope.close(node, new Provenance(library, estimates));
        return node;
    }

    private static ObjectNode item(ComparedFarm pair) {
        ObjectNode node = Json.object();
        node.put("system", pair.farm().farm().id());
        node.put("name", pair.farm().farm().name());
        node.put("product", pair.modelled().product().id());
        node.put("indicator", pair.basis().indicator().id());
        node.put("per", pair.basis().per().id());
        node.put("boundary", pair.basis().boundary().id());
        node.put("unit", pair.basis().indicator().unit());
        node.set("modelled", numbers(pair.modelled().summary().orElseThrow()));
        node.put("bound", pair.modelled().bound().id());
        node.set("not_counted", Json.texts(pair.modelled().uncounted(), Language.ENGLISH));
        node.set("published", numbers(pair.published().summary().orElseThrow()));
        node.put("studies", pair.published().studies());
        node.put("ratio_of_medians", SevenDigits.rounded(pair.ratio()));
        node.put("agreement", pair.agreement().id());
        node.put("model_within_studies", pair.modelWithinStudies());
        return node;
    }

    private static ObjectNode numbers(Summary summary) {
        return Json.object()
                .put("median", SevenDigits.rounded(summary.median()))
                .put("low", SevenDigits.rounded(summary.low()))
                .put("high", SevenDigits.rounded(summary.high()));
    }

    Document document(String permalink) {
        List<List<String>> rows = new ArrayList<>();
        for (ComparedFarm pair : table.pairs()) {
            rows.add(List.of(
                    pair.farm().farm().name(),
                    pair.basis().indicator().unit() + " per "
                            + pair.basis().per().words(),
                    pair.modelled().bound().words()
                            + Sentences.interval(pair.modelled().summary().orElseThrow()),
                    Sentences.interval(pair.published().summary().orElseThrow()),
                    Integer.toString(pair.published().studies()),
                    (pair.modelled().bound() == Bound.AT_LEAST ? "at least " : "") + Print.ratio(pair.ratio()),
                    pair.agreement().id().replace('-', ' ')));
        }
        return new Document.Builder()
                .paragraph(text())
                .add(new Block.TextTable(
                        List.of(
                                "reference farm",
                                "unit",
                                "modelled",
                                "published",
                                "studies",
                                "modelled ÷ published",
                                "finding"),
                        rows))
                .link(permalink)
                .untitled();
    }
}
