package org.scalepan.ask.claim;

import java.util.Locale;
import org.scalepan.footprint.Bound;
import org.scalepan.words.Message;

/**
 * The verdict of the draws on a claim on one basis. The limits (0.90, 0.66, 0.33, 0.10) are those of the scale of
 * the IPCC's Fifth Assessment Report (Mastrandrea et al. 2010, guidance note, table 1); its words are not used, because a share of draws is
 * no calibrated probability.
 */
public enum Verdict {
    HOLDS,
    LEANS_TO_HOLD,
    OPEN,
    LEANS_AGAINST,
    FAILS,
    /** A side is only a bound, and the bound does not decide the claim. */
    UNDECIDED,
    NO_EVIDENCE;

    /** The verdict for the share of draws in which the claim is true. */
    public static Verdict of(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("a probability lies between 0 and 1, not at " + probability);
        }
        if (probability >= 0.90) {
            return HOLDS;
        }
        if (probability >= 0.66) {
            return LEANS_TO_HOLD;
        }
        if (probability > 0.33) {
            return OPEN;
        }
        return probability > 0.10 ? LEANS_AGAINST : FAILS;
    }

    /**
     * The verdict for the share of draws in which a claim of at least so much is true, when what it is about may be a bound: an upper
     * bound can refute such a claim, and a lower bound can support it.
     */
    static Verdict of(double share, Bound bound) {
        Verdict plain = of(share);
        return switch (bound) {
            case EXACT -> plain;
            case AT_LEAST -> plain == HOLDS ? HOLDS : UNDECIDED;
            case AT_MOST -> plain == FAILS ? FAILS : UNDECIDED;
            case NONE -> UNDECIDED;
        };
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As it stands in a sentence. */
    public Message message() {
        return Message.of("verdict." + id());
    }
}
