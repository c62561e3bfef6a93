package org.scalepan.ask.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
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
import org.scalepan.cite.Reference;
import org.scalepan.factors.Library;

/**
 * A comparison made ready for a text: each product or farm checked against the reference, with the strongest sentence that can be
 * defended of it.
 *
 * @param rows the products in the order asked, those without evidence too
 * @param checks what can be claimed of them
 */
public record Brief(
        Library library, BriefQuestion question, Estimate reference, List<BriefRow> rows, ClaimChecks checks) {
    /** How many products a brief may set beside the reference; more do not fit on a page. */
    public static final int MOST_PRODUCTS = 8;

    public Brief {
        rows = List.copyOf(rows);
    }

    /**
     * What is asked.
     *
     * @param claimed what is claimed of every product; "less" where nothing particular is
     */
    public record BriefQuestion(
            List<Side> sides, Side reference, Claimed claimed, ComparisonBasis basis, Sampling sampling) {
        public BriefQuestion {
            sides = List.copyOf(sides);
            if (sides.isEmpty() || sides.size() > MOST_PRODUCTS) {
                throw new IllegalArgumentException("a brief is about 1 to " + MOST_PRODUCTS + " products");
            }
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
        return new Brief(library, question, reference, rows, checks);
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

    /** The publications behind figures, claims and warming set. */
    public List<Reference> references() {
        return checks.references();
    }
}
