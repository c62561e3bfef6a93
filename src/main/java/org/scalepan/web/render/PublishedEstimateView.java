package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.literature.Evidence;

/** Renders the estimate of one product: its footprint with its derivation, or that there is no evidence and what is known instead. */
public final class PublishedEstimateView {
    private PublishedEstimateView() {}

    public static ObjectNode json(PublishedEstimate estimate, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("product", estimate.item().product().id());
        node.put("form", estimate.item().form());
        node.put("name", estimate.item().product().name());
        node.put("status", estimate.summary().isPresent() ? "ok" : "no-evidence");
        node.put("sentence", sentences.estimate(estimate));
        estimate.summary().ifPresent(summary -> node.set("footprint", EstimateJson.footprint(summary, sentences)));
        estimate.energyKind().ifPresent(kind -> node.put("energy_kind", kind.id()));
        node.put("studies", estimate.studies());
        node.put("results", estimate.results());
        if (estimate.evidence() instanceof Evidence.PooledEvidence some) {
            node.put("region_used", some.regionUsed());
            node.set("evidence", EvidenceView.studies(some));
            node.put("unused_results", some.unused().size());
        } else if (estimate.evidence() instanceof Evidence.NoEvidence none) {
            node.put("reason", none.reason());
            node.set("known_instead", EvidenceView.unused(estimate.elsewhere()));
            Json.put(node, "product_note", estimate.item().product().note());
            ArrayNode composition = node.putArray("known_composition");
            estimate.composition().forEach(row -> composition.add(RowView.composition(row)));
        }
        return node;
    }
}
