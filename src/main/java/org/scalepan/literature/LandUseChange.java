package org.scalepan.literature;

import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.words.Message;

/** Whether emissions from land-use change are counted. */
public enum LandUseChange {
    INCLUDE("include", "included"),
    EXCLUDE("exclude", "excluded");

    private final String id;
    private final String inResults;

    LandUseChange(String id, String inResults) {
        this.id = id;
        this.inResults = inResults;
    }

    public String id() {
        return id;
    }

    public LandUseChange other() {
        return this == INCLUDE ? EXCLUDE : INCLUDE;
    }

    /** As it begins a sentence. */
    public Message message() {
        return Message.of("luc." + id);
    }

    /** As it begins an English sentence. */
    public String words() {
        return message().english();
    }

    /** The word that the {@code luc} column of a result uses for it. */
    public String inResults() {
        return inResults;
    }

    public static Optional<LandUseChange> of(String id) {
        return Stream.of(values()).filter(luc -> luc.id.equals(id)).findFirst();
    }
}
