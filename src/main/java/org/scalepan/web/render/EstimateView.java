package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Sentences;
import org.scalepan.exchange.text.Json;

/** Summarises one side of a question: its name, figure and sentence. */
public final class EstimateView {
    private EstimateView() {}

    public static ObjectNode json(Estimate estimate, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("name", estimate.name().in(sentences.language()));
        node.put("product", estimate.product().id());
        node.put("status", estimate.summary().isPresent() ? "ok" : "no-evidence");
        Json.put(node, "reason", estimate.why(), sentences.language());
        estimate.summary()
                .ifPresent(
                        summary -> node.set("footprint", EstimateJson.footprint(summary, sentences, estimate.bound())));
        node.put("bound", estimate.bound().id());
        EstimateJson.intervalOf(node, estimate);
        node.put("sentence", sentences.estimate(estimate));
        return node;
    }
}
