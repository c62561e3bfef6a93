package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.PoolQuestion;
import org.scalepan.words.Language;

/** Renders the estimate of one product: its footprint with its derivation, or that there is no evidence and what is known instead. */
public final class PublishedEstimateView {
    private PublishedEstimateView() {}

    /** Where the same question is asked with numbers that nobody has seen; none of what is posted has an address. */
    public static Optional<String> unseen(
            Library library, PublishedEstimate estimate, String path, Map<String, Object> question) {
        if (!estimate.isKnownUnseen(library)) {
            return Optional.empty();
        }
        Map<String, Object> other = new LinkedHashMap<>(question);
        other.put("grade", Grade.MEMORY.id());
        return Optional.of(Permalink.of(library, path, other));
    }

    /** Where the figure alone is asked with numbers that nobody has seen, for an answer that has no address of its own. */
    public static Optional<String> unseen(Library library, PublishedEstimate estimate) {
        PoolQuestion basis = estimate.evidence().question();
        Map<String, Object> question = new LinkedHashMap<>();
        question.put("per", basis.per().id());
        question.put("boundary", basis.boundary().id());
        basis.warmingSet().ifPresent(set -> question.put("gwp", set));
        if (basis.indicator().isWarming()) {
            question.put("luc", basis.luc().id());
        }
        question.put("region", basis.region());
        return unseen(
                library,
                estimate,
                "/v1/value/" + basis.indicator().id() + "/" + estimate.item().written(),
                question);
    }

    /**
     * Renders an estimate.
     *
     * @param unseen the address of a question whose answer rests on numbers that nobody has seen, where it is all that is known
     */
    public static ObjectNode json(
            Library library, PublishedEstimate estimate, Sentences sentences, Optional<String> unseen) {
        Language language = sentences.language();
        ObjectNode node = Json.object();
        node.put("product", estimate.item().product().id());
        node.put("form", estimate.item().form());
        node.put(
                "name",
                new ProductForm(
                                estimate.item().product(),
                                estimate.item().product().defaultForm())
                        .name()
                        .in(language));
        node.put("status", estimate.summary().isPresent() ? "ok" : "no-evidence");
        node.put("sentence", sentences.estimate(estimate));
        node.put("bound", estimate.bound().id());
        EstimateJson.intervalOf(node, estimate);
        if (!estimate.uncounted().isEmpty()) {
            node.set("not_counted", Json.texts(estimate.uncounted(), language));
        }
        if (!estimate.countedBeyond().isEmpty()) {
            node.set("counted_beyond", Json.texts(estimate.countedBeyond(), language));
        }
        estimate.summary()
                .ifPresent(
                        summary -> node.set("footprint", EstimateJson.footprint(summary, sentences, estimate.bound())));
        estimate.energyKind().ifPresent(kind -> node.put("energy_kind", kind.id()));
        node.put("studies", estimate.studies());
        node.put("results", estimate.results());
        Json.put(node, "lowest_grade", estimate.lowestGrade(library).map(Grade::id));
        if (estimate.summary().isPresent()) {
            node.set("sources", Json.texts(estimate.sources(library)));
        }
        if (estimate.evidence() instanceof Evidence.PooledEvidence some) {
            node.put("region_used", some.regionUsed());
            some.hierarchy()
                    .ifPresent(hierarchy ->
                            node.set("pooling", EvidenceView.pooling(hierarchy, estimate.meanOfStudies(), language)));
            node.set("evidence", EvidenceView.studies(some, language));
            node.put("unused_results", some.unused().size());
            node.set(
                    "not_used",
                    EvidenceView.notUsed(some.unused(), some.question().boundary(), language));
        } else if (estimate.evidence() instanceof Evidence.NoEvidence none) {
            node.put("reason", none.why().in(language));
            unseen.ifPresent(question -> node.set("known_instead", unseenFigure(question)));
            node.set("known_elsewhere", EvidenceView.unused(estimate.elsewhere(), language));
            Json.put(node, "product_note", estimate.item().product().note());
            ArrayNode composition = node.putArray("known_composition");
            estimate.composition().forEach(row -> composition.add(RowView.composition(row)));
        }
        return node;
    }

    /** That a figure is known whose numbers nobody has seen, and the question that gives it. */
    public static ObjectNode unseenFigure(String question) {
        return Json.object().put("code", "unseen-figure").put("question", question);
    }
}
