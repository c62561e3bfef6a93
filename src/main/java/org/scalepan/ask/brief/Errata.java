package org.scalepan.ask.brief;

import java.util.List;
import java.util.Locale;
import org.scalepan.cite.Reference;

/** Corrections of publications that a brief uses, and whether they were in the copy that was read. */
public final class Errata {
    private static final List<String> WORDS = List.of("erratum", "errata", "corrigend");

    private Errata() {}

    /** What the library notes of them, with the publication in front. */
    public static List<String> of(List<Reference> references) {
        return references.stream()
                .filter(reference -> reference
                        .note()
                        .filter(note -> WORDS.stream().anyMatch(note.toLowerCase(Locale.ROOT)::contains))
                        .isPresent())
                .map(reference -> reference.label() + ": " + reference.note().orElse(""))
                .toList();
    }
}
