package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
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

/**
 * The answer to a claim: one check for each product it is about.
 *
 * @param checks of the products with evidence, and of the one asked for if it is only one
 * @param silent products of the group that have no evidence on any basis
 */
public record ClaimChecks(
        Library library,
        ClaimQuestion question,
        List<ClaimCheck> checks,
        List<Side> silent,
        Overall overall,
        String reason,
        Instead instead) {

    public ClaimChecks {
        checks = List.copyOf(checks);
        silent = List.copyOf(silent);
    }

    static ClaimChecks of(ClaimPlan plan) {
        ClaimQuestion question = plan.question();
        CommonRandomNumbers random = question.sampling().random();
        List<ClaimCheck> checks = new ArrayList<>();
        List<Side> silent = new ArrayList<>();
        List<Side> sides = question.subject().sides();
        for (Side side : sides) {
            ClaimCheck check = plan.check(side, random);
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
                reason(question, checks, silent),
                instead(checks, question));
    }

    /** The claim in words. */
    public String claim() {
        List<Side> sides = question.subject().sides();
        return ClaimWording.claim(
                question,
                sides.size() == 1 ? sides.get(0).words() : question.subject().words());
    }

    private static String reason(ClaimQuestion question, List<ClaimCheck> checks, List<Side> silent) {
        if (question.subject().sides().size() == 1) {
            return checks.get(0).reason();
        }
        String each = checks.stream().map(ClaimCheck::shortly).collect(Collectors.joining("; "));
        String animals = checks.stream()
                .flatMap(check -> check.holding().stream())
                .map(cell -> new Sentences(cell.basis(), 0.9).animalsOnly())
                .filter(text -> !text.isEmpty())
                .findFirst()
                .map(text -> " Gases of the animals alone are not the footprint of a product.")
                .orElse("");
        String none = silent.isEmpty()
                ? ""
                : " No evidence for " + silent.stream().map(Side::words).collect(Collectors.joining(", ")) + ".";
        return capital(question.subject().words()) + " are not one product; each was checked for itself "
                + BasisWording.of(question.basis()) + ". " + (each.isEmpty() ? "" : capital(each) + ".") + animals
                + none;
    }

    /** The strongest sentence for the product with the most studies on the basis asked. */
    private static Instead instead(List<ClaimCheck> checks, ClaimQuestion question) {
        return checks.stream()
                .min(Comparator.<ClaimCheck>comparingInt(check -> check.asked().hasEvidence() ? 0 : 1)
                        .thenComparingInt(check -> onAnimalsOnly(check) ? 1 : 0)
                        .thenComparing(Comparator.<ClaimCheck>comparingInt(
                                        check -> check.asked().product().studies())
                                .reversed()))
                .map(ClaimCheck::instead)
                .orElseGet(() -> new Instead(
                        "Nothing can be said of " + question.subject().words() + " from this library.",
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

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
