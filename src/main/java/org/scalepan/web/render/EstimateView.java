package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Sentences;

/** Shows one side of a question in short: what it is called, its figure and its sentence. */
public final class EstimateView {
    private EstimateView() {}

    public static ObjectNode json(Estimate standing, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("name", standing.words());
        node.put("product", standing.product().id());
        node.put("status", standing.summary().isPresent() ? "ok" : "no-evidence");
        Json.put(node, "reason", standing.missing());
        standing.summary()
                .ifPresent(
                        summary -> node.set("footprint", EstimateJson.footprint(summary, sentences, standing.bound())));
        node.put("bound", standing.bound().id());
        node.put("sentence", sentences.quote(standing));
        return node;
    }
}
