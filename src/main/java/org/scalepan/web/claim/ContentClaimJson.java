package org.scalepan.web.claim;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.claim.ParsedClaim;
import org.scalepan.ask.contents.ContentCell;
import org.scalepan.ask.contents.ContentCheck;
import org.scalepan.ask.contents.ContentChecks;
import org.scalepan.ask.contents.ProteinFinding;
import org.scalepan.ask.contents.SampleRange;
import org.scalepan.ask.contents.SampleRatio;
import org.scalepan.ask.nutrition.AbsorptionTrial;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.input.Suggestion;
import org.scalepan.input.Suggestion.SuggestionKind;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.render.ProblemView;

/** A checked claim of contents as JSON. */
final class ContentClaimJson {
    private final Library library;
    private final ContentChecks checks;
    private final Optional<ParsedClaim> sentence;

    ContentClaimJson(Library library, ContentChecks checks, Optional<ParsedClaim> sentence) {
        this.library = library;
        this.checks = checks;
        this.sentence = sentence;
    }

    ObjectNode tree(Map<String, Object> question, String path) {
        ObjectNode node = Envelope.open(library, path, question);
        sentence.ifPresent(read -> ClaimJson.understood(node, read));
        node.put("claim", checks.claim());
        node.put("verdict", checks.overall().id());
        node.put("reason", checks.reason());
        node.set("corrections", Json.texts(checks.corrections()));
        node.put("say_instead", checks.instead());
        ArrayNode each = node.putArray("contents");
        checks.checks().forEach(check -> each.add(check(check)));
        node.set(
                "without_evidence",
                Json.texts(checks.silent().stream().map(ProductForm::written).toList()));
        ArrayNode circulating = node.putArray("circulating");
        checks.circulating().forEach(claim -> circulating.add(ClaimJson.circulating(claim)));
        node.set("suggestions", ProblemView.suggestions(suggestions(question, path)));
        Envelope.close(node, checks.warnings(), library, checks.products(), checks.references(), checks.language());
        return node;
    }

    private List<Suggestion> suggestions(Map<String, Object> question, String path) {
        if (!checks.saysMoreFromMemory()) {
            return List.of();
        }
        Map<String, Object> open = new LinkedHashMap<>(question);
        open.put("grade", "memory");
        return List.of(Suggestion.of(
                SuggestionKind.QUESTION,
                checks.language().say("contents.with-memory"),
                Permalink.of(library, path, open)));
    }

    private ObjectNode check(ContentCheck check) {
        ObjectNode node = Json.object();
        node.put("product", check.food().written());
        node.put("name", check.food().name().in(checks.language()));
        node.put("verdict", check.overall().id());
        node.put("reason", check.reason(checks.language()));
        Json.put(node, "say_instead", check.instead(checks.language()));
        ArrayNode cells = node.putArray("cells");
        check.cells().forEach(cell -> cells.add(cell(cell)));
        ArrayNode protein = node.putArray("protein");
        check.protein().forEach(finding -> protein.add(protein(finding)));
        ArrayNode absorption = node.putArray("absorption");
        check.absorption().forEach(trial -> absorption.add(absorption(trial)));
        return node;
    }

    private ObjectNode cell(ContentCell cell) {
        ObjectNode node = Json.object();
        node.put("form", cell.food().form());
        Json.put(node, "reference_form", cell.reference().map(ProductForm::form));
        node.put("quantity", cell.quantity());
        node.put("unit", cell.unit());
        Json.put(node, "basis", cell.basis().map(Basis::id));
        node.put("asked", cell.asked());
        node.put("decided_by_water", cell.decidedByWater());
        node.put("thin", cell.thin());
        node.put("verdict", cell.verdict().id());
        cell.times().ifPresent(times -> node.set("times", ratio(times)));
        node.set("product", side(cell.productSide()));
        cell.referenceSide().ifPresent(side -> node.set("reference", side(side)));
        return node;
    }

    private static ObjectNode ratio(SampleRatio times) {
        ObjectNode node = Json.object();
        node.put("low", SevenDigits.rounded(times.low()));
        if (Double.isFinite(times.middle())) {
            node.put("middle", SevenDigits.rounded(times.middle()));
        }
        if (Double.isFinite(times.high())) {
            node.put("high", SevenDigits.rounded(times.high()));
        }
        return node;
    }

    private ObjectNode side(ContentCell.SideOfCell side) {
        ObjectNode node = Json.object();
        side.found().ifPresent(found -> put(node, found));
        Json.put(node, "missing", side.missing(), checks.language());
        return node;
    }

    private static void put(ObjectNode node, SampleRange found) {
        node.put("value", SevenDigits.rounded(found.value()));
        node.put("low", SevenDigits.rounded(found.low()));
        node.put("high", SevenDigits.rounded(found.high()));
        node.put("samples", found.samples());
        node.put("lowest_grade", found.lowest().id());
        node.set("notes", Json.texts(found.notes()));
        node.set("rows", Json.texts(found.rows()));
        node.set("sources", Json.texts(found.sources().stream().sorted().toList()));
    }

    private static ObjectNode protein(ProteinFinding finding) {
        ObjectNode node = Json.object();
        node.put("form", finding.food().form());
        node.set("present", Json.texts(finding.present()));
        node.set("absent", Json.texts(finding.absent()));
        node.set("not_published", Json.texts(finding.unknown()));
        node.put("none_missing_by_score", finding.byScore());
        finding.score().ifPresent(score -> {
            node.put("amino_acid_score", SevenDigits.rounded(score.value()));
            node.put("limiting", score.limiting().acid());
        });
        ArrayNode quality = node.putArray("quality");
        finding.quality().forEach(measured -> quality.add(quality(measured)));
        node.set("rows", Json.texts(finding.rows()));
        return node;
    }

    private static ObjectNode quality(MeasuredQuality measured) {
        ObjectNode node = Json.object();
        node.put("id", measured.row().quantity());
        measured.row().printed().value().ifPresent(value -> node.put("value", measured.reported(value)));
        measured.row().printed().low().ifPresent(low -> node.put("low", measured.reported(low)));
        measured.row().printed().high().ifPresent(high -> node.put("high", measured.reported(high)));
        node.put("row", measured.row().id());
        return node;
    }

    private static ObjectNode absorption(AbsorptionTrial trial) {
        ObjectNode node = Json.object();
        node.put("nutrient", trial.nutrient());
        node.put("quantity", trial.quantity());
        node.put("food", trial.food());
        node.put("reference", trial.reference());
        Json.put(node, "value", trial.value());
        Json.put(node, "low", trial.low());
        Json.put(node, "high", trial.high());
        node.put("unit", trial.unit());
        node.put("meal", trial.meal());
        node.put("people", trial.people());
        node.put("row", trial.row());
        node.put("source", trial.source());
        return node;
    }
}
