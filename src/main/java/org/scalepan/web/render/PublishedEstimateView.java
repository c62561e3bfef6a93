package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.literature.Evidence;

/** Renders the estimate of one product: its footprint with its derivation, or that there is no evidence and what is known instead. */
public final class PublishedEstimateView {
    private PublishedEstimateView() {}

    public static ObjectNode json(PublishedEstimate quote, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("product", quote.item().product().id());
        node.put("form", quote.item().form());
        node.put("name", quote.item().product().name());
        node.put("status", quote.summary().isPresent() ? "ok" : "no-evidence");
        node.put("sentence", sentences.quote(quote));
        quote.summary().ifPresent(summary -> node.set("footprint", EstimateJson.footprint(summary, sentences)));
        node.put("studies", quote.studies());
        node.put("results", quote.results());
        if (quote.evidence() instanceof Evidence.PooledEvidence some) {
            node.put("region_used", some.regionUsed());
            node.set("evidence", EvidenceView.studies(some));
            node.put("unused_results", some.unused().size());
        } else if (quote.evidence() instanceof Evidence.NoEvidence none) {
            node.put("reason", none.reason());
            node.set("known_instead", EvidenceView.unused(quote.elsewhere()));
            Json.put(node, "product_note", quote.item().product().note());
            ArrayNode composition = node.putArray("known_composition");
            quote.composition().forEach(row -> composition.add(RowView.composition(row)));
        }
        return node;
    }
}
