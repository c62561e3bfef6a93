package org.scalepan.web.farm;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.farm.BreakEven;
import org.scalepan.ask.farm.BreakEvenWords;
import org.scalepan.ask.farm.RecordInput;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.EstimateView;
import org.scalepan.words.Language;

/** Renders a break-even as JSON. */
final class BreakEvenView {
    private final Library library;
    private final BreakEven answer;
    private final BreakEvenWords words;
    private final Sentences sentences;

    BreakEvenView(Library library, BreakEven answer, Language language) {
        this.library = library;
        this.answer = answer;
        this.words = new BreakEvenWords(answer, language);
        this.sentences = new Sentences(
                answer.question().basis(), answer.question().sampling().coverage(), language);
    }

    String json(Map<String, Object> question) {
        ObjectNode node = Json.object();
        node.set("question", Json.map(question));
        node.set("library", Envelope.library(library));
        node.put("sentence", words.sentence());
        node.set("input", entry(answer.question().input(), sentences.language()));
        if (answer.outcome() instanceof BreakEven.FoundValue found) {
            node.put("status", "ok");
            node.set("break_even", found(found));
        } else if (answer.outcome() instanceof BreakEven.NoBreakEven none) {
            node.put("status", "none");
            node.put("reason", none.reason().id());
            none.nearest().ifPresent(limit -> {
                ObjectNode nearest = node.putObject("nearest");
                nearest.put("value", SevenDigits.rounded(limit.value()));
                sides(nearest, limit.footprint(), limit.reference());
            });
        }
        node.set("system", EstimateView.json(answer.system(), sentences));
        node.set("reference", EstimateView.json(answer.reference(), sentences));
        Envelope.close(
                node, new Provenance(library, List.of(answer.system(), answer.reference())), sentences.language());
        return Json.write(node);
    }

    static ObjectNode entry(RecordInput entry, Language language) {
        ObjectNode node = Json.object();
        node.put("id", entry.id());
        node.put("name", entry.message().in(language));
        node.put("unit", entry.unit());
        node.put("present", SevenDigits.rounded(entry.present()));
        node.put("least", entry.least());
        node.put("most", entry.most());
        Json.put(node, "along", entry.along(), language);
        return node;
    }

    private ObjectNode found(BreakEven.FoundValue found) {
        ObjectNode node = Json.object();
        node.put("value", SevenDigits.rounded(found.value()));
        node.put("bound", found.bound().id());
        node.put("text", sentences.language().say(found.bound().message(words.value(found.value()))));
        answer.times().ifPresent(times -> node.put("times_present", SevenDigits.rounded(times)));
        BreakEven.ValueRange range = found.range();
        ObjectNode draws = node.putObject("range");
        range.low().ifPresent(low -> draws.put("low", SevenDigits.rounded(low)));
        range.evenOdds().ifPresent(even -> draws.put("even_odds", SevenDigits.rounded(even)));
        range.high().ifPresent(high -> draws.put("high", SevenDigits.rounded(high)));
        draws.put("coverage", answer.question().sampling().coverage());
        Json.put(draws, "text", words.range());
        if (answer.reference().bound().minus(answer.system().bound()).supportsAtLeast()) {
            node.put("less_when", found.rising() ? "below" : "above");
        }
        ObjectNode there = node.putObject("there");
        sides(there, found.footprint(), found.reference());
        return node;
    }

    private void sides(ObjectNode node, double system, double reference) {
        node.put("system", SevenDigits.rounded(system));
        node.put("reference", SevenDigits.rounded(reference));
        node.put("unit", sentences.unitField());
    }
}
