package org.scalepan.ask.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.Citations;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Provenance;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.claim.ClaimCheck;
import org.scalepan.ask.claim.ClaimChecks;
import org.scalepan.ask.claim.ClaimPlan;
import org.scalepan.ask.claim.ClaimQuestion;
import org.scalepan.ask.claim.Claimed;
import org.scalepan.ask.claim.GridCell;
import org.scalepan.ask.claim.Subject;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Library;

/**
 * A comparison made ready for a text: each product or farm checked against the reference, with the strongest sentence that can be
 * defended of it.
 *
 * @param rows the products in the order asked, those without evidence too
 * @param checks what can be claimed of them
 * @param otherIndicators the same products beside the same reference, by further indicators
 * @param otherReferences the same products beside further references
 */
public record Brief(
        Library library,
        BriefQuestion question,
        Estimate reference,
        List<BriefRow> rows,
        ClaimChecks checks,
        List<Comparison> otherIndicators,
        List<Comparison> otherReferences) {
    /** How many products a brief may set beside the reference; more do not fit on a page. */
    public static final int MOST_PRODUCTS = 8;

    public Brief {
        rows = List.copyOf(rows);
        otherIndicators = List.copyOf(otherIndicators);
        otherReferences = List.copyOf(otherReferences);
    }

    /**
     * What is asked.
     *
     * @param claimed what is claimed of every product; "less" where nothing particular is
     * @param besides bases of further indicators to be shown beside the one asked
     * @param furtherReferences products that are references too
     */
    public record BriefQuestion(
            List<Side> sides,
            Side reference,
            Claimed claimed,
            ComparisonBasis basis,
            Sampling sampling,
            List<ComparisonBasis> besides,
            List<ProductForm> furtherReferences) {
        public BriefQuestion {
            sides = List.copyOf(sides);
            besides = List.copyOf(besides);
            furtherReferences = List.copyOf(furtherReferences);
            if (sides.isEmpty() || sides.size() > MOST_PRODUCTS) {
                throw new IllegalArgumentException("a brief is about 1 to " + MOST_PRODUCTS + " products");
            }
        }

        /** The products among the sides. */
        private List<ProductForm> products() {
            return sides.stream()
                    .filter(Side.PublishedSide.class::isInstance)
                    .map(side -> ((Side.PublishedSide) side).item())
                    .toList();
        }

        /** The plan of the answer, before anything is drawn. */
        public ClaimPlan plan(Library library) {
            String words = String.join(", ", sides.stream().map(Side::words).toList());
            return new ClaimPlan(
                    library,
                    new ClaimQuestion(new Subject(words, sides), Optional.of(reference), claimed, basis, sampling));
        }
    }

    /**
     * One product beside the reference.
     *
     * @param check what can be claimed of it, when it or another basis has evidence
     */
    public record BriefRow(Estimate estimate, Optional<ClaimCheck> check) {
        /** The claim on the basis asked. */
        public Optional<GridCell> asked() {
            return check.map(ClaimCheck::asked);
        }

        /** The strongest sentence that can be defended. */
        public String sentence() {
            return check.map(found -> found.instead().sentence())
                    .orElseGet(() -> "Of " + estimate.words() + " nothing can be said: "
                            + estimate.missing().orElse("there is no evidence") + ".");
        }
    }

    /** Answers a question. */
    public static Brief of(Library library, BriefQuestion question, ClaimPlan plan) {
        ClaimChecks checks = plan.check();
        var random = question.sampling().random();
        Estimate reference = question.reference().on(library, question.basis(), question.sampling(), random);
        List<BriefRow> rows = new ArrayList<>();
        for (Side side : question.sides()) {
            Optional<ClaimCheck> check = checks.checks().stream()
                    .filter(one -> one.side().equals(side))
                    .findFirst();
            Estimate estimate = check.map(ClaimCheck::product)
                    .orElseGet(() -> side.on(library, question.basis(), question.sampling(), random));
            rows.add(new BriefRow(estimate, check));
        }
        return new Brief(
                library,
                question,
                reference,
                rows,
                checks,
                byIndicator(library, question),
                byReference(library, question));
    }

    private static List<Comparison> byIndicator(Library library, BriefQuestion question) {
        return question.reference() instanceof Side.PublishedSide against
                        && !question.products().isEmpty()
                ? question.besides().stream()
                        .map(basis -> compared(library, question, against.item(), basis))
                        .toList()
                : List.of();
    }

    private static List<Comparison> byReference(Library library, BriefQuestion question) {
        return question.products().isEmpty()
                ? List.of()
                : question.furtherReferences().stream()
                        .map(against -> compared(library, question, against, question.basis()))
                        .toList();
    }

    private static Comparison compared(
            Library library, BriefQuestion question, ProductForm against, ComparisonBasis basis) {
        return Comparison.of(
                library, new Comparison.ComparisonQuestion(question.products(), against, basis, question.sampling()));
    }

    /** The products and the reference. */
    public List<Estimate> estimates() {
        List<Estimate> all =
                new ArrayList<>(rows.stream().map(BriefRow::estimate).toList());
        all.add(reference);
        return all;
    }

    /** The provenance of the figures. */
    public Provenance grounds() {
        return new Provenance(library, estimates());
    }

    /** The publications behind what the page shows: its figures, its sentences, ratios out of one paper, and the warming set. */
    public List<Reference> references() {
        Citations citations = new Citations();
        BriefStudies.of(this).forEach(study -> citations.addSource(study.source()));
        grounds().references().forEach(reference -> citations.addSource(reference.id()));
        for (BriefRow row : rows) {
            row.check().ifPresent(check -> {
                check.instead().sources().forEach(citations::addSource);
                check.paired().stream()
                        .filter(one -> one.basis().per() == question.basis().per()
                                && one.basis().boundary() == question.basis().boundary())
                        .forEach(one -> {
                            citations.addSource(one.study().study());
                            one.study().borrowed().sources().forEach(citations::addSource);
                        });
            });
        }
        Stream.concat(otherIndicators.stream(), otherReferences.stream())
                .flatMap(comparison -> comparison.references(library).stream())
                .forEach(reference -> citations.addSource(reference.id()));
        if (question.basis().indicator().isWarming()) {
            citations.add(question.basis().gwp());
        }
        return citations.references(library);
    }
}
