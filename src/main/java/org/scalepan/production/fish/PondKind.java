package org.scalepan.production.fish;

import java.util.Optional;
import java.util.stream.Stream;

/** What farmed fish live in. */
public enum PondKind {
    POND("pond", "freshwater ponds"),
    BRACKISH_POND("brackish-pond", "ponds of brackish water"),
    LINED_POND("lined-pond", "lined ponds"),
    TANK("tank", "tanks"),
    CAGE("cage", "cages");

    private final String id;
    private final String words;

    PondKind(String id, String words) {
        this.id = id;
        this.words = words;
    }

    public String id() {
        return id;
    }

    /** As it stands in a sentence. */
    public String words() {
        return words;
    }

    /** Whether anything grows in it that fish eat beside their feed, so that more may come out than was fed. */
    boolean hasNaturalFood() {
        return this != TANK;
    }

    /** Whether it covers ground. */
    boolean isOnLand() {
        return this != CAGE;
    }

    public static Optional<PondKind> of(String id) {
        return Stream.of(values()).filter(kind -> kind.id.equals(id)).findFirst();
    }
}
