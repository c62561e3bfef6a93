package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.quantity.SignificantFigures;
import org.scalepan.words.Figure;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * What a farm's records say goes in with the feed and comes out in animals, eggs, milk and frass, of something that is conserved. A loss
 * (gases, breath, heat) is never recorded and never below zero, so that more out than in is impossible whatever was lost; less is no
 * fault.
 *
 * <p>Source: material and energy balance (system analysis by conservation of mass, ISO 14044:2006, 4.3.3.3; clause from memory).
 *
 * @param in in the feed of a year, centrally and as far as it is known; empty when nothing can be said
 * @param out in what leaves the animals in a year, centrally and as far as it was recorded
 * @param message the balance in words, with what is missing where it is not made
 * @param rows ids of the rows of the library that it rests on
 */
public record FarmBalance(
        BalanceKind kind,
        OptionalDouble in,
        OptionalDouble out,
        BalanceVerdict verdict,
        Message message,
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
        NITROGEN("kg N a year"),
        DRY_MATTER("kg a year"),
        /** Heat of combustion. */
        GROSS_ENERGY("MJ a year");

        private final String unit;

        BalanceKind(String unit) {
            this.unit = unit;
        }

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** As it stands in a sentence. */
        public Message message() {
            return Message.of("balance-kind." + id());
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
     * @param message of what, such as {@code larvae 29.9, frass 28.6}
     * @param rows ids of the rows of the library behind it
     */
    public record OutgoingContent(ActivityTerm amount, Message message, List<String> rows) {
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
            BalanceKind kind, Optional<FeedContent> in, Optional<OutgoingContent> out, Message without) {
        if (in.isEmpty() || out.isEmpty()) {
            List<Message> missing = new ArrayList<>();
            if (in.isEmpty()) {
                missing.add(Message.of("balance.no-feed"));
            }
            if (out.isEmpty()) {
                missing.add(without);
            }
            return new FarmBalance(
                    kind,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    BalanceVerdict.NOT_MADE,
                    Message.of("balance.not-made", "kind", kind.message(), "why", Listing.semicolons(missing)),
                    List.of());
        }
        return made(kind, in.get(), out.get());
    }

    /** A balance that is not made at all, for a reason of its own. */
    public static FarmBalance notMade(BalanceKind kind, Message why) {
        return new FarmBalance(
                kind,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                BalanceVerdict.NOT_MADE,
                Message.of("balance.not-made", "kind", kind.message(), "why", why),
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
        Message figures = Message.of(
                ranges ? "balance.figures.ranges" : "balance.figures",
                "leaving",
                new Figure(figure(leaving)),
                "unit",
                Message.of("balance-unit." + kind.id()),
                "what",
                out.message(),
                "fed",
                new Figure(figure(impossible ? atMost : known)));
        Listing unknown = Listing.commas(in.unknown());
        if (impossible) {
            return new FarmBalance(
                    kind,
                    OptionalDouble.of(atMost),
                    OptionalDouble.of(leaving),
                    BalanceVerdict.IMPOSSIBLE,
                    impossible(kind, figures, ranges, whole ? Optional.empty() : Optional.of(unknown)),
                    rows);
        }
        boolean tight = leaving > known;
        return new FarmBalance(
                kind,
                OptionalDouble.of(known),
                OptionalDouble.of(leaving),
                whole ? tight ? BalanceVerdict.UNUSUAL : BalanceVerdict.POSSIBLE : BalanceVerdict.NOT_MADE,
                whole ? possible(kind, figures, tight) : partly(kind, figures, unknown),
                rows);
    }

    private static Message impossible(BalanceKind kind, Message figures, boolean ranges, Optional<Listing> unknown) {
        Message all = unknown.map(of -> Message.of("balance.even-with-most", "figures", figures, "unknown", of))
                .orElse(figures);
        return Message.of(
                ranges ? "balance.impossible.ranges" : "balance.impossible", "kind", kind.message(), "figures", all);
    }

    private static Message possible(BalanceKind kind, Message figures, boolean tight) {
        return tight ? Message.of("balance.tight", "kind", kind.message(), "figures", figures) : figures;
    }

    private static Message partly(BalanceKind kind, Message figures, Listing unknown) {
        return Message.of("balance.partly", "kind", kind.message(), "figures", figures, "unknown", unknown);
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
    public FarmBalance possibleFrom(Message unrecorded) {
        return verdict == BalanceVerdict.IMPOSSIBLE
                ? new FarmBalance(
                        kind,
                        in,
                        out,
                        BalanceVerdict.UNUSUAL,
                        Message.of("balance.and", "balance", message, "unrecorded", unrecorded),
                        rows)
                : this;
    }

    /** The balance in English words. */
    public String reason() {
        return message.english();
    }

    /** The same balance, possible and unusual. */
    public FarmBalance unusual(Message why, List<String> published) {
        List<String> all = new ArrayList<>(rows);
        all.addAll(published);
        return new FarmBalance(
                kind,
                in,
                out,
                BalanceVerdict.UNUSUAL,
                Message.of("verbatim", "text", Listing.semicolons(List.of(message, why))),
                all);
    }
}
