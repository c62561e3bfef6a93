package org.scalepan.web.programme;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.ask.programme.Displaced;
import org.scalepan.ask.programme.MoneySide;
import org.scalepan.ask.programme.Programme;
import org.scalepan.ask.programme.Substitution;
import org.scalepan.ask.programme.SubstitutionSentences;
import org.scalepan.ask.programme.Swing;
import org.scalepan.ask.programme.YearlyChange;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.literature.Evidence;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.Summary;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.EstimateJson;
import org.scalepan.words.Language;
import org.scalepan.words.Message;

/** Renders the yearly effect of a programme as JSON. */
final class SubstitutionView {
    private final Library library;
    private final Substitution substitution;
    private final SubstitutionSentences sentences;
    private final Language language;

    SubstitutionView(Library library, Substitution substitution, Language language) {
        this.library = library;
        this.language = language;
        this.substitution = substitution;
        this.sentences = new SubstitutionSentences(substitution, language);
    }

    ObjectNode tree(Map<String, Object> question) {
        ObjectNode node = Json.object();
        node.set("question", Json.map(question));
        node.set("library", Envelope.library(library));
        node.put("paragraph", sentences.paragraph());
        node.set("statements", Json.texts(sentences.statements()));
        node.set("programme", programme());
        ArrayNode indicators = node.putArray("indicators");
        substitution.changes().forEach(change -> indicators.add(change(change)));
        substitution.money().ifPresent(money -> node.set("money", money(money)));
        Envelope.close(
                node,
                substitution.warnings(library, language),
                library,
                substitution.products(),
                substitution.references(library),
                language);
        return node;
    }

    private ObjectNode programme() {
        Programme programme = substitution.question().programme();
        Message equalBasis = Message.of(
                "programme.yearly", "unit", substitution.question().equalBasis().message());
        ObjectNode node = Json.object();
        node.put("kg_per_year", SevenDigits.rounded(programme.kilograms()));
        node.put("unit", programme.unit().id());
        put(node, "households", programme.households());
        put(node, "beneficiaries", programme.beneficiaries());
        put(node, "women", programme.women());
        put(node, "men", programme.men());
        put(node, "meals_per_year", programme.meals());
        put(node, "years", programme.years());
        node.set("supplied", interval(substitution.displaced().supplied(), equalBasis));
        node.set("displaced", interval(substitution.displaced().displaced(), equalBasis));
        ArrayNode parts = node.putArray("baseline");
        substitution.displaced().parts().forEach(part -> parts.add(part(part)));
        node.set(
                "composition_rows",
                Json.texts(substitution.contents(library).stream()
                        .map(CompositionRow::id)
                        .toList()));
        return node;
    }

    private ObjectNode part(Displaced.DisplacedPart part) {
        ObjectNode node = Json.object();
        node.put("name", part.of().side().written());
        node.put("share", SevenDigits.rounded(part.of().share()));
        part.kilograms()
                .ifPresent(kilograms -> node.set(
                        "displaced",
                        interval(
                                kilograms,
                                Message.of(
                                        "programme.yearly",
                                        "unit",
                                        part.of().unit().message()))));
        Json.put(node, "reason", part.missing(), language);
        return node;
    }

    private ObjectNode change(YearlyChange change) {
        ObjectNode node = Json.object();
        node.put("indicator", change.basis().indicator().id());
        node.put("boundary", change.basis().boundary().id());
        if (change.basis().indicator().isWarming()) {
            node.put("gwp", change.basis().gwp().id());
        }
        node.put("status", change.figures().isPresent() ? "ok" : "no-evidence");
        Json.put(node, "reason", change.why(), language);
        if (!change.instead().isEmpty()) {
            node.set("known_instead", Json.texts(SubstitutionSentences.known(change), language));
        }
        change.figures().ifPresent(figures -> figures(node, change, figures));
        return node;
    }

    private void figures(ObjectNode node, YearlyChange change, YearlyChange.Figures figures) {
        Message yearly = change.yearly();
        Summary avoided = figures.avoided();
        node.put("unit", yearly.english());
        node.set("avoided", avoided(avoided, yearly, figures.bound()));
        ObjectNode quote = node.putObject("conservative");
        if (figures.bound().supportsAtLeast()) {
            quote.put("value", SevenDigits.rounded(avoided.low()));
        }
        quote.put(
                "text",
                SubstitutionSentences.conservative(avoided, yearly, figures.bound())
                        .in(language));
        node.set("caused_by_product", interval(figures.own(), yearly, figures.ownBound()));
        node.set("caused_by_displaced", interval(figures.displaced(), yearly, figures.displacedBound()));
        figures.saves().ifPresent(share -> {
            ObjectNode saves = node.putObject("share_of_draws_avoids");
            saves.put("value", SevenDigits.rounded(share.value()));
            saves.put("standard_error", SevenDigits.rounded(share.standardError()));
        });
        Programme programme = substitution.question().programme();
        each(node, "per_household", change, programme.households(), SubstitutionSentences.perHousehold(change));
        each(node, "per_beneficiary", change, programme.beneficiaries(), SubstitutionSentences.perBeneficiary(change));
        each(node, "per_meal", change, programme.meals(), SubstitutionSentences.perMeal(change));
        programme
                .years()
                .ifPresent(years -> node.set(
                        "over_the_years",
                        avoided(
                                avoided.times(years),
                                Message.of("verbatim", "text", change.unitName()),
                                figures.bound())));
        ArrayNode swings = node.putArray("sensitivity");
        figures.swings().forEach(swing -> swings.add(swing(swing, yearly)));
        ArrayNode sides = node.putArray("sides");
        Sentences per = new Sentences(change.basis(), coverage(), language);
        Sentences perKilogram = new Sentences(
                change.basis().withPer(substitution.question().programme().unit()), coverage(), language);
        sides.add(side("product", change.product(), perKilogram));
        change.baseline().forEach(side -> sides.add(side("baseline", side, per)));
        change.alternatives().forEach(side -> sides.add(side("alternative", side, per)));
    }

    private void each(ObjectNode node, String field, YearlyChange change, OptionalDouble count, Message unit) {
        count.ifPresent(number -> change.avoidedForEach(number)
                .ifPresent(avoided -> node.set(
                        field,
                        avoided(avoided, unit, change.figures().orElseThrow().bound()))));
    }

    private ObjectNode swing(Swing swing, Message unit) {
        ObjectNode node = Json.object();
        node.put("driver", swing.driver().id());
        node.put("setting", swing.setting());
        node.put("as_asked", swing.asAsked() ? "yes" : "no");
        node.set("avoided", avoided(swing.avoided(), unit, swing.bound()));
        return node;
    }

    private static ObjectNode side(String role, Estimate estimate, Sentences sentences) {
        ObjectNode node = Json.object();
        node.put("role", role);
        node.put("name", estimate.name().in(sentences.language()));
        node.put("sentence", sentences.estimate(estimate));
        EstimateJson.intervalOf(node, estimate);
        estimate.summary()
                .ifPresent(summary -> node.set(
                        "footprint",
                        EstimateJson.footprint(summary, sentences, estimate.bound())
                                .put("bound", estimate.bound().id())));
        node.set("rows", Json.texts(rows(estimate)));
        return node;
    }

    /** Ids of the library rows behind a side. */
    private static List<String> rows(Estimate estimate) {
        if (estimate instanceof PublishedEstimate published) {
            return published.evidence() instanceof Evidence.PooledEvidence some
                    ? some.findings().map(finding -> finding.result().id()).toList()
                    : List.of();
        }
        return ((SystemEstimate) estimate)
                .system().stream()
                        .flatMap(system -> system.counted().stream())
                        .flatMap(flow -> flow.rows().stream())
                        .distinct()
                        .toList();
    }

    private ObjectNode money(MoneySide money) {
        ObjectNode node = Json.object();
        Message yearly = Message.of("programme.yearly", "unit", money.currency());
        node.put("currency", money.currency());
        money.ofProduct().ifPresent(value -> node.put("value_of_product", SevenDigits.rounded(value)));
        money.ofDisplaced().ifPresent(value -> {
            node.set("value_of_displaced", interval(value, yearly));
            node.set("without_price", Json.texts(money.withoutPrice()));
        });
        money.imported().ifPresent(value -> {
            node.set("import_bill_avoided", interval(value, yearly));
            node.set("without_imported_share", Json.texts(money.withoutImports()));
        });
        money.perTonne().ifPresent(each -> {
            ObjectNode perTonne = node.putObject("per_tonne_avoided");
            perTonne.put("median", SevenDigits.rounded(each.median()));
            perTonne.put("low", SevenDigits.rounded(each.low()));
            perTonne.put("high", SevenDigits.rounded(each.high()));
            perTonne.put("unit", money.currency() + " per t CO2e");
            perTonne.put("bound", each.bound().id());
            perTonne.put(
                    "text",
                    language.say("programme.per-tonne", "figure", each.message(), "currency", money.currency()));
        });
        Json.put(node, "no_price_per_tonne", money.whyNotPerTonne(), language);
        return node;
    }

    private ObjectNode avoided(Summary summary, Message unit, Bound bound) {
        String text = SubstitutionSentences.avoided(summary, unit, bound).in(language);
        return EstimateJson.of(summary, unit.english(), text).put("bound", bound.id());
    }

    private ObjectNode interval(Summary summary, Message unit, Bound bound) {
        String text = language.say(
                "figure-with-unit",
                "figure",
                bound.message(SubstitutionSentences.interval(summary, language)),
                "unit",
                unit);
        return EstimateJson.of(summary, unit.english(), text).put("bound", bound.id());
    }

    private ObjectNode interval(Summary summary, Message unit) {
        ObjectNode node = interval(summary, unit, Bound.EXACT);
        node.remove("bound");
        return node;
    }

    private static void put(ObjectNode node, String field, OptionalDouble number) {
        number.ifPresent(value -> node.put(field, SevenDigits.rounded(value)));
    }

    private double coverage() {
        return substitution.question().sampling().coverage();
    }
}
