package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Side;
import org.scalepan.factors.Claim;
import org.scalepan.factors.ClaimBasis;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;

/**
 * A circulating claim that nearly matches the claim asked.
 *
 * @param onThisBasis what its literature says of the very unit and boundary asked, where it says anything
 */
public record Circulating(Claim claim, Optional<Verdict> onThisBasis) {
    /** Circulating numbers are rounded when repeated; within a factor of 1.5 they count as the same claim. A choice of this service. */
    private static final double NEAR = 1.5;

    /** The circulating claims that match a question. */
    static List<Circulating> met(Library library, ClaimQuestion question, Side side) {
        return library.claims().stream()
                .filter(claim ->
                        claim.indicators().contains(question.basis().indicator().id()))
                .filter(claim -> says(claim, question.claimed()))
                .filter(claim -> isAbout(claim, question.subject(), side.product()))
                .filter(claim -> question.reference().isEmpty()
                        || among(claim.references(), question.reference().get().product()))
                .map(claim -> new Circulating(claim, onThisBasis(claim, question)))
                .toList();
    }

    private static boolean says(Claim claim, Claimed claimed) {
        if (claimed.times().isEmpty()) {
            return claim.claimed().filter("none"::equals).isPresent();
        }
        if (claim.timesLessLow().isEmpty() || claim.timesLessHigh().isEmpty()) {
            return false;
        }
        double k = claimed.times().getAsDouble();
        double low = claim.timesLessLow().getAsDouble();
        double high = claim.timesLessHigh().getAsDouble();
        // "Less" without a number matches no number.
        boolean noNumber = low == 1 && high == 1;
        return noNumber ? k == 1 : (k != 1 && k >= low / NEAR && k <= high * NEAR);
    }

    private static boolean isAbout(Claim claim, Subject subject, Product product) {
        return among(claim.products(), product) || subject.words().equals(Subject.INSECTS);
    }

    /** Named itself, or as one of its group: insects, livestock. */
    private static boolean among(List<String> named, Product product) {
        return named.contains(product.id()) || named.contains(product.group());
    }

    private static Optional<Verdict> onThisBasis(Claim claim, ClaimQuestion question) {
        if (claim.holdsOn().stream().anyMatch(listed -> is(listed, question))) {
            return Optional.of(Verdict.HOLDS);
        }
        return claim.failsOn().stream().anyMatch(listed -> is(listed, question))
                ? Optional.of(Verdict.FAILS)
                : Optional.empty();
    }

    private static boolean is(ClaimBasis listed, ClaimQuestion question) {
        ComparisonBasis basis = question.basis();
        return listed.boundary() == basis.boundary()
                && listed.per().equals(basis.per().id())
                && listed.concerns(
                        question.reference().map(side -> side.product().id()));
    }
}
