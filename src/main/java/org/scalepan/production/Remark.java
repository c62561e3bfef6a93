package org.scalepan.production;

import java.util.List;
import org.scalepan.words.Message;

/**
 * Something about the records that a reader should look at: outside usual practice, against physics, or not lawful somewhere. Never
 * a refusal.
 *
 * @param code stable code
 * @param message the sentence
 * @param rows the rows of the library that the records are held against; empty where it is arithmetic or law
 */
public record Remark(String code, Message message, List<String> rows) {
    public Remark {
        rows = List.copyOf(rows);
    }

    /** The sentence in English. */
    public String text() {
        return message.english();
    }

    /** Outside what growers or published farms usually find. */
    public static final String UNUSUAL = "unusual-practice";
    /** Impossible, by conservation of matter or energy. */
    public static final String AGAINST_PHYSICS = "against-physics";
    /** Not lawful for food or feed in some markets. */
    public static final String LEGALITY = "legality";
    /** Feed is counted with a factor that ends at retail instead of at the farm, so that it comes out too high. */
    public static final String RETAIL_FEED = "retail-feed-factor";
    /** Sold dried or milled, and nothing that is done after the harvest is recorded. */
    public static final String UNPROCESSED = "processing-not-recorded";
    /** Of an insect that the library does not know. */
    public static final String OWN_SPECIES = "own-species";
    /** A way of counting that a reader may not expect. */
    public static final String METHOD = "method";
}
