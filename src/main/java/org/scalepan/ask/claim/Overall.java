package org.scalepan.ask.claim;

import java.util.List;
import java.util.Locale;
import org.scalepan.words.Message;

/**
 * The verdict over a whole grid of bases. The asked cell is the one on the unit, boundary and warming set of the question.
 *
 * <ul>
 *   <li>{@link #HOLDS}: the asked cell holds.
 *   <li>{@link #HOLDS_ONLY_FOR}: it does not, or has no evidence, but another cell holds.
 *   <li>{@link #FAILS}: no cell holds, and the asked cell fails; where that has no evidence, every cell that has some fails.
 *   <li>{@link #OPEN}: no cell holds, and the evidence does not say that the claim fails either.
 *   <li>{@link #UNDECIDED}: no cell holds, and a side of the asked cell is a bound that does not decide it; where that has no
 *       evidence, every cell that does not fail is such a one.
 *   <li>{@link #NOT_TRACEABLE}: no cell has evidence.
 * </ul>
 */
public enum Overall {
    HOLDS,
    HOLDS_ONLY_FOR,
    FAILS,
    OPEN,
    UNDECIDED,
    NOT_TRACEABLE;

    /** The verdict over the cells of one product. */
    public static Overall of(Verdict asked, List<Verdict> all) {
        List<Verdict> withEvidence =
                all.stream().filter(verdict -> verdict != Verdict.NO_EVIDENCE).toList();
        if (asked == Verdict.HOLDS) {
            return HOLDS;
        }
        if (withEvidence.isEmpty()) {
            return NOT_TRACEABLE;
        }
        if (withEvidence.contains(Verdict.HOLDS)) {
            return HOLDS_ONLY_FOR;
        }
        boolean silent = asked == Verdict.NO_EVIDENCE;
        boolean fails =
                silent ? withEvidence.stream().allMatch(verdict -> verdict == Verdict.FAILS) : asked == Verdict.FAILS;
        if (fails) {
            return FAILS;
        }
        boolean undecided = silent
                ? withEvidence.stream().allMatch(verdict -> verdict == Verdict.FAILS || verdict == Verdict.UNDECIDED)
                : asked == Verdict.UNDECIDED;
        return undecided ? UNDECIDED : OPEN;
    }

    /**
     * The verdict over several products of which the same is said: it holds when it holds for each that has evidence, fails when it
     * fails for each, and holds only for some when it holds anywhere.
     */
    public static Overall ofAll(List<Overall> products) {
        List<Overall> traceable =
                products.stream().filter(one -> one != NOT_TRACEABLE).toList();
        if (traceable.isEmpty()) {
            return NOT_TRACEABLE;
        }
        if (traceable.stream().allMatch(one -> one == traceable.get(0))) {
            return traceable.get(0);
        }
        return traceable.contains(HOLDS) || traceable.contains(HOLDS_ONLY_FOR) ? HOLDS_ONLY_FOR : OPEN;
    }

    /** The verdict in words, for a reader of nothing else. */
    public Message message() {
        return Message.of("overall." + id());
    }

    /** The same in English. */
    public String words() {
        return message().english();
    }

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
