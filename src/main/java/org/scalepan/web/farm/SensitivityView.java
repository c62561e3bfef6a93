package org.scalepan.web.farm;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Warning;
import org.scalepan.ask.farm.Sensitivity;
import org.scalepan.ask.farm.SensitivityWords;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.Sobol;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.EstimateView;
import org.scalepan.words.Language;

/** Renders a sensitivity as JSON. */
final class SensitivityView {
    private final Library library;
    private final Sensitivity answer;
    private final SensitivityWords words;
    private final Sentences sentences;

    SensitivityView(Library library, Sensitivity answer) {
        this.library = library;
        this.answer = answer;
        this.words = new SensitivityWords(answer);
        this.sentences = new Sentences(
                answer.question().basis(), answer.question().sampling().coverage());
    }

    String json(Map<String, Object> question) {
        ObjectNode node = Json.object();
        node.set("question", Json.map(question));
        node.set("library", Envelope.library(library));
        node.put("sentence", words.sentence());
        node.put("status", answer.sobol().isPresent() ? "ok" : "not-computed");
        Json.put(node, "reason", answer.missing());
        answer.sobol().ifPresent(sobol -> node.set("analysed", analysed(sobol)));
        ArrayNode inputs = node.putArray("inputs");
        answer.inputs().forEach(input -> inputs.add(input(input)));
        ArrayNode entries = node.putArray("you_can_change");
        answer.entries().forEach(swing -> entries.add(entry(swing)));
        node.set("side", EstimateView.json(answer.estimate(), sentences));
        answer.reference().ifPresent(reference -> node.set("reference", EstimateView.json(reference, sentences)));
        List<Estimate> estimates = new ArrayList<>(List.of(answer.estimate()));
        answer.reference().ifPresent(estimates::add);
        Provenance provenance = new Provenance(library, estimates);
        List<Warning> warnings = new ArrayList<>(words.warnings());
        warnings.addAll(provenance.warnings());
        Envelope.close(node, warnings, library, provenance.products(), provenance.references());
        return Json.write(node);
    }

    private ObjectNode analysed(Sobol sobol) {
        ObjectNode node = Json.object();
        node.put("what", words.analysed());
        node.put("central", SevenDigits.rounded(answer.central()));
        node.put("variance", SevenDigits.rounded(sobol.variance()));
        node.put("variance_standard_error", SevenDigits.rounded(sobol.varianceStandardError()));
        node.put("sum_of_first_order", SevenDigits.rounded(answer.sumOfFirst()));
        node.put("sum_of_total", SevenDigits.rounded(answer.sumOfTotal()));
        return node;
    }

    private static ObjectNode input(Sensitivity.UncertainInput input) {
        ObjectNode node = Json.object();
        node.put("id", input.stream().id());
        node.put("kind", input.name().kind().id());
        node.put("name", input.name().words());
        node.set("rows", Json.texts(input.name().rows()));
        Json.put(node, "field", input.name().field());
        share(node, "first_order", input.share().first(), input.share().firstStandardError());
        share(node, "total", input.share().total(), input.share().totalStandardError());
        input.swing().ifPresent(swing -> {
            ObjectNode moved = node.putObject("swing");
            moved.put("low", SevenDigits.rounded(swing.low()));
            moved.put("high", SevenDigits.rounded(swing.high()));
        });
        return node;
    }

    private static void share(ObjectNode node, String name, double share, double standardError) {
        ObjectNode one = node.putObject(name);
        one.put("share", SevenDigits.rounded(share));
        one.put("standard_error", SevenDigits.rounded(standardError));
    }

    private ObjectNode entry(Sensitivity.EntrySwing swing) {
        ObjectNode node = BreakEvenView.entry(swing.entry(), Language.ENGLISH);
        node.put("percent", swing.percent());
        ObjectNode low = node.putObject("lower");
        low.put("value", SevenDigits.rounded(swing.lowValue()));
        low.put("footprint", SevenDigits.rounded(swing.atLow()));
        low.put("change_percent", SevenDigits.rounded(swing.change(swing.atLow())));
        ObjectNode high = node.putObject("higher");
        high.put("value", SevenDigits.rounded(swing.highValue()));
        high.put("footprint", SevenDigits.rounded(swing.atHigh()));
        high.put("change_percent", SevenDigits.rounded(swing.change(swing.atHigh())));
        node.put("text", words.entry(swing));
        return node;
    }
}
