package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.words.Message;

/** Whether the other kind of evidence answers where the kind asked for has nothing, so that a refusal can say how to ask. */
public final class OtherEvidence {
    private OtherEvidence() {}

    /** The other kind, where a side has no figure by the kind asked for and every side has one by the other; empty of records. */
    public static Optional<EvidenceKind> of(Library library, List<Side> sides, ComparisonBasis basis) {
        ComparisonBasis other = basis.withOtherEvidence();
        return sides.stream().allMatch(Side.PublishedSide.class::isInstance)
                        && sides.stream().anyMatch(side -> !side.hasEvidence(library, basis))
                        && sides.stream().allMatch(side -> side.hasEvidence(library, other))
                ? Optional.of(other.evidence())
                : Optional.empty();
    }

    /** The same of one estimate. */
    public static Optional<EvidenceKind> of(Library library, Estimate estimate, ComparisonBasis basis) {
        Optional<ProductForm> item = estimate instanceof PublishedEstimate published
                ? Optional.of(published.item())
                : estimate instanceof ModelledEstimate modelled ? Optional.of(modelled.item()) : Optional.empty();
        return item.flatMap(asked -> of(library, List.of(new Side.PublishedSide(asked)), basis));
    }

    /** What a refusal says of it: {@code evidence=modelled gives a modelled figure}. */
    public static String words(EvidenceKind kind) {
        return "evidence=" + kind.id() + " gives a " + kind.id() + " figure";
    }

    /** The same of two sides: {@code evidence=modelled gives modelled figures}. */
    public static String wordsOfBoth(EvidenceKind kind) {
        return "evidence=" + kind.id() + " gives " + kind.id() + " figures";
    }

    /** Why there is no figure, and the kind of evidence that has figures of both sides. */
    public static Message after(Message why, Optional<EvidenceKind> other) {
        return other.map(kind -> Message.of("other-evidence." + kind.id(), "why", why))
                .orElse(why);
    }
}
