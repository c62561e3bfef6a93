package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.PoolingWords;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.StageSplit;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.Rebasing;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.HarmonisationStep;
import org.scalepan.literature.Harmonised;
import org.scalepan.literature.Study;
import org.scalepan.literature.StudyHierarchy;
import org.scalepan.literature.Unused;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.Summary;
import org.scalepan.uncertainty.hierarchy.HeterogeneityPosterior;
import org.scalepan.words.Language;

/** Renders the derivation of a figure: each study, each published number, and each conversion with its library row. */
final class EvidenceView {
    /** At most this many unused results are listed; the results route has all. */
    private static final int MOST_UNUSED = 24;

    private EvidenceView() {}

    static ArrayNode studies(Evidence.PooledEvidence evidence, Language language) {
        ArrayNode array = Json.array();
        for (Study study : evidence.studies()) {
            ObjectNode node = array.addObject();
            node.put("study", study.id());
            node.put("weight", SevenDigits.rounded(evidence.weight(study)));
            evidence.hierarchy().ifPresent(pool -> {
                node.put("found", SevenDigits.rounded(pool.found(study)));
                node.put("error", SevenDigits.rounded(pool.error(study)));
            });
            ArrayNode findings = node.putArray("findings");
            study.findings()
                    .forEach(finding -> findings.add(finding(finding, evidence.weight(study, finding), language)));
        }
        return array;
    }

    /** How the studies were pooled: their differences, and the mean of such studies with its own, narrower interval. */
    static ObjectNode pooling(StudyHierarchy hierarchy, Optional<Summary> mean, Language language) {
        HeterogeneityPosterior between = hierarchy.between();
        ObjectNode node = Json.object();
        ObjectNode tau = node.putObject("between_studies");
        tau.put("median", SevenDigits.rounded(between.quantile(0.5)));
        tau.put("low", SevenDigits.rounded(between.quantile(0.05)));
        tau.put("high", SevenDigits.rounded(between.quantile(0.95)));
        tau.put("prior_scale", between.scale());
        mean.ifPresent(summary -> {
            ObjectNode average = node.putObject("mean_of_studies");
            average.put("median", SevenDigits.rounded(summary.median()));
            average.put("low", SevenDigits.rounded(summary.low()));
            average.put("high", SevenDigits.rounded(summary.high()));
        });
        node.put("text", PoolingWords.of(hierarchy).in(language));
        return node;
    }

    private static ObjectNode finding(Harmonised finding, double weight, Language language) {
        PublishedResult result = finding.result();
        ObjectNode node = Json.object();
        node.put("result", result.id());
        node.put("weight", SevenDigits.rounded(weight));
        node.set("published", published(result));
        node.put("source", result.cited().source());
        node.put("locator", result.cited().locator());
        node.put("check", result.cited().check().id());
        node.put("region", result.region());
        Json.put(node, "substrate", result.substrate());
        Json.put(node, "allocation", result.allocation());
        Json.put(node, "scale", result.scale());
        Json.put(node, "data_year", result.dataYear());
        Json.put(node, "note", result.note());
        ArrayNode steps = node.putArray("steps");
        finding.steps().forEach(step -> steps.add(step(step)));
        node.put("harmonised_median", SevenDigits.rounded(finding.central()));
        ArrayNode notes = node.putArray("notes");
        finding.notes()
                .forEach(note -> notes.addObject()
                        .put("code", note.code())
                        .put("text", note.message().in(language)));
        return node;
    }

    private static ObjectNode published(PublishedResult result) {
        ObjectNode node = Json.object();
        RowView.printed(node, result);
        node.put("basis", result.publishedBasis());
        node.put("read_as_per", result.per());
        node.put("boundary", result.boundary().id());
        node.put("luc", result.luc());
        Json.put(node, "gwp", result.gwp());
        return node;
    }

    private static ObjectNode step(HarmonisationStep step) {
        ObjectNode node = Json.object();
        if (step instanceof HarmonisationStep.ToUnit unit) {
            toUnit(node, unit.step());
        } else if (step instanceof HarmonisationStep.ByStages stages) {
            node.put("kind", "stages");
            node.put("multiplier", SevenDigits.rounded(stages.multiplier()));
            double[] bounds = stages.bounds();
            node.put("multiplier_low", SevenDigits.rounded(bounds[0]));
            node.put("multiplier_high", SevenDigits.rounded(bounds[1]));
            node.set(
                    "kept",
                    Json.texts(stages.kept().stream().map(StageSplit::id).toList()));
            stages.kept().stream().limit(1).forEach(split -> {
                node.put("source", split.cited().source());
                node.put("locator", split.cited().locator());
                node.put("check", split.cited().check().id());
            });
            node.set(
                    "dropped",
                    Json.texts(stages.dropped().stream().map(StageSplit::id).toList()));
        } else if (step instanceof HarmonisationStep.ToWarmingSet warming) {
            toWarmingSet(node, warming.rebasing());
        }
        return node;
    }

    private static void toUnit(ObjectNode node, ChainStep step) {
        node.put("kind", "unit");
        node.put("from", step.from().id());
        node.put("to", step.to().id());
        node.put("multiplier", SevenDigits.rounded(step.multiplier()));
        if (step instanceof ChainStep.PublishedStep published) {
            CompositionRow row = published.row();
            node.put("row", row.id());
            node.put("quantity", row.quantity());
            node.put("factor", SevenDigits.rounded(published.factor().central()));
            node.put("source", row.cited().source());
            node.put("locator", row.cited().locator());
            node.put("check", row.cited().check().id());
        } else if (step instanceof ChainStep.Exact exact) {
            node.put("by_definition", exact.why());
        }
    }

    private static void toWarmingSet(ObjectNode node, Rebasing rebasing) {
        node.put("kind", "warming-set");
        node.put("from", rebasing.from().id());
        node.put("to", rebasing.to().id());
        node.put("multiplier", SevenDigits.rounded(rebasing.multiplier()));
        double[] bounds = rebasing.bounds();
        node.put("multiplier_low", SevenDigits.rounded(bounds[0]));
        node.put("multiplier_high", SevenDigits.rounded(bounds[1]));
        node.put("row", rebasing.shares().id());
        node.put("source", rebasing.shares().cited().source());
        node.put("locator", rebasing.shares().cited().locator());
        node.put("check", rebasing.shares().cited().check().id());
    }

    /** In short, which results of the product an answer with evidence does not use, and why: those that end at the boundary asked first. */
    static ArrayNode notUsed(List<Unused> unused, Boundary asked, Language language) {
        ArrayNode array = Json.array();
        unused.stream()
                .sorted(Comparator.comparing(item -> item.result().boundary() != asked))
                .limit(MOST_UNUSED)
                .forEach(item -> array.addObject()
                        .put("result", item.result().id())
                        .put("source", item.result().cited().source())
                        .put("check", item.result().cited().check().id())
                        .put("reason", item.why().in(language)));
        return array;
    }

    /** Published results of the product that were not used, and why. */
    static ArrayNode unused(List<Unused> unused, Language language) {
        ArrayNode array = Json.array();
        unused.stream().limit(MOST_UNUSED).forEach(item -> {
            ObjectNode node = array.addObject();
            node.put("result", item.result().id());
            node.put("indicator", item.result().indicator());
            node.set("published", published(item.result()));
            node.put("source", item.result().cited().source());
            node.put("check", item.result().cited().check().id());
            node.put("reason", item.why().in(language));
        });
        return array;
    }
}
