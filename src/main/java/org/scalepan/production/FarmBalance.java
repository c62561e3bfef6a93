package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.quantity.SignificantFigures;

/**
 * What a farm's records say goes in with the feed and comes out in animals, eggs, milk and frass, of something that is conserved. A loss
 * (gases, breath, heat) is never recorded and never below zero, so that more out than in is impossible whatever was lost; less is no
 * fault.
 *
 * <p>Source: material and energy balance (system analysis by conservation of mass, ISO 14044:2006, 4.3.3.3; clause from memory).
 *
 * @param in in the feed of a year, centrally and as far as it is known; empty when nothing can be said
 * @param out in what leaves the animals in a year, centrally and as far as it was recorded
 * @param reason the balance in words, with what is missing where it is not made
 * @param rows ids of the rows of the library that it rests on
 */
public record FarmBalance(
        BalanceKind kind,
        OptionalDouble in,
        OptionalDouble out,
        BalanceVerdict verdict,
        String reason,
        List<String> rows) {
    /** Out may be so many times in before the records contradict themselves: composition is a mean of other feed and animals. */
    public static final double MOST_OUT_PER_IN = 1.10;

    public FarmBalance {
        rows = List.copyOf(rows);
    }

    /**
     * Records with ranges contradict themselves where they do so in as many of their draws; common practice, no source.
     */
    public static final double DRAWS_IMPOSSIBLE = 0.95;

    private static final int DRAWS = 1_000;
    private static final long SEED = 1;

    /** What is conserved. */
    public enum BalanceKind {
        NITROGEN("nitrogen", "kg N a year"),
        DRY_MATTER("dry matter", "kg a year"),
        /** Heat of combustion. */
        GROSS_ENERGY("gross energy", "MJ a year");

        private final String words;
        private final String unit;

        BalanceKind(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** As it stands in a sentence. */
        public String words() {
            return words;
        }

        public String unit() {
            return unit;
        }
    }

    /** What follows. */
    public enum BalanceVerdict {
        POSSIBLE,
        /** Possible, and farther than any publication of the species: a remark says so. */
        UNUSUAL,
        /** More comes out than goes in: nothing can be said with a figure of these records. */
        IMPOSSIBLE,
        /** The content of some feed or of the animals is not known. */
        NOT_MADE;

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * What comes out.
     *
     * @param amount as far as it is known, so at least so much
     * @param words of what, such as {@code larvae 29.9, frass 28.6}
     * @param rows ids of the rows of the library behind it
     */
    public record OutgoingContent(ActivityTerm amount, String words, List<String> rows) {
        public OutgoingContent {
            rows = List.copyOf(rows);
        }
    }

    /**
     * The balance of what is known. Feed of unknown content is counted at the most that it can hold: more out than even that is
     * impossible, and anything less decides nothing.
     *
     * @param in empty when no feed is recorded
     * @param out empty when the content of the animals is not known
     * @param without what is missing of {@code out}, where it is
     */
    public static FarmBalance of(
            BalanceKind kind, Optional<FeedContent> in, Optional<OutgoingContent> out, String without) {
        if (in.isEmpty() || out.isEmpty()) {
            List<String> missing = new ArrayList<>();
            if (in.isEmpty()) {
                missing.add("no feed is recorded");
            }
            if (out.isEmpty()) {
                missing.add(without);
            }
            return new FarmBalance(
                    kind,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    BalanceVerdict.NOT_MADE,
                    "the balance of " + kind.words() + " is not made: " + String.join("; ", missing),
                    List.of());
        }
        return made(kind, in.get(), out.get());
    }

    /** A balance that is not made at all, for a reason of its own. */
    public static FarmBalance notMade(BalanceKind kind, String why) {
        return new FarmBalance(
                kind,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                BalanceVerdict.NOT_MADE,
                "the balance of " + kind.words() + " is not made: " + why,
                List.of());
    }

    private static FarmBalance made(BalanceKind kind, FeedContent in, OutgoingContent out) {
        List<String> rows = new ArrayList<>(in.rows());
        out.rows().stream().filter(row -> !rows.contains(row)).forEach(rows::add);
        boolean ranges = !out.amount().isCertain() || !in.atMost().isCertain();
        double leaving = out.amount().central();
        double known = in.known().central();
        double atMost = in.atMost().central();
        boolean impossible =
                ranges ? shareAbove(out.amount(), in.atMost()) >= DRAWS_IMPOSSIBLE : leaving > MOST_OUT_PER_IN * atMost;
        boolean whole = in.unknown().isEmpty();
        String figures = figure(leaving) + " " + kind.unit() + " in what comes out (" + out.words() + ") and "
                + figure(impossible ? atMost : known) + " in the feed"
                + (ranges ? ", in the middle of the ranges" : "");
        String unknown = String.join(", ", in.unknown());
        if (impossible) {
            return new FarmBalance(
                    kind,
                    OptionalDouble.of(atMost),
                    OptionalDouble.of(leaving),
                    BalanceVerdict.IMPOSSIBLE,
                    "more " + kind.words() + " comes out than goes in"
                            + (ranges ? ", almost wherever in their ranges the records lie" : "") + ": " + figures
                            + (whole ? "" : ", even with the most that " + unknown + " can hold")
                            + "; feed is missing, or harvest, frass or yield is too high",
                    rows);
        }
        boolean tight = leaving > known;
        return new FarmBalance(
                kind,
                OptionalDouble.of(known),
                OptionalDouble.of(leaving),
                whole ? tight ? BalanceVerdict.UNUSUAL : BalanceVerdict.POSSIBLE : BalanceVerdict.NOT_MADE,
                whole
                        ? (tight
                                        ? "as much " + kind.words()
                                                + " comes out as goes in, and nothing is left to be lost: "
                                        : "")
                                + figures
                        : "the balance of " + kind.words() + " is not made: the content of " + unknown
                                + " is not in this library; of the rest, " + figures,
                rows);
    }

    /** The share of draws in which out is above the most that it may be of in. */
    private static double shareAbove(ActivityTerm out, ActivityTerm in) {
        CommonRandomNumbers random = new CommonRandomNumbers(SEED, DRAWS);
        double[] leaving = out.drawn(random);
        double[] fed = in.drawn(random);
        int above = 0;
        for (int i = 0; i < leaving.length; i++) {
            if (leaving[i] > MOST_OUT_PER_IN * fed[i]) {
                above++;
            }
        }
        return (double) above / leaving.length;
    }

    private static String figure(double amount) {
        return SignificantFigures.text(amount, 3);
    }

    /** The same balance where something that no record has comes in too: more out than in is unusual and no contradiction. */
    public FarmBalance possibleFrom(String unrecorded) {
        return verdict == BalanceVerdict.IMPOSSIBLE
                ? new FarmBalance(kind, in, out, BalanceVerdict.UNUSUAL, reason + "; " + unrecorded, rows)
                : this;
    }

    /** The same balance, possible and unusual. */
    public FarmBalance unusual(String why, List<String> published) {
        List<String> all = new ArrayList<>(rows);
        all.addAll(published);
        return new FarmBalance(kind, in, out, BalanceVerdict.UNUSUAL, reason + "; " + why, all);
    }
}
