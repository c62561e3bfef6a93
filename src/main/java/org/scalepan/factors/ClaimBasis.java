package org.scalepan.factors;

import java.util.List;
import java.util.Optional;

/**
 * A basis on which a circulating claim is said to hold or to fail.
 *
 * @param boundary system boundary
 * @param per functional unit
 * @param reference the one reference it is said of, or empty for all of the claim
 */
public record ClaimBasis(Boundary boundary, String per, Optional<String> reference) {

    /** Reads {@code boundary:per} or {@code boundary:per:reference}; empty when it is written otherwise or names no boundary. */
    public static Optional<ClaimBasis> of(String written) {
        List<String> parts = List.of(written.split(":", -1));
        if (parts.size() < 2 || parts.size() > 3 || parts.stream().anyMatch(String::isBlank)) {
            return Optional.empty();
        }
        return Boundary.of(parts.get(0))
                .map(boundary -> new ClaimBasis(
                        boundary, parts.get(1), parts.size() == 3 ? Optional.of(parts.get(2)) : Optional.empty()));
    }

    /** True when the basis is said of a reference. */
    public boolean concerns(Optional<String> asked) {
        return reference.isEmpty() || reference.equals(asked);
    }

    @Override
    public String toString() {
        return boundary.id() + ":" + per + reference.map(id -> ":" + id).orElse("");
    }
}
