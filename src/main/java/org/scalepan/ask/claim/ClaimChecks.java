package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.scalepan.ask.Citations;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.LaterBoundaries;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Side;
import org.scalepan.ask.Warning;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;

/**
 * The answer to a claim: one check for each product it is about.
 *
 * @param checks of the products with evidence, and of the one asked for if it is only one
 * @param language of its sentences
 * @param silent products of the group that have no evidence on any basis
 */
public record ClaimChecks(
        Library library,
        ClaimQuestion question,
        List<ClaimCheck> checks,
        List<Side> silent,
        Overall overall,
        String reason,
        Instead instead,
        Language language) {

    public ClaimChecks {
        checks = List.copyOf(checks);
        silent = List.copyOf(silent);
    }

    static ClaimChecks of(ClaimPlan plan, Language language) {
        ClaimQuestion question = plan.question();
        CommonRandomNumbers random = question.sampling().random();
        List<ClaimCheck> checks = new ArrayList<>();
        List<Side> silent = new ArrayList<>();
        List<Side> sides = question.subject().sides();
        for (Side side : sides) {
            ClaimCheck check = plan.check(side, random, language);
            if (check.isTraceable() || sides.size() == 1) {
                checks.add(check);
            } else {
                silent.add(side);
            }
        }
        Overall overall = Overall.ofAll(checks.stream().map(ClaimCheck::overall).toList());
        return new ClaimChecks(
                plan.library(),
                question,
                checks,
                silent,
                overall,
                reason(question, checks, silent, language),
                instead(checks, question, language),
                language);
    }

    /** The claim in words. */
    public String claim() {
        return ClaimWording.claim(question, language);
    }

    private static String reason(
            ClaimQuestion question, List<ClaimCheck> checks, List<Side> silent, Language language) {
        if (question.subject().sides().size() == 1) {
            return checks.get(0).reason();
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(language.say(
                "group.reason", "group", question.subject().group(), "basis", BasisWording.of(question.basis())));
        if (!checks.isEmpty()) {
            Listing each =
                    Listing.semicolons(checks.stream().map(ClaimCheck::shortly).toList());
            sentences.add(language.capital(language.say("verbatim", "text", each)) + ".");
        }
        if (checks.stream()
                .flatMap(check -> check.holding().stream())
                .anyMatch(
                        cell -> !new Sentences(cell.basis(), 0.9).animalsOnly().isEmpty())) {
            sentences.add(language.say("group.animals-only"));
        }
        if (!silent.isEmpty()) {
            sentences.add(language.say(
                    "group.without",
                    "names",
                    Listing.commas(silent.stream().map(Side::name).toList())));
        }
        return String.join(" ", sentences);
    }

    /** The strongest sentence for the product with the most studies on the basis asked. */
    private static Instead instead(List<ClaimCheck> checks, ClaimQuestion question, Language language) {
        return checks.stream()
                .min(Comparator.<ClaimCheck>comparingInt(check -> check.asked().hasEvidence() ? 0 : 1)
                        .thenComparingInt(check -> onAnimalsOnly(check) ? 1 : 0)
                        .thenComparing(Comparator.<ClaimCheck>comparingInt(
                                        check -> check.asked().product().studies())
                                .reversed()))
                .map(ClaimCheck::instead)
                .orElseGet(() -> new Instead(
                        language.say(
                                "group.nothing", "group", question.subject().group()),
                        java.util.Optional.empty(),
                        java.util.OptionalDouble.empty(),
                        java.util.OptionalDouble.empty(),
                        List.of()));
    }

    private static boolean onAnimalsOnly(ClaimCheck check) {
        return check.instead()
                .basis()
                .filter(basis -> basis.boundary() == Boundary.ANIMAL)
                .isPresent();
    }

    /** What a reader must know of the figures: of the basis asked, and of boundaries of the grid that stand against the order of the chain. */
    public List<Warning> warnings() {
        List<PublishedEstimate> published = estimates().stream()
                .filter(PublishedEstimate.class::isInstance)
                .map(PublishedEstimate.class::cast)
                .toList();
        return LaterBoundaries.widened(library, published, grounds().warnings());
    }

    /** What stands behind the figures on the basis asked. */
    public Provenance grounds() {
        return new Provenance(library, estimates());
    }

    private List<Estimate> estimates() {
        return Stream.concat(
                        checks.stream()
                                .flatMap(check -> check.reference().stream())
                                .limit(1),
                        checks.stream().map(ClaimCheck::product))
                .toList();
    }

    /** Every publication behind a figure of the grid, a paired ratio, or a circulating claim that matches the question. */
    public List<Reference> references() {
        Citations citations = new Citations();
        grounds().references().forEach(reference -> citations.addSource(reference.id()));
        for (ClaimCheck check : checks) {
            check.differences().rows().forEach(row -> citations.addSource(row.source()));
            check.paired().forEach(one -> {
                citations.addSource(one.study().study());
                one.study().borrowed().sources().forEach(citations::addSource);
            });
            check.circulating().stream()
                    .map(one -> one.claim().sources())
                    .flatMap(Collection::stream)
                    .forEach(citations::addSource);
        }
        if (question.basis().indicator().isWarming()) {
            citations.add(question.basis().gwp());
        }
        return citations.references(library);
    }
}
