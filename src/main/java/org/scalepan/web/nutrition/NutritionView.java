package org.scalepan.web.nutrition;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.nutrition.AbsorptionTrial;
import org.scalepan.ask.nutrition.AminoAcidScore;
import org.scalepan.ask.nutrition.Caveat;
import org.scalepan.ask.nutrition.Content;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.ask.nutrition.NutritionFacts;
import org.scalepan.ask.nutrition.NutritionTable;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.QualityMethod;
import org.scalepan.footprint.Bound;
import org.scalepan.quantity.Print;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.render.Envelope;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Figure;
import org.scalepan.words.Language;

/** Renders foods side by side as JSON. */
final class NutritionView {
    private final NutritionTable table;
    private final Optional<String> market;
    private final Language language;

    NutritionView(NutritionTable table, Optional<String> market, Language language) {
        this.language = language;
        this.table = table;
        this.market = market;
    }

    ObjectNode json(String path, Map<String, Object> question) {
        ObjectNode node = Envelope.open(table.library(), path, question);
        ObjectNode pattern = node.putObject("pattern");
        pattern.put("id", table.question().pattern().id());
        pattern.put("name", table.question().pattern().name());
        pattern.put("age", table.question().pattern().age());
        ArrayNode items = node.putArray("items");
        table.foods().forEach(facts -> items.add(food(facts)));
        Envelope.close(node, table.warnings(), table.library(), table.products(), table.references(), language);
        node.set("cautions", Envelope.cautions(table.library(), table.products(), market, language));
        return node;
    }

    private ObjectNode food(NutritionFacts facts) {
        ObjectNode node = Json.object();
        node.put("product", facts.food().product().id());
        node.put("form", facts.food().form());
        node.put("name", facts.food().name().in(language));
        ArrayNode figures = node.putArray("figures");
        facts.figures().forEach(figure -> figures.add(figure(figure)));
        facts.score().ifPresent(score -> node.set("amino_acid_score", score(score)));
        ArrayNode quality = node.putArray("protein_quality");
        facts.quality().forEach(measured -> quality.add(quality(measured)));
        ArrayNode absorption = node.putArray("absorption");
        facts.absorption().forEach(trial -> absorption.add(absorption(trial)));
        ArrayNode unmeasured = node.putArray("not_measured");
        facts.notes()
                .forEach(note -> unmeasured
                        .addObject()
                        .put("id", note.id())
                        .put("reason", note.why().in(language)));
        facts.price().ifPresent(price -> node.set("price", figure(price)));
        return node;
    }

    private ObjectNode figure(NutritionFacts.NutrientFigure figure) {
        ObjectNode node = Json.object();
        node.put("id", figure.id());
        node.put("unit", figure.unit());
        if (figure.content() instanceof Content.HeldContent found) {
            node.put("status", "ok");
            node.put("value", SevenDigits.rounded(found.value()));
            found.range().low().ifPresent(low -> node.put("low", SevenDigits.rounded(low)));
            found.range().high().ifPresent(high -> node.put("high", SevenDigits.rounded(high)));
            node.put("text", text(found, language));
            node.put("studies", found.studies());
            node.put("lowest_grade", found.lowest().id());
            node.set("notes", Json.texts(caveats(found)));
            node.set("rows", Json.texts(found.rows()));
            node.set("sources", Json.texts(found.sources()));
        } else if (figure.content() instanceof Content.MissingContent missing) {
            node.put("status", "missing");
            node.put("reason", missing.why().in(language));
        }
        return node;
    }

    /** The codes of the caveats of a figure, in declaration order. */
    static List<String> caveats(Content.HeldContent found) {
        return found.caveats().stream().sorted().map(Caveat::code).toList();
    }

    /** The value with the published range, which is not an interval of draws. */
    static String text(Content.HeldContent found, Language language) {
        String value = language.figure(Print.content(found.value()));
        return found.range().low().isPresent() && found.range().high().isPresent()
                ? language.say(
                        "content-text.range",
                        "value",
                        value,
                        "low",
                        new Figure(Print.content(found.range().low().getAsDouble())),
                        "high",
                        new Figure(Print.content(found.range().high().getAsDouble())))
                : value;
    }

    private ObjectNode score(AminoAcidScore score) {
        ObjectNode node = Json.object();
        node.put("value", SevenDigits.rounded(score.value()));
        node.put("truncated", SevenDigits.rounded(score.truncated()));
        node.put("text", text(score, language));
        node.put("limiting", score.limiting().acid());
        node.put("complete", score.isComplete());
        node.set("unknown", Json.texts(score.unknown()));
        ArrayNode acids = node.putArray("acids");
        for (AminoAcidScore.ScoreShare share : score.shares()) {
            ObjectNode acid = acids.addObject();
            acid.put("acid", share.acid());
            acid.put("content", SevenDigits.rounded(share.milligrams()));
            acid.put("requirement", share.requirement().milligrams());
            acid.put("unit", "mg/g protein");
            acid.put("ratio", SevenDigits.rounded(share.ratio()));
            acid.set("rows", Json.texts(share.rows()));
            acid.put("requirement_row", share.requirement().id());
            acid.put("requirement_check", share.requirement().cited().check().id());
        }
        return node;
    }

    /** A score to two significant figures with the limiting amino acid; an upper bound while amino acids are missing. */
    static String text(AminoAcidScore score, Language language) {
        Bound bound = score.isComplete() ? Bound.EXACT : Bound.AT_MOST;
        return language.say(
                "content-text.score",
                "value",
                bound.message(new Figure(Print.content(score.value()))),
                "acid",
                DisplayName.of(
                        "amino-acid." + score.limiting().acid(),
                        score.limiting().acid()));
    }

    private static ObjectNode absorption(AbsorptionTrial trial) {
        ObjectNode node = Json.object();
        node.put("nutrient", trial.nutrient());
        node.put("quantity", trial.quantity());
        node.put("food", trial.food());
        Json.put(node, "form", trial.form());
        node.put("reference", trial.reference());
        Json.put(node, "value", trial.value());
        Json.put(node, "low", trial.low());
        Json.put(node, "high", trial.high());
        node.put("unit", trial.unit());
        node.put("meal", trial.meal());
        node.put("people", trial.people());
        node.put("row", trial.row());
        node.put("source", trial.source());
        node.put("check", trial.check().id());
        return node;
    }

    /** A trial in a line: what was absorbed, of what, by whom. */
    static String text(AbsorptionTrial trial) {
        String many = trial.value().isPresent()
                ? Print.content(trial.value().getAsDouble())
                : Print.content(trial.low().orElseThrow()) + " to "
                        + Print.content(trial.high().orElseThrow());
        return trial.nutrient() + ", " + trial.quantity() + " " + many + " (" + trial.unit() + ") of " + trial.meal()
                + "; " + trial.people() + " (" + trial.source() + ")";
    }

    private static ObjectNode quality(MeasuredQuality measured) {
        ObjectNode node = Json.object();
        node.put("id", measured.row().quantity());
        measured.row().printed().value().ifPresent(value -> node.put("value", measured.reported(value)));
        measured.row().printed().low().ifPresent(low -> node.put("low", measured.reported(low)));
        measured.row().printed().high().ifPresent(high -> node.put("high", measured.reported(high)));
        node.put("truncated", measured.isTruncated());
        node.put("use", measured.row().use().id());
        Optional<QualityMethod> method = measured.method();
        node.put("method", method.map(QualityMethod::method).orElse("not-stated"));
        Json.put(node, "pattern", method.flatMap(QualityMethod::pattern));
        node.put("state", method.map(QualityMethod::state).orElse("not stated"));
        node.set("limiting", Json.texts(method.map(QualityMethod::limiting).orElse(List.of())));
        node.put("row", measured.row().id());
        node.put("source", measured.row().cited().source());
        node.put("check", measured.row().cited().check().id());
        return node;
    }
}
