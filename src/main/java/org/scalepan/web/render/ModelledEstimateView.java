package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.ReferenceFarm;
import org.scalepan.production.Gap;
import org.scalepan.words.DisplayName;

/** Renders the figure of a reference farm: what is modelled, by which farm, what it does not count, and on what it rests. */
public final class ModelledEstimateView {
    private ModelledEstimateView() {}

    /** The estimate of a question that asks for modelled figures. */
    public static ObjectNode json(Library library, ModelledEstimate estimate, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("product", estimate.product().id());
        node.put("form", estimate.item().form());
        node.put(
                "name",
                DisplayName.of(
                                "product." + estimate.product().id(),
                                estimate.product().name())
                        .in(sentences.language()));
        node.setAll(body(library, estimate, sentences));
        node.put("studies", 0);
        node.put("results", 0);
        if (estimate.summary().isPresent()) {
            node.set("sources", Json.texts(estimate.sources(library)));
        }
        return node;
    }

    /** The same beside what is published. */
    public static ObjectNode body(Library library, ModelledEstimate estimate, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("status", estimate.summary().isPresent() ? "ok" : "no-evidence");
        node.put("sentence", sentences.estimate(estimate));
        node.put("bound", estimate.bound().id());
        EstimateJson.intervalOf(node, estimate);
        estimate.summary()
                .ifPresent(
                        summary -> node.set("footprint", EstimateJson.footprint(summary, sentences, estimate.bound())));
        Json.put(node, "reason", estimate.why(), sentences.language());
        if (!estimate.uncounted().isEmpty()) {
            node.set("not_counted", Json.texts(estimate.uncounted(), sentences.language()));
        }
        Json.put(node, "lowest_grade", estimate.lowestGrade(library).map(Grade::id));
        estimate.farm().ifPresent(farm -> node.set("reference_farm", farm(farm.farm())));
        estimate.system().ifPresent(system -> {
            ArrayNode gaps = node.putArray("gaps");
            for (Gap gap : system.inventory().uncounted(system.scope())) {
                gaps.addObject().put("field", gap.field()).put("why", gap.with().in(sentences.language()));
            }
        });
        if (!estimate.others().isEmpty()) {
            ArrayNode others = node.putArray("others");
            estimate.others()
                    .forEach(other -> others.addObject()
                            .put("system", other.farm().id())
                            .put("name", other.farm().name()));
        }
        return node;
    }

    private static ObjectNode farm(ReferenceFarm farm) {
        ObjectNode node = Json.object();
        node.put("id", farm.id());
        node.put("name", farm.name());
        node.put("sentence", farm.sentence());
        node.put("climate", farm.climate());
        Json.put(node, "region", farm.region());
        node.put("scale", farm.scale());
        return node;
    }

    /** What is published of a product, beside its modelled figure. */
    public static ObjectNode published(PublishedEstimate estimate, Sentences sentences) {
        ObjectNode node = Json.object();
        EstimateJson.state(node, estimate, sentences);
        node.put("studies", estimate.studies());
        Json.put(node, "reason", estimate.why(), sentences.language());
        return node;
    }

    /** That the other kind of evidence has a figure where the kind asked for has none, and the question that gives it. */
    public static Optional<ObjectNode> known(
            Library library, Optional<EvidenceKind> other, String path, Map<String, Object> question) {
        return other.map(kind -> Json.object()
                .put("code", kind.id() + "-figure")
                .put("question", otherKind(library, path, question, kind)));
    }

    /** Where the same question is asked of the other kind of evidence. */
    public static String otherKind(Library library, String path, Map<String, Object> question, EvidenceKind other) {
        Map<String, Object> changed = new LinkedHashMap<>(question);
        changed.put("evidence", other.id());
        if (other == EvidenceKind.PUBLISHED) {
            changed.remove("system");
        }
        return Permalink.of(library, path, changed);
    }
}
