package org.scalepan.ask;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Which kind of evidence about products a question asks for. What is of one kind is never pooled with the other. */
public enum EvidenceKind {
    /** Pooled results of published studies. */
    PUBLISHED,
    /** A reference farm: published practice, computed by the rules that records are computed by. */
    MODELLED;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> ids() {
        return Stream.of(values()).map(EvidenceKind::id).toList();
    }

    public static Optional<EvidenceKind> of(String id) {
        return Stream.of(values()).filter(kind -> kind.id().equals(id)).findFirst();
    }

    /** The other kind. */
    public EvidenceKind other() {
        return this == PUBLISHED ? MODELLED : PUBLISHED;
    }
}
