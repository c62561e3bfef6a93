package org.scalepan.web.compare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.OtherEvidence;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.literature.PairedEvidence;
import org.scalepan.literature.PairedStudy;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.RandomEffects;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.EstimateJson;
import org.scalepan.web.render.LandUseStatesJson;
import org.scalepan.web.render.ModelledEstimateView;
import org.scalepan.web.render.PublishedEstimateView;
import org.scalepan.words.Language;

/** A comparison as JSON. */
final class ComparisonJson {
    private final Library library;
    private final Comparison comparison;
    private final Sentences sentences;

    ComparisonJson(Library library, Comparison comparison, Language language) {
        this.library = library;
        this.comparison = comparison;
        this.sentences = new Sentences(
                comparison.question().basis(), comparison.question().sampling().coverage(), language);
    }

    ObjectNode tree(String path, Map<String, Object> question) {
        ObjectNode node = Envelope.open(library, path, question);
        ObjectNode reference = view(comparison.reference(), path, question);
        byLandUse(reference, Comparison::reference, nobody -> Optional.empty());
        node.set("reference", reference);
        ArrayNode items = node.putArray("items");
        comparison.items().forEach(item -> items.add(item(item, view(item.estimate(), path, question))));
        Provenance provenance = comparison.grounds(library);
        Envelope.close(
                node,
                provenance.warnings(),
                library,
                provenance.products(),
                comparison.references(library),
                sentences.language());
        return node;
    }

    private ObjectNode view(Estimate estimate, String path, Map<String, Object> question) {
        Estimate other = comparison.ofOtherKind(library, estimate);
        if (estimate instanceof PublishedEstimate published) {
            ObjectNode node = PublishedEstimateView.json(
                    library, published, sentences, PublishedEstimateView.unseen(library, published, path, question));
            node.set("modelled", beside((ModelledEstimate) other, path, question));
            knownInstead(node, estimate, path, question);
            return node;
        }
        ObjectNode node = ModelledEstimateView.json(library, (ModelledEstimate) estimate, sentences);
        node.set("published", ModelledEstimateView.published((PublishedEstimate) other, sentences));
        knownInstead(node, estimate, path, question);
        return node;
    }

    /** Where nothing else is known already, the question that the other kind of evidence answers. */
    private void knownInstead(ObjectNode node, Estimate estimate, String path, Map<String, Object> question) {
        if (!node.has("known_instead")) {
            ModelledEstimateView.known(
                            library,
                            OtherEvidence.of(
                                    library, estimate, comparison.question().basis()),
                            path,
                            question)
                    .ifPresent(known -> node.set("known_instead", known));
        }
    }

    private ObjectNode beside(ModelledEstimate modelled, String path, Map<String, Object> question) {
        ObjectNode node = ModelledEstimateView.body(library, modelled, sentences);
        if (modelled.summary().isPresent()) {
            node.put("question", ModelledEstimateView.otherKind(library, path, question, EvidenceKind.MODELLED));
        }
        return node;
    }

    private ObjectNode item(Comparison.ComparedProduct item, ObjectNode node) {
        int place = comparison.items().indexOf(item);
        byLandUse(
                node,
                state -> state.items().get(place).estimate(),
                state -> state.items().get(place).versus());
        item.versus().ifPresent(versus -> {
            node.put(
                    "against_sentence",
                    sentences.versus(
                            item.estimate(), comparison.reference(), versus, comparison.versusUnderOtherLandUse(item)));
            node.set("times_less", EstimateJson.bounded(versus.timesLess(), versus.bound(), sentences.language()));
            node.set(
                    "share", EstimateJson.bounded(versus.share(), versus.bound().reversed(), sentences.language()));
            node.put("times_less_of_means", SevenDigits.rounded(versus.ofMeans()));
            if (versus.less().isEmpty()) {
                return;
            }
            ObjectNode less = node.putObject("share_of_draws_less");
            less.put("value", SevenDigits.rounded(versus.less().orElseThrow().value()));
            less.put(
                    "standard_error",
                    SevenDigits.rounded(versus.less().orElseThrow().standardError()));
            // With n draws a share within about 3/n of 0 or 1 cannot be told from it.
            less.put(
                    "resolution",
                    SevenDigits.rounded(comparison.question().sampling().resolution()));
        });
        NoRatio.between(item.estimate(), comparison.reference())
                .ifPresent(why -> node.putObject("no_ratio")
                        .put("code", why.id())
                        .put("text", why.message().in(sentences.language())));
        if (!item.paired().ratios().isEmpty()) {
            node.set("paired", paired(item));
        }
        return node;
    }

    /** The figure and the ratio without and with land-use change, side by side. */
    private void byLandUse(
            ObjectNode node, Function<Comparison, Estimate> estimate, Function<Comparison, Optional<Ratio>> versus) {
        comparison
                .underOtherLandUse()
                .ifPresent(other -> node.set(
                        "by_luc",
                        LandUseStatesJson.of(
                                Stream.of(comparison, other)
                                        .map(state -> new LandUseStatesJson.OneState(
                                                state.question().basis().luc(),
                                                estimate.apply(state),
                                                versus.apply(state)))
                                        .toList(),
                                sentences)));
    }

    private ObjectNode paired(Comparison.ComparedProduct item) {
        PairedEvidence paired = item.paired();
        ObjectNode node = Json.object();
        node.put("text", Sentences.paired(item.estimate(), comparison.reference(), paired, sentences.language()));
        ArrayNode ratios = node.putArray("studies");
        for (PairedStudy ratio : paired.ratios()) {
            ObjectNode one = ratios.addObject();
            one.put("study", ratio.study());
            one.put("times_less", SevenDigits.rounded(ratio.central()));
            one.put("ln_mean", SevenDigits.rounded(ratio.lnMean()));
            one.put("ln_variance", SevenDigits.rounded(ratio.lnVariance()));
            one.put("sampling_variance", SevenDigits.rounded(ratio.samplingVariance()));
            one.put("origin", ratio.origin() == PairedStudy.Origin.PRINTED ? "printed" : "computed");
            Json.put(one, "product_from", ratio.borrowed().product());
            Json.put(one, "reference_from", ratio.borrowed().reference());
            one.set("rows", Json.texts(ratio.rows()));
            one.set("notes", Json.texts(ratio.notes()));
        }
        paired.pooled().ifPresent(pooled -> node.set("pooled", pooled(pooled)));
        return node;
    }

    /** The pooled ratio, transformed back from the log scale on which it was pooled. */
    private static ObjectNode pooled(RandomEffects.Pooled pooled) {
        ObjectNode node = Json.object();
        node.put(
                "method",
                "DerSimonian-Laird on ln ratio with sampling variances; 95 % interval by Hartung-Knapp with a factor of at least 1");
        node.put("times_less", SevenDigits.rounded(StrictMath.exp(pooled.mean())));
        node.put("low", SevenDigits.rounded(PairedEvidence.low(pooled)));
        node.put("high", SevenDigits.rounded(PairedEvidence.high(pooled)));
        pooled.predictionLow().ifPresent(low -> node.put("prediction_low", SevenDigits.rounded(StrictMath.exp(low))));
        pooled.predictionHigh()
                .ifPresent(high -> node.put("prediction_high", SevenDigits.rounded(StrictMath.exp(high))));
        node.put("tau2", SevenDigits.rounded(pooled.tau2()));
        node.put("i2", SevenDigits.rounded(pooled.i2()));
        node.put("studies", pooled.studies());
        return node;
    }
}
