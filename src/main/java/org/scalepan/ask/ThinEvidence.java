package org.scalepan.ask;

import org.scalepan.factors.Grade;
import org.scalepan.words.Message;

/**
 * When too few studies stand behind a comparison. The share of draws in which one side is smaller is then a statement about those studies
 * and is said together with that. It is never put into words of likelihood: draws out of assumed spreads are no calibrated probability.
 */
public final class ThinEvidence {
    /**
     * With fewer studies than this on either side the evidence is called thin. A study of which a number is from memory does not count,
     * because the number has not been verified.
     */
    public static final int FEWEST_STUDIES = 3;

    private ThinEvidence() {}

    /**
     * As it ends a sentence: {@code fewer than 3 studies on a side: the evidence is thin}.
     *
     * @param lowest lowest check grade that the question lets in
     */
    public static Message message(Grade lowest) {
        return Message.of(lowest == Grade.MEMORY ? "thin.memory" : "thin", "few", FEWEST_STUDIES);
    }

    /** The same in an English sentence. */
    public static String words(Grade lowest) {
        return message(lowest).english();
    }
}
