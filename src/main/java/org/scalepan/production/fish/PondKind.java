package org.scalepan.production.fish;

import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.words.Message;

/** What farmed fish live in. */
public enum PondKind {
    POND("pond"),
    BRACKISH_POND("brackish-pond"),
    LINED_POND("lined-pond"),
    TANK("tank"),
    CAGE("cage");

    private final String id;

    PondKind(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    /** As it stands in a sentence. */
    public Message message() {
        return Message.of("pond." + id);
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
