package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Claim;
import org.scalepan.factors.Library;

/** The question by which a circulating claim is checked here, as a relative address. */
final class ClaimAddress {
    private static final String LIVESTOCK = "livestock";

    private ClaimAddress() {}

    /** Empty where the claim is about something that no question answers. */
    static Optional<String> of(Library library, Claim claim) {
        Optional<String> product = claim.products().stream().findFirst().flatMap(id -> product(library, id));
        Optional<String> indicator = claim.indicators().stream()
                .filter(library.indicators()::containsKey)
                .findFirst();
        if (product.isEmpty() || indicator.isEmpty() || claim.claimed().isEmpty()) {
            return Optional.empty();
        }
        String start = "/v1/claim?product=" + product.get() + "&indicator=" + indicator.get();
        if (claim.claimed().get().equals("none")) {
            return Optional.of(start + "&none=yes");
        }
        List<String> references = claim.references().stream()
                .filter(id -> id.equals(LIVESTOCK) || library.products().containsKey(id))
                .toList();
        if (references.isEmpty() || claim.timesLessLow().isEmpty()) {
            return Optional.empty();
        }
        String reference = references.get(0).equals(LIVESTOCK) ? "beef" : references.get(0);
        return Optional.of(start + "&reference=" + reference + "&times_less="
                + Claimed.number(claim.timesLessLow().getAsDouble()));
    }

    /** A product as it is, and the group of insects by its name in questions. */
    private static Optional<String> product(Library library, String id) {
        if (id.equals("insect")) {
            return Optional.of(Subject.INSECTS);
        }
        return Optional.of(id).filter(library.products()::containsKey);
    }
}
