package org.scalepan.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Standing;

/** Shows one side of a question in short: what it is called, its figure and its sentence. */
final class StandingView {
    private StandingView() {}

    static ObjectNode json(Standing standing, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("name", standing.words());
        node.put("product", standing.product().id());
        node.put("status", standing.summary().isPresent() ? "ok" : "no-evidence");
        Json.put(node, "reason", standing.missing());
        standing.summary().ifPresent(summary -> node.set("footprint", EstimateJson.footprint(summary, sentences)));
        node.put("sentence", sentences.quote(standing));
        return node;
    }
}
