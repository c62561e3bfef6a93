package org.scalepan.web.farm;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.ModelledEstimate;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.ask.farm.KeyFigures;
import org.scalepan.ask.farm.SystemAnswer;
import org.scalepan.exchange.rows.RecordNextJson;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.Bound;
import org.scalepan.literature.LandUseChange;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.Stage;
import org.scalepan.production.SystemFootprint;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.render.DisplacedUseJson;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.EstimateJson;
import org.scalepan.web.render.LandUseStatesJson;
import org.scalepan.web.render.PublishedEstimateView;
import org.scalepan.words.Language;

/** Renders a computed farm or herd as JSON: figures, stages, gases, lines, gaps, remarks, and the sides compared with it. */
final class FootprintView {
    private final Library library;
    private final SystemAnswer answer;
    private final Language language;

    FootprintView(Library library, SystemAnswer answer, Language language) {
        this.library = library;
        this.language = language;
        this.answer = answer;
    }

    ObjectNode tree(Map<String, Object> question) {
        ObjectNode node = Json.object();
        node.set("question", Json.map(question));
        node.set("library", Envelope.library(library));
        Inventory inventory = answer.question().system();
        node.set("system", system(inventory));
        ArrayNode footprints = node.putArray("footprints");
        answer.bases().forEach(basis -> footprints.add(onBasis(basis)));
        node.set("key_figures", figures(KeyFigures.of(library, inventory)));
        boolean landUseChange =
                answer.question().bases().stream().anyMatch(basis -> basis.luc() == LandUseChange.INCLUDE);
        node.set("gaps", gaps(inventory.gaps(landUseChange)));
        node.set("remarks", remarks(inventory));
        node.set("balances", balances(inventory));
        Envelope.close(node, provenance(), language);
        return node;
    }

    private static ObjectNode system(Inventory inventory) {
        ObjectNode node = Json.object();
        node.put("name", inventory.name());
        Product product = inventory.output().product();
        node.put("product", product.id());
        if (product.isOfRecords()) {
            node.put("product_name", product.name());
        }
        node.put("form", inventory.output().form());
        node.put("output", SevenDigits.rounded(inventory.output().amount()));
        node.put("output_unit", inventory.output().per().words() + " a year");
        node.put("burden_share", SevenDigits.rounded(inventory.output().share()));
        node.put("allocation", inventory.output().allocation());
        return node;
    }

    private ObjectNode onBasis(SystemAnswer.IndicatorAnswer on) {
        ComparisonBasis basis = on.basis();
        Sentences sentences = new Sentences(basis, answer.question().sampling().coverage(), language);
        ObjectNode node = estimate(on.system(), sentences);
        on.system().system().ifPresent(system -> node.set("record_next", RecordNextJson.of(system, language)));
        displaced(node, on.displacedUse(), sentences);
        on.withCredit().ifPresent(other -> {
            ObjectNode beside = estimate(other, sentences);
            beside.put("credit", other.scope().credit() ? "yes" : "no");
            node.set("credit_the_other_way", beside);
        });
        ArrayNode others = node.putArray("compare");
        on.others().forEach(other -> {
            ObjectNode one =
                    beside(other.farm().isPresent() ? "practice" : "records", estimate(other.estimate(), sentences));
            one.put("system", other.estimate().inventory().name());
            other.farm().ifPresent(farm -> {
                one.put("reference_farm", farm.farm().id());
                one.put("sentence", farm.farm().sentence());
                one.put("is", ModelledEstimate.MESSAGE.in(language));
            });
            versus(one, other.versus(), other.withDisplacedUse());
            displaced(one, other.displacedUse(), sentences);
            others.add(one);
        });
        on.products().forEach(other -> {
            ObjectNode one = beside(
                    "publications",
                    PublishedEstimateView.json(
                            library,
                            other.estimate(),
                            sentences,
                            PublishedEstimateView.unseen(library, other.estimate())));
            byLandUse(one, basis, other, sentences);
            versus(one, other.versus(), other.withDisplacedUse());
            others.add(one);
        });
        return node;
    }

    private static void byLandUse(
            ObjectNode node, ComparisonBasis basis, SystemAnswer.OtherProduct product, Sentences sentences) {
        product.otherLandUse()
                .ifPresent(other -> node.set(
                        "by_luc",
                        LandUseStatesJson.of(
                                List.of(
                                        new LandUseStatesJson.OneState(
                                                basis.luc(), product.estimate(), product.versus()),
                                        new LandUseStatesJson.OneState(
                                                basis.luc().other(), other.estimate(), other.versus())),
                                sentences)));
    }

    /** The origin comes first, so that a streaming reader knows which fields follow. */
    private static ObjectNode beside(String origin, ObjectNode estimate) {
        return Json.object().put("origin", origin).setAll(estimate);
    }

    private ObjectNode estimate(SystemEstimate estimate, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("indicator", estimate.scope().indicator().id());
        node.put("per", estimate.scope().per().id());
        node.put("boundary", estimate.scope().boundary().id());
        if (estimate.scope().indicator().isWarming()) {
            node.put("gwp", estimate.scope().gwp().id());
        }
        node.put("status", estimate.system().isPresent() ? "ok" : "not-computed");
        node.put("bound", estimate.bound().id());
        EstimateJson.intervalOf(node, estimate);
        node.set("not_counted", Json.texts(estimate.uncounted(), language));
        node.set("contradictions", Json.texts(estimate.contradictions(), language));
        Json.put(node, "lowest_grade", estimate.lowestGrade(library).map(Grade::id));
        Json.put(node, "reason", estimate.why(), language);
        estimate.summary()
                .ifPresent(
                        summary -> node.set("footprint", EstimateJson.footprint(summary, sentences, estimate.bound())));
        estimate.firstOrder().ifPresent(first -> {
            double coverage = answer.question().sampling().coverage();
            ObjectNode propagated = node.putObject("first_order");
            propagated.put("value", SevenDigits.rounded(first.value()));
            propagated.put("low", SevenDigits.rounded(first.low(coverage)));
            propagated.put("high", SevenDigits.rounded(first.high(coverage)));
        });
        estimate.system().ifPresent(system -> parts(node, system));
        return node;
    }

    private static void parts(ObjectNode node, SystemFootprint system) {
        ArrayNode stages = node.putArray("by_stage");
        for (Map.Entry<Stage, Double> stage : system.byStage().entrySet()) {
            ObjectNode one = stages.addObject();
            one.put("stage", stage.getKey().id());
            one.put("value", SevenDigits.rounded(stage.getValue()));
            share(one, system, stage.getValue());
        }
        if (system.scope().indicator().isWarming()) {
            ArrayNode gases = node.putArray("by_gas");
            for (Map.Entry<Flux, Double> gas : system.byGas().entrySet()) {
                ObjectNode one = gases.addObject();
                one.put("gas", gas.getKey().gas().map(found -> found.id()).orElse("co2e-not-split"));
                one.put("value", SevenDigits.rounded(gas.getValue()));
                share(one, system, gas.getValue());
            }
        }
        ArrayNode lines = node.putArray("lines");
        for (Map.Entry<Flow, Double> line : system.byFlow().entrySet()) {
            ObjectNode one = lines.addObject();
            Flow flow = line.getKey();
            one.put("stage", flow.stage().id());
            one.put("what", flow.what());
            one.put(
                    "flux",
                    flow.flux()
                            .gas()
                            .map(gas -> gas.id())
                            .orElse(flow.flux()
                                    .name()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .replace('_', '-')));
            one.put("value", SevenDigits.rounded(line.getValue()));
            Json.put(one, "gwp", flow.warmingSet());
            one.set("rows", Json.texts(flow.rows()));
        }
    }

    private static void share(ObjectNode node, SystemFootprint system, double part) {
        // Of an incomplete whole nobody knows a share.
        String name = system.bound() == Bound.EXACT ? "share" : "share_of_counted";
        system.shareOf(part).ifPresent(share -> node.put(name, SevenDigits.rounded(share)));
    }

    private static void displaced(ObjectNode node, Optional<DisplacedUseFigure> figure, Sentences sentences) {
        figure.ifPresent(found -> node.set("with_displaced_use", DisplacedUseJson.of(found, sentences)));
    }

    private void versus(ObjectNode node, Optional<Ratio> versus, Optional<Ratio> withDisplacedUse) {
        withDisplacedUse.ifPresent(found -> node.set("times_less_with_displaced_use", ratio(found)));
        versus.ifPresent(found -> {
            node.set("times_less", ratio(found));
            found.less().ifPresent(share -> {
                ObjectNode less = node.putObject("share_of_draws_less");
                less.put("value", SevenDigits.rounded(share.value()));
                less.put("standard_error", SevenDigits.rounded(share.standardError()));
            });
        });
    }

    private ObjectNode ratio(Ratio ratio) {
        return EstimateJson.bounded(ratio.timesLess(), ratio.bound(), language);
    }

    private static ObjectNode figures(Map<String, Double> figures) {
        ObjectNode node = Json.object();
        figures.forEach((name, value) -> node.put(name, SevenDigits.rounded(value)));
        return node;
    }

    private ArrayNode gaps(List<Gap> gaps) {
        ArrayNode array = Json.array();
        gaps.forEach(gap -> {
            ObjectNode one = array.addObject();
            one.put("field", gap.field());
            one.put("kind", gap.kind().id());
            one.set("indicators", Json.texts(gap.indicators()));
            one.put("filled_with", gap.with().in(language));
            one.set("rows", Json.texts(gap.rows()));
        });
        return array;
    }

    private ArrayNode remarks(Inventory inventory) {
        ArrayNode array = Json.array();
        inventory
                .remarks()
                .forEach(remark -> array.addObject()
                        .put("code", remark.code())
                        .put("text", remark.message().in(language))
                        .set("rows", Json.texts(remark.rows())));
        return array;
    }

    private ArrayNode balances(Inventory inventory) {
        ArrayNode array = Json.array();
        inventory.balances().forEach(balance -> {
            ObjectNode one = array.addObject();
            one.put("kind", balance.kind().id());
            one.put("verdict", balance.verdict().id());
            balance.in().ifPresent(in -> one.put("in", SevenDigits.rounded(in)));
            balance.out().ifPresent(out -> one.put("out", SevenDigits.rounded(out)));
            one.put("unit", balance.kind().unit());
            one.put("reason", balance.message().in(language));
            one.set("rows", Json.texts(balance.rows()));
        });
        return array;
    }

    private Provenance provenance() {
        List<Estimate> estimates = new ArrayList<>();
        answer.bases().forEach(on -> {
            estimates.add(on.system());
            on.others().forEach(other -> estimates.add(other.estimate()));
            on.products().forEach(other -> estimates.add(other.estimate()));
        });
        return new Provenance(library, estimates);
    }
}
