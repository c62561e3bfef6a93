package org.scalepan.web.claim;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.OtherEvidence;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Side;
import org.scalepan.ask.claim.Circulating;
import org.scalepan.ask.claim.ClaimCheck;
import org.scalepan.ask.claim.ClaimChecks;
import org.scalepan.ask.claim.Differences;
import org.scalepan.ask.claim.GridCell;
import org.scalepan.ask.claim.Instead;
import org.scalepan.ask.claim.PairedFinding;
import org.scalepan.ask.claim.ParsedClaim;
import org.scalepan.ask.claim.Reduction;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Claim;
import org.scalepan.factors.ClaimBasis;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.literature.PairedStudy;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.EstimateJson;
import org.scalepan.web.render.ModelledEstimateView;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.render.PublishedEstimateView;

/** A checked claim as JSON. */
final class ClaimJson {
    private final Library library;
    private final ClaimChecks checks;
    private final Optional<ParsedClaim> sentence;

    ClaimJson(Library library, ClaimChecks checks, Optional<ParsedClaim> sentence) {
        this.library = library;
        this.checks = checks;
        this.sentence = sentence;
    }

    /** The answer; one that rests on posted records has no permalink. */
    ObjectNode tree(Map<String, Object> question, Optional<String> path) {
        ObjectNode node = Json.object();
        node.set("question", Json.map(question));
        node.set("library", Envelope.library(library));
        path.ifPresent(at -> node.put("permalink", Permalink.of(library, at, question)));
        sentence.ifPresent(read -> understood(node, read));
        node.put("claim", checks.claim());
        node.put("verdict", checks.overall().id());
        node.put("reason", checks.reason());
        node.set("say_instead", instead(checks.instead()));
        ArrayNode each = node.putArray("checks");
        checks.checks().forEach(check -> {
            ObjectNode one = check(check);
            unseen(check, question, path)
                    .map(PublishedEstimateView::unseenFigure)
                    .or(() -> path.flatMap(at -> otherEvidence(check, question, at)))
                    .ifPresent(known -> one.set("known_instead", known));
            each.add(one);
        });
        node.set(
                "without_evidence",
                Json.texts(checks.silent().stream().map(Side::written).toList()));
        Provenance provenance = checks.grounds();
        Envelope.close(node, checks.warnings(), library, provenance.products(), checks.references(), checks.language());
        return node;
    }

    /** Which words of a sentence were read as what. */
    static void understood(ObjectNode node, ParsedClaim read) {
        ArrayNode understood = node.putArray("understood");
        read.parts()
                .forEach(part ->
                        understood.addObject().put("words", part.words()).put("read_as", part.readAs()));
    }

    /** Where a claim that cannot be checked is checked with numbers that nobody has seen; of posted records, where their figure is. */
    private Optional<String> unseen(ClaimCheck check, Map<String, Object> question, Optional<String> path) {
        return Stream.concat(Stream.of(check.product()), check.reference().stream())
                .filter(PublishedEstimate.class::isInstance)
                .map(PublishedEstimate.class::cast)
                .flatMap(side -> path
                        .map(at -> PublishedEstimateView.unseen(library, side, at, question))
                        .orElseGet(() -> PublishedEstimateView.unseen(library, side))
                        .stream())
                .findFirst();
    }

    /** The same claim by the other kind of evidence, where only that has figures of both sides. */
    private Optional<ObjectNode> otherEvidence(ClaimCheck check, Map<String, Object> question, String path) {
        List<Side> sides = Stream.concat(Stream.of(check.side()), check.question().reference().stream())
                .toList();
        return ModelledEstimateView.known(
                library, OtherEvidence.of(library, sides, check.question().basis()), path, question);
    }

    private ObjectNode check(ClaimCheck check) {
        ObjectNode node = Json.object();
        node.put("product", check.side().written());
        node.put("name", check.side().name().in(checks.language()));
        node.put("verdict", check.overall().id());
        node.put("reason", check.reason());
        node.set("say_instead", instead(check.instead()));
        Sentences sentences = new Sentences(
                check.question().basis(), check.question().sampling().coverage(), checks.language());
        node.put("product_sentence", sentences.estimate(check.product()));
        check.reference()
                .map(Estimate.class::cast)
                .ifPresent(reference -> node.put("reference_sentence", sentences.estimate(reference)));
        node.set("with_displaced_use", Json.texts(check.displacedUse()));
        check.underOtherLandUse().ifPresent(other -> {
            ObjectNode states = node.putObject("by_luc");
            Stream.of(check.asked(), other)
                    .sorted(Comparator.comparing(
                            (GridCell state) -> state.basis().luc(), Comparator.reverseOrder()))
                    .forEach(state -> states.set(
                            state.basis().luc().id(),
                            cell(
                                    state,
                                    state.basis().luc() == check.asked().basis().luc())));
        });
        ArrayNode cells = node.putArray("cells");
        check.cells().forEach(cell -> cells.add(cell(cell, cell.equals(check.asked()))));
        ArrayNode half = node.putArray("half_measured");
        check.halfMeasured()
                .forEach(one -> half.addObject()
                        .put("boundary", one.boundary().id())
                        .put("measured", one.measured().in(checks.language()))
                        .put("not_measured", one.unmeasured().in(checks.language())));
        ArrayNode paired = node.putArray("paired");
        check.paired().forEach(one -> paired.add(paired(one, check)));
        node.set("why_sources_differ", differences(check.differences()));
        ArrayNode circulating = node.putArray("circulating");
        check.circulating().forEach(one -> circulating.add(circulating(one)));
        return node;
    }

    private static void basis(ObjectNode node, ComparisonBasis basis) {
        node.put("per", basis.per().id());
        node.put("boundary", basis.boundary().id());
        if (basis.indicator().isWarming()) {
            node.put("gwp", basis.gwp().id());
        }
    }

    private ObjectNode instead(Instead instead) {
        ObjectNode node = Json.object();
        node.put("sentence", instead.sentence());
        instead.basis().ifPresent(basis -> basis(node, basis));
        instead.timesLess().ifPresent(times -> {
            node.put("times_less", SevenDigits.rounded(times));
            node.put("percent_less", Reduction.percent(times));
        });
        instead.timesMore().ifPresent(times -> node.put("times_more", SevenDigits.rounded(times)));
        if (instead.basis().isPresent()) {
            node.put("caveat", checks.language().say("instead.caveat"));
        }
        node.set("sources", Json.texts(instead.sources()));
        instead.paper().ifPresent(paper -> node.put("paper", paper));
        return node;
    }

    private ObjectNode cell(GridCell cell, boolean asked) {
        ObjectNode node = Json.object();
        basis(node, cell.basis());
        node.put("asked", asked);
        node.put("verdict", cell.verdict().id());
        node.put("bound", cell.bound().id());
        cell.probability().ifPresent(found -> {
            ObjectNode share = node.putObject("share_of_draws");
            share.put("value", SevenDigits.rounded(found.value()));
            share.put("standard_error", SevenDigits.rounded(found.standardError()));
        });
        if (cell.bound() != Bound.NONE) {
            cell.timesLess()
                    .ifPresent(ratio ->
                            node.set("times_less", EstimateJson.ratio(ratio, cell.bound(), checks.language())));
        }
        side(node, "product", cell.product(), cell.basis());
        cell.reference().ifPresent(reference -> side(node, "reference", reference, cell.basis()));
        return node;
    }

    private void side(ObjectNode cell, String name, GridCell.Evidenced side, ComparisonBasis basis) {
        ObjectNode node = cell.putObject(name);
        node.put("studies", side.studies());
        side.footprint().ifPresent(footprint -> {
            node.put("median", SevenDigits.rounded(footprint.median()));
            node.put("bound", side.bound().id());
            node.put(
                    "text",
                    new Sentences(basis, footprint.coverage(), checks.language()).footprint(footprint, side.bound()));
        });
        if (!side.uncounted().isEmpty()) {
            node.set("not_counted", Json.texts(side.uncounted(), checks.language()));
        }
        if (!side.countedBeyond().isEmpty()) {
            node.set("counted_beyond", Json.texts(side.countedBeyond(), checks.language()));
        }
        Json.put(node, "no_ratio", side.noRatio().map(NoRatio::id));
        if (!side.contradictions().isEmpty()) {
            node.set("contradictions", Json.texts(side.contradictions(), checks.language()));
        }
        Json.put(node, "missing", side.missing(), checks.language());
    }

    private static ObjectNode paired(PairedFinding one, ClaimCheck check) {
        ObjectNode node = Json.object();
        node.put("study", one.study().study());
        node.put("per", one.basis().per().id());
        node.put("boundary", one.basis().boundary().id());
        node.put("times_less", SevenDigits.rounded(one.study().central()));
        one.low().ifPresent(low -> node.put("low", SevenDigits.rounded(low)));
        one.high().ifPresent(high -> node.put("high", SevenDigits.rounded(high)));
        check.question()
                .claimed()
                .times()
                .ifPresent(k -> node.put("reaches_claim", one.reaches(k).id()));
        node.put("origin", one.study().origin() == PairedStudy.Origin.PRINTED ? "printed" : "computed");
        Json.put(node, "product_from", one.study().borrowed().product());
        Json.put(node, "reference_from", one.study().borrowed().reference());
        node.set("rows", Json.texts(one.study().rows()));
        return node;
    }

    private static ObjectNode differences(Differences differences) {
        ObjectNode node = Json.object();
        ArrayNode differing = node.putArray("differing");
        differences.differing().forEach((field, values) -> {
            ObjectNode one = differing.addObject();
            one.put("field", field);
            one.set("values", Json.texts(values));
        });
        ArrayNode rows = node.putArray("results");
        for (Differences.DifferenceRow row : differences.rows()) {
            ObjectNode one = rows.addObject();
            one.put("result", row.id());
            one.put("source", row.source());
            one.put("of", row.ofProduct() ? "product" : "reference");
            one.put("on_basis_asked", row.asked());
            row.fields().forEach(one::put);
        }
        return node;
    }

    private static ObjectNode circulating(Circulating one) {
        ObjectNode node = circulating(one.claim());
        one.onThisBasis().ifPresent(verdict -> {
            node.remove(List.of("sources", "check"));
            node.put("on_basis_asked", verdict.id());
            node.set("sources", Json.texts(one.claim().sources()));
            node.put("check", one.claim().check().id());
        });
        return node;
    }

    /** A claim in circulation, whatever was asked. */
    static ObjectNode circulating(Claim claim) {
        ObjectNode node = Json.object();
        node.put("id", claim.id());
        node.put("claim", claim.claim());
        Json.put(node, "stated_ratio", claim.statedRatio());
        Json.put(node, "basis", claim.basis());
        Json.put(node, "boundary", claim.boundary());
        node.put("verdict", claim.verdict());
        node.put("verdict_text", claim.verdictText());
        node.set("holds_on", bases(claim.holdsOn()));
        node.set("fails_on", bases(claim.failsOn()));
        node.set("sources", Json.texts(claim.sources()));
        node.put("check", claim.check().id());
        return node;
    }

    private static ArrayNode bases(List<ClaimBasis> bases) {
        return Json.texts(bases.stream().map(ClaimBasis::toString).toList());
    }
}
